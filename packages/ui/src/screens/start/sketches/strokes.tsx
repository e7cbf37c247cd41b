import { For } from "solid-js"

// What the sketches are drawn with. Places and sizes are in the units of the sketch, 320 wide and 180 high.

export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** `count` places, the first at `first`, each `step` after the one before. */
export function places(count: number, first: number, step: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => first + index * step)
}

const BOTTOM = 180

/** Earth from edge to edge, cut through: its surface goes straight from `left` to `right`. */
export function Ground(props: { readonly left: number; readonly right: number }) {
  const at = (x: number) => props.left + ((props.right - props.left) * x) / 320
  return (
    <>
      <path class="sk-soil" d={`M0 ${props.left} 320 ${props.right}V${BOTTOM}H0z`} />
      <path class="sk-heavy" d={`M0 ${props.left} 320 ${props.right}`} />
      <For each={places(8, 14, 42)}>
        {(x) => (
          <path
            class="sk-thin"
            d={`M${x} ${at(x) + 4}l-7 9M${x + 6} ${at(x + 6) + 4}l-7 9M${x + 12} ${at(x + 12) + 4}l-7 9`}
          />
        )}
      </For>
    </>
  )
}

/** A bed of broken stone, its middle at `x`. */
export function StoneBed(props: { readonly x: number; readonly top: number; readonly width: number }) {
  const half = () => props.width / 2
  return (
    <>
      <path
        class="sk-stone"
        d={`M${props.x - half()} ${props.top}h${props.width}l-5 12h${10 - props.width}z`}
      />
      <For each={places(Math.floor((props.width - 12) / 7), props.x - half() + 8, 7)}>
        {(x, place) => (
          <circle class="sk-dot" cx={x} cy={props.top + (place() % 2 === 0 ? 4 : 8)} r="1.300" />
        )}
      </For>
    </>
  )
}

/** Blocks laid on one another, from `top` down to `bottom`. */
export function Blocks(props: {
  readonly x: number
  readonly top: number
  readonly bottom: number
  readonly count: number
}) {
  const height = () => (props.bottom - props.top) / props.count
  return (
    <For each={places(props.count, 0, 1)}>
      {(place) => (
        <rect
          class="sk-block"
          x={props.x - 11}
          y={props.top + place * height()}
          width="22"
          height={height()}
        />
      )}
    </For>
  )
}

/** A timber seen from its side. */
export function Timber(props: Box) {
  return (
    <>
      <rect class="sk-wood" x={props.x} y={props.y} width={props.width} height={props.height} />
      <path
        class="sk-thin"
        d={`M${props.x + 10} ${props.y + props.height / 2}h${props.width * 0.3}M${props.x + props.width * 0.5} ${props.y + props.height / 2}h${props.width * 0.4}`}
      />
    </>
  )
}

/** A timber cut through: crossed, as drawings of the trade have it. */
export function TimberEnd(props: Box) {
  return (
    <>
      <rect class="sk-end" x={props.x} y={props.y} width={props.width} height={props.height} />
      <path
        class="sk-thin"
        d={`M${props.x} ${props.y}l${props.width} ${props.height}m0 ${-props.height}l${-props.width} ${props.height}`}
      />
    </>
  )
}

/** A line of measure, with a stroke across each end. */
export function Measured(props: { readonly x: number; readonly y: number; readonly width: number }) {
  const end = (x: number) => `M${x - 4} ${props.y + 4}l8-8M${x} ${props.y - 6}v12`
  return (
    <path
      class="sk-measure"
      d={`M${props.x} ${props.y}h${props.width}${end(props.x)}${end(props.x + props.width)}`}
    />
  )
}
