import type { RemedyView } from "@pegbook/engine"
import { createEffect, createSignal, For, on, Show } from "solid-js"
import { useSession, useSheet } from "../../bridge/context.ts"
import { createQuestion } from "../../explore/question.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { Part } from "./Part.tsx"

/** What would make a check pass, worked out beside the page when it is asked for. */
export default function Remedies(props: { readonly check: string }) {
  const sheet = useSheet()
  const session = useSession()
  const [found, setFound] = createSignal<readonly RemedyView[]>()
  const question = createQuestion()
  const [stale, setStale] = createSignal(false)

  function look(): void {
    setStale(false)
    setFound(undefined)
    question.put({ kind: "remedies", check: props.check }, (answer) => {
      if (answer.kind === "remedies") setFound(answer.remedies)
    })
  }

  function tryIt({ input, label, typed, to }: RemedyView): void {
    const title = spoken.verdict.copyTitle(label, to?.text ?? typed)
    const { accepted } = sheet.tryChange(title, { [input]: typed })
    if (accepted) session.say(spoken.verdict.tried(sheet.scenario().title))
  }

  createEffect(
    on([sheet.scenario, sheet.moved], () => setStale(found() !== undefined || question.isWorking()), {
      defer: true,
    }),
  )

  return (
    <div class="remedies">
      <p class="actions">
        <button type="button" class="small main-action" disabled={question.isWorking()} onClick={look}>
          {found() === undefined ? spoken.verdict.what : spoken.verdict.whatAgain}
        </button>
        <Show when={question.isWorking()}>
          <button type="button" class="small" onClick={question.stop}>
            {spoken.verdict.stop}
          </button>
        </Show>
      </p>
      <div role="status">
        <Show when={question.isWorking()}>
          <p class="quiet">{spoken.verdict.looking}</p>
        </Show>
        <Show when={stale()}>
          <p class="quiet">{spoken.verdict.stale}</p>
        </Show>
        <Show when={question.refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
        <Show when={found()?.length === 0}>
          <p>{spoken.verdict.none}</p>
        </Show>
      </div>
      <Show when={(found() ?? []).length > 0}>
        <Part title={spoken.verdict.remedies}>
          <ul class="remedy-list">
            <For each={found()}>
              {(remedy) => (
                <li data-remedy={remedy.input}>
                  <p>
                    <strong>
                      {spoken.verdict.remedy(
                        remedy.label,
                        remedy.from?.text ?? spoken.row.blank,
                        remedy.to?.text ?? remedy.typed,
                      )}
                    </strong>
                  </p>
                  <Show
                    when={remedy.newlyFails.length > 0}
                    fallback={<p class="quiet">{spoken.verdict.nothingFails}</p>}
                  >
                    <p>
                      {spoken.verdict.newlyFails}{" "}
                      <For each={remedy.newlyFails}>
                        {(name, place) => (
                          <>
                            {place() > 0 ? "; " : ""}
                            <EntryLink name={name} from={props.check}>
                              {sheet.label(name)}
                            </EntryLink>
                          </>
                        )}
                      </For>
                    </p>
                  </Show>
                  <button
                    type="button"
                    class="small"
                    aria-label={spoken.verdict.trySays(remedy.label, remedy.to?.text ?? remedy.typed)}
                    onClick={() => tryIt(remedy)}
                  >
                    {spoken.verdict.tryIt}
                  </button>
                </li>
              )}
            </For>
          </ul>
        </Part>
      </Show>
    </div>
  )
}
