import type { Book } from "@pegbook/engine"
import { boughtNote, lineKey } from "../screens/buy-list/buy-list-model.ts"
import { keptRowsOf, type TableRow } from "../screens/set-out/set-out-model.ts"
import type { SinceBought } from "./asked.ts"

const keyOf = (row: TableRow): string => lineKey(row.item ?? "", row.length ?? "")

/** What another scenario lists is noted as bought, in a copy that nobody sees, and held against the list as it is. */
export function sinceBought(book: Book, scenario: string): SinceBought {
  const isThere = book.scenarios().some(({ id }) => id === scenario)
  if (!isThere || !book.has("still_to_buy")) return { toBuy: [], toReturn: [], gone: [], recounted: [] }
  const now = book.scenario.id
  book.switchTo(scenario)
  const bought = listed(book)
  book.switchTo(now)
  const unitNow = new Map(listed(book).map((row) => [keyOf(row), row.unit]))
  const isRecounted = (row: TableRow) => {
    const unit = unitNow.get(keyOf(row))
    return unit !== undefined && unit !== row.unit
  }
  const recounted = bought.filter(isRecounted)
  const unsure = new Set(recounted.map(keyOf))
  book.saveCopy("")
  book.editTable("purchases", bought.map(boughtNote))
  const rows = rowsOf(book, "still_to_buy").filter((row) => !unsure.has(keyOf(row)))
  return {
    // Amounts of two offers add up to a hair less than their sum.
    toBuy: rows.filter(
      ({ finding, short }) => (finding === "to buy" || finding === "not enough") && short !== "0",
    ),
    toReturn: rows.filter(({ finding }) => finding === "more than is needed"),
    gone: rows.filter(({ finding }) => finding === "on the list no more"),
    recounted,
  }
}

/** The buying list, with amounts to the last digit. */
function listed(book: Book): readonly TableRow[] {
  const gets = book.entry("buy_list.gets").readings
  return rowsOf(book, "buy_list").map((row, at) => ({ ...row, gets: String(gets?.[at]?.value ?? "") }))
}

function rowsOf(book: Book, name: string): readonly TableRow[] {
  const { columns, rowCount } = book.table(name)
  return keptRowsOf(columns, rowCount)
}
