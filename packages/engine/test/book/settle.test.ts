import { expect, test } from "vitest"
import type { Solution } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, formula, input, table, value } from "../helpers/small-book.ts"

/** Loads shared out one a trip at once; better, as many a trip as go in. */
const trips = (loads: readonly number[], method: string): Solution => ({
  rows: loads.map((load) => ({ load })),
  report: { method, unmet: [] },
})

const TRIPS = [
  input("boxes", "count", "4"),
  input("colour", "text", "red"),
  table(
    "trips",
    {
      kind: "solved",
      from: ["boxes"],
      solve: (given) =>
        trips(
          Array.from({ length: given.number("boxes") }, () => 1),
          "one a trip",
        ),
      proof: { by: "trips", problem: (given) => ({ boxes: given.number("boxes") }) },
    },
    [["load", "count"]],
  ),
  formula("trip_count", "count", "COUNT(trips.load)"),
]

test.each(EVERY_GRAPH)("a better solution takes the place of the one made at once, in %s", (_, graph) => {
  const book = bookOf(TRIPS, { graph })
  const told: string[] = []
  book.subscribe((change) => told.push(change))
  expect(value(book, "trip_count")).toBe(4)
  const [asked] = book.unproven()
  expect(asked).toEqual({ table: "trips", prover: "trips", given: { boxes: 4 } })

  const saved = JSON.stringify(book.document())
  const { accepted, moved } = book.settle("trips", asked?.given, trips([3, 1], "packed"))
  expect(accepted).toBe(true)
  expect(moved.find(({ name }) => name === "trip_count")?.new?.value).toBe(2)
  expect(value(book, "trips.load")).toEqual([3, 1])
  expect(book.entry("trips").report?.method).toBe("packed")
  expect(book.unproven()).toEqual([])
  expect(told).toEqual(["settled"])
  expect(book.moved()).toEqual([])
  expect(JSON.stringify(book.document())).toBe(saved)
  expect(book.history()).toEqual([])
})

test.each(EVERY_GRAPH)("an answer to what is no longer asked changes nothing, in %s", (_, graph) => {
  const book = bookOf(TRIPS, { graph })
  const [asked] = book.unproven()
  book.edit("boxes", "5")
  expect(book.settle("trips", asked?.given, trips([4], "packed")).accepted).toBe(false)
  expect(value(book, "trip_count")).toBe(5)
  expect(book.unproven()).toEqual([{ table: "trips", prover: "trips", given: { boxes: 5 } }])
  // It is what is asked again when the edit is taken back.
  book.undo()
  expect(value(book, "trip_count")).toBe(1)
  expect(book.unproven()).toEqual([])
})

test("an edit that the solution does not lean on leaves it; one that it does puts the quick one back", () => {
  const book = bookOf(TRIPS)
  book.settle("trips", { boxes: 4 }, trips([4], "packed"))
  book.edit("colour", "blue")
  expect(value(book, "trip_count")).toBe(1)
  book.edit("boxes", "3")
  expect(value(book, "trip_count")).toBe(3)
  expect(book.entry("trips").report?.method).toBe("one a trip")
})

test("what moved since the last edit is told once the better solution is there", () => {
  const book = bookOf(TRIPS)
  book.edit("boxes", "6")
  book.settle("trips", { boxes: 6 }, trips([6], "packed"))
  const trip = book.moved().find(({ name }) => name === "trip_count")
  expect([trip?.old?.value, trip?.new?.value]).toEqual([4, 1])
})

test("scenarios alike are compared by the same solution", () => {
  const book = bookOf(TRIPS)
  book.settle("trips", { boxes: 4 }, trips([4], "packed"))
  const first = book.scenario.id
  const copy = book.saveCopy("Copy")
  const { results, tables } = book.compare(first, copy.id)
  expect([results, tables]).toEqual([[], []])
})

test("nothing is asked where a value is missing, and no prover answers for other tables", () => {
  const book = bookOf([input("boxes", "count", null), ...TRIPS.slice(1)])
  expect(book.unproven()).toEqual([])
  expect(() => book.settle("boxes", {}, trips([], ""))).toThrow(RangeError)
})
