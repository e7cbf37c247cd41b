import { keptAs, type NearValue, type Thrift } from "@pegbook/engine"
import { createMemo, createSignal, createUniqueId, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { createQuestion } from "../../explore/question.ts"
import { spoken } from "../../text/spoken.ts"
import { AskButtons } from "./AskButtons.tsx"
import { nearShown } from "./explore-model.ts"
import { Outcome } from "./Outcome.tsx"
import { useTaking } from "./taking.ts"

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
  const id = createUniqueId()
  const [found, setFound] = createSignal<Found>()
  const question = createQuestion()
  const takeIntoCopy = useTaking()
  const shown = createMemo(() => {
    const now = found()
    return now === undefined ? [] : nearShown(now.values, now.present)
  })

  function run(event: SubmitEvent & { readonly currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    const typed = new FormData(event.currentTarget)
    const text = (name: string) => String(typed.get(name) ?? "").trim()
    const [input, score] = [text("input"), text("score")]
    const present = sheet.entry(input).reading?.text ?? ""
    const kept = (name: string) => keptAs(text(name), sheet.entry(input).measure)
    setFound(undefined)
    const wanted = { input, score, step: kept("step"), reach: kept("reach") }
    question.put({ kind: "near", ...wanted }, (answer) => {
      if (answer.kind === "near") setFound({ input, score, present, values: answer.values })
    })
  }

  function take({ input }: Found, { typed, reading }: NearValue): void {
    takeIntoCopy(spoken.verdict.copyTitle(sheet.label(input), reading?.text ?? typed), { [input]: typed })
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
        <AskButtons ask={spoken.explore.seekNear} isWorking={question.isWorking()} stop={question.stop} />
      </form>
      <div role="status">
        <Show when={question.isWorking()}>
          <p class="quiet">{spoken.verdict.looking}</p>
        </Show>
        <Show when={question.refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
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
