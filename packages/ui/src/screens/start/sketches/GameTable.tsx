import { For } from "solid-js"
import { Blocks, Ground, Measured, places, StoneBed, Timber } from "./strokes.tsx"

/** How far down the lawn is at each stack, and how many blocks it takes to come up to the skid. */
const STACKS = [
  { x: 64, lawn: 120, blocks: 2 },
  { x: 128, lawn: 127, blocks: 3 },
  { x: 192, lawn: 135, blocks: 3 },
  { x: 256, lawn: 142, blocks: 4 },
]

export function GameTable() {
  return (
    <>
      <Ground left={112} right={150} />
      <For each={STACKS}>
        {({ x, lawn, blocks }) => (
          <>
            <StoneBed x={x} top={lawn} width={36} />
            <Blocks x={x} top={98} bottom={lawn} count={blocks} />
          </>
        )}
      </For>
      <Timber x={46} y={88} width={228} height={10} />
      <For each={places(15, 46, 15.9)}>
        {(x) => <rect class="sk-end" x={x} y="76" width="5" height="12" />}
      </For>
      <rect class="sk-wood" x="44" y="72" width="232" height="4" />
      <rect class="sk-block" x="44" y="66" width="232" height="6" />
      <For each={places(18, 56.2, 12.2)}>{(x) => <path class="sk-thin" d={`M${x} 66v6`} />}</For>
      <rect class="sk-wood" x="39" y="60" width="5" height="28" />
      <rect class="sk-wood" x="276" y="60" width="5" height="28" />
      {/* The table, its net, and a ball on its way. */}
      <rect class="sk-block" x="104" y="38" width="108" height="4" />
      <path class="sk-line" d="M124 42l-7 24M192 42l7 24M120 56h76M158 29v9" />
      <circle class="sk-line" cx="88" cy="31" r="3.500" />
      <path class="sk-thin" d="M96 27c8-5 16-8 26-8" />
      {/* The net that stops it. */}
      <path class="sk-heavy" d="M279 60V16" />
      <path class="sk-thin" d="M279 20h20M279 30h20M279 40h20M279 50h20M285 16v44M292 16v44M299 16v44" />
      <Measured x={44} y={12} width={232} />
    </>
  )
}
