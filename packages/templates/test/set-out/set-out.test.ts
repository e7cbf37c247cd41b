import { type Definition, openBook } from "@pegbook/engine"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { TEMPLATES, template } from "../../src/index.ts"
import { houseRules } from "../../src/parts/house-rules.ts"
import { setOutOf } from "../../src/parts/set-out.ts"
import { size } from "../../src/parts/site.ts"
import { skidLayout } from "../../src/parts/skids.ts"

const SEED = 20261125

/** The sheet alone, so that a hundred random frames are quick. */
const SHEET: Definition = {
  id: "set-out-alone",
  title: "Setting out",
  says: "For tests.",
  unitSystem: "us",
  sections: [
    size,
    skidLayout,
    setOutOf({
      noun: "skid",
      nouns: "skids",
      centres: "skids.y",
      measured: "across the width",
      count: "skid_count",
      thickness: "skid_thickness",
    }),
    houseRules,
  ],
  cautions: [],
}

function open(id: string, typed: Readonly<Record<string, string>> = {}) {
  const definition = id === SHEET.id ? SHEET : template(id)
  if (definition === undefined) throw new Error(`there is no template ${id}`)
  const { book } = openBook(definition)
  const put = (more: Readonly<Record<string, string>>) => expect(book.editAll(more).problems).toEqual([])
  put(typed)
  return {
    book,
    put,
    /** A column in metres, or as text. */
    column: (name: string) => (book.entry(name).readings ?? []).map((reading) => reading?.value),
    value: (name: string) => book.entry(name).reading?.value,
  }
}

interface Vector {
  readonly x: number
  readonly y: number
}
const between = (one: Vector, other: Vector): string => `${Math.hypot(one.x - other.x, one.y - other.y)} m`

/** What a tape reads on a frame whose far corners stand at C and D, with A at nothing and B on the datum line. */
function taped(length: number, c: Vector, d: Vector): Record<string, string> {
  const [a, b] = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
  ]
  return {
    platform_length: `${length} m`,
    diagonal_measured_1: between(a, c),
    diagonal_measured_2: between(b, d),
    end_measured_1: between(a, d),
    end_measured_2: between(b, c),
  }
}

describe("what was measured on site", () => {
  // By vectors: corners are put somewhere, taped, and the workbook has to push them back.
  test(`every far corner is pushed back to its place, seed ${SEED}`, () => {
    const { put, column } = open(SHEET.id, { platform_width: "3 m" })
    const off = fc.double({ min: -0.3, max: 0.3, noNaN: true })
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 90 }), off, off, off, off, (tenths, cx, cy, dx, dy) => {
        const length = tenths / 10
        const [c, d] = [
          { x: length + cx, y: 3 + cy },
          { x: dx, y: 3 + dy },
        ]
        put(taped(length, c, d))
        const [along, alongWay] = [
          column("set_out_corrections.push_length"),
          column("set_out_corrections.way_length"),
        ]
        const [across, acrossWay] = [
          column("set_out_corrections.push_width"),
          column("set_out_corrections.way_width"),
        ]
        for (const [at, { x, y }] of [c, d].entries()) {
          const back = { x: at === 0 ? length : 0, y: 3 }
          const sign = (way: unknown, less: string) => (String(way).startsWith(less) ? -1 : 1)
          expect(x + sign(alongWay[at], "the way from B to A") * Number(along[at])).toBeCloseTo(back.x, 6)
          expect(y + sign(acrossWay[at], "in,") * Number(across[at])).toBeCloseTo(back.y, 6)
        }
        expect(column("set_out_error.far_side")[0]).toBeCloseTo(Math.hypot(c.x - d.x, c.y - d.y), 6)
      }),
      { numRuns: 100, seed: SEED },
    )
  })

  // By turning the short sides about A and B: what a rack does to a frame whose sides are true. The diagonal method says the same:
  // the base stays, and the lines of both short sides are moved by a corresponding distance (US Army Engineer School, Frame
  // Structures, subcourse EN0069 edition A, lesson 1, "Squaring building lines"; read in a public copy).
  test("a racked frame has unlike diagonals, and both far corners go back by the same", () => {
    const turn = (2 * Math.PI) / 180
    const [length, width] = [4.8, 3]
    const lean = { x: -width * Math.sin(turn), y: width * Math.cos(turn) }
    const { book, column } = open(SHEET.id, {
      platform_width: "3 m",
      ...taped(length, { x: length + lean.x, y: lean.y }, lean),
    })
    expect(book.entry("square_check").check?.verdict).toBe("fails")
    const push = column("set_out_corrections.push_length")
    expect(push[0]).toBeCloseTo(width * Math.sin(turn), 6)
    expect(push[1]).toBeCloseTo(width * Math.sin(turn), 6)
    expect(column("set_out_corrections.way_length")).toEqual(["the way from A to B", "the way from A to B"])
  })

  // A frame seen on site with equal diagonals and ends 2 in different: a trapezium. Common practice, no source.
  test("equal diagonals do not hide a second long side that is too short", () => {
    const { book } = open(SHEET.id, {
      platform_width: "3 m",
      ...taped(4.8, { x: 4.775, y: 3 }, { x: 0.025, y: 3 }),
    })
    expect(book.entry("square_check").check?.verdict).toBe("passes")
    expect(book.entry("corners_check").check?.verdict).toBe("fails")
    expect(book.entry("set_out_error.far_side_off").readings?.[0]?.value).toBeCloseTo(0.05, 6)
  })

  test("nothing is judged before both diagonals are measured; true ones pass", () => {
    const { book, put } = open(SHEET.id, { platform_length: "16 ft", platform_width: "12 ft" })
    expect(book.entry("square_check").check?.verdict).toBe("needs_entry")
    put({ diagonal_measured_1: "20 ft", diagonal_measured_2: "20 ft" })
    expect(book.entry("square_check").check?.verdict).toBe("passes")
    expect(book.entry("corners_check").check?.verdict).toBe("passes")
  })

  test("lengths that no triangle has are answered, not a crash", () => {
    const { book } = open(SHEET.id, { diagonal_measured_1: "1 ft", diagonal_measured_2: "500 ft" })
    expect(book.entry("corners_check").check?.verdict).toBe("fails")
  })
})

describe("published examples of squaring", () => {
  // FAO, Irrigation Water Management, training manual no. 2, Elements of Topographic Surveying, provisional edition, 1985
  // (R7021E), section 4.1, "Setting out right angles: the 3-4-5 method", with fig. 20; read in FAO's own copy, but the titles
  // and the number, which are from memory. One person holds the marks 0 m and 12 m of a tape, the others 3 m and 8 m.
  test("a tape held at 0 and 12, 3, and 8 m makes the triangle, with the right angle at the first", () => {
    const { column } = open(SHEET.id, { square_step: "1 m", platform_length: "4 m", platform_width: "3 m" })
    const [short = 0, long = 0, across = 0] = ["short", "long", "across"].map((side) =>
      Number(column(`square_triangle.${side}`)[0]),
    )
    const marks = [short, short + across, short + across + long]
    expect(marks).toEqual([3, 8, 12].map((metres) => expect.closeTo(metres, 9)))
  })

  // The same, in its note: "a multiple can be chosen: e.g. 6 m, 8 m and 10 m or e.g. 9 m, 12 m and 15 m".
  test.each([
    [3, 4, 5],
    [6, 8, 10],
    [9, 12, 15],
  ])("sides of %i m and %i m have %i m across", (short, long, across) => {
    const { book, column } = open(SHEET.id, {
      square_step: "1 m",
      platform_length: `${long} m`,
      platform_width: `${short} m`,
    })
    for (const [side, metres] of [
      ["short", short],
      ["long", long],
      ["across", across],
    ] as const)
      expect(column(`square_triangle.${side}`)[0], side).toBeCloseTo(metres, 9)
    // The triangle fills the frame, and so its long side is the frame's diagonal.
    expect(book.entry("platform_diagonal").reading?.value).toBeCloseTo(across, 9)
  })

  // Math Central, University of Regina, question QQ.09.09/h/trevor1, on squaring a building whose edges are right: "exactly
  // 40x30" has a diagonal of exactly 50; in one that is no rectangle one diagonal is too long and the other too short.
  test("a building of 40 by 30 is square at 50 and 50; with one diagonal longer the other is shorter, and it is not", () => {
    const { book, put, value } = open(SHEET.id, { platform_length: "40 ft", platform_width: "30 ft" })
    expect(Number(value("platform_diagonal")) / 0.3048).toBeCloseTo(50, 9)
    put({ diagonal_measured_1: "50 ft", diagonal_measured_2: "50 ft" })
    expect(book.entry("square_check").check?.verdict).toBe("passes")
    expect(book.entry("corners_check").check?.verdict).toBe("passes")
    // By the law of parallelograms: the squares of both diagonals make 2 × (40² + 30²) = 5000 together.
    const other = Math.sqrt(5000 - 50.5 ** 2)
    expect(other).toBeLessThan(50)
    put({ diagonal_measured_1: "50.5 ft", diagonal_measured_2: `${other} ft` })
    expect(book.entry("square_check").check?.verdict).toBe("fails")
    expect(book.entry("set_out_error.far_side_off").readings?.[0]?.value).toBeCloseTo(0, 6)
  })
})

// The worked deck of the reference: 16 ft by 12 ft has a diagonal of 20 ft exactly, four times 3-4-5.
test("a frame of 16 ft by 12 ft is a 3-4-5 triangle itself", () => {
  const { book, column } = open(SHEET.id, { platform_length: "16 ft", platform_width: "12 ft" })
  expect(column("set_out_measures.distance").map((metres) => Number(metres) / 0.3048)).toEqual(
    [16, 16, 12, 12, 20, 20, 12, 16, 20].map((feet) => expect.closeTo(feet, 9)),
  )
  expect(book.entry("set_out_measures.distance").readings?.[4]?.text).toBe(`20' 0"`)
})

test.each(TEMPLATES.map(({ id }) => id))("%s: pegs and lines stand where vectors say", (id) => {
  const { book, column, value } = open(id)
  const [length, width] = [Number(value("platform_length")), Number(value("platform_width"))]
  const [x, y] = [column("set_out_points.x").map(Number), column("set_out_points.y").map(Number)]
  const past = 3 * 0.3048
  expect(x.slice(0, 4)).toEqual([0, length, length, 0])
  expect(y.slice(0, 4)).toEqual([0, 0, width, width])
  // Each string peg lies on the line of its side, `past` beyond it.
  expect([x[4], y[4]]).toEqual([expect.closeTo(-past, 9), 0])
  expect([x[11], y[11]]).toEqual([expect.closeTo(length, 9), expect.closeTo(width + past, 9)])
  column("set_out_points.from_datum").forEach((straight, at) => {
    expect(straight).toBeCloseTo(Math.hypot(x[at] ?? 0, y[at] ?? 0), 9)
  })
  const faces = column("set_out_lines.far_face").map(Number)
  const near = column("set_out_lines.near_face").map(Number)
  expect(faces.length).toBeGreaterThan(1)
  for (const [at, face] of faces.entries()) expect(face).toBeGreaterThan(near[at] ?? Number.NaN)
  if (book.has("set_out_heights")) {
    expect(column("set_out_heights.dig")).toEqual(column("supports.dig"))
    // The string lies level: the hole's own ground, less the dig, is what the tape finds below it.
    const level = Number(value("underside_level"))
    const ground = column("supports.ground").map(Number)
    const dig = column("supports.dig").map(Number)
    column("set_out_heights.string_to_hole").forEach((down, at) => {
      expect(down).toBeCloseTo(level - (ground[at] ?? 0) + (dig[at] ?? 0), 9)
    })
  }
})
