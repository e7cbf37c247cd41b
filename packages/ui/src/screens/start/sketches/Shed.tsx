import { For } from "solid-js"
import { Ground, Measured, places, Timber, TimberEnd } from "./strokes.tsx"

export function Shed() {
  return (
    <>
      <Ground left={130} right={140} />
      <path class="sk-stone" d="M34 134h252l8 13H42z" />
      <For each={places(34, 42, 7.2)}>
        {(x, place) => <circle class="sk-dot" cx={x} cy={place() % 2 === 0 ? 138 : 143} r="1.300" />}
      </For>
      <For each={[78, 160, 242]}>{(x) => <TimberEnd x={x - 9} y={116} width={18} height={18} />}</For>
      <Timber x={52} y={102} width={216} height={14} />
      <rect class="sk-wood" x="50" y="97" width="220" height="5" />
      {/* What will stand on it. */}
      <path class="sk-pale" d="M62 97V58L160 20l98 38v39z" />
      <For each={places(13, 76, 14)}>{(x) => <path class="sk-thin" d={`M${x} 62v35`} />}</For>
      <path class="sk-line" d="M62 97V60M258 97V60" />
      <path class="sk-heavy" d="M46 64 160 20l114 44" />
      <rect class="sk-block" x="134" y="54" width="38" height="43" />
      <path class="sk-thin" d="M134 64h38M134 88h38M134 88l38-24" />
      <rect class="sk-block" x="200" y="64" width="34" height="20" />
      <path class="sk-line" d="M217 64v20M200 74h34" />
      <Measured x={50} y={162} width={220} />
    </>
  )
}
