import { describe, expect, test } from "vitest"
import { type Definition, openBook, readDocument } from "../../src/index.ts"
import { check, define, formula, input, table } from "../helpers/small-book.ts"

const WALL: Definition = {
  ...define(
    input("width", "length", "4 m"),
    formula("twice", "length", "2 * width"),
    input("spare", "count", "0"),
    check("wide_check", "length", "width", "twice"),
    table("parts", { kind: "figures" }, [
      ["part", "text", undefined, ["post", "rail", "post"]],
      ["run", "length", "ROW() * width"],
      ["people", "count", undefined, ["2", "1", "3"]],
      ["left", "count", "people - 1"],
    ]),
  ),
  stages: [
    {
      id: "mark",
      title: "Mark {width}",
      says: ["Stretch a string of {twice}; the first part is {parts.run}."],
      hold: "It measures {twice}.",
      checks: ["wide_check"],
      needs: [
        { thing: "string", amount: "twice" },
        { thing: "spares", amount: "spare" },
        { thing: "posts", table: "parts", where: "part", is: ["post"], columns: ["people", "run"] },
        { thing: "gates", table: "parts", where: "part", is: ["gate"], columns: ["people"] },
      ],
      tools: ["tape"],
      cautions: [],
      tables: [{ table: "parts", columns: ["left", "part"] }],
      people: { column: "parts.people", where: "parts.part", is: "rail" },
      hours: { column: "parts.people", where: "parts.part", is: "nothing of the kind" },
    },
  ],
}

describe("stages of the work", () => {
  test("show the values of the moment, and leave out what none is needed of", () => {
    const { book } = openBook(WALL, { unitSystem: "metric" })
    const [before] = book.stages()
    expect(before?.title).toBe("Mark 4,000 mm")
    expect(before?.says).toEqual(["Stretch a string of 8,000 mm; the first part is 4,000 mm."])
    expect(before?.needs).toEqual([
      { thing: "string", amounts: ["8,000 mm"], name: "twice" },
      { thing: "posts", amounts: ["2 · 4,000 mm", "3 · 12,000 mm"], name: "parts" },
    ])
    expect(before?.checks).toEqual([{ name: "wide_check", label: "wide_check", verdict: "passes" }])
    expect(before?.tables.map(({ rows }) => rows)).toEqual([
      [
        ["1", "post"],
        ["2", "post"],
      ],
    ])
    expect(before?.people?.value).toBe(1)
    expect(before?.hours).toBeUndefined()

    book.editAll({ width: "5 m", spare: "3" })
    expect(book.stages()[0]?.hold).toBe("It measures 10,000 mm.")
    expect(book.stages()[0]?.needs.map(({ thing }) => thing)).toEqual(["string", "spares", "posts"])
  })

  test.each([
    ["text", { says: ["Take {thrice}."] }, "thrice"],
    ["check", { checks: ["narrow_check"] }, "narrow_check"],
    [
      "need",
      { needs: [{ thing: "posts", table: "parts", where: "kind", is: ["post"], columns: ["run"] }] },
      "parts.kind",
    ],
    ["time", { hours: { column: "parts.hours", where: "parts.part", is: "post" } }, "parts.hours"],
  ] as const)("a name that is not there is found when the template is opened: in a %s", (_, wrong, name) => {
    const [stage] = WALL.stages ?? []
    const stages = stage === undefined ? [] : [{ ...stage, ...wrong }]
    expect(() => openBook({ ...WALL, stages })).toThrow(
      `stage "mark" names nothing in the workbook: "${name}"`,
    )
  })

  test("are none where the template has none", () => {
    expect(openBook(define(input("width", "length", "4 m"))).book.stages()).toEqual([])
  })
})

describe("progress", () => {
  test("is told, saved and read back, with members that are not known", () => {
    const { book } = openBook(WALL)
    expect(book.document()).not.toHaveProperty("progress")
    let told = 0
    book.subscribe(() => told++)
    book.note("mark", { done: true })
    book.note("mark", { note: "The string sags." })
    expect(told).toBe(2)
    const saved = JSON.parse(JSON.stringify(book.document()))
    saved.progress.mark.photo = "kept"
    const { document } = readDocument(saved)
    if (document === undefined) throw new Error("the document could not be read")
    const { book: again } = openBook(WALL, { document })
    expect(again.progress()).toEqual({ mark: { done: true, note: "The string sags.", photo: "kept" } })
    expect(again.document()).toEqual(document)
  })

  test("that cannot be read does not keep the numbers from being read", () => {
    const { book } = openBook(WALL)
    book.edit("width", "7 m")
    const { document, problems } = readDocument({ ...book.document(), progress: "much" })
    expect(problems).toEqual([])
    expect(document?.scenarios[0]?.typed).toEqual({ width: "7 m" })
  })
})
