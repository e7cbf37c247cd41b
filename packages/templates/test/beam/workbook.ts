import { type Book, type Definition, openBook, type Section } from "@pegbook/engine"
import { beamActions } from "../../src/parts/beam-actions.ts"
import { bearingOf } from "../../src/parts/bearing.ts"
import { blocks } from "../../src/parts/blocks.ts"
import { dig } from "../../src/parts/dig.ts"
import { fastenerStrength } from "../../src/parts/fastener-strength.ts"
import { frost } from "../../src/parts/frost.ts"
import { heights } from "../../src/parts/heights.ts"
import { houseRules } from "../../src/parts/house-rules.ts"
import { supportLoads } from "../../src/parts/loads.ts"
import { net } from "../../src/parts/net.ts"
import { ground, size } from "../../src/parts/site.ts"
import { skidJoints, skidLayout } from "../../src/parts/skids.ts"
import { stoneBeds } from "../../src/parts/stone-beds.ts"
import { supportLayout } from "../../src/parts/supports.ts"
import { windOnBuilding, windPressure } from "../../src/parts/wind.ts"
import { windOnNet } from "../../src/parts/wind-net.ts"
import { USER } from "../../src/sources.ts"

const said = { label: "Of the test", why: "Of the test.", sources: [USER] }

/** Stands for what lies on the skids, and for their timber. */
const layers: Section = {
  id: "layers",
  title: "Layers",
  says: "Of the test.",
  entries: [
    ...(
      [
        ["frame_build_up", "11 in"],
        ["surface_build_up", "1 3/8 in"],
        ["sheet_thickness", "3/4 in"],
        ["tile_thickness", "5/8 in"],
        ["rim_depth", "5 1/2 in"],
        ["riser_limit", "7 3/4 in"],
      ] as const
    ).map(([name, text]) => ({ kind: "input", name, measure: "length", default: text, ...said }) as const),
    { kind: "input", name: "skid_modulus", measure: "stress", default: "1200000 psi", ...said },
    { kind: "input", name: "one_person", measure: "force", default: "300 lb", ...said },
    {
      kind: "table",
      name: "crossing_places",
      rows: { kind: "formula", formula: "ROUNDDOWN(platform_length / skid_spacing_max * 3; 0)" },
      columns: [
        { name: "at", measure: "length", formula: "(ROW() - 1 / 2) * skid_spacing_max / 3", ...said },
      ],
      ...said,
    },
  ],
}

const skidsBy = (prefix: string, more: { gatheredAt?: string; point?: string }) =>
  beamActions({
    prefix,
    member: "skid",
    lines: "skid_count",
    supports: { line: "supports.line", at: "supports.x" },
    joints: { line: "skid_joints.line", at: "skid_joints.position" },
    length: "skid_length",
    load: {
      dead: "dead_load * INDEX(skids.carries; line)",
      live: "live_load * INDEX(skids.carries; line)",
    },
    modulus: "skid_modulus",
    breadth: "skid_thickness",
    depth: "skid_depth",
    ...more,
  })

/** The ground works of a platform with everything that acts on it. */
export const ACTIONS: Definition = {
  id: "actions-of-the-test",
  title: "Actions",
  says: "For tests.",
  unitSystem: "us",
  cautions: [],
  sections: [
    size,
    ground,
    skidLayout,
    supportLayout,
    supportLoads,
    dig,
    stoneBeds,
    blocks,
    skidJoints,
    layers,
    heights,
    net,
    skidsBy("skid", {}),
    skidsBy("crossed", { gatheredAt: "crossing_places.at", point: "one_person" }),
    bearingOf("skid_reaction_max"),
    frost,
    windPressure,
    windOnBuilding,
    windOnNet,
    fastenerStrength([
      {
        prefix: "tie",
        joint: "ties against uplift",
        force: "wind_uplift",
        count: "support_count",
        direction: "withdrawal",
        fastener: "screw",
        duration: "wind",
      },
      {
        prefix: "post",
        joint: "net posts",
        force: "net_bolt_force",
        count: "4",
        direction: "lateral",
        fastener: "nail",
        duration: "wind",
      },
      {
        prefix: "cleat",
        joint: "cleats",
        force: "one_person",
        count: "4",
        direction: "lateral",
        fastener: "screw",
        duration: "people",
      },
    ]),
    houseRules,
  ],
}

const SI_OF = {
  ft: 0.3048,
  in: 0.0254,
  lb: 4.4482216152605,
  psf: 47.88025898033584,
  psi: 6894.757293168361,
  lbft: 0.3048 * 4.4482216152605,
  plf: 4.4482216152605 / 0.3048,
  one: 1,
}

export interface Read {
  readonly book: Book
  /** An entry's number in a unit. */
  in(unit: keyof typeof SI_OF, name: string): number
  column(unit: keyof typeof SI_OF, name: string): readonly number[]
  verdict(name: string): string | undefined
}

let opened: Book | undefined
let shown: Readonly<Record<string, string>> = {}

/** The one open workbook with these inputs changed, all others as they start. */
function showing(typed: Readonly<Record<string, string>>): Book {
  opened ??= openBook(ACTIONS).book
  if (typed === shown) return opened
  const book = opened
  const back = Object.keys(shown).map((name) => [name, book.entry(name).original ?? ""])
  const { accepted, problems } = book.editAll({ ...Object.fromEntries(back), ...typed })
  if (!accepted) throw new Error(JSON.stringify(problems))
  shown = typed
  return book
}

/** Reads a workbook with some inputs changed. Several may be read in turn: opening a book is what takes time. */
export function workbook(typed: Readonly<Record<string, string>> = {}): Read {
  showing(typed)
  const of = (value: unknown, unit: keyof typeof SI_OF, name: string): number => {
    if (typeof value !== "number") throw new Error(`${name} has no number`)
    return value / SI_OF[unit]
  }
  return {
    get book() {
      return showing(typed)
    },
    in: (unit, name) => of(showing(typed).entry(name).reading?.value, unit, name),
    column: (unit, name) =>
      (showing(typed).entry(name).readings ?? []).map((reading) => of(reading?.value, unit, name)),
    verdict: (name) => showing(typed).entry(name).check?.verdict,
  }
}
