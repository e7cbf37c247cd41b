import { For, Show } from "solid-js"
import { useSession } from "../bridge/context.ts"
import { en } from "../text/en.ts"

/** Four short steps for somebody who is here for the first time. Once dismissed it comes only when asked for. */
export function Guide() {
  const session = useSession()
  return (
    <Show when={!session.preferences().guideDismissed}>
      <aside class="guide" aria-labelledby="guide-title">
        <h2 id="guide-title" tabindex={-1}>
          {en.guide.title}
        </h2>
        <ol>
          <For each={en.guide.steps}>{(step) => <li>{step}</li>}</For>
        </ol>
        <button
          type="button"
          class="small main-action"
          onClick={() => session.prefer({ guideDismissed: true })}
        >
          {en.guide.done}
        </button>
      </aside>
    </Show>
  )
}
