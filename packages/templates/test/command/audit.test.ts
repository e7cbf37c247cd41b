import { buildDoubleGraph, type GraphBuilder, openBook } from "@pegbook/engine"
import { expect, test } from "vitest"
import { audit } from "../../src/command/audit.ts"
import { demo, TEMPLATES } from "../../src/index.ts"

const ALIKE = /^ {2}([\d,]+) values come out alike/

test.each(TEMPLATES.map((definition) => [definition.id, definition] as const))(
  "%s comes out alike from HyperFormula and from decimals",
  (_, definition) => {
    const { book } = openBook(definition)
    const lines = audit({ book })
    const values = book.names().reduce((sum, name) => sum + (book.entry(name).readings?.length ?? 1), 0)
    const counted = lines.flatMap((line) => ALIKE.exec(line)?.[1] ?? []).map((text) => text.replace(",", ""))
    expect(counted).toEqual([`${values}`, `${values}`])
    expect(lines.filter((line) => line.endsWith("none differs"))).toHaveLength(2)
  },
  60_000,
)

test("an evaluator that gets one number wrong is named with that number and what leans on it", () => {
  const { book } = openBook(demo())
  const wrong: GraphBuilder = (scalars, tables) => {
    const graph = buildDoubleGraph(scalars, tables)
    const scalar = graph.scalar.bind(graph)
    graph.scalar = (id) => (id === "platform_diagonal" ? Number(scalar(id)) * (1 + 1e-6) : scalar(id))
    return graph
  }
  const lines = audit({ book }, [["of the test", wrong]])
  expect(lines).toContain("of the test")
  expect(lines.some((line) => /^ +platform_diagonal .*≠/.test(line))).toBe(true)
  expect(lines.some((line) => /^ {2}1 differs:$/.test(line))).toBe(true)
})
