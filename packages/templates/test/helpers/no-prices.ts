import type { Section } from "@pegbook/engine"
import { buyingRules, yourPrices } from "../../src/parts/your-prices.ts"

/** What timber is priced by, for a small workbook of some parts; nothing is entered. */
export const noPrices: Section = {
  id: "prices",
  title: "Prices",
  says: "What the yard asks.",
  entries: [yourPrices([]), buyingRules],
}
