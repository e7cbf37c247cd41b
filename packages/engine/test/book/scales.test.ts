import fc from "fast-check"
import { expect, test } from "vitest"
import { bookOf, formula, input, table, value } from "../helpers/small-book.ts"

const ENTRIES = [
  input("run", "length", "10 m"),
  input("spacing", "length", "16 in"),
  input("weight", "mass", "40 lb"),
  input("load", "pressure", "100 psf"),
  formula("bays", "count", "ROUNDUP(run / spacing; 0)"),
  formula("area", "area", "run * spacing"),
  formula("force", "force", "load * area"),
  formula("moment", "moment", "force * run / 8"),
  formula("per_volume", "density", "weight / (area * spacing)"),
  table("posts", { kind: "formula", formula: "bays + 1" }, [
    ["x", "length", "MIN(run; (ROW() - 1) * spacing)"],
  ]),
]

test("other base units give the same physical answers", () => {
  const usual = bookOf(ENTRIES)
  const size = fc.integer({ min: -8, max: 8 })
  fc.assert(
    fc.property(size, size, size, (length, mass, time) => {
      const scaled = bookOf(ENTRIES, {
        scales: {
          length: `${1e-9 * 2 ** length}`,
          mass: `${3 ** mass}`,
          time: `${7 ** time}`,
          temperature: "1",
          money: "0.01",
        },
      })
      expect(value(scaled, "bays")).toBe(value(usual, "bays"))
      expect(value(scaled, "posts.x")).toEqual(value(usual, "posts.x"))
      for (const name of ["area", "force", "moment", "per_volume"]) {
        const [a, b] = [Number(value(scaled, name)), Number(value(usual, name))]
        expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b))
      }
    }),
    { numRuns: 60, seed: 20260711 },
  )
})
