import type { ScenarioView } from "@pegbook/engine"
import { createEffect, createSignal, For, on, Show } from "solid-js"
import { useSession, useSheet } from "../bridge/context.ts"
import { en } from "../text/en.ts"
import { TitleForm } from "./TitleForm.tsx"

const LABELS = {
  copy: en.scenario.copyTitle,
  name: en.scenario.newTitle,
  seal: en.seal.title,
} as const

const day = new Intl.DateTimeFormat("en", { dateStyle: "long" })

/** A scenario's title, with a word where it is sealed. */
export function scenarioTitle({ title, sealed }: ScenarioView): string {
  return sealed ? en.seal.tag(title) : title
}

/** Which scenario is open; copies, seals, renames and deletes it. */
export function ScenarioBox() {
  const sheet = useSheet()
  const session = useSession()
  const [asking, setAsking] = createSignal<"copy" | "name" | "seal">()
  let chooser: HTMLSelectElement | undefined

  createEffect(
    on([sheet.scenario, sheet.scenarios], () => {
      if (chooser !== undefined) chooser.value = sheet.scenario().id
    }),
  )

  function suggestion(what: keyof typeof LABELS): string {
    if (what === "seal") return en.seal.suggestion(day.format(new Date()))
    return what === "copy" ? en.scenario.suggestion(sheet.scenario().title) : sheet.scenario().title
  }

  function answer(title: string): void {
    if (asking() === "copy") {
      const copy = sheet.saveCopy(title)
      session.say(en.scenario.saved(copy.title))
    } else if (asking() === "seal") session.say(en.seal.sealed(sheet.seal(title).title))
    else sheet.rename(sheet.scenario().id, title)
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
        <For each={sheet.scenarios()}>{(one) => <option value={one.id}>{scenarioTitle(one)}</option>}</For>
      </select>
      <Show when={sheet.scenario().sealed}>
        <p class="sealed-here">{en.seal.here}</p>
      </Show>
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
            <Show when={!sheet.scenario().sealed}>
              <button type="button" class="small" title={en.seal.says} onClick={() => setAsking("seal")}>
                {en.seal.button}
              </button>
            </Show>
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
            label={LABELS[what()]}
            says={what() === "seal" ? en.seal.says : undefined}
            suggestion={suggestion(what())}
            answer={answer}
            cancel={() => setAsking(undefined)}
          />
        )}
      </Show>
    </div>
  )
}
