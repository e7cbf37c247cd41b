import { describe, expect, test } from "vitest"
import { seek, seekNear, sweep, sweepRows } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, check, define, figure, formula, input } from "../helpers/small-book.ts"

//  stock ─┐
//  width ─┴> boards, waste          width ── area ── area_check (at most 20 m2), width_check (at least 2 m)
const ENTRIES = [
  input("width", "length", "4 m", { least: "1 m", most: "9 m" }),
  input("length", "length", "4 m", { least: "1 m" }),
  input("stock", "length", "2.4 m"),
  input("colour", "text", "red", { choices: ["red", "blue"] }),
  formula("boards", "count", "ROUNDUP(width / stock; 0)"),
  formula("waste", "length", "boards * stock - width"),
  formula("area", "area", "width * length"),
  figure("most", "area", "20 m2"),
  figure("least", "length", "2 m"),
  check("area_check", "area", "area", "most"),
  check("width_check", "length", "width", "least", { sense: "at_least" }),
]
const DEFINITION = define(...ENTRIES)

describe.each(EVERY_GRAPH)("with the %s graph", (_, graph) => {
  const document = () => bookOf(ENTRIES).document()

  test("a sweep of two inputs gives a row for each pair, as a book would", () => {
    const rows: unknown[] = []
    const inputs = [
      { name: "width", values: ["2 m", "5 m"] },
      { name: "length", values: ["3 m", "wide", "5 m"] },
    ] as const
    const end = sweep(DEFINITION, document(), { inputs, results: ["area", "boards"], graph }, (row) =>
      rows.push([row.typed, row.values.map((reading) => reading?.value), row.failing, row.problem?.code]),
    )
    expect(end).toEqual({ rows: 6, stopped: false })
    expect(rows).toEqual([
      [["2 m", "3 m"], [6, 1], [], undefined],
      [["2 m", "wide"], [undefined, undefined], [], "input_unreadable"],
      [["2 m", "5 m"], [10, 1], [], undefined],
      [["5 m", "3 m"], [15, 3], [], undefined],
      [["5 m", "wide"], [undefined, undefined], [], "input_unreadable"],
      [["5 m", "5 m"], [25, 3], ["area_check"], undefined],
    ])
  })

  test("the largest and the smallest value that keep every check passing, and what binds there", () => {
    const wanted = { input: "width", step: "100 mm", graph } as const
    // 20 m² over 4 m is 5 m; below 2 m the other check fails.
    expect(seek(DEFINITION, document(), { ...wanted, toward: "largest" })).toMatchObject({
      typed: "5,000 mm",
      reading: { value: 5 },
      binds: ["area_check"],
    })
    expect(seek(DEFINITION, document(), { ...wanted, toward: "smallest" })).toMatchObject({
      reading: { value: 2 },
      binds: ["width_check"],
    })
    expect(seek(DEFINITION, document(), { ...wanted, toward: "largest", most: "4.5 m" })).toMatchObject({
      reading: { value: 4.5 },
      binds: [],
      tried: 1,
    })
  })

  test("among very many values the same is found", () => {
    const wanted = { input: "width", step: "0.1 mm", toward: "largest", graph } as const
    const found = seek(DEFINITION, document(), wanted)
    expect(found).toMatchObject({ reading: { value: 5 }, binds: ["area_check"] })
    expect("tried" in found && found.tried).toBeLessThan(200)
  })

  test("where nothing passes, what fails everywhere is said", () => {
    const wanted = { input: "width", step: "1 m", toward: "largest", graph } as const
    const book = bookOf(ENTRIES)
    book.edit("length", "30 m")
    expect(seek(DEFINITION, book.document(), wanted)).toEqual({
      binds: ["area_check"],
      tried: 9,
      stopped: false,
    })
  })

  test("values near the present one, the least waste first", () => {
    const found = seekNear(DEFINITION, document(), {
      input: "width",
      step: "400 mm",
      reach: "1200 mm",
      score: "waste",
      graph,
    })
    // Stock of 2.4 m: 4.8 m leaves nothing, 4.4 m leaves 0.4 m, and so on down to 2.8 m, which leaves 2 m.
    expect(Array.isArray(found) && found.map(({ typed, score }) => [typed, score.value])).toEqual([
      ["4,800 mm", 0],
      ["4,400 mm", 0.4],
      ["4,000 mm", 0.8],
      ["3,600 mm", 1.2],
      ["3,200 mm", 1.6],
      ["5,200 mm", 2],
      ["2,800 mm", 2],
    ])
    expect(Array.isArray(found) && found[5]?.failing).toEqual(["area_check"])
  })
})

test("a sweep stops when it is told to, and can be taken a row at a time", () => {
  const document = bookOf(ENTRIES).document()
  const inputs = [{ name: "width", values: ["2 m", "3 m", "4 m"] }] as const
  let rows = 0
  const end = sweep(
    DEFINITION,
    document,
    { inputs, results: ["area"] },
    () => rows++,
    () => rows === 2,
  )
  expect([end, rows]).toEqual([{ rows: 2, stopped: true }, 2])
  const [first] = sweepRows(DEFINITION, document, { inputs, results: ["area"] })
  expect(first?.values[0]?.value).toBe(8)
})

test("the workbook that is swept is the one saved, its own entries with it", () => {
  const book = bookOf(ENTRIES)
  book.addEntry({ kind: "formula", name: "border", label: "Border", formula: "2 * (width + length)" })
  book.edit("length", "2 m")
  const inputs = [{ name: "width", values: ["3 m"] }] as const
  const [row] = sweepRows(DEFINITION, book.document(), { inputs, results: ["border"] })
  expect(row?.values[0]?.value).toBe(10)
})

test.each([
  ["nothing", "1 m", "no_such_entry"],
  ["area_check", "1 m", "not_an_input"],
  ["colour", "1 m", "input_unreadable"],
  ["width", "wide", "input_unreadable"],
  ["width", "0 m", "input_unreadable"],
])("seeking %s by %s is refused", (name, step, code) => {
  const document = bookOf(ENTRIES).document()
  const wanted = { input: name, step, toward: "largest" } as const
  expect(seek(DEFINITION, document, wanted)).toMatchObject({ problem: { code } })
  expect(seekNear(DEFINITION, document, { input: name, step, reach: "2 m", score: "waste" })).toMatchObject({
    problem: { code },
  })
})
