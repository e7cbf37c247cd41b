import { type Book, type Definition, type MeasureId, openBook, type Section } from "@pegbook/engine"
import { blocks } from "../../src/parts/blocks.ts"
import { dig } from "../../src/parts/dig.ts"
import { heights } from "../../src/parts/heights.ts"
import { houseRules } from "../../src/parts/house-rules.ts"
import { limits } from "../../src/parts/limits.ts"
import { supportLoads } from "../../src/parts/loads.ts"
import { ground, size } from "../../src/parts/site.ts"
import { skidJoints, skidLayout } from "../../src/parts/skids.ts"
import { stoneBeds } from "../../src/parts/stone-beds.ts"
import { supportLayout } from "../../src/parts/supports.ts"
import { USER } from "../../src/sources.ts"
import { noPrices } from "../helpers/no-prices.ts"

/** A section of inputs, for what a part needs and a test gives. */
export function givens(
  entries: Readonly<Record<string, readonly [measure: MeasureId, text: string]>>,
): Section {
  return {
    id: "givens",
    title: "Givens",
    says: "Of the test.",
    entries: Object.entries(entries).map(([name, [measure, text]]) => ({
      kind: "input",
      name,
      label: "Of the test",
      why: "Of the test.",
      sources: [USER],
      measure,
      default: text,
    })),
  }
}

/** Stands for what lies on the skids. */
const layers = givens({ frame_build_up: ["length", "11 in"], surface_build_up: ["length", "1 3/8 in"] })

/** The ground works alone: what the parts here give without a frame. */
const GROUND_WORKS: Definition = {
  id: "ground-works",
  title: "Ground works",
  says: "For tests.",
  unitSystem: "us",
  sections: [
    size,
    ground,
    limits,
    skidLayout,
    supportLayout,
    supportLoads,
    dig,
    stoneBeds,
    blocks,
    skidJoints,
    layers,
    heights,
    houseRules,
    noPrices,
  ],
  cautions: [],
}

const METRES_PER_INCH = 0.0254
const NEWTONS_PER_POUND = 4.4482216152605
const PASCALS_PER_PSF = 47.88025898033584

/** A workbook of the ground works with some inputs changed, read in inches, pounds and their kin. */
export interface Read {
  readonly book: Book
  /** Changes more inputs. */
  set(typed: Readonly<Record<string, string>>): void
  number(name: string): number
  inches(name: string): number
  column(name: string): readonly number[]
  columnInches(name: string): readonly number[]
  columnPounds(name: string): readonly number[]
  columnPsf(name: string): readonly number[]
  cubicFeet(name: string): number
  squareFeet(name: string): number
  verdict(name: string): string | undefined
}

export function workbook(
  typed: Readonly<Record<string, string>> = {},
  levels: readonly Readonly<Record<string, string>>[] = [],
): Read {
  return readOf(GROUND_WORKS, typed, levels)
}

/** Throws when an input is not accepted: a test that sets what cannot be set is wrong. */
export function readOf(
  definition: Definition,
  typed: Readonly<Record<string, string>> = {},
  levels: readonly Readonly<Record<string, string>>[] = [],
): Read {
  const { book, problems } = openBook(definition)
  accept(problems)
  accept(book.editAll(typed).problems)
  if (levels.length > 0) accept(book.editTable("ground_levels", levels).problems)
  const number = (name: string): number => {
    const value = book.entry(name).reading?.value
    if (typeof value !== "number") throw new Error(`${name} has no number`)
    return value
  }
  const column = (name: string): readonly number[] =>
    (book.entry(name).readings ?? []).map((reading) => {
      if (typeof reading?.value !== "number") throw new Error(`${name} has a row without a number`)
      return reading.value
    })
  const scaled = (scale: number) => (name: string) => column(name).map((value) => value / scale)
  return {
    book,
    set: (more) => accept(book.editAll(more).problems),
    number,
    column,
    inches: (name) => number(name) / METRES_PER_INCH,
    columnInches: scaled(METRES_PER_INCH),
    columnPounds: scaled(NEWTONS_PER_POUND),
    columnPsf: scaled(PASCALS_PER_PSF),
    cubicFeet: (name) => number(name) / (12 * METRES_PER_INCH) ** 3,
    squareFeet: (name) => number(name) / (12 * METRES_PER_INCH) ** 2,
    verdict: (name) => book.entry(name).check?.verdict,
  }
}

function accept(problems: readonly unknown[]): void {
  if (problems.length > 0) throw new Error(`not accepted: ${JSON.stringify(problems)}`)
}
