import { For, Show } from "solid-js"
import { spoken } from "../../text/spoken.ts"
import { keyOf, type NamedLayer } from "./layer-names.ts"

/** Which layer each number in a drawing stands for, from the ground up; nothing where titles stand in it. */
export function LayerKey(props: { readonly named: readonly NamedLayer[] }) {
  return (
    <Show when={keyOf(props.named).length > 0}>
      <ul class="layer-key" aria-label={spoken.drawings.layerKey}>
        <For each={keyOf(props.named)}>
          {({ text, title }) => (
            <li>
              <strong>{text}</strong> {title}
            </li>
          )}
        </For>
      </ul>
    </Show>
  )
}
