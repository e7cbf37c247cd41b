import type { Definition } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { boardwalk } from "../../src/boardwalk/template.ts"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"
import { groundLevelDeck } from "../../src/ground-level-deck/template.ts"
import { shedBase } from "../../src/shed-base/template.ts"
import { type Read, reader } from "../helpers/read-book.ts"
import { handedDown, type TimberLine, worstOf } from "./statics.ts"

const PSI = 6894.757293168361
const INCH = 0.0254
const SHARING_MOST = 24 * INCH

/** What one piece may bear, in pascals, with its real size in metres. */
interface Timber {
  readonly breadth: number
  readonly depth: number
  readonly bending: number
  readonly shear: number
  readonly bearing: number
}

/** Hem-Fir No.2 (records nds_reference_design_values, nds_adjustment_factors), outdoors and incised, for ten years. */
function allowable(
  thickness: number,
  depth: number,
  plies: number,
  sizeFactor: number,
  shares: boolean,
): Timber {
  const [fb, fv, fcPerp] = [850, 150, 405]
  const wet = fb * sizeFactor > 1150 ? 0.85 : 1
  return {
    breadth: plies * thickness * INCH,
    depth: depth * INCH,
    bending: fb * sizeFactor * wet * 0.8 * (shares ? 1.15 : 1) * PSI,
    shear: fv * 0.97 * 0.8 * PSI,
    bearing: fcPerp * 0.67 * PSI,
  }
}

/** S-P-F No.1/No.2 (records csa_o86_specified_strengths, csa_o86_factors), outdoors and incised, under people. */
function limitStates(breadth: number, depth: number, sizeFactor: number, shares: boolean): Timber {
  const system = shares ? 1.1 : 1
  return {
    breadth: breadth / 1000,
    depth: depth / 1000,
    bending: 0.9 * 11.8e6 * 0.84 * 0.85 * sizeFactor * system,
    shear: 0.9 * 1.5e6 * 0.96 * 0.85 * sizeFactor * system,
    bearing: 0.8 * 5.3e6 * 0.67 * 0.85,
  }
}

interface Expected {
  readonly lines: readonly Omit<TimberLine, "dead" | "live" | "force">[]
  /** Width of floor on each line; one for all where they are alike. */
  readonly widths: readonly number[]
  readonly timber: Timber
  readonly seat: number
  /** What a stair's tread is asked to carry in one place (record design_live_loads, read): 300 lb. */
  readonly force?: number
}

const POINT = 300 * 4.4482216152605

/** Widths that joists in one piece hand down to the lines under them. */
const widthsOn = (book: Read, lines: string): readonly number[] =>
  handedDown(book.in("si", "platform_width"), book.column("si", lines))

/** Lines whose supports and joints are rows of tables. */
function linesOf(
  book: Read,
  length: string,
  supports: readonly [string, string],
  joints?: readonly [string, string],
) {
  const at = (names: readonly [string, string], line: number) => {
    const places = book.column("si", names[1])
    return book.column("si", names[0]).flatMap((of, row) => (of === line ? [places[row] ?? Number.NaN] : []))
  }
  const count = Math.max(...book.column("si", supports[0]))
  return Array.from({ length: count }, (_, index) => ({
    length: book.in("si", length),
    supports: at(supports, index + 1),
    joints: joints === undefined ? [] : at(joints, index + 1),
  }))
}

const PSF = 47.88025898033584
const skidJoints = ["skid_joints.line", "skid_joints.position"] as const
const onSupports = ["supports.line", "supports.x"] as const

/** A joist runs across all the lines in one piece. */
const joistOn = (book: Read, lines: string, timber: Timber, seat: number): Expected => ({
  lines: [{ length: book.in("si", "platform_width"), supports: book.column("si", lines), joints: [] }],
  widths: [book.in("si", "joist_spacing")],
  timber,
  seat,
})

const shares = (book: Read, spacing: string): boolean => book.in("si", spacing) <= SHARING_MOST + 1e-9

const TEMPLATES: readonly {
  readonly definition: Definition
  /** Dead and live load with their factors, in pascals. */
  readonly dead: number
  readonly live: number
  readonly liveFactor?: number
  readonly members: (book: Read) => readonly Expected[]
}[] = [
  {
    definition: gameTablePlatform,
    dead: 10 * PSF,
    live: 100 * PSF,
    members: (book) => [
      {
        lines: linesOf(book, "skid_length", onSupports, skidJoints),
        widths: widthsOn(book, "skids.y"),
        timber: allowable(3.5, 5.5, 1, 1.3, false),
        seat: 16 * INCH,
      },
      joistOn(book, "skids.y", allowable(1.5, 5.5, 1, 1.3, shares(book, "joist_spacing")), 3.5 * INCH),
    ],
  },
  {
    definition: shedBase,
    dead: 20 * PSF,
    live: 50 * PSF,
    members: (book) => [
      {
        lines: book.column("si", "skids.carries").map((_, index) => ({
          length: book.in("si", "skid_length"),
          supports: book.column("si", "support_stations.x"),
          joints: book
            .column("si", "skid_joints.position")
            .filter((_at, row) => book.column("si", "skid_joints.line")[row] === index + 1),
        })),
        widths: widthsOn(book, "skids.y"),
        timber: allowable(3.5, 5.5, 1, 1.3, false),
        seat: book.in("si", "support_spacing"),
      },
      joistOn(book, "skids.y", allowable(1.5, 5.5, 1, 1.3, shares(book, "joist_spacing")), 3.5 * INCH),
    ],
  },
  {
    definition: boardwalk,
    dead: 10 * PSF,
    live: 40 * PSF,
    members: (book) => {
      const start = (book.in("si", "platform_width") - book.in("si", "sleeper_length")) / 2
      return [
        {
          lines: book.column("si", "stringers.carries").map((_, index) => ({
            length: book.in("si", "stringer_length"),
            supports: book.column("si", "sleepers.x"),
            joints: book
              .column("si", "stringer_joints.position")
              .filter((_at, row) => book.column("si", "stringer_joints.line")[row] === index + 1),
          })),
          widths: book.column("si", "stringers.carries"),
          timber: allowable(1.5, 5.5, 1, 1.3, shares(book, "stringer_spacing")),
          seat: 3.5 * INCH,
        },
        {
          lines: [
            {
              length: book.in("si", "sleeper_length"),
              supports: book.column("si", "stringers.y").map((y) => y - start),
              joints: [],
            },
          ],
          widths: [
            (Math.max(...book.column("si", "sleepers.carries")) * book.in("si", "platform_width")) /
              book.in("si", "sleeper_length"),
          ],
          timber: allowable(3.5, 3.5, 1, 1.5, false),
          seat: 1.5 * INCH,
          force: 0,
        },
      ]
    },
  },
  {
    definition: groundLevelDeck,
    dead: 10 * PSF,
    live: 40 * PSF,
    members: (book) => [
      {
        lines: linesOf(book, "beam_length", onSupports),
        widths: widthsOn(book, "beams.y"),
        timber: allowable(1.5, 7.25, 2, 1.2, false),
        seat: Math.min(...book.column("si", "support_stations.bearing")),
      },
      joistOn(book, "beams.y", allowable(1.5, 5.5, 1, 1.3, shares(book, "joist_spacing")), 3 * INCH),
    ],
  },
  {
    definition: greenhouseFloor,
    dead: 1.25 * 1000,
    live: 1.5 * 1900,
    liveFactor: 1.5,
    members: (book) => [
      {
        lines: linesOf(book, "skid_length", onSupports, skidJoints),
        widths: widthsOn(book, "skids.y"),
        timber: limitStates(89, 89, 1.7, false),
        seat: Math.min(...book.column("si", "support_stations.bearing")),
      },
      joistOn(book, "skids.y", limitStates(38, 140, 1.4, shares(book, "joist_spacing")), 0.089),
    ],
  },
]

describe.each(TEMPLATES.map((one) => [one.definition.id, one] as const))("%s", (_, one) => {
  const book = reader(one.definition)()
  const found = one.members(book).map(({ lines, widths, timber, seat, force = POINT }) => {
    const acting = lines.map((line, index) => {
      const width = widths[index] ?? widths[0] ?? Number.NaN
      return worstOf({
        ...line,
        dead: one.dead * width,
        live: one.live * width,
        force: force * (one.liveFactor ?? 1),
      })
    })
    const most = (name: "moment" | "shear" | "reaction") => Math.max(...acting.map((each) => each[name]))
    const { breadth, depth } = timber
    return {
      bending_ratio: most("moment") / ((breadth * depth ** 2) / 6) / timber.bending,
      shear_ratio: (1.5 * most("shear")) / (breadth * depth) / timber.shear,
      bearing_ratio: most("reaction") / (breadth * seat) / timber.bearing,
    }
  })

  test.each(["bending_ratio", "shear_ratio", "bearing_ratio"] as const)(
    "%s of each member, by three moments and the published factors",
    (name) => {
      const given = book.column("si", `members.${name}`)
      expect(found.length).toBeGreaterThanOrEqual(2)
      found.forEach((member, row) => {
        // Bending is sampled at 240 places of a span.
        expect(Math.abs((given[row] ?? Number.NaN) / member[name] - 1), `row ${row + 1}`).toBeLessThan(2e-4)
      })
    },
  )

  test("the worst is the greatest of its ratios, and what gives first is the worst of all", () => {
    const columns = one.definition.sections.flatMap(({ entries }) =>
      entries.flatMap((entry) => (entry.kind === "table" && entry.name === "members" ? entry.columns : [])),
    )
    const ratios = columns.flatMap(({ name }) =>
      name.endsWith("_ratio") ? [book.column("si", `members.${name}`)] : [],
    )
    expect(ratios.length).toBeGreaterThanOrEqual(5)
    const worst = book.column("si", "members.worst")
    worst.forEach((value, row) => {
      expect(value).toBeCloseTo(Math.max(...ratios.map((column) => column[row] ?? 0)), 12)
    })
    const first = book.texts("members.says")[worst.indexOf(Math.max(...worst))]
    expect(book.book.entry("strength_first").reading?.value).toBe(first)
  })
})
