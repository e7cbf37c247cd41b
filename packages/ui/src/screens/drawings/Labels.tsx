import { Index } from "solid-js"
import { FONT_SIZE, type PlacedLabel } from "./place-labels.ts"

/** What is written in a drawing. */
export function Labels(props: { readonly labels: readonly PlacedLabel[] }) {
  return (
    <g class="labels" font-size={FONT_SIZE}>
      <Index each={props.labels}>
        {(label) => (
          <text
            x={label().x}
            y={label().y}
            text-anchor="middle"
            dominant-baseline="central"
            transform={label().turned ? `rotate(-90 ${label().x} ${label().y})` : undefined}
            classList={{ "label-lit": label().id === "lit" }}
            data-label={label().id}
          >
            {label().text}
          </text>
        )}
      </Index>
    </g>
  )
}
