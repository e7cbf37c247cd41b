import { type Definition, type Entry, openBook, parseFormula, readValue } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { QUICK_TEMPLATES, TEMPLATES } from "../../src/index.ts"

const LEGAL_NAME = /^[a-z][a-z0-9]*(_[a-z0-9]+)*$/

/** Numbers that a formula may hold: those of counting and of shapes. Anything else is a figure that wants a name. */
const GREATEST_NUMBER_IN_A_FORMULA = 5

interface Shown {
  readonly name: string
  readonly label: string
  readonly why: string
  readonly sources: readonly { readonly title: string }[]
}

const entriesOf = (definition: Definition): readonly Entry[] =>
  definition.sections.flatMap((section) => section.entries)

const shownOf = (definition: Definition): readonly Shown[] =>
  entriesOf(definition).flatMap((entry) =>
    entry.kind === "table"
      ? [entry, ...entry.columns.map((column) => ({ ...column, name: `${entry.name}.${column.name}` }))]
      : [entry],
  )

/** Every formula of a template, by the name of what it works out. */
function formulasOf(definition: Definition): readonly (readonly [name: string, formula: string])[] {
  return entriesOf(definition).flatMap((entry): (readonly [string, string])[] => {
    if (entry.kind === "formula") return [[entry.name, entry.formula]]
    if (entry.kind === "check") {
      return [entry.demand, entry.limit, entry.near, entry.covered].flatMap((formula) =>
        formula === undefined ? [] : [[entry.name, formula] as const],
      )
    }
    if (entry.kind !== "table") return []
    return [
      ...(entry.rows.kind === "formula" ? [[entry.name, entry.rows.formula] as const] : []),
      ...entry.columns.flatMap((column) =>
        column.formula === undefined ? [] : [[`${entry.name}.${column.name}`, column.formula] as const],
      ),
    ]
  })
}

const EVERY = [...TEMPLATES, ...QUICK_TEMPLATES]

describe.each(EVERY.map((definition) => [definition.id, definition] as const))("%s", (_, definition) => {
  test("says why, and whence, of every entry and column", () => {
    for (const { name, label, why, sources } of shownOf(definition)) {
      expect(label.trim(), `${name}: label`).not.toBe("")
      expect(why.trim(), `${name}: why`).toMatch(/^\S.{7,}[.?!]$/s)
      expect(sources.length, `${name}: sources`).toBeGreaterThan(0)
      for (const source of sources) expect(source.title.trim(), `${name}: source`).not.toBe("")
    }
  })

  test("has legal names, each once", () => {
    const names = shownOf(definition).map((shown) => shown.name)
    expect(names.filter((name) => !name.split(".").every((part) => LEGAL_NAME.test(part)))).toEqual([])
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([])
    const sections = definition.sections.map((section) => section.id)
    expect(new Set(sections).size).toBe(sections.length)
  })

  test("buries no figure in a formula", () => {
    const buried = formulasOf(definition).filter(([, formula]) => {
      const outsideTexts = formula.replaceAll(/"[^"]*"/g, "").replaceAll(/[a-z][a-z0-9_.]*/gi, "")
      return (outsideTexts.match(/\d+(\.\d+)?/g) ?? []).some(
        (number) => !Number.isInteger(Number(number)) || Number(number) > GREATEST_NUMBER_IN_A_FORMULA,
      )
    })
    expect(buried).toEqual([])
  })

  test("has formulas that can be read", () => {
    for (const [name, formula] of formulasOf(definition))
      expect(parseFormula(formula).problems, name).toEqual([])
  })

  test("gives every number that its advice speaks of as an entry", () => {
    const names = new Set(shownOf(definition).map((shown) => shown.name))
    for (const entry of entriesOf(definition)) {
      if (entry.kind !== "check") continue
      expect(entry.advice.length, entry.name).toBeGreaterThan(0)
      for (const advice of entry.advice) {
        for (const [, name = ""] of advice.matchAll(/\{([^}]*)\}/g)) expect(names, entry.name).toContain(name)
        expect(advice.replaceAll(/\{[^}]*\}/g, ""), entry.name).not.toMatch(/\d+ ?(in|ft|mm|m|lb|kg|psf)\b/)
      }
    }
  })

  test("starts with inputs that it would accept itself", () => {
    const { book } = openBook(definition)
    for (const entry of entriesOf(definition)) {
      if (entry.kind !== "input") continue
      for (const text of [entry.least, entry.most]) {
        if (text !== undefined)
          expect(readValue(text, entry.measure, "us"), entry.name).toHaveProperty("value")
      }
      if (entry.default === null) continue
      expect(book.edit(entry.name, entry.default).problems, entry.name).toEqual([])
    }
  })

  test("opens with defaults and waits for nothing but the user's own limits", () => {
    const { book, problems } = openBook(definition)
    expect(problems).toEqual([])
    expect(book.problems().filter((problem) => problem.code !== "needs_entry")).toEqual([])
    const blank = entriesOf(definition).flatMap((entry) =>
      entry.kind === "input" && entry.default === null ? [entry.name] : [],
    )
    for (const name of book.names()) {
      const view = book.entry(name)
      expect(view.state, name).not.toBe("problem")
      expect(view.check?.verdict, name).not.toBe("fails")
      if (view.state === "needs_entry" && view.kind === "input") expect(blank).toContain(name)
    }
  })

  test("warns of what can hurt, defers to the local authority, and never waves a permit away", () => {
    const words = JSON.stringify(definition)
    expect(definition.cautions.join(" ")).toMatch(/authority/i)
    if (TEMPLATES.includes(definition)) expect(definition.cautions.join(" ")).toMatch(/dig/i)
    expect(excerpts(words, /(no|without a|not need a|needs no) permit/gi)).toEqual([])
  })
})

// Enough for a whole job, few enough to be read: what stands by itself. Tables stand beside it.
test.each(TEMPLATES.map((definition) => [definition.id, definition] as const))(
  "%s holds 150 to 400 inputs, figures, formulas and checks",
  (_, definition) => {
    const alone = entriesOf(definition).filter((entry) => entry.kind !== "table")
    expect(alone.length).toBeGreaterThanOrEqual(150)
    expect(alone.length).toBeLessThanOrEqual(400)
  },
)

test("parts that templates share never speak of the game, but for the net", () => {
  const shared = EVERY.flatMap((definition) => definition.sections).filter(
    (section) => section.id !== "net" && section.id !== "game-space",
  )
  expect(excerpts(JSON.stringify(shared), /tennis|\bgame\b|\bplayers?\b/gi)).toEqual([])
})

/** What a pattern finds, each with the words before it. */
function excerpts(text: string, pattern: RegExp): readonly string[] {
  return [...text.matchAll(pattern)].map((match) =>
    text.slice(Math.max(0, match.index - 60), match.index + 40),
  )
}
