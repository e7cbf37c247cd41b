import { type Bounds, readValue, type UnitSystem } from "@pegbook/engine"
import type { Camera, Margins, Size } from "../drawings/camera.ts"

/** CSS pixels in a millimetre of paper: 96 to the inch (CSS Values and Units, 6.2). */
export const MM = 96 / 25.4

/** What 1 on paper stands for: the scales that drawings of building use (ISO 5455, from memory). */
const RATIOS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000] as const

/** The paper, and how much of it a drawing may take below its title, in millimetres. */
export const PAPERS = {
  a4: { wide: 180, high: 218 },
  letter: { wide: 185, high: 200 },
} as const
export type Paper = keyof typeof PAPERS

/** Regions that print on Letter, by their codes in ISO 3166: the supplemental data of Unicode CLDR, paperSize, from memory. */
const ON_LETTER: readonly string[] = "BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" ")

/**
 * The paper where none is chosen: that of the region that a language names (`fr-CA`), or else of the places where the units
 * are usual.
 *
 * @param language a language as browsers name them
 */
export function usualPaper(system: UnitSystem, language: string): Paper {
  const region = /-([A-Z]{2})(?:-|$)/.exec(language)?.[1]
  const onLetter = region === undefined ? system === "us" : ON_LETTER.includes(region)
  return onLetter ? "letter" : "a4"
}

/** A drawing on paper, in CSS pixels, before it is turned. */
export interface OnPaper extends Size {
  readonly ratio: number
  readonly camera: Camera
  /** A quarter turn, because it is larger so. */
  readonly turned: boolean
}

/** An exact fit fits: in pixels, far below what a printer shows. */
const HAIR = 0.001

/** The largest scale at which a drawing fits in the room, upright if it can. The smallest there is where none fits. */
export function toScale(bounds: Bounds, margins: Margins, room: Size): OnPaper {
  const at = (ratio: number): Omit<OnPaper, "turned"> => {
    const scale = (1_000 * MM) / ratio
    return {
      ratio,
      camera: {
        scale,
        left: margins.left - bounds.least.u * scale,
        top: margins.top + bounds.most.v * scale,
      },
      width: margins.left + margins.right + (bounds.most.u - bounds.least.u) * scale,
      height: margins.top + margins.bottom + (bounds.most.v - bounds.least.v) * scale,
    }
  }
  for (const ratio of RATIOS) {
    const drawn = at(ratio)
    const { width, height } = drawn
    const fits = (wide: number, high: number) => wide <= room.width + HAIR && high <= room.height + HAIR
    if (fits(width, height)) return { ...drawn, turned: false }
    if (fits(height, width)) return { ...drawn, turned: true }
  }
  return { ...at(RATIOS[RATIOS.length - 1] ?? 1), turned: false }
}

const BARS: Readonly<Record<UnitSystem, readonly string[]>> = {
  us: ["1 in", "2 in", "6 in", "1 ft", "2 ft", "5 ft", "10 ft", "20 ft", "50 ft", "100 ft", "200 ft"],
  metric: [
    "10 mm",
    "20 mm",
    "50 mm",
    "100 mm",
    "200 mm",
    "500 mm",
    "1 m",
    "2 m",
    "5 m",
    "10 m",
    "20 m",
    "50 m",
  ],
}
/** The longest that a scale bar gets, in pixels. */
const LONGEST_BAR = 60 * MM

/** A round length for the scale bar: its name, and how long it is drawn, in pixels. */
export function scaleBar(
  camera: Camera,
  system: UnitSystem,
): { readonly text: string; readonly length: number } {
  const bars = BARS[system].map((text) => {
    const read = readValue(text, "length", system)
    const metres = "value" in read && typeof read.value === "object" ? read.value.si.toNumber() : 0
    return { text, length: metres * camera.scale }
  })
  const [shortest = { text: "", length: 0 }] = bars
  return bars.findLast(({ length }) => length <= LONGEST_BAR) ?? shortest
}
