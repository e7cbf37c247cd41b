import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { buildDecimalGraph } from "../../src/graph/decimal-graph.ts"
import { buildDoubleGraph } from "../../src/graph/double-graph.ts"
import type { Graph, GraphBuilder, GraphValue } from "../../src/graph/graph.ts"
import { buildHyperFormulaGraph } from "../../src/graph/hyperformula-graph.ts"
import { exactFits } from "./exact-fits.ts"
import { graphContract } from "./graph-contract.ts"
import { agrees, changeOf, type RandomGraph, randomGraphs, tablesOf } from "./random-graphs.ts"
import { f, graphOf } from "./small-graph.ts"

const BUILDERS: readonly (readonly [string, GraphBuilder])[] = [
  ["the graph in decimals", buildDecimalGraph],
  ["the graph in doubles", buildDoubleGraph],
  ["the graph on HyperFormula", buildHyperFormulaGraph],
]

for (const [name, build] of BUILDERS) graphContract(name, build)

describe.each(BUILDERS)("%s counts exact fits", (_, build) => {
  test("and a nanometre more as one piece more", () => {
    const { spacings, cases, wrong } = exactFits(build)
    expect(spacings).toBeGreaterThanOrEqual(1_000)
    expect(cases).toBeGreaterThan(5_000)
    expect(wrong).toEqual([])
  })
})

test("the graph in decimals does not tire on a chain of 5,000", () => {
  const chain = Object.fromEntries(
    Array.from({ length: 5_000 }, (_, i) => [`s_${4_999 - i}`, i === 4_999 ? 1 : f(`s_${4_998 - i} + 1`)]),
  )
  expect(graphOf(buildDecimalGraph, chain).scalar("s_4999")).toBe(5_000)
})

describe("the graph in decimals refuses misuse", () => {
  test("rings", () => {
    const graph = graphOf(buildDecimalGraph, { a: f("b + 1"), b: f("IF(1 > 2; a; 0)") })
    expect(() => graph.scalar("a")).toThrow("leans on itself")
  })

  test("rows that do not match", () => {
    const graph = graphOf(buildDecimalGraph, {}, { t: { columns: { x: [1], y: [2] } } })
    const change = { tables: new Map([["t", { rows: 2, values: { x: [1, 2] } }]]) }
    expect(() => graph.apply(change)).toThrow("t.y has 1 values for 2 rows")
  })

  test("constants for a column of formulas", () => {
    const graph = graphOf(buildDecimalGraph, {}, { t: { columns: { x: [1], y: f("x") } } })
    const change = { tables: new Map([["t", { rows: 1, values: { y: [2] } }]]) }
    expect(() => graph.apply(change)).toThrow("t.y is a formula")
  })
})

describe("random graphs and edits", () => {
  const build = (builder: GraphBuilder, { scalars }: RandomGraph, rows: readonly number[]) =>
    graphOf(builder, scalars, tablesOf(rows))

  const held = (graph: Graph, { scalars }: RandomGraph): readonly (readonly [string, GraphValue])[] => [
    ...Object.keys(scalars).map((id) => [id, graph.scalar(id)] as const),
    ...graph.column("t", "y").map((value, row) => [`t.y ${row + 1}`, value] as const),
  ]

  const differences = (a: Graph, b: Graph, given: RandomGraph): readonly string[] => {
    const [left, right] = [held(a, given), held(b, given)]
    const sizes = left.map(([, value]) => (typeof value === "number" ? Math.abs(value) : 0))
    const greatest = Math.max(1, ...sizes)
    return left.flatMap(([id, value], index) => {
      const other = right[index]?.[1] ?? "nothing"
      return agrees(value, other, greatest)
        ? []
        : [`${id}: ${JSON.stringify(value)} or ${JSON.stringify(other)}`]
    })
  }

  test("come out alike in decimals and in doubles, at once and after every edit", () => {
    fc.assert(
      fc.property(randomGraphs, (given) => {
        const slow = build(buildDecimalGraph, given, given.rows)
        const fast = build(buildHyperFormulaGraph, given, given.rows)
        expect(differences(slow, fast, given)).toEqual([])
        for (const edit of given.edits) {
          const before = new Map(held(fast, given))
          slow.apply(changeOf(edit))
          const moved = fast.apply(changeOf(edit))
          expect(differences(slow, fast, given)).toEqual([])
          for (const [id, value] of held(fast, given)) {
            const [node = id] = id.split(" ")
            if (JSON.stringify(before.get(id)) !== JSON.stringify(value)) expect(moved).toContain(node)
          }
        }
      }),
      { numRuns: 100 },
    )
  })

  test.each(BUILDERS)("in %s, editing in place is the same as building anew", (_, builder) => {
    const after = ({ edits, ...given }: RandomGraph): RandomGraph => {
      const edited = edits.flatMap((edit) => ("rows" in edit ? [] : [[edit.scalar, edit.value] as const]))
      return { ...given, edits, scalars: { ...given.scalars, ...Object.fromEntries(edited) } }
    }
    fc.assert(
      fc.property(randomGraphs, (given) => {
        const edited = build(builder, given, given.rows)
        for (const edit of given.edits) edited.apply(changeOf(edit))
        const rows = given.edits.reduce((all, edit) => ("rows" in edit ? edit.rows : all), given.rows)
        const fresh = build(builder, after(given), rows)
        expect(held(edited, given)).toEqual(held(fresh, given))
      }),
      { numRuns: 50 },
    )
  })
})
