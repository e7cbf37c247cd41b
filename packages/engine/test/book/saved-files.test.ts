import { describe, expect, test } from "vitest"
import { type BookDocument, openBook, readDocument } from "../../src/index.ts"
import { ENGLISH } from "../../src/language/english.ts"
import { FRENCH } from "../../src/language/french.ts"
import { bookOf, define, input } from "../helpers/small-book.ts"

const ENTRIES = [input("width", "length", "4 m"), input("length", "length", "3 m")]

function saved(): BookDocument {
  const book = bookOf(ENTRIES, { now: () => 0 })
  book.edit("width", "5 m")
  book.saveCopy("Second")
  book.addEntry({ kind: "input", name: "gap", label: "Gap", measure: "length", default: "5 cm" })
  book.note("dig", { done: true })
  return JSON.parse(JSON.stringify(book.document()))
}

describe("what is wrong with a file is said with the part in which it is, in the language of the reader", () => {
  const sound = saved()
  const [first] = sound.scenarios
  const deep = Array.from({ length: 60 }).reduce<unknown>((inner) => [inner], 1)
  test.each<[unknown, string, string]>([
    [{ ...sound, format: "letter" }, 'Its format is not "pegbook', "Son format n’est pas"],
    [{ ...sound, version: "2" }, "It has no version number.", "Il n’a pas de numéro de version."],
    [[], "It does not hold one object.", "Il ne contient pas un seul objet."],
    [{ ...sound, scenarios: 3 }, "scenarios: It is no list.", "scenarios : Ce n’est pas une liste."],
    [{ ...sound, scenarios: [] }, "scenarios: It is empty.", "scenarios : C’est vide."],
    [
      { ...sound, scenarios: [{ ...first, typed: { width: 5 } }] },
      "scenarios → 0 → typed → width: It is no text.",
      "scenarios → 0 → typed → width : Ce n’est pas un texte.",
    ],
    [
      { ...sound, scenarios: [{ ...first, title: "x".repeat(201) }] },
      "scenarios → 0 → title: It has more than 200 characters.",
      "scenarios → 0 → title : Il y a plus de 200 caractères.",
    ],
    [
      { ...sound, own: Array.from({ length: 50_000 }, () => sound.own[0]) },
      "own: It has more than 20,000 parts.",
      "own : Il y a plus de 20\u202f000 parties.",
    ],
    [
      { ...sound, own: [{ kind: "guess" }] },
      "own → 0 → kind: It is none of: input, figure, formula, column, check.",
      "own → 0 → kind : Ce n’est aucun de ceux-ci : input, figure, formula, column, check.",
    ],
    [
      { ...sound, unitSystem: "cubits" },
      "unitSystem: It is none of: us, metric.",
      "Ce n’est aucun de ceux-ci",
    ],
    [
      JSON.parse('{"__proto__": {"polluted": 1}}'),
      'It holds a member called "__proto__".',
      "Il contient un membre nommé",
    ],
    [{ ...sound, later: deep }, "Its parts lie too deep in each other.", "Ses parties sont trop imbriquées."],
    [
      { ...sound, later: "x".repeat(200_000) },
      "It holds a text of 200000 characters.",
      "Il contient un texte de 200\u202f000 caractères.",
    ],
    [{ ...sound, later: 1n }, "It holds a bigint.", "Il contient une valeur de type bigint."],
  ])("%#", (json, english, french) => {
    const [problem] = readDocument(json).problems
    if (problem === undefined) throw new Error("it was read")
    // A no-break space stands before the colon in French.
    const plain = (text: string) => text.replaceAll("\u00a0", " ")
    expect(ENGLISH.inWords(problem, "metric").says).toContain(english)
    expect(plain(FRENCH.inWords(problem, "metric").says)).toContain(french)
  })
})

test("members that this version does not know are kept and written back, in steps of the history as well", () => {
  const sound = saved()
  const later = { ...sound, mood: "later" }
  const withMore = JSON.parse(
    JSON.stringify(later)
      .replaceAll('{"of":', '{"later":{"by":1},"of":')
      .replaceAll('{"id":', '{"seen":2,"id":'),
  )
  expect(JSON.stringify(withMore)).toContain('"later":{"by":1},"of":"typed"')
  expect(JSON.stringify(withMore)).toContain('"later":{"by":1},"of":"progress"')
  const { document } = readDocument(withMore)
  if (document === undefined) throw new Error("it cannot be read")
  const { book } = openBook(define(...ENTRIES), { document, now: () => 0 })
  expect(JSON.parse(JSON.stringify(book.document()))).toEqual(withMore)
})

test("a slip in what was noted of one stage costs that, and nothing that was noted beside it or of others", () => {
  const note = "n".repeat(9_000)
  const progress = {
    dig: { done: "yes", note, here: ["spade"], later: 1 },
    frame: { done: true, note: "Keep this" },
    roof: 7,
  }
  const { document } = readDocument({ ...saved(), progress })
  if (document === undefined) throw new Error("it cannot be read")
  const { book } = openBook(define(...ENTRIES), { document })
  expect(book.progress()).toMatchObject({
    dig: { note, here: ["spade"], later: 1 },
    frame: { done: true, note: "Keep this" },
  })
  expect(book.progress().dig?.done).toBeUndefined()
})
