import { For, Show } from "solid-js"
import { spoken } from "../text/spoken.ts"
import { type Asked, askedOf } from "./asked.ts"
import { shapePath, spanPath, witnessPath } from "./paths.ts"
import { FRAME, type Shape } from "./shapes.ts"
import "./asked-picture.css"

/** A sketch of what an entry asks for; nothing where there is nothing to see. */
export default function AskedPicture(props: { readonly name: string; readonly label: string }) {
  return <Show when={askedOf(props.name)}>{(asked) => <Picture asked={asked()} label={props.label} />}</Show>
}

/** The thing that is asked for lit up, and measured where it is a length. Not to scale. */
function Picture(props: { readonly asked: Asked; readonly label: string }) {
  const scene = () => props.asked.scene
  const lit = () => props.asked.ask.lit ?? []
  /** The parts in their order, so that what is lit may lie under others; then those that are there only now. */
  const drawn = (): readonly (readonly [part: string, shape: Shape])[] => {
    const coming = Object.entries(scene().extras ?? {}).filter(([part]) => lit().includes(part))
    return [...Object.entries(scene().parts), ...coming].flatMap(([part, shapes]) =>
      shapes.map((shape) => [part, shape] as const),
    )
  }
  const spans = () => props.asked.ask.spans ?? []
  return (
    <svg
      class="asked-picture"
      viewBox={`0 0 ${FRAME.width} ${FRAME.height}`}
      role="img"
      aria-label={spoken.picture(props.label)}
    >
      <For each={drawn()}>
        {([part, shape]) => (
          <path
            class={`as-${shape.look}`}
            classList={{ "as-lit": lit().includes(part) }}
            d={shapePath(shape)}
          />
        )}
      </For>
      <For each={spans()}>
        {(span) => (
          <>
            <path class="as-witness" d={witnessPath(span)} />
            <path class="as-halo" d={spanPath(span)} />
            <path class="as-span" d={spanPath(span)} />
          </>
        )}
      </For>
    </svg>
  )
}
