import { For, Show } from "solid-js"
import { useSheet, useWalk } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

/** The entries passed on the way here; a press leads back to one. */
export function Trail() {
  const sheet = useSheet()
  const walk = useWalk()
  const last = () => walk.trail().at(-1)
  return (
    <Show when={last()}>
      {(name) => (
        <nav class="trail" aria-label={spoken.walk.label}>
          <button type="button" class="small trail-back" onClick={() => walk.back()}>
            {spoken.walk.back(sheet.label(name()))}
          </button>
          <ol>
            <For each={walk.trail().slice(0, -1)}>
              {(passed, place) => (
                <li>
                  <button type="button" class="plain" onClick={() => walk.back(place())}>
                    {sheet.label(passed)}
                  </button>
                </li>
              )}
            </For>
          </ol>
          <button type="button" class="plain" onClick={() => walk.forget()}>
            {spoken.walk.forget}
          </button>
        </nav>
      )}
    </Show>
  )
}
