import { For, Show } from "solid-js"
import { useSession, useWalk } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

/** As in the styles. */
const NARROW = "(max-width: 45rem)"

/** A few short steps for somebody who is here for the first time. Once dismissed it comes only when asked for. */
export function Guide() {
  const session = useSession()
  const walk = useWalk()
  return (
    <Show when={!session.preferences().guideDismissed}>
      <aside class="guide" aria-labelledby="guide-title">
        {/* Where the page is narrow the numbers come first, and the guide is a press away. */}
        <details id="guide" open={!matchMedia(NARROW).matches}>
          <summary>
            <h2 id="guide-title" class="guide-title" tabindex={-1}>
              {spoken.guide.title}
            </h2>
          </summary>
          <ol>
            <For each={spoken.guide.steps}>{(step) => <li>{step}</li>}</For>
          </ol>
          <p class="actions">
            <button
              type="button"
              class="small main-action"
              onClick={() => session.prefer({ guideDismissed: true })}
            >
              {spoken.guide.done}
            </button>
            <button type="button" class="small" onClick={() => walk.show("start")}>
              {spoken.start.own}
            </button>
          </p>
        </details>
      </aside>
    </Show>
  )
}
