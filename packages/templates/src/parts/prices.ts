import type { InputEntry, Section, TableEntry } from "@pegbook/engine"
import { plainColumn } from "../columns.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"
import { buyListReads, solveBuyList } from "../solvers/buy-list.ts"
import { buyingReads } from "../solvers/buying-plan.ts"
import { STILL_READS, solveStillToBuy } from "../solvers/still-to-buy.ts"
import { choiceProof, solveSupplierChoice } from "../solvers/supplier-choice.ts"
import { ORDER_READS, ROUNDINGS, solveSupplierOrders } from "../solvers/supplier-orders.ts"
import { planReads, solveSupplierPlans } from "../solvers/supplier-plans.ts"
import { ARITHMETIC, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import { rowChoice } from "./row-choice.ts"
import { buyingRules, ownThings, purchases, yourPrices, yourSuppliers } from "./your-prices.ts"

/**
 * What is bought, where, and what it costs by the user's own prices; and what of it is bought already.
 *
 * Needs: stock_to_buy, things_by_stage, what the things name, platform_area, rounding_tolerance.
 */
export function pricesOf(things: readonly BoughtThing[]): Section {
  return {
    id: "prices",
    title: "Buying list and cost",
    says: "Everything to buy. Enter what your own yard asks; no price is known to this workbook.",
    entries: [
      ownThings,
      yourPrices(things),
      yourSuppliers,
      buyingRules,
      taxRate,
      rounding,
      supplierChoice(things),
      buyList(things),
      supplierPlans(things),
      supplierOrders,
      contingency,
      {
        kind: "formula",
        name: "materials_cost",
        label: "Materials",
        measure: "money",
        formula: "SUM(buy_list.cost)",
        why: "All that has a price.",
        sources: [ARITHMETIC],
      },
      costLines,
      {
        kind: "formula",
        name: "total_cost",
        label: "Cost in all",
        measure: "money",
        formula: coins("SUM(cost_lines.amount)"),
        why: "Half a coin goes up. Where you chose to round the total, it is rounded here and nowhere before: rounding line by line would drift.",
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
      purchases,
      stillToBuy,
      spent,
    ],
  }
}

/** A formula's amount in whole coins, half a coin upwards. */
function coins(amount: string): string {
  return `ROUND((${amount}) / MAX(cost_lines.step) + rounding_tolerance; 0) * MAX(cost_lines.step)`
}

const taxRate: InputEntry = {
  kind: "input",
  name: "tax_rate",
  label: "Sales tax",
  measure: "share",
  default: "0 %",
  least: "0 %",
  most: "50 %",
  why: "Where your prices are without it. It is added to goods, delivery and what is set aside.",
  sources: [USER],
}

const rounding: InputEntry = {
  kind: "input",
  name: "money_rounding",
  label: "Coins are rounded on",
  measure: "text",
  default: "total",
  choices: ROUNDINGS,
  why: "Some tills round every line, some each invoice. Look at an old receipt; it is a matter of cents.",
  sources: [USER],
}

const contingency: InputEntry = {
  kind: "input",
  name: "contingency",
  label: "For what goes wrong",
  measure: "share",
  default: "10 %",
  least: "0 %",
  most: "100 %",
  why: "A board that split, a bit that broke, the trip for what was forgotten.",
  sources: [USER, practice("a tenth for surprises")],
}

function supplierChoice(things: readonly BoughtThing[]): TableEntry {
  return {
    kind: "table",
    name: "supplier_choice",
    label: "What is taken from whom",
    rows: {
      kind: "solved",
      from: buyingReads(things),
      solve: solveSupplierChoice(things),
      proof: choiceProof(things),
    },
    why: "The choice that the list, the invoices and the plans are made from. What is sold by measure is taken as needed, or in whole units where that pays.",
    sources: [ARITHMETIC, USER],
    columns: [
      plainColumn("plan", "Plan", "text", "Suppliers mixed, or one alone.", ARITHMETIC),
      plainColumn("line", "Line", "count", "Of what is needed, timber first.", ARITHMETIC),
      plainColumn("what", "What", "text", "What is bought.", ARITHMETIC),
      plainColumn("offer", "Offer", "count", "Which of those for this thing in your prices.", USER),
      plainColumn("supplier", "From", "text", "Empty: nobody was named.", USER),
      plainColumn("packs", "So many", "ratio", "Packs, or units of the price.", ARITHMETIC),
    ],
  }
}

function buyList(things: readonly BoughtThing[]): TableEntry {
  return {
    kind: "table",
    name: "buy_list",
    label: "To buy",
    rows: { kind: "solved", from: buyListReads(things), solve: solveBuyList(things) },
    why: "Take it to the yard. What has no price yet is on it too, and is not in the sum.",
    sources: [ARITHMETIC, USER],
    columns: [
      plainColumn("item", "What", "text", "What to ask for.", ARITHMETIC),
      plainColumn(
        "length",
        "Length",
        "length",
        "Of timber: the length sold. Nothing for what has no length.",
        ARITHMETIC,
      ),
      plainColumn(
        "group",
        "Found under",
        "text",
        "Where it stands in a shop or a yard.",
        practice("the order of a walk through a yard"),
      ),
      plainColumn("stage", "First used in", "text", "The step of the work that wants it first.", ARITHMETIC),
      plainColumn("stages", "Used in", "text", "Every step of the work that uses it.", ARITHMETIC),
      plainColumn(
        "supplier",
        "From",
        "text",
        "Who sells it, by the plan in force. Empty: nobody was named.",
        USER,
      ),
      plainColumn(
        "take",
        "Take",
        "ratio",
        "What to put on the cart: whole packs where it is sold in packs.",
        ARITHMETIC,
      ),
      plainColumn("take_unit", "Of", "text", "What that many are of.", USER),
      plainColumn(
        "quantity",
        "How much",
        "ratio",
        "With the spare that was added, in the unit beside it.",
        ARITHMETIC,
      ),
      plainColumn("unit", "Unit", "text", "The unit of your price, where it is one of quantity.", USER),
      plainColumn("packs", "Packs", "count", "Where it is sold in packs: whole ones.", ARITHMETIC),
      plainColumn(
        "pack_size",
        "In a pack",
        "ratio",
        "In the unit of the quantity. Nothing for what is measured off.",
        USER,
      ),
      plainColumn(
        "gets",
        "You get",
        "ratio",
        "In the unit of the quantity: packs times what is in them.",
        ARITHMETIC,
      ),
      plainColumn(
        "left",
        "Left over",
        "ratio",
        "What no step of the work uses: spare, and the rest of the last pack. Of timber, whole pieces.",
        ARITHMETIC,
      ),
      plainColumn("bought", "Times the price", "ratio", "How many of what the price is for.", ARITHMETIC),
      plainColumn("price_unit", "Priced by", "text", "From your prices.", USER),
      plainColumn(
        "price",
        "Price",
        "money",
        "From your prices, at the number bought; nothing where there is none.",
        USER,
      ),
      {
        name: "cost",
        label: "Cost",
        measure: "money",
        formula: `IF(money_rounding = "each line"; ${coins("bought * price")}; bought * price)`,
        why: "In whole coins only where every line is rounded.",
        sources: [ARITHMETIC],
      },
      plainColumn(
        "lead",
        "Order days before",
        "ratio",
        "Order at least so many days before the day that you need it.",
        USER,
      ),
      plainColumn(
        "order_by",
        "Order by",
        "text",
        "For the day that the work starts; empty until you entered it.",
        USER,
      ),
      plainColumn(
        "assumed",
        "Taken for granted",
        "text",
        "What was assumed where your prices leave it open.",
        ARITHMETIC,
      ),
      plainColumn(
        "finding",
        "Finding",
        "text",
        "What is the matter with its price, where something is.",
        ARITHMETIC,
      ),
    ],
  }
}

function supplierPlans(things: readonly BoughtThing[]): TableEntry {
  return {
    kind: "table",
    name: "supplier_plans",
    label: "Whom to buy from",
    rows: { kind: "solved", from: planReads(things), solve: solveSupplierPlans(things) },
    why: "The least in all, with delivery and tax, against all from one supplier. Fewer trips may be worth more than the saving.",
    sources: [ARITHMETIC, USER],
    columns: [
      plainColumn(
        "plan",
        "Plan",
        "text",
        "Mixed, from one supplier alone, or the best that needs one trip only.",
        ARITHMETIC,
      ),
      plainColumn("from", "All from", "text", "The one supplier; empty where they are mixed.", USER),
      plainColumn("orders", "Orders", "count", "Suppliers to go to, or deliveries to wait for.", ARITHMETIC),
      plainColumn(
        "missing",
        "Without a price",
        "count",
        "Things on the list that this plan has no price for; its total is too low by them.",
        ARITHMETIC,
      ),
      plainColumn("goods", "Goods", "money", "Before delivery and tax.", ARITHMETIC),
      plainColumn("delivery", "Delivery", "money", "What they charge for bringing it.", USER),
      plainColumn(
        "tax",
        "Tax",
        "money",
        "On goods and delivery, where prices are without it. Not rounded.",
        ARITHMETIC,
      ),
      plainColumn(
        "total",
        "Paid",
        "money",
        "Goods, delivery and tax, before coins are rounded and without what is set aside.",
        ARITHMETIC,
      ),
      plainColumn(
        "saving",
        "The mixed plan saves",
        "money",
        "Against this plan. Nothing where this plan lacks things: the totals are of different things.",
        ARITHMETIC,
      ),
      plainColumn("chosen", "In force", "count", "1: the list is made by this plan.", USER),
      plainColumn("finding", "Finding", "text", "What it lacks, or which supplier it is.", ARITHMETIC),
    ],
  }
}

const supplierOrders: TableEntry = {
  kind: "table",
  name: "supplier_orders",
  label: "What each supplier gets",
  rows: { kind: "solved", from: ORDER_READS, solve: solveSupplierOrders },
  why: "One invoice a row, as the plan in force has it.",
  sources: [ARITHMETIC, USER],
  columns: [
    plainColumn("supplier", "Supplier", "text", "Empty: nobody was named.", USER),
    plainColumn("lines", "Lines", "count", "Of the list.", ARITHMETIC),
    plainColumn("goods", "Goods", "money", "Sum of the lines' costs.", ARITHMETIC),
    plainColumn(
      "taxed_goods",
      "Goods that tax is added to",
      "money",
      "Nothing where the prices have it in them.",
      USER,
    ),
    plainColumn(
      "delivery",
      "Delivery",
      "money",
      "Free where the goods reach what your suppliers' table says.",
      USER,
    ),
    plainColumn(
      "tax",
      "Tax",
      "money",
      "On goods and delivery. Ask whether delivery is taxed where you live.",
      USER,
      practice("delivery is taxed like goods"),
    ),
    plainColumn("total", "To pay", "money", "What the invoice should come to.", ARITHMETIC),
    plainColumn("lead", "Order days before", "ratio", "The longest wait among its lines.", USER),
  ],
}

const setAside = "materials_cost * contingency"
const taxAside = "contingency * SUM(supplier_orders.taxed_goods) * tax_rate"
const inCoins = (amount: string) => `IF(money_rounding = "total"; ${amount}; ${coins(amount)})`

const COSTS = [
  {
    row: "materials",
    formula: "materials_cost",
    lines: 'COUNT(buy_list.cost) - COUNTIF(buy_list.price_unit; "no price")',
  },
  {
    row: "without a price",
    formula: "0 * materials_cost",
    lines: 'COUNTIF(buy_list.price_unit; "no price")',
  },
  { row: "delivery", formula: "SUM(supplier_orders.delivery)", lines: "COUNT(supplier_orders.delivery)" },
  { row: "set aside", formula: inCoins(setAside), lines: "0" },
  {
    row: "tax",
    formula: `SUM(supplier_orders.tax) + ${inCoins(taxAside)}`,
    lines: "COUNT(supplier_orders.tax)",
  },
] as const

const costLines: TableEntry = {
  kind: "table",
  name: "cost_lines",
  label: "What the sum is made of",
  rows: { kind: "figures" },
  why: "Things without a price are counted, but are in no sum: the total is too low by them.",
  sources: [ARITHMETIC],
  columns: [
    {
      name: "line",
      label: "For",
      measure: "text",
      values: COSTS.map(({ row }) => row),
      why: "What the money goes to.",
      sources: [ARITHMETIC],
    },
    {
      name: "lines",
      label: "How many",
      measure: "count",
      formula: rowChoice(
        "line",
        COSTS.map(({ row, lines }) => ({ row, formula: lines })),
      ),
      why: "Lines of the list, or invoices.",
      sources: [ARITHMETIC],
    },
    {
      name: "amount",
      label: "Money",
      measure: "money",
      formula: rowChoice("line", COSTS),
      why: "What is set aside is spent on taxed things too.",
      sources: [ARITHMETIC],
    },
    {
      name: "step",
      label: "Smallest coin",
      measure: "money",
      values: COSTS.map(() => "0.01"),
      why: "What amounts are rounded to; the greatest of the column is taken.",
      sources: [practice("money is rounded to the hundredth")],
    },
  ],
}

const stillToBuy: TableEntry = {
  kind: "table",
  name: "still_to_buy",
  label: "Bought, short and left",
  rows: { kind: "solved", from: STILL_READS, solve: solveStillToBuy },
  why: "Your notes held against the list as it is now: change the size, and it says what is short and what can go back.",
  sources: [ARITHMETIC, USER],
  columns: [
    plainColumn("item", "What", "text", "As on the list.", ARITHMETIC),
    plainColumn("length", "Length", "length", "Of timber.", ARITHMETIC),
    plainColumn("stage", "First used in", "text", "The step of the work that wants it first.", ARITHMETIC),
    plainColumn("stages", "Used in", "text", "Every step of the work that uses it.", ARITHMETIC),
    plainColumn("unit", "In", "text", "What the next are counted in.", ARITHMETIC),
    plainColumn("need", "Needed", "ratio", "By the list, with the spare.", ARITHMETIC),
    plainColumn("got", "Bought", "ratio", "By your notes.", USER),
    plainColumn("short", "Still short", "ratio", "Needed less bought.", ARITHMETIC),
    plainColumn("used", "Used", "ratio", "By your notes.", USER),
    plainColumn("at_hand", "At hand", "ratio", "Bought less used.", ARITHMETIC),
    plainColumn(
      "returns",
      "May go back",
      "ratio",
      "Whole packs beyond the need, none of them opened. Ask first whether they take it back.",
      ARITHMETIC,
      practice("shops take back whole packs only"),
    ),
    plainColumn(
      "planned",
      "By the plan",
      "money",
      "What the plan has for what is bought so far.",
      ARITHMETIC,
    ),
    plainColumn("paid", "Really paid", "money", "By your notes.", USER),
    plainColumn("finding", "Finding", "text", "Where it stands.", ARITHMETIC),
  ],
}

const SPENT = [
  { row: "paid so far", formula: "SUM(still_to_buy.paid)" },
  { row: "planned for the same", formula: "SUM(still_to_buy.planned)" },
  { row: "still to buy, by the plan", formula: "materials_cost - SUM(still_to_buy.planned)" },
] as const

const spent: TableEntry = {
  kind: "table",
  name: "spent",
  label: "Spent and to spend",
  rows: { kind: "figures" },
  why: "What you paid may have tax and delivery in it; the plan's lines are the goods alone.",
  sources: [ARITHMETIC, USER],
  columns: [
    {
      name: "line",
      label: "Money",
      measure: "text",
      values: SPENT.map(({ row }) => row),
      why: "Your notes against the plan.",
      sources: [ARITHMETIC],
    },
    {
      name: "amount",
      label: "How much",
      measure: "money",
      formula: rowChoice("line", SPENT),
      why: "Added up over the list.",
      sources: [ARITHMETIC],
    },
  ],
}
