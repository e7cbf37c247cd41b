import { inLanguage, shownAs } from "@pegbook/engine"
import { spoken } from "../../text/spoken.ts"
import type { TableRow } from "../set-out/set-out-model.ts"
import { lengthTyped } from "./buy-list-model.ts"

/** An amount with what it is counted in; things that are counted one by one need no word for it. */
export function amountOf(amount: string | undefined, unit: string | undefined): string {
  const number = shownAs(amount ?? "", "ratio")
  return unit === "each" || unit === undefined ? number : spoken.buyList.amount(number, inLanguage(unit))
}

/** What a line of the list is called: timber with its length. */
export function lineName(row: TableRow): string {
  const length = shownAs(lengthTyped(row.length), "length")
  return [inLanguage(row.item ?? ""), length].filter((text) => text !== "").join(", ")
}
