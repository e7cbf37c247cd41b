import { type Definition, openBook } from "@pegbook/engine"
import { expect, test } from "vitest"
import { mirror } from "../../src/bridge/sheet.ts"
import { stepWords } from "../../src/screens/changes/step-words.ts"

const sources = [{ kind: "geometry", title: "Counted by hand" }] as const

/** A workbook of four entries: what is asked here does not lean on the trade. */
const SMALL: Definition = {
  id: "small",
  title: "Small",
  says: "For this test.",
  unitSystem: "us",
  cautions: [],
  sections: [
    {
      id: "all",
      title: "All",
      says: "Everything.",
      entries: [
        {
          kind: "input",
          name: "reach",
          label: "Reach",
          measure: "length",
          default: "20 ft",
          why: "",
          sources,
        },
        { kind: "figure", name: "step", label: "Step", measure: "length", value: "16 in", why: "", sources },
        {
          kind: "formula",
          name: "steps",
          label: "Steps",
          measure: "count",
          formula: "ROUNDUP(reach / step; 0)",
          why: "",
          sources,
        },
        {
          kind: "table",
          name: "asked",
          label: "Asked",
          rows: { kind: "input", most: 9, default: [{ what: "rope", long: "3 ft" }] },
          why: "",
          sources,
          columns: [
            { name: "what", label: "What", measure: "text", why: "", sources },
            { name: "long", label: "How long", measure: "length", why: "", sources },
          ],
        },
        {
          kind: "table",
          name: "sizes",
          label: "Sizes",
          rows: { kind: "figures" },
          why: "",
          sources,
          columns: [
            { name: "depth", label: "Depth", measure: "length", values: ["5 in", "7 in"], why: "", sources },
          ],
        },
      ],
    },
  ],
}

const MARK = { id: "mark", title: "Mark out", says: [], needs: [], tools: [], cautions: [] }

test("each kind of step is told in words, with what it was and what it became", () => {
  const { book } = openBook(SMALL)
  const sheet = mirror(book)
  const last = () => {
    const step = sheet.history().findLast((one) => !one.undone)
    return step === undefined ? "" : stepWords(step, sheet)
  }
  const label = sheet.label("reach")
  sheet.edit("reach", "18 ft")
  expect(last()).toBe(`${label}: 20 ft → 18 ft`)
  sheet.edit("reach", "17 ft")
  expect(last()).toBe(`${label}: 18 ft → 17 ft`)
  sheet.restore("reach")
  expect(last()).toBe(`${label}: put back what the template has, instead of 17 ft`)
  sheet.edit("steps", "40")
  expect(last()).toContain("the template’s → 40")
  sheet.saveCopy("Second")
  expect(last()).toBe("Copied as “Second”")
  sheet.seal("Bought")
  expect(last()).toBe("Sealed as “Bought”")
  sheet.rename(sheet.scenario().id, "Third")
  expect(last()).toBe("Scenario “Second” renamed to “Third”")
  sheet.showIn("metric")
  expect(last()).toBe("Shown in metric")
  sheet.addEntry({ kind: "formula", name: "mine", label: "Mine", formula: "steps * 2" })
  expect(last()).toBe("Your own entry “Mine” added")
  expect(sheet.typedOver()).toEqual(["steps"])
})

test("rows, other names, formulas, ticks and notes are told from what to what", () => {
  const sheet = mirror(openBook({ ...SMALL, stages: [MARK] }).book)
  const last = () => {
    const step = sheet.history().findLast((one) => !one.undone)
    return step === undefined ? "" : stepWords(step, sheet)
  }
  const rope = { what: "rope", long: "3 ft" }
  sheet.editTable("asked", [{ ...rope, long: "4 ft" }])
  expect(last()).toBe("Asked, row 1, How long: 3 ft → 4 ft")
  sheet.editTable("asked", [
    { ...rope, long: "4 ft" },
    { what: "pegs", long: "1 ft" },
  ])
  expect(last()).toBe("Asked: a row added (pegs, 1 ft)")
  sheet.editTable("asked", [{ what: "pegs", long: "1 ft" }])
  expect(last()).toBe("Asked: a row taken away (rope, 4 ft)")
  sheet.addEntry({ kind: "formula", name: "mine", label: "Mine", formula: "steps * 2" })
  sheet.addEntry({ kind: "formula", name: "ours", label: "Ours", formula: "mine + 1" })
  sheet.renameEntry("mine", "yours")
  expect(last()).toBe("“Mine” renamed in formulas: mine → yours")
  sheet.changeEntry("ours", { kind: "formula", name: "ours", label: "Ours", formula: "yours + 2" })
  expect(last()).toBe("Ours: yours + 1 → yours + 2")
  sheet.note("mark", { done: true })
  expect(last()).toBe("Ticked: Mark out")
  sheet.note("mark", { note: "The string sags." })
  expect(last()).toBe("Your notes on Mark out: blank → “The string sags.”")
  sheet.note("mark", { here: ["string"] })
  expect(last()).toBe("Mark out: string is here")
  sheet.undo()
  sheet.undo()
  expect(sheet.progress()).toEqual({ mark: { done: true } })
})

test("an own entry is in the mirror as it is in the book, and goes and comes back with undo and redo", () => {
  const { book } = openBook(SMALL)
  const sheet = mirror(book)
  sheet.addEntry({ kind: "formula", name: "mine", label: "Mine", formula: "steps * 2" })
  expect(sheet.label("mine")).toBe("Mine")
  expect(sheet.entry("mine")).toMatchObject({ own: true, reading: { value: 30 } })
  expect(sheet.sections().at(-1)?.id).toBe("own")
  sheet.undo()
  expect(sheet.has("mine")).toBe(false)
  expect(sheet.working("mine")).toBeUndefined()
  expect(sheet.sections().map(({ id }) => id)).toEqual(SMALL.sections.map(({ id }) => id))
  sheet.redo()
  sheet.edit("step", "12 in")
  expect(sheet.entry("mine").reading?.text).toBe(book.entry("mine").reading?.text)
})

test("a cell that is typed over is listed by its row, and reads again after it is put back", () => {
  const { book } = openBook(SMALL)
  const sheet = mirror(book)
  const before = sheet.entry("sizes.depth").readings?.[1]?.text
  const cell = "sizes.depth.2"
  expect(sheet.edit(cell, "9 in").accepted).toBe(true)
  expect(sheet.typedOver()).toEqual([cell])
  expect(sheet.entry("sizes.depth").readings?.[1]?.text).not.toBe(before)
  sheet.restore(cell)
  expect(sheet.entry("sizes.depth").readings?.[1]?.text).toBe(before)
})
