import { openBook } from "@pegbook/engine"
import { TEMPLATES, template } from "@pegbook/templates"
import fc from "fast-check"
import { expect, test } from "vitest"
import { readWorkbookFile, workbookFile } from "../../src/storage/workbook-file.ts"

const FILES = 10_000
const SEED = 20261125
/** Opening takes a hundred times as long as reading. */
const OPENED_ONE_IN = 20

/** A saved file of each template, with edits, own entries, a copy, a seal and something undone in it. */
const saved: readonly string[] = TEMPLATES.map((definition) => {
  const { book } = openBook(definition, { own: { title: "Own", says: "Own entries." }, now: () => 0 })
  const inputs = definition.sections
    .flatMap(({ entries }) => entries)
    .filter(({ kind }) => kind === "input")
    .slice(0, 12)
  for (const { name } of inputs) book.edit(name, String(book.entry(name).typed ?? "1"))
  book.addEntries([
    { kind: "input", name: "own_gap", label: "Gap", measure: "length", default: "5 cm" },
    { kind: "formula", name: "own_twice", label: "Twice", formula: "2 * own_gap" },
  ])
  book.edit("own_gap", "7 cm")
  book.saveCopy("Wider <b>copy</b>")
  book.edit("own_gap", "=HYPERLINK(1)")
  book.seal("Bought")
  book.undo()
  return workbookFile(definition.title, book.document()).text
})

/** What goes wrong with files: cut off, bits turned, pieces lost, doubled, swapped, words and numbers put in. */
const WORDS = [
  "",
  "null",
  "-1",
  "1e999",
  '"__proto__"',
  "[[[[",
  "}",
  '"constructor":{',
  "\u0000",
  "\ufeff",
  "9".repeat(400),
  "[]",
  "{}",
]
const harm = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
  to: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
  length: fc.integer({ min: 1, max: 400 }),
  how: fc.constantFrom("cut", "turn", "lose", "double", "swap", "put", "word", "value", "value", "number"),
  word: fc.constantFrom(...WORDS),
})
type Harm = typeof harm extends fc.Arbitrary<infer T> ? T : never

function harmed(text: string, { at, to, length, how, word }: Harm): string {
  const start = Math.floor(at * text.length)
  const piece = text.slice(start, start + length)
  const rest = text.slice(start + length)
  switch (how) {
    case "cut":
      return text.slice(0, start)
    case "turn":
      return (
        text.slice(0, start) +
        String.fromCharCode(text.charCodeAt(start) ^ (1 << (length % 8))) +
        text.slice(start + 1)
      )
    case "lose":
      return text.slice(0, start) + rest
    case "double":
      return text.slice(0, start) + piece + piece + rest
    case "swap": {
      const other = Math.floor(to * text.length)
      return text.slice(0, start) + text.slice(other, other + length) + rest
    }
    case "put":
      return text.slice(0, start) + word + text.slice(start)
    case "word":
      return text.slice(0, start) + text.slice(start).replace(/"[^"\n]*"/, JSON.stringify(word))
    case "value":
      return text.slice(0, start) + text.slice(start).replace(/: "[^"\n]*"/, `: ${JSON.stringify(word)}`)
    case "number":
      return text.slice(0, start) + text.slice(start).replace(/-?\d+/, word.startsWith("9") ? "99999" : "-7")
  }
}

test(`${FILES} mutated files are read or refused in words; what is read opens, and is saved and read again`, {
  timeout: 600_000,
}, async () => {
  // Open all the while: no file may reach it.
  const { book: open } = openBook(TEMPLATES[0] ?? expect.fail("there is no template"))
  const before = JSON.stringify(open.document())
  const told = new Map<string, number>()
  let opened = 0
  let read = 0
  await fc.assert(
    fc.asyncProperty(
      fc.nat(saved.length - 1),
      fc.array(harm, { minLength: 1, maxLength: 2 }),
      async (which, harms) => {
        const text = harms.reduce(harmed, saved[which] ?? "")
        const outcome = await readWorkbookFile(
          { name: "x.json", size: text.length, text: async () => text },
          ({ template: id }) =>
            template(id) ? undefined : { code: "file_unreadable", at: {}, reason: "No such template." },
        )
        expect(({} as Record<string, unknown>).polluted).toBeUndefined()
        const how = "refusal" in outcome ? outcome.refusal.why : "read"
        told.set(how, (told.get(how) ?? 0) + 1)
        if ("refusal" in outcome) return
        read += 1
        if (read % OPENED_ONE_IN !== 0) return
        opened += 1
        const { document } = outcome
        const { book } = openBook(template(document.template) ?? expect.fail("it was known a moment ago"), {
          document,
        })
        for (const name of book.names()) book.entry(name)
        const again = JSON.parse(workbookFile("x", book.document()).text)
        expect(
          await readWorkbookFile(
            { name: "y", size: 1, text: async () => JSON.stringify(again) },
            () => undefined,
          ),
        ).not.toHaveProperty("refusal")
      },
    ),
    { numRuns: FILES, seed: SEED, endOnFailure: true },
  )
  console.info(
    `mutated files: ${FILES} (${[...told].map(([how, count]) => `${how} ${count}`).join(", ")}); opened ${opened}; seed ${SEED}`,
  )
  expect(JSON.stringify(open.document())).toBe(before)
  expect(told.get("read")).toBeGreaterThan(500)
  expect(told.get("not_json")).toBeGreaterThan(1_000)
})
