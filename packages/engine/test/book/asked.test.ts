import { expect, test } from "vitest"
import type { Book } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, formula, input, table, value } from "../helpers/small-book.ts"

/** Posts along a run, a count of them that a solver finds, and something that leans on neither. */
function posts(solved: string[] = []) {
  return [
    input("run", "length", "10 m"),
    input("spacing", "length", "2.5 m"),
    input("price", "money", "4"),
    formula("bays", "count", "ROUNDUP(run / spacing; 0)"),
    table("posts", { kind: "formula", formula: "bays + 1" }, [
      ["x", "length", "MIN(run; (ROW() - 1) * spacing)"],
    ]),
    table(
      "boxes",
      {
        kind: "solved",
        from: ["posts.x"],
        solve: (given) => {
          solved.push(`${given.column("posts.x").length} posts`)
          return {
            rows: [{ holds: given.column("posts.x").length }],
            report: { method: "one box", unmet: [] },
          }
        },
      },
      [["holds", "count"]],
    ),
    formula("cost", "money", "SUM(boxes.holds) * price"),
    formula("twice", "money", "price * 2"),
  ]
}

test("a solver is not run before something that leans on it is read, nor again for what does not", () => {
  const solved: string[] = []
  const book = bookOf(posts(solved))
  expect(value(book, "posts.x")).toEqual([0, 2.5, 5, 7.5, 10])
  expect(solved).toEqual([])
  expect(value(book, "cost")).toBe(20)
  book.edit("price", "5")
  expect(value(book, "cost")).toBe(25)
  expect(solved).toEqual(["5 posts"])
  for (const spacing of ["1 m", "2 m", "5 m"]) {
    book.preview("spacing", spacing)
    expect(value(book, "bays")).toBe(10 / Number.parseInt(spacing, 10))
  }
  expect(solved).toEqual(["5 posts"])
  expect(value(book, "cost")).toBe(15)
  expect(solved).toEqual(["5 posts", "3 posts"])
})

test("what may have moved is told at once, and holds all that did", () => {
  const book = bookOf(posts())
  const edit = book.edit("spacing", "5 m")
  for (const { name } of edit.moved) expect(edit.mayHaveMoved(name), name).toBe(true)
  expect(edit.mayHaveMoved("posts"), "a table, by its columns").toBe(true)
  expect(edit.mayHaveMoved("twice")).toBe(false)
  expect(edit.mayHaveMoved("run")).toBe(false)
  expect(edit.mayHaveMoved("nothing_so_called")).toBe(false)
})

test.each(EVERY_GRAPH)(
  "in %s an edit tells what it moved whenever it is asked, after later edits too",
  (_, graph) => {
    const [book, asked] = [bookOf(posts(), { graph }), bookOf(posts(), { graph })]
    const told = (of: Book) => [of.edit("spacing", "5 m"), of.edit("run", "20 m"), of.edit("price", "1")]
    const late = told(book)
    const atOnce = ["spacing", "run", "price"].map((name, index) => {
      const edit = asked.edit(name, ["5 m", "20 m", "1"][index] ?? "")
      return edit.moved
    })
    expect(late.map(({ moved }) => moved)).toEqual(atOnce)
  },
)

test("what the last change moved at one name is part of all that it moved; a table has its columns'", () => {
  const book = bookOf(posts())
  book.edit("spacing", "5 m")
  const at = new Map(book.names().map((name) => [name, book.movedAt(name)]))
  const all = book.moved()
  for (const [name, moved] of at)
    expect(moved, name).toEqual(all.filter((one) => one.name === name || one.name.startsWith(`${name}.`)))
  expect(at.get("posts")).toHaveLength(4)
})

test("before the last change, the old values stand, rows that are gone are back, and new ones are not there", () => {
  const book = bookOf(posts())
  expect(book.before()).toBeUndefined()
  book.edit("spacing", "5 m")
  const metres = () =>
    book
      .before()
      ?.entry("posts.x")
      .readings?.map((one) => one?.value)
  expect(metres()).toEqual([0, 2.5, 5, 7.5, 10])
  expect(book.before()?.table("posts").rowCount).toBe(5)
  expect(book.before()?.entry("spacing").reading?.text).toBe("2,500 mm")
  book.edit("spacing", "1 m")
  expect(metres()).toEqual([0, 5, 10])
  expect(book.before()?.table("posts").rowCount).toBe(3)
  // A preview is before its own edit, however many there are.
  for (const spacing of ["2 m", "3 m"]) {
    book.preview("spacing", spacing)
    expect(metres()).toHaveLength(11)
  }
})
