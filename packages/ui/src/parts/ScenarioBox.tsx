import type { ScenarioView } from "@pegbook/engine"
import { createEffect, createSignal, For, on, Show } from "solid-js"
import { useSession, useSheet } from "../bridge/context.ts"
import { printDay } from "../text/dates.ts"
import { spoken } from "../text/spoken.ts"
import { TitleForm } from "./TitleForm.tsx"

type Asking = "copy" | "name" | "seal"

function labelOf(what: Asking): string {
  const { scenario, seal } = spoken
  return { copy: scenario.copyTitle, name: scenario.newTitle, seal: seal.title }[what]
}

/** A scenario's title, with a word where it is sealed. */
export function scenarioTitle({ title, sealed }: ScenarioView): string {
  return sealed ? spoken.seal.tag(title) : title
}

/** Which scenario is open; copies, seals, renames and deletes it. */
export function ScenarioBox() {
  const sheet = useSheet()
  const session = useSession()
  const [asking, setAsking] = createSignal<Asking>()
  let chooser: HTMLSelectElement | undefined

  createEffect(
    on([sheet.scenario, sheet.scenarios], () => {
      if (chooser !== undefined) chooser.value = sheet.scenario().id
    }),
  )

  function suggestion(what: Asking): string {
    if (what === "seal") return spoken.seal.suggestion(printDay(new Date()))
    return what === "copy" ? spoken.scenario.suggestion(sheet.scenario().title) : sheet.scenario().title
  }

  function answer(title: string): void {
    if (asking() === "copy") {
      const copy = sheet.saveCopy(title)
      session.say(spoken.scenario.saved(copy.title))
    } else if (asking() === "seal") session.say(spoken.seal.sealed(sheet.seal(title).title))
    else sheet.rename(sheet.scenario().id, title)
    setAsking(undefined)
    chooser?.focus()
  }

  function remove(): void {
    const { id, title } = sheet.scenario()
    const putBack = sheet.remove(id)
    session.say(spoken.scenario.removed(title), () => {
      putBack()
      session.say(spoken.scenario.backAgain(title))
    })
  }

  return (
    <div class="scenario">
      <select
        ref={chooser}
        class="field"
        aria-label={spoken.scenario.choose}
        onChange={(event) => sheet.switchTo(event.currentTarget.value)}
      >
        <For each={sheet.scenarios()}>{(one) => <option value={one.id}>{scenarioTitle(one)}</option>}</For>
      </select>
      <Show when={sheet.scenario().sealed}>
        <p class="sealed-here">{spoken.seal.here}</p>
      </Show>
      <Show
        when={asking()}
        fallback={
          <p class="actions">
            <button type="button" class="small" onClick={() => setAsking("copy")}>
              {spoken.scenario.saveCopy}
            </button>
            <button type="button" class="small" onClick={() => setAsking("name")}>
              {spoken.scenario.rename}
            </button>
            <Show when={!sheet.scenario().sealed}>
              <button type="button" class="small" title={spoken.seal.says} onClick={() => setAsking("seal")}>
                {spoken.seal.button}
              </button>
            </Show>
            <button
              type="button"
              class="small"
              disabled={sheet.scenarios().length < 2}
              title={sheet.scenarios().length < 2 ? spoken.scenario.last : undefined}
              onClick={remove}
            >
              {spoken.scenario.remove}
            </button>
          </p>
        }
      >
        {(what) => (
          <TitleForm
            label={labelOf(what())}
            says={what() === "seal" ? spoken.seal.says : undefined}
            suggestion={suggestion(what())}
            answer={answer}
            cancel={() => setAsking(undefined)}
          />
        )}
      </Show>
    </div>
  )
}
