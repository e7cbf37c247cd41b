import type { DrawnMark } from "@pegbook/engine"
import type { Pixel } from "./camera.ts"
import { keyOf } from "./things.ts"

const SIGNS: Readonly<Record<DrawnMark["mark"], string>> = {
  cross: "M-4 -4 4 4M-4 4 4 -4",
  ring: "M-5 0A5 5 0 1 0 5 0 5 5 0 1 0 -5 0Z",
  level: "M0 0 -5 -8 5 -8Z",
}

/** A sign of the same size however near the drawing is. */
export function MarkSign(props: {
  readonly mark: DrawnMark
  readonly at: Pixel
  readonly index: number | undefined
  readonly lit: boolean
}) {
  return (
    <path
      class={`mark-sign mark-${props.mark.mark}`}
      classList={{ lit: props.lit }}
      d={SIGNS[props.mark.mark]}
      transform={`translate(${props.at.x} ${props.at.y})`}
      data-shape={props.index}
      data-of={keyOf(props.mark.of)}
    />
  )
}
