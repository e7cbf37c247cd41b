import { keptAs } from "@pegbook/engine"
import { createMemo, createSignal, createUniqueId, For, onCleanup, Show } from "solid-js"
import { useSession, useSheet, useWalk } from "../../bridge/context.ts"
import { ask } from "../../explore/ask.ts"
import type { Answer } from "../../explore/asked.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { isSteppable, triableInputs } from "./explore-model.ts"

type Found = Answer & { readonly kind: "seek" }

const TOWARDS = ["largest", "smallest"] as const
const TEXTS = ["step", "least", "most"] as const

/** The largest or smallest value of an input with which every check passes, and what stands in the way of more. */
export function Edge() {
  const sheet = useSheet()
  const session = useSession()
  const walk = useWalk()
  const id = createUniqueId()
  const inputs = createMemo(() => triableInputs(sheet).filter((name) => isSteppable(sheet.entry(name))))
  const [found, setFound] = createSignal<Found & { readonly input: string }>()
  const [working, setWorking] = createSignal(false)
  const [refusal, setRefusal] = createSignal<string>()
  let stop = () => {}
  onCleanup(() => stop())

  function run(event: SubmitEvent & { readonly currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    stop()
    const typed = new FormData(event.currentTarget)
    const text = (name: string) => String(typed.get(name) ?? "").trim()
    const input = text("input")
    setFound(undefined)
    if (text("step") === "") {
      setRefusal(spoken.explore.needStep)
      return
    }
    setRefusal(undefined)
    setWorking(true)
    const toward = text("toward") === "smallest" ? "smallest" : "largest"
    const kept = (name: string) => keptAs(text(name), sheet.entry(input).measure)
    const wanted = { input, toward, step: kept("step"), least: kept("least"), most: kept("most") } as const
    stop = ask(sheet, { kind: "seek", ...wanted }, (answer) => {
      if (answer.kind === "seek") setFound({ ...answer, input })
      else {
        if (answer.kind === "refused") setRefusal(`${answer.says} ${answer.next}`)
        setWorking(false)
      }
    })
  }

  function take({ input, typed, text }: Found & { readonly input: string }): void {
    if (typed === undefined) return
    const title = spoken.verdict.copyTitle(sheet.label(input), text ?? typed)
    if (!sheet.tryChange(title, { [input]: typed }).accepted) return
    session.say(spoken.verdict.tried(sheet.scenario().title))
    walk.show("worksheet")
  }

  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{spoken.explore.edge}</h2>
      <p class="quiet">{spoken.explore.edgeSays}</p>
      <form class="explore-form" onSubmit={run}>
        <div class="range-form">
          <label for={`${id}-input`}>{spoken.explore.input}</label>
          <select id={`${id}-input`} class="field" name="input">
            <For each={inputs()}>{(name) => <option value={name}>{sheet.label(name)}</option>}</For>
          </select>
          <div class="range-texts">
            <label>
              <span>{spoken.explore.toward}</span>
              <select class="field" name="toward">
                <For each={TOWARDS}>
                  {(one) => <option value={one}>{spoken.explore.towards[one]}</option>}
                </For>
              </select>
            </label>
            <For each={TEXTS}>
              {(part) => (
                <label>
                  <span>{spoken.explore[part]}</span>
                  <input class="field" type="text" autocomplete="off" name={part} />
                </label>
              )}
            </For>
          </div>
        </div>
        <p class="actions">
          <button type="submit" class="small main-action" disabled={working()}>
            {spoken.explore.seek}
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
      <div role="status" data-sought>
        <Show when={working()}>
          <p class="quiet">{spoken.verdict.looking}</p>
        </Show>
        <Show when={refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
        <Show when={found()}>
          {(one) => (
            <>
              <p>
                <strong>
                  {one().typed === undefined
                    ? spoken.explore.notFound(one().tried)
                    : spoken.explore.found(sheet.label(one().input), one().text ?? "", one().tried)}
                </strong>
              </p>
              <Show
                when={one().binds.length > 0}
                fallback={<p>{one().typed === undefined ? "" : spoken.explore.noBinds}</p>}
              >
                <p>{one().typed === undefined ? spoken.explore.always : spoken.explore.binds}</p>
                <ul class="advice">
                  <For each={one().binds}>
                    {(name) => (
                      <li>
                        <EntryLink name={name}>{sheet.label(name)}</EntryLink>
                      </li>
                    )}
                  </For>
                </ul>
              </Show>
              <Show when={one().typed !== undefined}>
                <button type="button" class="small" onClick={() => take(one())}>
                  {spoken.explore.take}
                </button>
              </Show>
            </>
          )}
        </Show>
      </div>
    </section>
  )
}
