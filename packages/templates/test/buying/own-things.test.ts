import { type Book, openBook } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

type Line = Readonly<Record<string, string | number | boolean>>

function lineOf(book: Book, item: string): Line | undefined {
  const { columns } = book.table("buy_list")
  const at = book.entry("buy_list.item").readings?.findIndex((one) => one?.value === item) ?? -1
  if (at < 0) return undefined
  const bare = (name: string) => name.slice("buy_list.".length)
  return Object.fromEntries(columns.map(({ name, readings }) => [bare(name), readings?.[at]?.value ?? ""]))
}

const total = (book: Book) => book.entry("total_cost").reading?.value
const unmet = (book: Book) => book.entry("buy_list").report?.unmet ?? []

describe.each(TEMPLATES.map((definition) => [definition.id, definition] as const))("%s", (_, definition) => {
  test("a thing of one's own is on the list with its price, in the cost, and can be ticked", () => {
    const { book } = openBook(definition)
    book.editAll({ tax_rate: "10 %", contingency: "0 %" })
    const hinges = { item: "gate hinge", quantity: "3", unit: "", price: "12.50" }
    expect(book.editTable("own_things", [hinges]).problems).toEqual([])
    expect(lineOf(book, "gate hinge")).toMatchObject({
      quantity: 3,
      unit: "each",
      left: 0,
      price: 12.5,
      cost: 37.5,
    })
    // By hand: 3 × 12.50 and a tenth of tax.
    expect(total(book)).toBe(41.25)
    book.editTable("purchases", [
      { item: "gate hinge", length: "", unit: "each", bought: "2", paid: "", used: "" },
    ])
    const at = book.entry("still_to_buy.item").readings?.findIndex((one) => one?.value === "gate hinge") ?? -1
    expect(book.entry("still_to_buy.short").readings?.[at]?.value).toBe(1)
  })

  test("its price may stand among the prices, by the word it is counted by; without one it is listed all the same", () => {
    const { book } = openBook(definition)
    book.edit("contingency", "0 %")
    const price = { length: "", price: "8", supplier: "", pack: "", from: "", date: "", lead: "" }
    book.editTable("own_things", [{ item: "paint", quantity: "2", unit: "tin", price: "" }])
    expect(lineOf(book, "paint")).toMatchObject({ quantity: 2, unit: "tin", price_unit: "no price" })
    book.editTable("prices", [{ ...price, item: "paint", unit: "tin" }])
    expect(total(book)).toBe(16)
    book.editTable("prices", [{ ...price, item: "paint", unit: "each" }])
    expect(total(book)).toBe(0)
    expect(unmet(book)).toContain(
      'The price of paint is by "each", which this list does not count it by. Give it by tin.',
    )
  })

  test("what the workbook counts itself, what is there twice and a price that cannot be read are named", () => {
    const { book } = openBook(definition)
    book.editTable("own_things", [
      { item: " Screw ", quantity: "5", unit: "", price: "" },
      { item: "lamp", quantity: "1", unit: "", price: "much" },
      { item: "Lamps", quantity: "4", unit: "", price: "" },
      { item: "", quantity: "4", unit: "", price: "" },
      { item: "nothing", quantity: "0", unit: "", price: "" },
    ])
    expect(lineOf(book, "lamp")).toMatchObject({ quantity: 1, price_unit: "no price" })
    expect([lineOf(book, "Lamps"), lineOf(book, "Screw"), lineOf(book, "nothing")]).toEqual([
      undefined,
      undefined,
      undefined,
    ])
    expect(unmet(book).filter((says) => /Screw|[Ll]amp/.test(says))).toEqual([
      "Screw is counted by this workbook already: call your own line something else.",
      'The price "much" of lamp cannot be read and is left out. Write an amount, as "12.50", or leave it empty.',
      "Lamps is twice among your own things: the first is used. Write how many you need in one line.",
    ])
  })
})
