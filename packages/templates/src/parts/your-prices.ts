import type { TableEntry } from "@pegbook/engine"
import { plainColumn } from "../columns.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"
import { USER } from "../sources.ts"

/** Columns with the user's word as their source. */
const yours = (name: string, label: string, measure: "text" | "money" | "yes_no" | "ratio", why: string) =>
  plainColumn(name, label, measure, why, USER)

/** What the user's own suppliers ask. A column that an older file does not have is empty, and means what it meant. */
export function yourPrices(things: readonly BoughtThing[]): TableEntry {
  return {
    kind: "table",
    name: "prices",
    label: "Your prices",
    rows: { kind: "input", most: 1000, default: [] },
    why: `Ask at your yard. Call timber by its size, and the rest: ${things.map(({ item }) => item).join(", ")}.`,
    sources: [USER],
    columns: [
      yours("item", "What", "text", "The timber's size, or the name of the thing as on the list."),
      yours(
        "length",
        "Length",
        "text",
        "Of timber: the length sold, with its unit. Left empty, the price holds for every length.",
      ),
      yours("unit", "By", "text", "What the price is for: each, box, ft, ft2, yd3."),
      yours(
        "price",
        "Price",
        "money",
        "Of one unit, or of one pack where the next columns say how many are in it.",
      ),
      yours("supplier", "Supplier", "text", "Who asks it. May be left empty while there is only one."),
      yours(
        "pack",
        "In a pack",
        "text",
        "So many of the unit in one pack, if it is only sold whole. Else empty.",
      ),
      yours(
        "from",
        "From",
        "text",
        "So many packs (units, where there are none) from which this price holds for all of them. Empty: from the first.",
      ),
      yours(
        "date",
        "Asked on",
        "text",
        "Year-month-day, 2027-03-31. Old prices are marked, when today is entered.",
      ),
      yours("lead", "Days to come", "text", "Days from ordering until the goods are there. Empty: none."),
    ],
  }
}

export const ownThings: TableEntry = {
  kind: "table",
  name: "own_things",
  label: "Your own things to buy",
  rows: { kind: "input", most: 200, default: [] },
  why: "What this workbook does not count: a gate hinge, a lamp, a tin of paint. It joins the buying list, the invoices and the cost.",
  sources: [USER],
  columns: [
    yours("item", "What", "text", "What to ask for."),
    yours("quantity", "How many", "ratio", "How many you need, spare and all."),
    yours("unit", "Of", "text", "What you count: each, bag, tin, ft. Left empty: each."),
    yours(
      "price",
      "Price of one",
      "text",
      "In money, without tax. May be left empty, or stand in your prices.",
    ),
  ],
}

export const yourSuppliers: TableEntry = {
  kind: "table",
  name: "suppliers",
  label: "Your suppliers",
  rows: { kind: "input", most: 20, default: [] },
  why: "What each asks for bringing it. A supplier who is only in the prices brings for nothing, and tax is added.",
  sources: [USER],
  columns: [
    yours("supplier", "Supplier", "text", "As in your prices."),
    yours("delivery", "Delivery", "money", "For one delivery, without tax. Nothing if you fetch it."),
    yours(
      "free_from",
      "Free from",
      "text",
      "Goods from which delivery costs nothing. Empty: it always costs.",
    ),
    yours(
      "least_order",
      "Least order",
      "text",
      "What goods have to come to at least. Empty: any order is taken.",
    ),
    yours(
      "tax_included",
      "Tax included",
      "yes_no",
      "Yes: their prices have the tax in them, and none is added.",
    ),
  ],
}

export const buyingRules: TableEntry = {
  kind: "table",
  name: "buying_rules",
  label: "How you buy",
  rows: {
    kind: "input",
    most: 1,
    default: [{ buy_from: "", today: "", price_age: "60", start: "" }],
  },
  why: "One line. Everything in it may be left empty.",
  sources: [USER],
  columns: [
    yours(
      "buy_from",
      "All from",
      "text",
      "One supplier's name, to make a single trip. Empty: whoever is cheapest in all.",
    ),
    yours("today", "Today", "text", "Year-month-day. Empty: no price is called old."),
    yours("price_age", "Old after days", "text", "Prices older than this are marked, to be asked again."),
    yours("start", "Work starts on", "text", "Year-month-day. With it the list says by which day to order."),
  ],
}

export const purchases: TableEntry = {
  kind: "table",
  name: "purchases",
  label: "Bought and used",
  rows: { kind: "input", most: 1000, default: [] },
  why: "What you have, and what you paid for it. The buy list fills this in when you tick something there.",
  sources: [USER],
  columns: [
    yours("item", "What", "text", "As on the list."),
    yours("length", "Length", "text", "Of timber, with its unit. Else empty."),
    yours("unit", "In", "text", "The list's unit when it was bought. Empty: as the list counts it now."),
    yours("bought", "Bought", "ratio", "How much you have bought in all, in that unit: pieces, not packs."),
    yours("paid", "Really paid", "text", "For all of it, with tax. May be left empty."),
    yours("used", "Used", "text", "How much of it is built in. May be left empty."),
  ],
}
