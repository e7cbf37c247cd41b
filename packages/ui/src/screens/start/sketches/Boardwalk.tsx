import { For } from "solid-js"
import { places } from "./strokes.tsx"

const BOARDS = 14

/** The near corner of each board: they run away to the right and up. */
const corner = (place: number) => ({ x: 30 + place * 14, y: 108 - place * 6.4 })

/** Tufts of reeds: where, and how tall. */
const REEDS = [
  { x: 24, y: 84, tall: 30 },
  { x: 62, y: 62, tall: 22 },
  { x: 120, y: 36, tall: 16 },
  { x: 196, y: 142, tall: 34 },
  { x: 246, y: 116, tall: 28 },
  { x: 292, y: 92, tall: 20 },
]

/** Laid crosswise, seen from above at an angle, so that the path is seen to go somewhere. */
export function Boardwalk() {
  const near = corner(0)
  const far = corner(BOARDS)
  return (
    <>
      <path class="sk-soil" d="M0 54Q150-4 320 10v170H0z" />
      <For each={places(4, 0, 1)}>
        {(place) => (
          <path
            class="sk-thin"
            d={`M${150 + place * 44} ${158 - place * 17}q8-5 16 0t16 0M${10 + place * 34} ${100 - place * 19}q6-4 12 0`}
          />
        )}
      </For>
      {/* Sleepers on the ground, then the long timber on them. */}
      <For each={places(4, 1, 4)}>
        {(place) => (
          <path
            class="sk-end"
            d={`M${corner(place).x + 58} ${corner(place).y + 40}l14 6v8l-14-6z M${corner(place).x + 72} ${corner(place).y + 46}l9-4v8l-9 4z`}
          />
        )}
      </For>
      <path
        class="sk-wood"
        d={`M${near.x + 64} ${near.y + 30}L${far.x + 64} ${far.y + 30}v12L${near.x + 64} ${near.y + 42}z`}
      />
      <path
        class="sk-end"
        d={`M${near.x + 4} ${near.y + 6}l9 4v12l-9-4zM${near.x + 55} ${near.y + 26}l9 4v12l-9-4z`}
      />
      <For each={places(BOARDS, BOARDS - 1, -1)}>
        {(place) => (
          <>
            <path class="sk-board" d={`M${corner(place).x} ${corner(place).y}l64 26 11.500-5.300-64-26z`} />
            <path
              class="sk-wood"
              d={`M${corner(place).x + 64} ${corner(place).y + 26}l11.500-5.300v5l-11.500 5.300z`}
            />
          </>
        )}
      </For>
      <path class="sk-wood" d={`M${near.x} ${near.y}l64 26v5l-64-26z`} />
      <For each={REEDS}>
        {({ x, y, tall }) => (
          <path
            class="sk-line"
            d={`M${x} ${y}q-2-${tall / 2} -7-${tall}M${x + 3} ${y}q1-${tall / 2} 0-${tall + 5}M${x + 6} ${y}q3-${tall / 2} 9-${tall - 3}M${x - 6} ${y}h19`}
          />
        )}
      </For>
    </>
  )
}
