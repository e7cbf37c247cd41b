import type { Section } from "@pegbook/engine"
import type { BoughtThing } from "../solvers/bought-things.ts"
import { buyListReads, solveBuyList } from "../solvers/buy-list.ts"
import { ARITHMETIC, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"

/**
 * What is bought, and what it costs by the user's own prices.
 *
 * Needs: stock_to_buy, what the things name, platform_area, rounding_tolerance.
 */
export function pricesOf(things: readonly BoughtThing[]): Section {
  return {
    id: "prices",
    title: "Buying list and cost",
    says: "Everything to buy. Enter what your own yard asks; no price is known to this workbook.",
    entries: [
      {
        kind: "table",
        name: "prices",
        label: "Your prices",
        rows: { kind: "input", most: 200, default: [] },
        why: `Ask at your yard. Call timber by its size, and the rest: ${things.map(({ item }) => item).join(", ")}.`,
        sources: [USER],
        columns: [
          {
            name: "item",
            label: "What",
            measure: "text",
            why: "The timber's size, or the name of the thing as on the list.",
            sources: [USER],
          },
          {
            name: "length",
            label: "Length",
            measure: "text",
            why: "Of timber: the length sold, with its unit. Left empty, the price holds for every length.",
            sources: [USER],
          },
          {
            name: "unit",
            label: "By",
            measure: "text",
            why: "What the price is for: each, box, ft, ft2, yd3.",
            sources: [USER],
          },
          {
            name: "price",
            label: "Price",
            measure: "money",
            why: "Without the tax that is added below.",
            sources: [USER],
          },
        ],
      },
      {
        kind: "table",
        name: "buy_list",
        label: "To buy",
        rows: { kind: "solved", from: buyListReads(things), solve: solveBuyList(things) },
        why: "Take it to the yard. What has no price yet is on it too, and is not in the sum.",
        sources: [ARITHMETIC, USER],
        columns: [
          {
            name: "item",
            label: "What",
            measure: "text",
            why: "What to ask for.",
            sources: [ARITHMETIC],
          },
          {
            name: "length",
            label: "Length",
            measure: "length",
            why: "Of timber: the length sold. Nothing for what has no length.",
            sources: [ARITHMETIC],
          },
          {
            name: "quantity",
            label: "How much",
            measure: "ratio",
            why: "With the spare that was added, in the unit beside it.",
            sources: [ARITHMETIC],
          },
          {
            name: "unit",
            label: "Unit",
            measure: "text",
            why: "The unit of your price, where it is one of quantity.",
            sources: [USER],
          },
          {
            name: "packs",
            label: "Packs",
            measure: "count",
            why: "Where it is sold in packs: whole ones.",
            sources: [ARITHMETIC],
          },
          {
            name: "bought",
            label: "Times the price",
            measure: "ratio",
            why: "How many of what the price is for.",
            sources: [ARITHMETIC],
          },
          {
            name: "price_unit",
            label: "Priced by",
            measure: "text",
            why: "From your prices.",
            sources: [USER],
          },
          {
            name: "price",
            label: "Price",
            measure: "money",
            why: "From your prices; nothing where there is none.",
            sources: [USER],
          },
          {
            name: "cost",
            label: "Cost",
            measure: "money",
            formula: "bought * price",
            why: "Not rounded here: money is rounded once, in the last line.",
            sources: [ARITHMETIC],
          },
        ],
      },
      {
        kind: "formula",
        name: "unpriced_count",
        label: "Things without a price",
        measure: "count",
        formula: 'COUNTIF(buy_list.price_unit; "no price")',
        why: "They are on the list but not in the sums below, which are too low by as much.",
        sources: [ARITHMETIC],
      },
      {
        kind: "formula",
        name: "materials_cost",
        label: "Materials",
        measure: "money",
        formula: "SUM(buy_list.cost)",
        why: "All that has a price.",
        sources: [ARITHMETIC],
      },
      {
        kind: "input",
        name: "contingency",
        label: "For what goes wrong",
        measure: "share",
        default: "10 %",
        least: "0 %",
        most: "100 %",
        why: "A board that split, a bit that broke, the trip for what was forgotten.",
        sources: [USER, practice("a tenth for surprises")],
      },
      {
        kind: "formula",
        name: "contingency_cost",
        label: "That much money",
        measure: "money",
        formula: "materials_cost * contingency",
        why: "On the materials.",
        sources: [ARITHMETIC],
      },
      {
        kind: "input",
        name: "tax_rate",
        label: "Sales tax",
        measure: "share",
        default: "0 %",
        least: "0 %",
        most: "50 %",
        why: "Where your prices are without it. It is added to the materials and to what is set aside.",
        sources: [USER],
      },
      {
        kind: "formula",
        name: "tax_cost",
        label: "Tax",
        measure: "money",
        formula: "(materials_cost + contingency_cost) * tax_rate",
        why: "What is set aside is spent on taxed things too.",
        sources: [ARITHMETIC],
      },
      {
        kind: "figure",
        name: "money_step",
        label: "Smallest coin",
        measure: "money",
        value: "0.01",
        why: "The total is rounded to it, once.",
        sources: [practice("money is rounded to the hundredth")],
      },
      {
        kind: "formula",
        name: "total_cost",
        label: "In all",
        measure: "money",
        formula:
          "ROUND((materials_cost + contingency_cost + tax_cost) / money_step + rounding_tolerance; 0) * money_step",
        why: "Rounded here and nowhere before, half a coin upwards: rounding line by line would drift.",
        sources: [ARITHMETIC],
      },
      {
        kind: "formula",
        name: "cost_per_area",
        label: "For each square foot or metre",
        measure: "money_per_area",
        formula: "total_cost / platform_area",
        why: "To compare with another size, or with what a builder asks.",
        sources: [ARITHMETIC],
      },
    ],
  }
}
