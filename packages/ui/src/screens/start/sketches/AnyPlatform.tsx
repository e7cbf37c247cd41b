import { For } from "solid-js"
import { Blocks, Ground, Measured, places, StoneBed, Timber, TimberEnd } from "./strokes.tsx"

/** Boards on joists on a skid on blocks: what every kind has in common. */
export function AnyPlatform() {
  return (
    <>
      <Ground left={126} right={126} />
      <For each={[74, 160, 246]}>
        {(x) => (
          <>
            <StoneBed x={x} top={126} width={38} />
            <Blocks x={x} top={106} bottom={126} count={2} />
          </>
        )}
      </For>
      <Timber x={44} y={92} width={232} height={14} />
      <For each={places(11, 44, 22.4)}>{(x) => <TimberEnd x={x} y={76} width={8} height={16} />}</For>
      <rect class="sk-wood" x="40" y="69" width="240" height="7" />
      <Measured x={40} y={46} width={240} />
    </>
  )
}
