import { openBook, rangeAround, sweep, sweptValues } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

describe.each(TEMPLATES.map((one) => [one.id, one] as const))("%s", (_, definition) => {
  const { book } = openBook(definition)
  const explorations = definition.explorations ?? []

  test("cost, supports and the deepest dig are ready by a spacing of supports and by both sides", () => {
    const inputs = explorations
      .filter(({ results }) =>
        ["total_cost", "support_count", "greatest_dig"].every((name) => results.includes(name)),
      )
      .map(({ input }) => input)
    expect(inputs).toEqual([expect.stringMatching(/spacing_max$/), "platform_length", "platform_width"])
  })

  test.each(explorations.map((one) => [one.input, one] as const))(
    "%s: all values are accepted, the present one is among them, and what is counted moves",
    (input, exploration) => {
      const range = rangeAround(definition, book.document(), exploration)
      if (range === undefined) throw new Error("it has no value")
      const swept = sweptValues(definition, book.document(), input, range)
      if ("problem" in swept) throw new Error(swept.problem.code)
      const { values } = swept
      expect(values).toContain(book.entry(input).reading?.text)
      expect(values.length).toBeGreaterThan(4)
      // The ends are enough to see that something comes of it.
      const ends = [values[0] ?? "", values.at(-1) ?? ""]
      const read: (readonly (number | undefined)[])[] = []
      sweep(
        definition,
        book.document(),
        { inputs: [{ name: input, values: ends }], results: exploration.results },
        (row) => {
          expect(row.problem).toBeUndefined()
          read.push(row.values.map((value) => (typeof value?.value === "number" ? value.value : undefined)))
        },
      )
      for (const value of read.flat()) expect(value).toBeDefined()
      const counts = exploration.results.flatMap((name, at) => (name.endsWith("_count") ? [at] : []))
      expect(counts.length).toBeGreaterThan(0)
      // Farther apart there are fewer; on a larger platform not fewer.
      for (const at of counts) {
        const [first = 0, last = 0] = [read[0]?.[at], read[1]?.[at]]
        if (input.startsWith("platform_")) expect(last).toBeGreaterThanOrEqual(first)
        else expect(last).toBeLessThan(first)
      }
      const mass = exploration.results.indexOf("timber_mass")
      if (mass !== -1) expect(read[0]?.[mass]).not.toBe(read[1]?.[mass])
    },
  )
})
