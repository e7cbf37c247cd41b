import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { findRings } from "../../src/graph/cycles.ts"

function rings(dependsOn: Readonly<Record<string, string>>): readonly (readonly string[])[] {
  return findRings(
    new Map(Object.entries(dependsOn).map(([name, on]) => [name, on.split(" ").filter(Boolean)])),
  )
}

describe("rings", () => {
  test("there are none where nothing leans back", () => {
    //   a → b → d
    //   a → c → d
    expect(rings({ a: "b c", b: "d", c: "d", d: "" })).toEqual([])
  })

  test("of one", () => expect(rings({ a: "a", b: "a" })).toEqual([["a"]]))

  test("of two, the one defined first first", () => {
    expect(rings({ b: "a", a: "b" })).toEqual([["b", "a"]])
  })

  test("in the order in which the members lean on one another", () => {
    //   a → c → b → d → a
    expect(rings({ a: "c", b: "d", c: "b", d: "a", aside: "a" })).toEqual([["a", "c", "b", "d"]])
  })

  test("that are apart, in the order of definition", () => {
    expect(rings({ z: "y", m: "n z", y: "z", n: "m" })).toEqual([
      ["z", "y"],
      ["m", "n"],
    ])
  })

  test("that share a member are one", () => {
    //   b ⇄ a ⇄ c
    expect(rings({ a: "b c", b: "a", c: "a" })).toEqual([["a", "b", "c"]])
  })

  test("pass over names that are not defined", () => {
    expect(rings({ a: "nobody b", b: "a nothing" })).toEqual([["a", "b"]])
  })

  test("of 10,000 members and chains of 10,000 do not overflow", () => {
    const names = Array.from({ length: 10_000 }, (_, i) => `n_${i}`)
    const chain = new Map(names.map((name, i) => [name, i + 1 < names.length ? [`n_${i + 1}`] : []]))
    expect(findRings(chain)).toEqual([])
    chain.set("n_9999", ["n_0"])
    expect(findRings(chain)).toEqual([names])
  })
})

test("members are exactly the names that can reach themselves, whatever the graph", () => {
  const graphs = fc.integer({ min: 1, max: 9 }).chain((size) => {
    const names = Array.from({ length: size }, (_, i) => `n${i}`)
    return fc
      .tuple(...names.map(() => fc.uniqueArray(fc.constantFrom(...names), { maxLength: 3 })))
      .map((on) => new Map(names.map((name, i) => [name, on[i] ?? []])))
  })
  fc.assert(
    fc.property(graphs, (dependsOn) => {
      const reachable = (from: string): ReadonlySet<string> => {
        const seen = new Set<string>()
        const open = [...(dependsOn.get(from) ?? [])]
        for (let name = open.pop(); name !== undefined; name = open.pop()) {
          if (seen.has(name)) continue
          seen.add(name)
          open.push(...(dependsOn.get(name) ?? []))
        }
        return seen
      }
      const found = findRings(dependsOn)
      expect(found.flat().sort()).toEqual(
        [...dependsOn.keys()].filter((name) => reachable(name).has(name)).sort(),
      )
      for (const ring of found) {
        for (const member of ring) for (const other of ring) expect(reachable(member)).toContain(other)
      }
    }),
    { numRuns: 500 },
  )
})
