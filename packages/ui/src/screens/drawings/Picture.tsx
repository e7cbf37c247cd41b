import type { Bounds, Drawing, Drawn, DrawnShape } from "@pegbook/engine"
import { createEffect, createMemo, createSignal, For, on, onCleanup, onMount, Show } from "solid-js"
import type { Lit } from "../../bridge/walk.ts"
import { spoken } from "../../text/spoken.ts"
import { type Camera, fit, type Pixel, pan, type Size, zoom } from "./camera.ts"
import { dimensionsIn, marginsFor } from "./dimension-lines.ts"
import { type Changing, Handle } from "./Handle.tsx"
import { Key } from "./Key.tsx"
import { Labels } from "./Labels.tsx"
import { labelsOf } from "./label-wishes.ts"
import { keyOf, layerNames, layerWishes } from "./layer-names.ts"
import { namePegs } from "./peg-names.ts"
import { placeLabels } from "./place-labels.ts"
import { Strokes } from "./Strokes.tsx"
import { obstaclesOf } from "./segments.ts"
import { isLit } from "./things.ts"

const STEP = 60
const NEARER = 1.25
/** How far a finger may slip and still mean a press, in pixels. */
const SLIP = 5
/** Share of the window's height that a drawing may take. */
const TALLEST = 0.68
const LEAST_HEIGHT = 240
const LEAST_WIDTH = 200

export function Picture(
  props: Changing & {
    readonly drawing: Drawing
    readonly drawn: Drawn
    readonly bounds: Bounds
    readonly ghost: readonly DrawnShape[]
    readonly isShown: (layer: string) => boolean
    readonly lit: Lit | undefined
    readonly pointed: Lit | undefined
    readonly point: (of: Lit | undefined) => void
    readonly choose: (of: Lit | undefined) => void
    readonly nameOf: (of: Lit) => string
  },
) {
  const [width, setWidth] = createSignal(0)
  const [own, setOwn] = createSignal<Camera>()
  /** What is dragged stays under the finger, however much larger the drawing becomes. */
  const [held, setHeld] = createSignal<Camera & Size>()
  let frame: HTMLElement | undefined

  const shown = createMemo(() => props.drawn.shapes.filter((shape) => props.isShown(shape.layer)))
  const margins = createMemo(() => marginsFor(shown(), width()))
  const fitted = createMemo(() =>
    fit(
      props.bounds,
      margins(),
      Math.max(width(), LEAST_WIDTH),
      Math.max(LEAST_HEIGHT, innerHeight * TALLEST),
    ),
  )
  const camera = (): Camera => held() ?? own() ?? fitted()
  const height = () => (held() ?? fitted()).height
  createEffect(on([() => props.drawing, width], () => setOwn(undefined), { defer: true }))

  const dimensions = createMemo(() => dimensionsIn(shown(), props.bounds, camera()))
  const handles = createMemo(() =>
    dimensions().flatMap(({ shape }) => (shape.step === undefined ? [] : [shape.of.name])),
  )
  const active = () => props.lit ?? props.pointed
  const activeShapes = createMemo(() => {
    const of = active()
    return of === undefined ? [] : shown().filter((shape) => isLit(shape.of, of))
  })
  const window = () => ({ left: 0, top: 0, right: width(), bottom: height() })
  /** Whether there is room for names is asked of the whole drawing, so that they stay what they are when it comes nearer. */
  const whole = () => ({ ...window(), bottom: fitted().height })
  const layers = createMemo(() =>
    props.drawing.look === "pictorial" ? layerNames(props.drawing.layers, shown(), fitted(), whole()) : [],
  )
  const pegs = createMemo(() => namePegs(shown(), props.bounds, fitted(), whole()))
  const labels = createMemo(() =>
    placeLabels(
      [
        ...labelsOf(pegs().shapes, dimensions(), camera(), litLabel()),
        ...layerWishes(layers(), shown(), camera()),
      ],
      window(),
      obstaclesOf(shown(), dimensions(), camera()),
    ),
  )
  function litLabel() {
    const [first] = activeShapes()
    const of = active()
    return first === undefined || of === undefined ? undefined : { shape: first, text: props.nameOf(of) }
  }

  onMount(() => {
    if (frame === undefined) return
    const watch = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)))
    watch.observe(frame)
    const wheel = (event: WheelEvent) => {
      // A plain wheel scrolls the page past a drawing, until that has been pressed or brought nearer.
      const meant = event.ctrlKey || event.metaKey || own() !== undefined || frame === document.activeElement
      if (!meant) return
      event.preventDefault()
      closer(Math.exp(-event.deltaY / 400), here(event))
    }
    frame.addEventListener("wheel", wheel, { passive: false })
    onCleanup(() => {
      watch.disconnect()
      frame?.removeEventListener("wheel", wheel)
    })
  })

  function here(event: MouseEvent): Pixel {
    const box = frame?.getBoundingClientRect()
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) }
  }
  const centre = (): Pixel => ({ x: width() / 2, y: height() / 2 })
  const closer = (factor: number, about: Pixel) => setOwn(zoom(camera(), factor, about, fitted()))
  const slide = (x: number, y: number) => setOwn(pan(camera(), x, y))

  const KEYS: Readonly<Record<string, () => void>> = {
    "+": () => closer(NEARER, centre()),
    "=": () => closer(NEARER, centre()),
    "-": () => closer(1 / NEARER, centre()),
    "0": () => setOwn(undefined),
    ArrowLeft: () => slide(STEP, 0),
    ArrowRight: () => slide(-STEP, 0),
    ArrowUp: () => slide(0, STEP),
    ArrowDown: () => slide(0, -STEP),
    Escape: () => props.choose(undefined),
  }
  function press(event: KeyboardEvent): void {
    if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) return
    const act = KEYS[event.key]
    if (act === undefined) return
    event.preventDefault()
    act()
  }

  const fingers = new Map<number, Pixel>()
  let slipped = 0
  function down(event: PointerEvent): void {
    if (event.button !== 0) return
    fingers.set(event.pointerId, here(event))
    slipped = 0
  }
  function move(event: PointerEvent): void {
    const before = fingers.get(event.pointerId)
    if (before === undefined) {
      if (event.pointerType === "mouse") props.point(at(event))
      return
    }
    const now = here(event)
    slipped += Math.hypot(now.x - before.x, now.y - before.y)
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1]
    if (other !== undefined) {
      const was = Math.hypot(before.x - other.x, before.y - other.y)
      const is = Math.hypot(now.x - other.x, now.y - other.y)
      if (was > 0) closer(is / was, { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 })
    } else if (slipped > SLIP) {
      frame?.setPointerCapture(event.pointerId)
      slide(now.x - before.x, now.y - before.y)
    }
    fingers.set(event.pointerId, now)
  }
  function up(event: PointerEvent): void {
    const pressed = fingers.delete(event.pointerId) && slipped <= SLIP
    if (pressed && event.type === "pointerup") props.choose(at(event))
  }
  function at(event: PointerEvent): Lit | undefined {
    const index = (event.target as Element).closest("[data-shape]")?.getAttribute("data-shape")
    return index === null || index === undefined ? undefined : props.drawn.shapes[Number(index)]?.of
  }

  const indexOf = createMemo(() => new Map(props.drawn.shapes.map((shape, index) => [shape, index])))

  return (
    <figure class="picture">
      <section
        class="picture-frame"
        classList={{ "picture-nearer": own() !== undefined }}
        ref={frame}
        tabindex={0}
        aria-label={spoken.drawings.picture(props.drawing.title)}
        onKeyDown={press}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={up}
        onPointerLeave={() => props.point(undefined)}
      >
        <svg
          role="img"
          aria-labelledby="drawing-title drawing-says"
          width={width()}
          height={height()}
          viewBox={`0 0 ${width()} ${height()}`}
          data-drawn={props.drawing.id}
        >
          <title id="drawing-title">{props.drawing.title}</title>
          <desc id="drawing-says">{spoken.drawings.described(props.drawing.says)}</desc>
          <Strokes
            drawing={props.drawing}
            shown={shown()}
            camera={camera()}
            dimensions={dimensions()}
            hatch="hatch"
            ghost={props.ghost}
            active={active()}
            indexOf={(shape) => indexOf().get(shape)}
          />
          <Labels labels={labels()} />
        </svg>
        {/* By name, so that a handle keeps the focus while what it changes is drawn anew. */}
        <For each={handles()}>
          {(name) => (
            <Show when={dimensions().find(({ shape }) => shape.step !== undefined && shape.of.name === name)}>
              {(one) => (
                <Handle
                  shape={one().shape}
                  at={one().line.to}
                  scale={camera().scale}
                  hold={(held) =>
                    setHeld(held ? { ...camera(), width: width(), height: height() } : undefined)
                  }
                  change={props.change}
                  preview={props.preview}
                  endPreview={props.endPreview}
                />
              )}
            </Show>
          )}
        </For>
      </section>
      <Key lines={[...pegs().key, ...keyOf(layers())]} />
      <figcaption class="picture-foot">
        <fieldset class="actions">
          <legend class="hidden-text">{spoken.drawings.view}</legend>
          <button type="button" class="small" onClick={() => closer(NEARER, centre())}>
            {spoken.drawings.nearer}
          </button>
          <button type="button" class="small" onClick={() => closer(1 / NEARER, centre())}>
            {spoken.drawings.farther}
          </button>
          <button type="button" class="small" onClick={() => setOwn(undefined)}>
            {spoken.drawings.fit}
          </button>
        </fieldset>
        <p class="quiet picture-keys">
          {spoken.drawings.keys}
          <Show when={handles().length > 0}> {spoken.drawings.handleHint}</Show>
        </p>
      </figcaption>
    </figure>
  )
}
