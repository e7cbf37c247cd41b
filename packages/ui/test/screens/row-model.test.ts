import { type EntryView, openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { fieldText, isField, rowModel, wasText } from "../../src/screens/worksheet/row-model.ts"

const view = (over: Partial<EntryView>): EntryView => ({
  name: "joist_thickness",
  label: "Joist thickness",
  kind: "figure",
  shape: "one",
  section: "frame",
  measure: "length",
  why: "Why.",
  sources: [{ kind: "standard", title: "A table" }],
  cautions: [],
  state: "ok",
  reading: { value: 0.0381, unit: "m", text: '1 1/2"' },
  typed: "1 1/2 in",
  original: "1 1/2 in",
  changed: false,
  problems: [],
  ...over,
})

test("a figure says its value, that it was published, and by whom", () => {
  expect(rowModel(view({}))).toEqual({
    kind: "figure",
    value: '1 1/2"',
    missing: "no value",
    how: { text: "As published", formula: false },
    from: "Standard: A table",
    memory: false,
  })
})

test("a figure that is overridden says so, and no longer claims its source", () => {
  const model = rowModel(
    view({ changed: true, typed: "1 5/8 in", sources: [{ kind: "memory", title: "A memory" }] }),
  )
  expect(model.changed).toEqual({ says: "Typed over.", putBack: "Put back 1 1/2 in" })
  expect(model.from).toBe("Your own")
  expect(model.memory).toBe(false)
})

test("an input that started blank is made blank again", () => {
  const model = rowModel(view({ kind: "input", changed: true, original: "" }))
  expect(model.changed).toEqual({ says: "Changed.", putBack: "Make it blank again" })
})

test("a value from memory says so, whatever the kind of its source", () => {
  expect(rowModel(view({ sources: [{ kind: "handbook", title: "A book", origin: "memory" }] })).memory).toBe(
    true,
  )
  expect(rowModel(view({ sources: [{ kind: "memory", title: "Heard once" }] })).memory).toBe(true)
  expect(rowModel(view({ sources: [{ kind: "handbook", title: "A book", origin: "read" }] })).memory).toBe(
    false,
  )
})

test("a title that begins with its kind is not said twice; more sources are counted", () => {
  const sources = [
    { kind: "common_practice" as const, title: "Common practice, no source" },
    { kind: "geometry" as const, title: "Plane" },
  ]
  expect(rowModel(view({ sources })).from).toBe("Common practice, no source and 1 more")
})

test("a value that is missing says why", () => {
  const { reading: _, ...blank } = view({ kind: "formula", state: "needs_entry" })
  expect(rowModel(blank)).toMatchObject({ value: "", missing: "needs an entry" })
  expect(rowModel({ ...blank, state: "problem" }).missing).toBe("cannot be worked out")
})

test("a check says its verdict in words, and what it rests on", () => {
  const reading = (text: string) => ({ value: 1, unit: "m", text })
  const model = rowModel(
    view({
      kind: "check",
      check: {
        verdict: "outside_table",
        sense: "at_least",
        demand: reading("3 ft"),
        limit: reading("5 ft"),
        advice: [],
      },
    }),
  )
  expect(model.value).toBe("Outside the table")
  expect(model.how.text).toBe("3 ft, at least 5 ft")
})

test("a list keeps its own units in the field; a value is shown in those of the sheet", () => {
  const list = view({
    kind: "input",
    shape: "list",
    typed: "8 ft, 12 ft",
    reading: { value: "", unit: "", text: "2,438 mm" },
  })
  expect(fieldText(list)).toBe("8 ft, 12 ft")
  expect(fieldText(view({ kind: "input" }))).toBe('1 1/2"')
  expect([isField(list), isField(view({})), isField(view({ kind: "input", shape: "table" }))]).toEqual([
    true,
    false,
    false,
  ])
})

test("the old value is what it said, blank when there was none, and one a row for a list", () => {
  const reading = (text: string) => ({ value: 1, unit: "m", text })
  expect(wasText([])).toBeUndefined()
  expect(wasText([{ name: "a", old: reading("9 ft"), new: reading("8 ft") }])).toBe("9 ft")
  expect(wasText([{ name: "a", old: null, new: reading("8 ft") }])).toBe("blank")
  const rows = [1, 2].map((row) => ({ name: "a", row, old: reading(`${row} ft`), new: null }))
  expect(wasText(rows)).toBe("1 ft; 2 ft")
})

test("every row of the demonstration says what kind it is, and where it is from", () => {
  const { book } = openBook(demo())
  for (const { entries } of book.sections) {
    for (const { name } of entries) {
      const model = rowModel(book.entry(name))
      expect(model.kind, name).not.toBe("")
      expect(model.from, name).not.toBe("no source given")
      expect(model.value === "" ? model.missing : model.value, name).not.toBe("")
    }
  }
})

test("an input that may stay blank says what that means, and is not waited for", () => {
  const { book } = openBook(demo())
  const may = book
    .names()
    .map((name) => book.entry(name))
    .filter((view) => view.blank !== undefined)
  expect(may.length).toBeGreaterThan(0)
  for (const view of may) {
    expect(rowModel(view).how.text).toContain(`Left blank: ${view.blank}`)
    expect(view.state, view.name).toBe("ok")
  }
})
