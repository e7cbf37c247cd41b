import { keptAs } from "@pegbook/engine"
import { createMemo, createSignal, createUniqueId, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import type { Answer } from "../../explore/asked.ts"
import { createQuestion } from "../../explore/question.ts"
import { EntryList } from "../../parts/EntryList.tsx"
import { spoken } from "../../text/spoken.ts"
import { AskButtons } from "./AskButtons.tsx"
import { isSteppable, triableInputs } from "./explore-model.ts"
import { useTaking } from "./taking.ts"

type Found = Answer & { readonly kind: "seek" }

const TOWARDS = ["largest", "smallest"] as const
const TEXTS = ["step", "least", "most"] as const

/** The largest or smallest value of an input with which every check passes, and what stands in the way of more. */
export function Edge() {
  const sheet = useSheet()
  const id = createUniqueId()
  const inputs = createMemo(() => triableInputs(sheet).filter((name) => isSteppable(sheet.entry(name))))
  const [found, setFound] = createSignal<Found & { readonly input: string }>()
  const question = createQuestion()
  const takeIntoCopy = useTaking()

  function run(event: SubmitEvent & { readonly currentTarget: HTMLFormElement }): void {
    event.preventDefault()
    const typed = new FormData(event.currentTarget)
    const text = (name: string) => String(typed.get(name) ?? "").trim()
    const input = text("input")
    setFound(undefined)
    if (text("step") === "") {
      question.refuse(spoken.explore.needStep)
      return
    }
    const toward = text("toward") === "smallest" ? "smallest" : "largest"
    const kept = (name: string) => keptAs(text(name), sheet.entry(input).measure)
    const wanted = { input, toward, step: kept("step"), least: kept("least"), most: kept("most") } as const
    question.put({ kind: "seek", ...wanted }, (answer) => {
      if (answer.kind === "seek") setFound({ ...answer, input })
    })
  }

  function take({ input, typed, text }: Found & { readonly input: string }): void {
    if (typed === undefined) return
    takeIntoCopy(spoken.verdict.copyTitle(sheet.label(input), text ?? typed), { [input]: typed })
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
        <AskButtons ask={spoken.explore.seek} isWorking={question.isWorking()} stop={question.stop} />
      </form>
      <div role="status" data-sought>
        <Show when={question.isWorking()}>
          <p class="quiet">{spoken.verdict.looking}</p>
        </Show>
        <Show when={question.refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
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
                <EntryList class="advice" names={one().binds} />
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
