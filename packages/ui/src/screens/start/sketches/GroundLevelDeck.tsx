import { For } from "solid-js"
import { Blocks, Ground, Measured, places, StoneBed, Timber } from "./strokes.tsx"

export function GroundLevelDeck() {
  return (
    <>
      <Ground left={130} right={130} />
      {/* A tree of the garden. */}
      <path class="sk-line" d="M70 103V70M70 84l-10-10M70 78l10-9" />
      <path
        class="sk-pale sk-outlined"
        d="M70 74c-16 2-30-8-25-22-8-12 4-24 16-22 6-10 22-8 24 4 12 0 18 14 10 24 2 12-14 19-25 16z"
      />
      <For each={[76, 160, 244]}>
        {(x) => (
          <>
            <StoneBed x={x} top={134} width={36} />
            <Blocks x={x} top={122} bottom={134} count={1} />
          </>
        )}
      </For>
      <Timber x={46} y={110} width={228} height={12} />
      <rect class="sk-wood" x="44" y="103" width="232" height="7" />
      <For each={places(15, 59, 14.5)}>{(x) => <path class="sk-thin" d={`M${x} 103v7`} />}</For>
      {/* A step at either end. */}
      <For each={[18, 278]}>
        {(x) => (
          <>
            <rect class="sk-end" x={x + 4} y="122" width="16" height="8" />
            <rect class="sk-wood" x={x} y="117" width="24" height="5" />
          </>
        )}
      </For>
      {/* Somewhere to sit, and something green. */}
      <path class="sk-heavy" d="M132 58l16 28h34" />
      <path class="sk-line" d="M140 74h38v12M148 86l-8 17M178 86l6 17M144 95h37" />
      <path class="sk-block" d="M224 84h30l-5 19h-20z" />
      <path
        class="sk-line"
        d="M239 84c0-14-3-24-9-34M239 84c0-16 3-26 12-36M239 84c-2-10-9-18-20-21M239 84c2-9 9-17 21-19"
      />
      <Measured x={44} y={160} width={232} />
    </>
  )
}
