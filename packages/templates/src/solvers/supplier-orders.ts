import type { Solution, SolverGiven } from "@pegbook/engine"
import { keyOf } from "./bought-things.ts"
import { deliveryOf } from "./order-choice.ts"
import { readSuppliers, SUPPLIER_READS } from "./price-offers.ts"

/** How coins are rounded. */
export const ROUNDINGS = ["total", "each invoice", "each line"] as const

/** The names that orders are added up from. */
export const ORDER_READS = [
  ...SUPPLIER_READS,
  "buy_list.supplier",
  "buy_list.cost",
  "buy_list.price_unit",
  "buy_list.lead",
  "tax_rate",
  "money_rounding",
  "cost_lines.step",
] as const

/** Noise of doubles, in coins: halves go up whatever it is. */
const NOISE = 1e-6

/**
 * What is ordered from each supplier, one a row: supplier, lines, goods, taxed_goods, delivery, tax, total, lead. The goods are the sums of the
 * list's costs; tax is on goods and delivery, and nothing where prices have it in them. Tax is rounded by the line or by
 * the invoice where the user says so, half a coin upwards.
 */
export function solveSupplierOrders(given: SolverGiven): Solution {
  const sellers = given.column("buy_list.supplier").map(String)
  const costs = given.column("buy_list.cost").map(Number)
  const units = given.column("buy_list.price_unit").map(String)
  const leads = given.column("buy_list.lead").map(Number)
  const rate = given.number("tax_rate")
  const rounding = given.text("money_rounding")
  const step = Math.max(...given.column("cost_lines.step").map(Number))
  const round = (amount: number): number => Math.floor(amount / step + 0.5 + NOISE) * step
  const priced = sellers.flatMap((supplier, at) =>
    units[at] === "no price" ? [] : [{ supplier, cost: costs[at] ?? 0, lead: leads[at] ?? 0 }],
  )
  const { rows: suppliers } = readSuppliers(
    given,
    priced.map(({ supplier }) => ({ supplier, item: "", unit: "", value: 0, from: 0, lead: 0 })),
  )
  const rows = suppliers.flatMap((one) => {
    const here = priced.filter(({ supplier }) => keyOf(supplier) === keyOf(one.supplier))
    if (here.length === 0) return []
    const goods = here.reduce((sum, { cost }) => sum + cost, 0)
    const delivery = deliveryOf({ ...one, tax: 0 }, goods)
    const share = one.taxIncluded ? 0 : rate
    const byLine = here.reduce((sum, { cost }) => sum + round(cost * share), 0) + round(delivery * share)
    const whole = (goods + delivery) * share
    const tax = rounding === "each line" ? byLine : rounding === "each invoice" ? round(whole) : whole
    return [
      {
        supplier: one.supplier,
        lines: here.length,
        goods,
        taxed_goods: one.taxIncluded ? 0 : goods,
        delivery,
        tax,
        total: rounding === "each invoice" ? round(goods + delivery) + tax : goods + delivery + tax,
        lead: Math.max(...here.map(({ lead }) => lead)),
      },
    ]
  })
  return { rows, report: { method: "the list's costs, added up by supplier", unmet: [] } }
}
