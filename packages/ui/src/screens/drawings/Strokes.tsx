import type { Drawing, DrawnDimension, DrawnLine, DrawnMark, DrawnShape, Layer, Point } from "@pegbook/engine"
import { createMemo, For, Index, Show } from "solid-js"
import type { Lit } from "../../bridge/walk.ts"
import { type Camera, toPixel } from "./camera.ts"
import type { DimensionLine } from "./dimension-lines.ts"
import { type Hatched, Hatches, hatchOf, InkedHatches } from "./Hatches.tsx"
import { HATCHES } from "./hatching.ts"
import { MarkSign } from "./MarkSign.tsx"
import { bandUnder, pathOfShape } from "./paths.ts"
import { isLit, keyOf } from "./things.ts"

const GROUND_BAND = 14

/** All that is drawn of a drawing, without what is written: for an `svg` in the camera's pixels. */
export function Strokes(props: {
  readonly drawing: Drawing
  readonly shown: readonly DrawnShape[]
  readonly camera: Camera
  readonly dimensions: readonly { readonly shape: DrawnDimension; readonly line: DimensionLine }[]
  /** Begins the ids of its hatches: no two drawings of a page may share it. */
  readonly hatch: string
  /** For paper: hatches are drawn stroke by stroke. */
  readonly inked?: true
  readonly ghost?: readonly DrawnShape[]
  readonly active?: Lit | undefined
  readonly indexOf?: (shape: DrawnShape) => number | undefined
}) {
  const transform = () =>
    `matrix(${props.camera.scale} 0 0 ${-props.camera.scale} ${props.camera.left} ${props.camera.top})`
  const drawn = createMemo(() => {
    const layers = new Map<string, DrawnShape[]>()
    for (const shape of props.shown) {
      if (shape.kind !== "area" && shape.kind !== "line") continue
      const known = layers.get(shape.layer)
      if (known === undefined) layers.set(shape.layer, [shape])
      else known.push(shape)
    }
    return layers
  })
  const onLayer = (layer: Layer): readonly DrawnShape[] => drawn().get(layer.id) ?? []
  const marks = createMemo(() => props.shown.filter((shape): shape is DrawnMark => shape.kind === "mark"))
  const fillIn = (fill: string) => {
    const hatch = hatchOf(fill, props.hatch)
    return props.inked && hatch !== undefined ? "none" : hatch
  }
  const bandOf = ({ points }: DrawnLine) => bandUnder(points, GROUND_BAND / props.camera.scale)
  const groundOf = (shape: DrawnShape, layer: Layer) =>
    props.inked && shape.kind === "area" ? (HATCHES[fillOf(shape, layer)]?.ground ?? "") : ""
  const hatched = (layer: Layer): readonly Hatched[] =>
    onLayer(layer).flatMap((shape) => {
      const ground = groundLine(shape, layer)
      if (ground !== undefined) {
        const box = boxOf(ground.points)
        const depth = GROUND_BAND / props.camera.scale
        return [{ fill: "soil", path: bandOf(ground), box: { ...box, bottom: box.bottom - depth } }]
      }
      return shape.kind === "area"
        ? [{ fill: fillOf(shape, layer), path: pathOfShape(shape), box: boxOf(shape.points) }]
        : []
    })
  const isActive = (shape: DrawnShape) => isLit(shape.of, props.active)
  return (
    <>
      <Show when={!props.inked}>
        <Hatches id={props.hatch} scale={props.camera.scale} />
      </Show>
      <g transform={transform()}>
        <For each={props.drawing.layers}>
          {(layer) => (
            <g data-layer={layer.id}>
              {/* By place, so that while something is dragged the lines stay and only where they go is set anew. */}
              <Index each={onLayer(layer)}>
                {(shape) => (
                  <>
                    <Show when={groundLine(shape(), layer)}>
                      {(ground) => <path class="soil-band" fill={fillIn("soil")} d={bandOf(ground())} />}
                    </Show>
                    <path
                      class={[
                        classOf(shape(), layer),
                        groundOf(shape(), layer),
                        isActive(shape()) ? "lit" : "",
                      ].join(" ")}
                      fill={shape().kind === "area" ? fillIn(fillOf(shape(), layer)) : undefined}
                      d={pathOfShape(shape())}
                      data-shape={props.indexOf?.(shape())}
                      data-of={keyOf(shape().of)}
                    />
                  </>
                )}
              </Index>
              <Show when={props.inked}>
                <InkedHatches
                  id={`${props.hatch}-${layer.id}`}
                  scale={props.camera.scale}
                  areas={hatched(layer)}
                />
              </Show>
            </g>
          )}
        </For>
        <g data-ghost>
          <For each={props.ghost}>{(shape) => <path class="ghost" d={pathOfShape(shape)} />}</For>
        </g>
        <For each={props.shown.filter(isActive)}>
          {(shape) => <path class="lit-outline" d={pathOfShape(shape)} />}
        </For>
      </g>
      <Index each={marks()}>
        {(mark) => (
          <MarkSign
            mark={mark()}
            at={toPixel(props.camera, mark().at)}
            index={props.indexOf?.(mark())}
            lit={isActive(mark())}
          />
        )}
      </Index>
      <Index each={props.dimensions}>
        {(one) => (
          <path
            class="dimension"
            classList={{ lit: isActive(one().shape) }}
            d={one().line.path}
            data-shape={props.indexOf?.(one().shape)}
            data-of={keyOf(one().shape.of)}
          />
        )}
      </Index>
    </>
  )
}

function boxOf(points: readonly Point[]) {
  const [us, vs] = [points.map(({ u }) => u), points.map(({ v }) => v)]
  return { left: Math.min(...us), right: Math.max(...us), bottom: Math.min(...vs), top: Math.max(...vs) }
}

function groundLine(shape: DrawnShape, layer: Layer): DrawnLine | undefined {
  return shape.kind === "line" && layer.fill === "soil" ? shape : undefined
}

function fillOf(shape: DrawnShape, layer: Layer): string {
  return shape.kind === "area" ? (shape.fill ?? layer.fill) : layer.fill
}

function classOf(shape: DrawnShape, layer: Layer): string {
  const face = shape.kind === "area" && shape.face !== undefined ? ` face-${shape.face}` : ""
  return `shape shape-${shape.kind} fill-${fillOf(shape, layer)}${face}`
}
