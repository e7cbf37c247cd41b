import { type DrawnDimension, shownAs, steppedLength } from "@pegbook/engine"
import { batch, createSignal, onCleanup, Show } from "solid-js"
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

/** What changes a number of the workbook. */
export interface Changing {
  readonly change: (name: string, typed: string) => void
  /** Shows what the change would give, until another is shown, the last is made, or none is. */
  readonly preview: (name: string, typed: string) => void
  readonly endPreview: () => void
}

/** As things were when the handle was taken hold of, and how far it has been moved since, in pixels. */
interface Drag {
  readonly pointer: number
  readonly from: number
  readonly at: Pixel
  readonly metres: number
  readonly metresPerPixel: number
  readonly by: number
}

/**
 * Takes hold of the end of a dimension whose number is an input. While it is dragged the workbook shows what would come of it,
 * at most once a frame; letting go is one edit like any other, and Escape none.
 */
export function Handle(
  props: Changing & {
    readonly shape: DrawnDimension
    readonly at: Pixel
    readonly scale: number
    /** The drawing stays where it is while this is so. */
    readonly hold: (held: boolean) => void
  },
) {
  const sheet = useSheet()
  const [dragged, setDragged] = createSignal<Drag>()
  let frame: number | undefined
  let previewed: string | undefined
  const name = () => props.shape.of.name
  const view = () => sheet.entry(name())
  const upright = () => props.shape.axis === "v"
  const metres = () => Number(view().reading?.value ?? 0)
  const step = () => props.shape.step?.[sheet.unitSystem()] ?? ""
  const stepped = (value: number, more: number) => steppedLength(value, step(), more, sheet.unitSystem())
  const along = (event: PointerEvent) => (upright() ? -event.clientY : event.clientX)
  const wanted = (drag: Drag) => stepped(drag.metres + drag.by * drag.metresPerPixel, 0)
  const shown = () => {
    const drag = dragged()
    return drag === undefined ? undefined : shownAs(wanted(drag), view().measure)
  }
  const at = (): Pixel => {
    const drag = dragged()
    if (drag === undefined) return props.at
    return upright() ? { x: drag.at.x, y: drag.at.y - drag.by } : { x: drag.at.x + drag.by, y: drag.at.y }
  }

  function take(event: PointerEvent & { readonly currentTarget: Element }): void {
    event.stopPropagation()
    if (dragged() !== undefined) return
    event.currentTarget.setPointerCapture(event.pointerId)
    // From the fixed end to the dragged one: to the right and upward unless the view is from the back.
    const sign = Math.sign(props.shape.to - props.shape.from)
    setDragged({
      pointer: event.pointerId,
      from: along(event),
      at: props.at,
      metres: metres(),
      metresPerPixel: sign / props.scale,
      by: 0,
    })
    props.hold(true)
    addEventListener("keydown", onEscape, { capture: true })
  }

  function move(event: PointerEvent): void {
    const drag = dragged()
    if (drag?.pointer !== event.pointerId) return
    event.stopPropagation()
    setDragged({ ...drag, by: along(event) - drag.from })
    frame ??= requestAnimationFrame(() => {
      frame = undefined
      const now = dragged()
      if (now !== undefined) show(wanted(now))
    })
  }

  /** However many moves there were since the last frame, the last one is shown. */
  function show(typed: string): void {
    if (typed === previewed) return
    previewed = typed
    props.preview(name(), typed)
  }

  /** Makes the edit, or none. */
  function release(typed: string | undefined): void {
    if (dragged() === undefined) return
    if (frame !== undefined) cancelAnimationFrame(frame)
    frame = undefined
    removeEventListener("keydown", onEscape, { capture: true })
    const hasPreview = previewed !== undefined
    previewed = undefined
    batch(() => {
      setDragged(undefined)
      if (typed !== undefined) props.change(name(), typed)
      else if (hasPreview) props.endPreview()
      props.hold(false)
    })
  }
  onCleanup(() => release(undefined))

  function letGo(event: PointerEvent): void {
    const drag = dragged()
    if (drag?.pointer !== event.pointerId) return
    event.stopPropagation()
    const typed = wanted(drag)
    release(typed === stepped(drag.metres, 0) ? undefined : typed)
  }

  function onEscape(event: KeyboardEvent): void {
    if (event.key !== "Escape") return
    event.preventDefault()
    event.stopPropagation()
    release(undefined)
  }

  function cancel(event: PointerEvent): void {
    if (dragged()?.pointer === event.pointerId) release(undefined)
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
        style={{ left: `${at().x}px`, top: `${at().y}px` }}
        onPointerDown={take}
        onPointerMove={move}
        onPointerUp={letGo}
        onPointerCancel={cancel}
        onLostPointerCapture={cancel}
        onKeyDown={(event) => {
          const more = KEYS[event.key]
          if (more === undefined || dragged() !== undefined) return
          event.preventDefault()
          event.stopPropagation()
          props.change(name(), stepped(metres(), more))
        }}
      />
      <Show when={shown()}>
        {(text) => (
          <output class="drag-preview" style={{ left: `${at().x}px`, top: `${at().y}px` }}>
            {text()}
          </output>
        )}
      </Show>
    </>
  )
}
