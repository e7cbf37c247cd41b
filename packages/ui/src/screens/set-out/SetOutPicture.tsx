import { type Drawing, resolveDrawing } from "@pegbook/engine"
import { createMemo, createSignal, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import type { Lit } from "../../bridge/walk.ts"
import { Picture } from "../drawings/Picture.tsx"
import "../drawings/drawings.css"
import { spoken } from "../../text/spoken.ts"

/** Where the pegs of the sheet stand, by their letters. Nothing is changed in it: its dimensions have no handles. */
export function SetOutPicture() {
  const sheet = useSheet()
  const drawing = () => sheet.definition.drawings?.find(({ id }) => id === "set-out")
  return <Show when={drawing()}>{(one) => <Drawn drawing={one()} />}</Show>
}

function Drawn(props: { readonly drawing: Drawing }) {
  const sheet = useSheet()
  const [pointed, setPointed] = createSignal<Lit>()
  const [chosen, setChosen] = createSignal<Lit>()
  const drawn = createMemo(() => resolveDrawing(props.drawing, sheet))
  const nothing = () => {}
  return (
    <Show when={drawn().bounds}>
      {(bounds) => (
        <Picture
          drawing={props.drawing}
          drawn={drawn()}
          bounds={bounds()}
          ghost={[]}
          isShown={() => true}
          lit={chosen()}
          pointed={pointed()}
          point={setPointed}
          choose={setChosen}
          nameOf={({ name, row }) =>
            row === undefined ? sheet.label(name) : spoken.drawings.row(sheet.label(name), row)
          }
          change={nothing}
          preview={nothing}
          endPreview={nothing}
        />
      )}
    </Show>
  )
}
