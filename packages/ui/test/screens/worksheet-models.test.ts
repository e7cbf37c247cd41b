import { type EntryView, openBook, type Verdict } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { firstUnfinished, rowsToCommit } from "../../src/screens/worksheet/draft-rows.ts"
import { movedLines } from "../../src/screens/worksheet/moved-model.ts"
import { standings } from "../../src/screens/worksheet/standing.ts"

test("what a solver made best can be read, with its bound, in the units shown", () => {
  const { book } = openBook(demo())
  const aims = book
    .names()
    .map((name) => book.entry(name))
    .filter((view) => view.report?.objective !== undefined)
  expect(aims.length).toBeGreaterThan(0)
  const texts = () => aims.map(({ name }) => book.entry(name).reached?.objective.text)
  for (const [place, text] of texts().entries()) {
    expect(text, aims[place]?.name).toBeTruthy()
    expect(book.entry(aims[place]?.name ?? "").reached?.bound === undefined).toBe(
      aims[place]?.report?.bound === undefined,
    )
  }
  const before = texts()
  book.showIn("metric")
  expect(texts()).not.toEqual(before)
})

const reading = (text: string) => ({ value: 1, unit: "m", text })

test("cells that moved are gathered under their column, entries stand alone", () => {
  const lines = movedLines(
    [
      { name: "joist_count", old: reading("8"), new: reading("9") },
      { name: "joists.x", row: 2, old: reading("1 ft"), new: reading("2 ft") },
      { name: "joists.x", row: 9, old: null, new: reading("9 ft") },
    ],
    (name) => name.toUpperCase(),
  )
  expect(lines).toEqual([
    { name: "joist_count", label: "JOIST_COUNT", cells: [{ old: "8", now: "9" }] },
    {
      name: "joists.x",
      label: "JOISTS.X",
      cells: [
        { row: 2, old: "1 ft", now: "2 ft" },
        { row: 9, old: "blank", now: "9 ft" },
      ],
    },
  ])
})

test("checks are counted by verdict, the worst first, each with the way to the first", () => {
  const check = (name: string, verdict: Verdict) =>
    ({ name, check: { verdict, sense: "at_most", advice: [] } }) as unknown as EntryView
  expect(
    standings([check("a", "passes"), check("b", "fails"), check("c", "passes"), check("d", "near")]),
  ).toEqual([
    { verdict: "fails", names: ["b"] },
    { verdict: "near", names: ["d"] },
    { verdict: "passes", names: ["a", "c"] },
  ])
})

test("a row that was begun is unfinished, a blank one is not there", () => {
  const columns = ["x", "y"]
  expect(firstUnfinished([{ x: "1 ft", y: "2 ft" }, {}], columns, [])).toBeUndefined()
  expect(firstUnfinished([{}, { x: "1 ft", y: " " }], columns, [])).toEqual({ row: 2, missing: ["y"] })
  expect(firstUnfinished([{ x: "1 ft", y: " " }], columns, ["y"])).toBeUndefined()
  expect(rowsToCommit([{}, { x: "1 ft", y: "2 ft" }], columns)).toEqual({
    rows: [{ x: "1 ft", y: "2 ft" }],
    places: [1],
  })
})
