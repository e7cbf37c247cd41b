import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { workbooksOfFirstVersion } from "../../src/storage/first-version.ts"
import { readKept } from "../../src/storage/kept-workbook.ts"

function savedDocument() {
  const { book } = openBook(demo())
  book.edit("platform_length", "14 ft 6 in")
  return structuredClone(book.document())
}

test("the one workbook of the first version comes over as it is, with what was typed", () => {
  const document = savedDocument()
  const [[id, kept] = expect.fail("nothing came over"), ...others] = workbooksOfFirstVersion(
    new Map<string, unknown>([
      ["preferences", { look: "dark" }],
      ["workbook", document],
    ]),
  )
  expect(others).toEqual([])
  expect(kept.document).toBe(document)
  const shelved = readKept(id, kept, () => undefined)
  if (!("document" in shelved)) throw new Error("it cannot be read")
  const { book } = openBook(demo(), { document: shelved.document })
  expect(book.entry("platform_length").typed).toBe("14 ft 6 in")
})

test("what the first version could not read comes over too, untouched, with the moment it was set aside", () => {
  const kept = workbooksOfFirstVersion(
    new Map<string, unknown>([
      ["workbook", 42],
      ["workbook 2024-05-06T07:08:09.000Z", { format: "something-else" }],
    ]),
  )
  expect([...kept.values()]).toEqual([
    { document: 42 },
    { changed: "2024-05-06T07:08:09.000Z", document: { format: "something-else" } },
  ])
})

test("an empty database has no workbooks", () => {
  expect(workbooksOfFirstVersion(new Map()).size).toBe(0)
})
