import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { answer } from "../../src/explore/answer.ts"
import type { SinceBought } from "../../src/explore/asked.ts"

const thing = (item: string, quantity: string, unit = "") => ({ item, quantity, unit, price: "" })

test("more of a thing is to be bought, less may go back, and what is gone or counted otherwise is said", () => {
  const { book } = openBook(demo())
  book.editTable("own_things", [
    thing("hinge", "3"),
    thing("lamp", "4"),
    thing("paint", "2", "tin"),
    thing("rope", "9", "ft"),
  ])
  const sealed = book.seal("Bought")
  const since = (): SinceBought => {
    const question = { kind: "since", scenario: sealed.id } as const
    const asked = { template: book.definition.id, document: book.document(), question }
    for (const part of answer(demo(), asked)) if (part.kind === "since") return part.since
    throw new Error("no answer")
  }
  expect(since()).toEqual({ toBuy: [], toReturn: [], gone: [], recounted: [] })

  book.editTable("own_things", [thing("hinge", "5"), thing("lamp", "1"), thing("rope", "9", "m")])
  const found = since()
  expect(found.toBuy).toMatchObject([{ item: "hinge", short: "2" }])
  expect(found.toReturn).toMatchObject([{ item: "lamp", returns: "3" }])
  expect(found.gone).toMatchObject([{ item: "paint", got: "2", unit: "tin" }])
  expect(found.recounted).toMatchObject([{ item: "rope", unit: "ft" }])

  // What the design itself counts: two feet more of the platform take a joist or more, and timber for it.
  book.edit("platform_length", "22 ft")
  expect(since().toBuy.some(({ item }) => item?.includes("x6"))).toBe(true)
  expect(book.scenarios()).toHaveLength(2)
})
