import {
  type Book,
  type Definition,
  openBook,
  type Section,
  type Source,
  type TableEntry,
} from "@pegbook/engine"
import { blocking } from "../../src/parts/blocking.ts"
import { edgeBoards } from "../../src/parts/edge-boards.ts"
import { fixings } from "../../src/parts/fixings.ts"
import { houseRules } from "../../src/parts/house-rules.ts"
import { joists } from "../../src/parts/joists.ts"
import { net } from "../../src/parts/net.ts"
import { sheets } from "../../src/parts/sheets.ts"
import { ground as lieOfTheLand } from "../../src/parts/site.ts"
import { tiles } from "../../src/parts/tiles.ts"
import { timber } from "../../src/parts/timber.ts"
import { treatment } from "../../src/parts/treatment.ts"
import { noPrices } from "../helpers/no-prices.ts"

const HERE: Source = { kind: "user", title: "this test" }
const said = { label: "Of the test", why: "Of the test.", sources: [HERE] }

/** Stands for the ground works and the skids: three lines, each in two boards of 12 ft that meet in the middle. */
const ground: Section = {
  id: "ground",
  title: "Ground",
  says: "What the frame needs from below.",
  entries: [
    { kind: "input", name: "platform_length", measure: "length", default: "20 ft", ...said },
    { kind: "input", name: "platform_width", measure: "length", default: "12 ft", ...said },
    {
      kind: "formula",
      name: "platform_area",
      measure: "area",
      formula: "platform_length * platform_width",
      ...said,
    },
    ...lieOfTheLand.entries,
    { kind: "input", name: "top_level", measure: "length", default: "18 in", ...said },
    { kind: "input", name: "height_above_ground", measure: "length", default: "18 in", ...said },
    { kind: "input", name: "underside_clearance", measure: "length", default: "1 in", ...said },
    { kind: "input", name: "skid_depth", measure: "length", default: "5 1/2 in", ...said },
    { kind: "input", name: "skid_size", measure: "text", default: "4x6", ...said },
    { kind: "input", name: "skid_count", measure: "count", default: "3", ...said },
    {
      kind: "table",
      name: "skids",
      rows: { kind: "formula", formula: "skid_count" },
      columns: [
        {
          name: "y",
          measure: "length",
          formula: "(ROW() - 1) * platform_width / (skid_count - 1)",
          ...said,
        },
      ],
      ...said,
    },
    { kind: "input", name: "skid_board", measure: "length", default: "12 ft", ...said },
    {
      kind: "table",
      name: "skid_pieces",
      rows: { kind: "formula", formula: "2 * skid_count" },
      columns: [
        { name: "line", measure: "count", formula: "ROUNDUP(ROW() / 2; 0)", ...said },
        { name: "length", measure: "length", formula: "platform_length / 2", ...said },
        { name: "stock", measure: "length", formula: "skid_board", ...said },
      ],
      ...said,
    },
  ],
}

const one = (name: string, columns: Readonly<Record<string, string>>): TableEntry => ({
  kind: "table",
  name,
  rows: { kind: "figures" },
  columns: Object.entries(columns).map(([column, value]) => ({
    name: column,
    measure: column === "bag_yield" ? "volume" : "length",
    values: [value],
    ...said,
  })),
  ...said,
})

/** Stands for the wind on a net, and for what its posts stand in. */
const posts: Section = {
  id: "posts",
  title: "Posts",
  says: "What a net needs from its posts' foot.",
  entries: [
    { kind: "input", name: "net_post_soil", measure: "text", default: "clay or silt", ...said },
    { kind: "input", name: "spoil_loose_factor", measure: "ratio", default: "1.25", ...said },
    one("net_wind", { depth: "4 ft", post_width: "3 1/2 in" }),
    one("net_wind_factors", { hole_width: "10 in", bag_yield: "0.6 ft3" }),
    one("loaded_joints", { diameter: "3/4 in", holds: "3 1/2 in", through: "1 1/2 in" }),
  ],
}

export const PLATFORM: Definition = {
  id: "frame-of-the-test",
  title: "Frame",
  says: "The frame, its surface and its fixings.",
  unitSystem: "us",
  cautions: [],
  sections: [
    ground,
    houseRules,
    joists,
    blocking,
    sheets,
    tiles,
    edgeBoards,
    posts,
    net,
    fixings,
    timber,
    treatment,
    noPrices,
  ],
}

let opened: Book | undefined

/**
 * The platform of the tests with other values typed in; fails when one is not accepted. One book serves every file,
 * put back to its defaults first: a test reads its own before it asks for the next.
 */
export function platform(typed: Readonly<Record<string, string>> = {}): Book {
  opened ??= openBook(PLATFORM).book
  const book = opened
  const values = PLATFORM.sections
    .flatMap(({ entries }) => entries)
    .filter(({ kind }) => kind === "input" || kind === "figure")
  const back = values.flatMap(({ name }) => {
    const { changed, original } = book.entry(name)
    return changed && original !== undefined ? [[name, original]] : []
  })
  const { accepted, problems } = book.editAll({ ...Object.fromEntries(back), ...typed })
  if (!accepted) throw new Error(JSON.stringify(problems))
  return book
}

export const INCH = 0.0254

/** An entry's number, in SI or plain. */
export function number(book: Book, name: string): number {
  return Number(book.entry(name).reading?.value)
}

/** An entry's length in inches. */
export function inches(book: Book, name: string): number {
  return number(book, name) / INCH
}

/** A column, by its full name. */
export function column(book: Book, name: string): readonly (number | string | boolean | undefined)[] {
  return (book.entry(name).readings ?? []).map((reading) => reading?.value)
}

/** A column of lengths, in inches to a millionth. */
export function columnInches(book: Book, name: string): readonly number[] {
  return column(book, name).map((value) => Math.round((Number(value) / INCH) * 1e6) / 1e6)
}
