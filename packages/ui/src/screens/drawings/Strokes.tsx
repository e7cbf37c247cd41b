import type { Drawing, DrawnDimension, DrawnLine, DrawnShape, Layer } from "@pegbook/engine"
import { For, Show } from "solid-js"
import type { Lit } from "../../bridge/walk.ts"
import { type Camera, toPixel } from "./camera.ts"
import type { DimensionLine } from "./dimension-lines.ts"
import { Hatches, hatchOf } from "./Hatches.tsx"
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
  readonly ghost?: readonly DrawnShape[]
  readonly active?: Lit | undefined
  readonly indexOf?: (shape: DrawnShape) => number | undefined
}) {
  const transform = () =>
    `matrix(${props.camera.scale} 0 0 ${-props.camera.scale} ${props.camera.left} ${props.camera.top})`
  const onLayer = (layer: Layer) => props.shown.filter((shape) => shape.layer === layer.id)
  const isActive = (shape: DrawnShape) => isLit(shape.of, props.active)
  return (
    <>
      <Hatches id={props.hatch} scale={props.camera.scale} />
      <g transform={transform()}>
        <For each={props.drawing.layers}>
          {(layer) => (
            <g data-layer={layer.id}>
              <For each={onLayer(layer)}>
                {(shape) => (
                  <Show when={shape.kind === "area" || shape.kind === "line"}>
                    <Show when={groundLine(shape, layer)}>
                      {(ground) => (
                        <path
                          class="soil-band"
                          fill={hatchOf("soil", props.hatch)}
                          d={bandUnder(ground().points, GROUND_BAND / props.camera.scale)}
                        />
                      )}
                    </Show>
                    <path
                      class={classOf(shape, layer)}
                      classList={{ lit: isActive(shape) }}
                      fill={shape.kind === "area" ? hatchOf(fillOf(shape, layer), props.hatch) : undefined}
                      d={pathOfShape(shape)}
                      data-shape={props.indexOf?.(shape)}
                      data-of={keyOf(shape.of)}
                    />
                  </Show>
                )}
              </For>
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
      <For each={props.shown}>
        {(shape) => (
          <Show when={shape.kind === "mark" && shape}>
            {(mark) => (
              <MarkSign
                mark={mark()}
                at={toPixel(props.camera, mark().at)}
                index={props.indexOf?.(shape)}
                lit={isActive(shape)}
              />
            )}
          </Show>
        )}
      </For>
      <For each={props.dimensions}>
        {({ shape, line }) => (
          <path
            class="dimension"
            classList={{ lit: isActive(shape) }}
            d={line.path}
            data-shape={props.indexOf?.(shape)}
            data-of={keyOf(shape.of)}
          />
        )}
      </For>
    </>
  )
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
