import { expect, test } from "vitest"
import { type Book, type BookChange, openBook } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, check, define, formula, input, value } from "../helpers/small-book.ts"

const ENTRIES = [
  input("width", "length", "4 m"),
  input("length", "length", "3 m"),
  formula("area", "area", "width * length"),
  check("area_check", "area", "area", "area"),
]

const shown = (book: Book): unknown =>
  ["width", "length", "area"].map((name) => [value(book, name), book.entry(name).reading?.text])

test.each(EVERY_GRAPH)("%s: a preview reads as the edit would, and leaves nothing behind", (_, graph) => {
  const book = bookOf(ENTRIES, { graph })
  book.edit("length", "2 m")
  const [before, saved, moved] = [shown(book), book.document(), book.moved()]
  const told: BookChange[] = []
  book.subscribe((change) => told.push(change))

  for (const width of ["5 m", "6 m", "7 m"]) {
    expect(book.preview("width", width).accepted).toBe(true)
    const edited = bookOf(ENTRIES, { graph })
    edited.editAll({ width, length: "2 m" })
    expect(shown(book)).toEqual(shown(edited))
    expect(book.document()).toEqual(saved)
    expect(book.moved().find(({ name }) => name === "width")?.old?.text).toBe(`4,000 mm`)
  }
  book.endPreview()
  expect(shown(book)).toEqual(before)
  expect(book.moved()).toEqual(moved)
  expect(book.document()).toEqual(saved)
  expect(new Set(told)).toEqual(new Set(["previewed"]))
})

test.each([
  ["the value shown last", "7 m"],
  ["another value", "9 m"],
  ["the value it had", "4 m"],
])("after previews one edit is one step, made from how things stood: %s", (_, width) => {
  const book = bookOf(ENTRIES)
  for (const shownFirst of ["5 m", "6 m", "7 m"]) book.preview("width", shownFirst)
  book.edit("width", width)
  const edited = bookOf(ENTRIES)
  edited.edit("width", width)
  expect(shown(book)).toEqual(shown(edited))
  expect(book.moved()).toEqual(edited.moved())
  expect(book.history().map(({ changes }) => changes)).toEqual(edited.history().map(({ changes }) => changes))
  book.undo()
  expect(shown(book)).toEqual(shown(bookOf(ENTRIES)))
})

test.each<readonly [string, (book: Book) => unknown]>([
  ["undo", (book) => book.undo()],
  ["another input", (book) => book.edit("length", "1 m")],
  ["a copy", (book) => book.saveCopy("Second")],
  ["units", (book) => book.showIn("us")],
  [
    "an own entry",
    (book) => book.addEntry({ kind: "input", name: "gap", label: "Gap", measure: "length", default: "2 m" }),
  ],
])("a change of something else is made without the preview: %s", (_, change) => {
  const [book, other] = [bookOf(ENTRIES), bookOf(ENTRIES)]
  for (const one of [book, other]) one.edit("length", "2 m")
  book.preview("width", "9 m")
  change(book)
  change(other)
  expect(shown(book)).toEqual(shown(other))
  expect(book.moved()).toEqual(other.moved())
  const { book: opened } = openBook(define(...ENTRIES), { document: book.document() })
  expect(shown(opened)).toEqual(shown(other))
})

test("what cannot be read, and a sealed scenario, show nothing new", () => {
  const book = bookOf(ENTRIES)
  expect(book.preview("width", "wide").accepted).toBe(false)
  book.preview("width", "5 m")
  const before = shown(book)
  expect(book.preview("width", "wide").accepted).toBe(false)
  expect(book.edit("width", "wide").accepted).toBe(false)
  expect(shown(book)).toEqual(before)
  book.endPreview()
  book.switchTo(book.seal("Bought").id)
  expect(book.preview("width", "6 m").problems).toMatchObject([{ code: "scenario_sealed" }])
  expect(shown(book)).toEqual(shown(bookOf(ENTRIES)))
})
