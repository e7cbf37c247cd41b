import type { Layer } from "@pegbook/engine"
import { For, Show } from "solid-js"
import { spoken } from "../../text/spoken.ts"

/** Which layers are shown, and in a drawing of the stack whether they are pulled apart. */
export function Layers(props: {
  readonly layers: readonly Layer[]
  readonly isShown: (id: string) => boolean
  readonly show: (id: string, shown: boolean) => void
  /** Absent in a flat drawing. */
  readonly apart: boolean | undefined
  readonly pull: (apart: boolean) => void
}) {
  return (
    <fieldset class="layers">
      <legend class="block-caption">{spoken.drawings.layers}</legend>
      <Show when={props.apart !== undefined}>
        <label class="choice">
          <input
            type="checkbox"
            checked={props.apart === true}
            onChange={(event) => props.pull(event.currentTarget.checked)}
          />
          {spoken.drawings.apart}
        </label>
      </Show>
      <For each={props.layers}>
        {(layer) => (
          <label class="choice">
            <input
              type="checkbox"
              data-layer-switch={layer.id}
              checked={props.isShown(layer.id)}
              onChange={(event) => props.show(layer.id, event.currentTarget.checked)}
            />
            {layer.title}
          </label>
        )}
      </For>
    </fieldset>
  )
}
