import { keptAs, type NearValue, type Thrift } from "@pegbook/engine"
import { createMemo, createSignal, createUniqueId, For, onCleanup, Show } from "solid-js"
import { useSession, useSheet, useWalk } from "../../bridge/context.ts"
import { ask } from "../../explore/ask.ts"
import { spoken } from "../../text/spoken.ts"
import { nearShown } from "./explore-model.ts"
import { Outcome } from "./Outcome.tsx"

interface Found {
  readonly input: string
  readonly score: string
  /** What was in force when it was asked, as typed. */
  readonly present: string
  readonly values: readonly NearValue[]
}

/** Sizes near the present one, those first that leave least over; only where the template says what is left over. */
export function Near() {
  const sheet = useSheet()
  return <Show when={sheet.definition.thrift}>{(thrift) => <NearForm thrift={thrift()} />}</Show>
}

function NearForm(props: { readonly thrift: Thrift }) {
  const sheet = useSheet()
  const session = useSession()
  const walk = useWalk()
  const id = createUniqueId()
  const [found, setFound] = createSignal<Found>()
  const [working, setWorking] = createSignal(false)
  const [refusal, setRefusal] = createSignal<string>()
  let stop = () => {}
  onCleanup(() => stop())
  const shown = createMemo(() => {
    const now = found()
    return now === undefined ? [] : nearShown(now.values, now.present)
  })

  function run(event: SubmitEvent & { readonly currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    stop()
    const typed = new FormData(event.currentTarget)
    const text = (name: string) => String(typed.get(name) ?? "").trim()
    const [input, score] = [text("input"), text("score")]
    const present = sheet.entry(input).reading?.text ?? ""
    const kept = (name: string) => keptAs(text(name), sheet.entry(input).measure)
    setFound(undefined)
    setRefusal(undefined)
    setWorking(true)
    const wanted = { input, score, step: kept("step"), reach: kept("reach") }
    stop = ask(sheet, { kind: "near", ...wanted }, (answer) => {
      if (answer.kind === "near") setFound({ input, score, present, values: answer.values })
      else {
        if (answer.kind === "refused") setRefusal(`${answer.says} ${answer.next}`)
        setWorking(false)
      }
    })
  }

  function take({ input }: Found, { typed, reading }: NearValue): void {
    const title = spoken.verdict.copyTitle(sheet.label(input), reading?.text ?? typed)
    if (!sheet.tryChange(title, { [input]: typed }).accepted) return
    session.say(spoken.verdict.tried(sheet.scenario().title))
    walk.show("worksheet")
  }

  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{spoken.explore.near}</h2>
      <p class="quiet">{spoken.explore.nearSays}</p>
      <form class="explore-form" onSubmit={run}>
        <div class="range-form">
          <label for={`${id}-input`}>{spoken.explore.nearInput}</label>
          <select id={`${id}-input`} class="field" name="input">
            <For each={props.thrift.inputs}>
              {(name) => <option value={name}>{sheet.label(name)}</option>}
            </For>
          </select>
          <div class="range-texts">
            <For each={["step", "reach"] as const}>
              {(part) => (
                <label>
                  <span>{spoken.explore[part]}</span>
                  <input
                    class="field"
                    type="text"
                    autocomplete="off"
                    name={part}
                    value={props.thrift[part][sheet.unitSystem()]}
                  />
                </label>
              )}
            </For>
          </div>
        </div>
        <div class="range-form">
          <label for={`${id}-score`}>{spoken.explore.score}</label>
          <select id={`${id}-score`} class="field" name="score">
            <For each={props.thrift.wastes}>
              {(name) => <option value={name}>{sheet.label(name)}</option>}
            </For>
          </select>
        </div>
        <p class="actions">
          <button type="submit" class="small main-action" disabled={working()}>
            {spoken.explore.seekNear}
          </button>
          <Show when={working()}>
            <button
              type="button"
              class="small"
              onClick={() => {
                stop()
                setWorking(false)
              }}
            >
              {spoken.explore.cancel}
            </button>
          </Show>
        </p>
      </form>
      <div role="status">
        <Show when={working()}>
          <p class="quiet">{spoken.verdict.looking}</p>
        </Show>
        <Show when={refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
        <Show when={found()}>
          {(now) => <p>{spoken.explore.nearTried(now().values.length, shown().length)}</p>}
        </Show>
      </div>
      <Show when={found()}>
        {(now) => (
          <section class="table-scroll" tabindex={0} aria-label={spoken.table.scroll(spoken.explore.near)}>
            <table class="rows tried">
              <thead>
                <tr>
                  <th scope="col">{sheet.label(now().input)}</th>
                  <th scope="col">{sheet.label(now().score)}</th>
                  <th scope="col">{spoken.block.checks}</th>
                  <td />
                </tr>
              </thead>
              <tbody>
                <For each={shown()}>
                  {({ value, isPresent }) => (
                    <tr data-near={value.typed}>
                      <th scope="row">{value.reading?.text ?? value.typed}</th>
                      <td>{value.score.text}</td>
                      <td class="tried-checks">
                        <Outcome failing={value.failing} />
                      </td>
                      <td>
                        <Show
                          when={!isPresent}
                          fallback={<span class="tag tag-own">{spoken.explore.present}</span>}
                        >
                          <button
                            type="button"
                            class="small"
                            aria-label={spoken.explore.takeSays(
                              `${sheet.label(now().input)} ${value.reading?.text ?? value.typed}`,
                            )}
                            onClick={() => take(now(), value)}
                          >
                            {spoken.explore.take}
                          </button>
                        </Show>
                      </td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </section>
        )}
      </Show>
    </section>
  )
}
