import type { Pixel } from "./camera.ts"
import { crosses, type Segment } from "./segments.ts"

/** Where a label could stand: its middle, and whether it reads upward. */
export interface Stand extends Pixel {
  readonly turned?: boolean
}

export interface LabelWish {
  readonly id: string
  readonly text: string
  /** In order of preference. */
  readonly stands: readonly Stand[]
  /** Heavier ones are placed first. */
  readonly weight: number
  /** It is never written across an obstacle. */
  readonly clear?: true
}

export interface PlacedLabel extends Stand {
  readonly id: string
  readonly text: string
}

export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export const FONT_SIZE = 12
/** Of the widest usual figures and signs, in parts of the font's size. */
const GLYPH = 0.58
const GAP = 2

export function widthOf(text: string): number {
  return text.length * GLYPH * FONT_SIZE
}

export function boxOf(label: { readonly text: string } & Stand): Box {
  const [along, across] = [widthOf(label.text) / 2 + GAP, FONT_SIZE * 0.6 + GAP / 2]
  const [x, y] = label.turned ? [across, along] : [along, across]
  return { left: label.x - x, right: label.x + x, top: label.y - y, bottom: label.y + y }
}

export function overlaps(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
}

/**
 * Places labels so that none overlaps another or leaves the window: each at the first of its stands that is free. One
 * that has none free is left out; the list beside the drawing still has it.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  window: Box,
  obstacles: readonly Segment[] = [],
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = []
  const taken: Box[] = []
  for (const { id, text, stands, clear } of [...wishes].sort((a, b) => b.weight - a.weight)) {
    const stand = stands.find((one) => {
      const box = boxOf({ ...one, text })
      return (
        isInside(box, window) &&
        !taken.some((other) => overlaps(other, box)) &&
        !(clear && obstacles.some((line) => crosses(line, box)))
      )
    })
    if (stand === undefined) continue
    placed.push({ ...stand, id, text })
    taken.push(boxOf({ ...stand, text }))
  }
  return placed
}

function isInside(box: Box, window: Box): boolean {
  return (
    box.left >= window.left &&
    box.right <= window.right &&
    box.top >= window.top &&
    box.bottom <= window.bottom
  )
}
