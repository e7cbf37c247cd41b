import { For, Show } from "solid-js"
import { useSession } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

/** What was just done, with its undo. It stays until it is dismissed, or something else is said. */
export function NoticeBar() {
  const session = useSession()
  return (
    <div role="status" aria-label={spoken.notices}>
      <Show when={session.notice()}>
        {(notice) => (
          <div class="notice">
            <p>{notice().text}</p>
            <Show when={notice().undo}>
              {(undo) => (
                <button
                  type="button"
                  class="small main-action"
                  onClick={() => {
                    session.dismiss()
                    undo()()
                  }}
                >
                  {spoken.undo}
                </button>
              )}
            </Show>
            <For each={notice().choices}>
              {(choice) => (
                <button
                  type="button"
                  class="small main-action"
                  onClick={() => {
                    session.dismiss()
                    choice.act()
                  }}
                >
                  {choice.text}
                </button>
              )}
            </For>
            <button type="button" class="small" onClick={() => session.dismiss()}>
              {spoken.dismiss}
            </button>
          </div>
        )}
      </Show>
    </div>
  )
}
