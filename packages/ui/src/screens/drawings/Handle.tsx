import { type DrawnDimension, shownAs, steppedLength } from "@pegbook/engine"
import { createSignal, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"
import type { Pixel } from "./camera.ts"

const LARGE = 12
const KEYS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: LARGE,
  PageDown: -LARGE,
}

/** Takes hold of the end of a dimension whose number is an input: dragging it is an edit like any other. */
export function Handle(props: {
  readonly shape: DrawnDimension
  readonly at: Pixel
  readonly scale: number
  readonly change: (name: string, typed: string) => void
}) {
  const sheet = useSheet()
  const [dragged, setDragged] = createSignal<{ readonly from: number; readonly by: number }>()
  const name = () => props.shape.of.name
  const view = () => sheet.entry(name())
  const upright = () => props.shape.axis === "v"
  const metres = () => Number(view().reading?.value ?? 0)
  const step = () => props.shape.step?.[sheet.unitSystem()] ?? ""
  const stepped = (value: number, more: number) => steppedLength(value, step(), more, sheet.unitSystem())
  const along = (event: PointerEvent) => (upright() ? -event.clientY : event.clientX)
  /** From the fixed end to the dragged one: to the right and upward unless the view is from the back. */
  const sign = () => Math.sign(props.shape.to - props.shape.from)
  const preview = () => {
    const drag = dragged()
    return drag === undefined ? undefined : stepped(metres() + (sign() * drag.by) / props.scale, 0)
  }

  const shown = () => {
    const typed = preview()
    return typed === undefined ? undefined : shownAs(typed, view().measure)
  }

  function release(): void {
    const typed = preview()
    setDragged(undefined)
    if (typed !== undefined && shownAs(typed, view().measure) !== view().reading?.text)
      props.change(name(), typed)
  }

  return (
    <>
      <button
        type="button"
        role="slider"
        class="drag-handle"
        classList={{ "drag-upright": upright() }}
        data-handle={name()}
        aria-label={spoken.drawings.handle(view().label)}
        aria-orientation={upright() ? "vertical" : "horizontal"}
        aria-valuenow={metres()}
        aria-valuetext={shown() ?? view().reading?.text ?? ""}
        style={{
          left: `${props.at.x + (upright() ? 0 : (dragged()?.by ?? 0))}px`,
          top: `${props.at.y - (upright() ? (dragged()?.by ?? 0) : 0)}px`,
        }}
        onPointerDown={(event) => {
          event.stopPropagation()
          event.currentTarget.setPointerCapture(event.pointerId)
          setDragged({ from: along(event), by: 0 })
        }}
        onPointerMove={(event) => {
          const drag = dragged()
          if (drag === undefined) return
          event.stopPropagation()
          setDragged({ from: drag.from, by: along(event) - drag.from })
        }}
        onPointerUp={(event) => {
          event.stopPropagation()
          release()
        }}
        onPointerCancel={() => setDragged(undefined)}
        onKeyDown={(event) => {
          const more = KEYS[event.key]
          if (more === undefined) return
          event.preventDefault()
          event.stopPropagation()
          props.change(name(), stepped(metres(), more))
        }}
      />
      <Show when={shown()}>
        {(text) => (
          <output class="drag-preview" style={{ left: `${props.at.x}px`, top: `${props.at.y}px` }}>
            {text()}
          </output>
        )}
      </Show>
    </>
  )
}
