import { Show } from "solid-js"
import { useSheet, useWalk } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

/** From an entry, or a row of a table, to where it is drawn. Nothing where no drawing has it. */
export function ShowDrawn(props: { readonly name: string; readonly row?: number }) {
  const sheet = useSheet()
  const walk = useWalk()
  return (
    <Show when={sheet.isDrawn(props.name)}>
      <p class="actions">
        <button
          type="button"
          class="small"
          data-show-drawn
          onClick={() =>
            walk.showDrawn(
              props.row === undefined ? { name: props.name } : { name: props.name, row: props.row },
            )
          }
        >
          {props.row === undefined ? spoken.drawings.show : spoken.drawings.showRow(props.row)}
        </button>
      </p>
    </Show>
  )
}
