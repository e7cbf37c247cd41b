import { For, Show } from "solid-js"
import { HATCHES, type Hatch, repeated, type Tiles } from "./hatching.ts"

const tile = ({ width, height }: Hatch): Tiles => ({ left: 0, bottom: 0, right: width, top: height })

/** The hatches as patterns that a fill may name. */
export function Hatches(props: { readonly id: string; readonly scale: number }) {
  const still = () => `scale(${1 / props.scale})`
  return (
    <defs>
      <For each={Object.entries(HATCHES)}>
        {([fill, hatch]) => (
          <pattern
            id={`${props.id}-${fill}`}
            width={hatch.width}
            height={hatch.height}
            patternUnits="userSpaceOnUse"
            patternTransform={still()}
          >
            <Show when={hatch.ground}>
              {(ground) => <rect class={ground()} width={hatch.width} height={hatch.height} />}
            </Show>
            <For each={hatch.strokes}>
              {(stroke) => <path class={stroke.class} d={repeated(stroke, hatch, [tile(hatch)])} />}
            </For>
          </pattern>
        )}
      </For>
    </defs>
  )
}

/** One area of a layer that is hatched. */
export interface Hatched {
  readonly fill: string
  /** Its outline as a path, in metres, and the box round that. */
  readonly path: string
  readonly box: Tiles
}

/**
 * Hatches stroke by stroke, cut to their areas: what prints patterns makes coarse pictures of them, each as large as the page.
 * `id` begins the names of what they are cut to.
 */
export function InkedHatches(props: {
  readonly id: string
  readonly scale: number
  readonly areas: readonly Hatched[]
}) {
  const boxes = (all: readonly Hatched[]): readonly Tiles[] =>
    all.map(({ box }) => ({
      left: box.left * props.scale,
      right: box.right * props.scale,
      bottom: box.bottom * props.scale,
      top: box.top * props.scale,
    }))
  return (
    <For each={Object.entries(HATCHES)}>
      {([fill, hatch]) => {
        const areas = () => props.areas.filter((area) => area.fill === fill)
        return (
          <Show when={areas().length > 0}>
            <clipPath id={`${props.id}-${fill}`}>
              <path
                d={areas()
                  .map(({ path }) => path)
                  .join("")}
              />
            </clipPath>
            <g clip-path={`url(#${props.id}-${fill})`}>
              <g transform={`scale(${1 / props.scale})`}>
                <For each={hatch.strokes}>
                  {(stroke) => <path class={stroke.class} d={repeated(stroke, hatch, boxes(areas()))} />}
                </For>
              </g>
            </g>
          </Show>
        )
      }}
    </For>
  )
}

/** The hatch of a material that has one, out of those with this id. */
export const hatchOf = (fill: string, id: string): string | undefined =>
  Object.hasOwn(HATCHES, fill) ? `url(#${id}-${fill})` : undefined
