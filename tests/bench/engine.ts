import { type Book, buildDecimalGraph, buildDoubleGraph, type GraphBuilder, openBook } from "@pegbook/engine"
import { buildHyperFormulaGraph } from "@pegbook/engine/hyperformula"
import { demo } from "@pegbook/templates"
import { median } from "./median.ts"
import { type Given, straightLine, type Worked } from "./straight-line.ts"

const INCH = 0.0254
const LENGTHS = ["18 ft", "20 ft", "19 ft 4 in", "16 ft"]

/** The straight line's givens, read from the book so that both work on the same. In inches and psi. */
function given(book: Book): Given {
  const si = (name: string): number => Number(book.entry(name).reading?.value)
  const inches = (name: string): number => si(name) / INCH
  return {
    length: inches("platform_length"),
    width: inches("platform_width"),
    fallLength: inches("ground_fall_length"),
    fallWidth: inches("ground_fall_width"),
    clearance: inches("underside_clearance"),
    skidThickness: inches("skid_thickness"),
    skidSpacingMost: inches("skid_spacing_max"),
    supportSpacingMost: inches("support_spacing_max"),
    supportEndOffset: inches("support_end_offset"),
    blockHeight: inches("block_height"),
    bedLength: inches("stone_bed_length"),
    bedWidth: inches("stone_bed_width"),
    bedThickness: inches("stone_bed_thickness"),
    digLeast: inches("dig_min"),
    joistThickness: inches("joist_thickness"),
    joistSpacing: inches("joist_spacing"),
  }
}

/** SI units in one of the straight line's. */
const UNITS: Readonly<Record<keyof Worked, number>> = {
  platform_area: INCH ** 2,
  platform_diagonal: INCH,
  skid_count: 1,
  support_count: 1,
  block_count: 1,
  greatest_dig: INCH,
  dug_volume: INCH ** 3,
  stone_in_place: INCH ** 3,
  joist_count: 1,
  crossing_count: 1,
}

/** Throws when the straight line and the book do not agree: a ratio of two different jobs says nothing. */
function agree(book: Book): void {
  const worked = straightLine(given(book))
  for (const [name, unit] of Object.entries(UNITS)) {
    const ours = Number(book.entry(name).reading?.value) / unit
    const theirs = worked[name as keyof Worked]
    if (!(Math.abs(ours - theirs) <= 1e-9 * Math.max(1, Math.abs(theirs)))) {
      throw new Error(`${name}: the workbook has ${ours}, the straight line ${theirs}`)
    }
  }
}

export interface Timing {
  readonly open: number
  readonly edit: number
  readonly moved: number
}

function timeBook(graph: GraphBuilder): Timing {
  const opened = performance.now()
  const { book } = openBook(demo(), { graph })
  const open = performance.now() - opened
  const edit = (index: number): void => {
    const { accepted } = book.edit("platform_length", LENGTHS[index % LENGTHS.length] ?? "")
    if (!accepted) throw new Error("the workbook refused a length")
  }
  for (let warm = 0; warm < 20; warm++) {
    edit(warm)
    agree(book)
  }
  return { open, edit: median(60, edit), moved: book.moved().length }
}

/** Each graph, and the straight line, in milliseconds an edit. */
export function timeEngine(): { ours: Timing; hyperFormula: Timing; decimal: Timing; straight: number } {
  const ours = timeBook(buildDoubleGraph)
  const hyperFormula = timeBook(buildHyperFormulaGraph)
  const decimal = timeBook(buildDecimalGraph)
  const start = given(openBook(demo()).book)
  const BATCH = 10_000
  let sum = 0
  const straight =
    median(30, () => {
      for (let index = 0; index < BATCH; index++) {
        sum += straightLine({ ...start, length: 192 + (index % 48) }).block_count
      }
    }) / BATCH
  if (sum === 0) throw new Error("the straight line did nothing")
  return { ours, hyperFormula, decimal, straight }
}
