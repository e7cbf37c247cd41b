import { Show } from "solid-js"
import { useSheet, useWalk } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"

/** While a formula is being written: puts this name into it. */
export function UseButton(props: { readonly name: string }) {
  const sheet = useSheet()
  const walk = useWalk()
  return (
    <Show when={walk.pointing()}>
      {(into) => (
        <button
          type="button"
          class="small use-button"
          data-use={props.name}
          aria-label={spoken.own.useSays(sheet.label(props.name))}
          // The formula keeps the focus, and its caret.
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => into()(props.name)}
        >
          {spoken.own.use}
        </button>
      )}
    </Show>
  )
}
