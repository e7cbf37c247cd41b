import { For } from "solid-js"
import { Ground, Measured, places, Timber, TimberEnd } from "./strokes.tsx"

export function Greenhouse() {
  return (
    <>
      <Ground left={140} right={140} />
      <For each={[64, 128, 192, 256]}>
        {(x) => <rect class="sk-stone" x={x - 18} y="137" width="36" height="8" />}
      </For>
      <Timber x={46} y={126} width={228} height={11} />
      <For each={places(8, 48, 30.6)}>{(x) => <TimberEnd x={x} y={115} width={10} height={11} />}</For>
      <For each={places(18, 45, 13)}>
        {(x) => <rect class="sk-wood" x={x} y="109" width="10" height="6" />}
      </For>
      {/* Mesh, down into the ground, against whoever digs. */}
      <path class="sk-heavy" d="M40 112v44M280 112v44" stroke-dasharray="3 5" />
      {/* Glass on bars. */}
      <path class="sk-pale" d="M62 109V61l98-44 98 44v48z" />
      <path class="sk-thin" d="M95 109V46M225 109V46M128 109V31M192 109V31M62 85h71M187 85h71M62 61h196" />
      <path class="sk-heavy" d="M62 109V61l98-44 98 44v48" />
      <rect class="sk-block" x="140" y="59" width="40" height="50" />
      <path class="sk-line" d="M160 59v50M156 85v5M164 85v5" />
      {/* Benches, and what grows on them. */}
      <path class="sk-line" d="M68 93h54M74 93v16M116 93v16M198 93h54M204 93v16M246 93v16" />
      <For each={[80, 95, 110, 210, 225, 240]}>
        {(x) => <path class="sk-line" d={`M${x} 93v-14M${x} 87q-7-2-7-9M${x} 85q7-2 7-9`} />}
      </For>
      <Measured x={45} y={164} width={230} />
    </>
  )
}
