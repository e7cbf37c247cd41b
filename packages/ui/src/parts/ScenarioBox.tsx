import { createEffect, createSignal, For, on, Show } from "solid-js"
import { useSession, useSheet } from "../bridge/context.ts"
import { en } from "../text/en.ts"
import { TitleForm } from "./TitleForm.tsx"

/** Which scenario is open; copies, renames and deletes it. */
export function ScenarioBox() {
  const sheet = useSheet()
  const session = useSession()
  const [asking, setAsking] = createSignal<"copy" | "name">()
  let chooser: HTMLSelectElement | undefined

  createEffect(
    on([sheet.scenario, sheet.scenarios], () => {
      if (chooser !== undefined) chooser.value = sheet.scenario().id
    }),
  )

  function answer(title: string): void {
    if (asking() === "copy") {
      const copy = sheet.saveCopy(title)
      session.say(en.scenario.saved(copy.title))
    } else sheet.rename(sheet.scenario().id, title)
    setAsking(undefined)
    chooser?.focus()
  }

  function remove(): void {
    const { id, title } = sheet.scenario()
    const putBack = sheet.remove(id)
    session.say(en.scenario.removed(title), () => {
      putBack()
      session.say(en.scenario.backAgain(title))
    })
  }

  return (
    <div class="scenario">
      <select
        ref={chooser}
        class="field"
        aria-label={en.scenario.choose}
        onChange={(event) => sheet.switchTo(event.currentTarget.value)}
      >
        <For each={sheet.scenarios()}>{(one) => <option value={one.id}>{one.title}</option>}</For>
      </select>
      <Show
        when={asking()}
        fallback={
          <p class="actions">
            <button type="button" class="small" onClick={() => setAsking("copy")}>
              {en.scenario.saveCopy}
            </button>
            <button type="button" class="small" onClick={() => setAsking("name")}>
              {en.scenario.rename}
            </button>
            <button
              type="button"
              class="small"
              disabled={sheet.scenarios().length < 2}
              title={sheet.scenarios().length < 2 ? en.scenario.last : undefined}
              onClick={remove}
            >
              {en.scenario.remove}
            </button>
          </p>
        }
      >
        {(what) => (
          <TitleForm
            label={what() === "copy" ? en.scenario.copyTitle : en.scenario.newTitle}
            suggestion={
              what() === "copy" ? en.scenario.suggestion(sheet.scenario().title) : sheet.scenario().title
            }
            answer={answer}
            cancel={() => setAsking(undefined)}
          />
        )}
      </Show>
    </div>
  )
}
