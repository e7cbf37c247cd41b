import type { Answer, Case, Plan } from "../cutting/index.ts"
import { oneLine } from "./bad-input.ts"
import { aligned } from "./layout.ts"

const TITLES: Readonly<Record<Case["kind"], string>> = {
  cut: "boards to buy and how to cut them",
  splice: "where pieces meet, and how to cut them",
  sheet: "where sheets meet, and how to cut them",
  buy: "what to buy from whom",
}

/** A case's answer as a person reads it: what it comes to, how sure that is, then the cuts in order. */
export function cutText(one: Case, answer: Answer): string[] {
  return [
    `${oneLine(one.id)}: ${TITLES[one.kind]}`,
    ...verdict(one, answer).map((line) => `  ${line}`),
    ...answer.notices.map((notice) => `  ${notice}`),
    ...(answer.plan === null ? [] : planText(one, answer.plan)),
  ]
}

function verdict(one: Case, { status, objective, bound, gap, method }: Answer): string[] {
  switch (status) {
    case "proven":
      return [`${amount(one, objective)}, proven best: nothing comes to less.`, `Method: ${method}.`]
    case "unproven":
      return [
        `${amount(one, objective)}; no plan comes to less than ${amount(one, bound)} (gap ${((gap ?? 0) * 100).toFixed(2)} %).`,
        `Method: ${method}.`,
      ]
    case "impossible":
      return ["There is no plan."]
    case "unknown":
      return ["No plan was found, and none was proven not to exist."]
  }
}

/** Sheets are counted, and so are boards whose price is 1; everything else is money, given in hundredths. */
function amount(one: Case, value: number | null): string {
  if (value === null) return "unknown"
  if (one.kind === "sheet") return value === 1 ? "1 sheet" : `${value} sheets`
  const counted =
    (one.kind === "cut" || one.kind === "splice") && one.stocks.every(({ price }) => price === 1)
  if (counted && one.stocks.length > 0) return value === 1 ? "1 board" : `${value} boards`
  return `${Math.floor(value / 100)}.${String(value % 100).padStart(2, "0")} in all`
}

function planText(one: Case, plan: Plan): string[] {
  switch (plan.kind) {
    case "cut":
      return [
        ...heading(
          "Buy",
          plan.buy.map(({ stock, quantity }) => [`${quantity} ×`, stock]),
        ),
        ...heading(
          "Cut, in this order",
          plan.boards.map(({ stock, count, pieces }) => boardLine(count, stock, pieces)),
        ),
      ]
    case "splice":
      return [
        ...heading("Pieces meet at", jointLines("skid", plan.joints)),
        ...heading(
          "Cut, in this order",
          plan.boards.map(({ stock, n, pieces }) => boardLine(n, stock, pieces)),
        ),
      ]
    case "sheet":
      return [
        ...heading("End joints at", jointLines("course", plan.joints)),
        ...heading(
          "Cut, in this order",
          plan.cuts.map((cut) => cutLine(one, cut)),
        ),
      ]
    case "buy":
      return heading(
        "Buy",
        plan.packs.map(({ line, supplier, packSize, packs, offer }) => [
          line,
          `${packs} × ${packSize === 1 ? "one" : `pack of ${packSize}`}`,
          `from ${supplier}${offer === undefined ? "" : `, offers[${offer}]`}`,
        ]),
      )
  }
}

function heading(title: string, rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return []
  return [
    `  ${title}:`,
    ...aligned(
      rows.map((row) => row.map(oneLine)),
      "    ",
    ),
  ]
}

function boardLine(count: number, stock: string, pieces: readonly number[]): string[] {
  return [`${count} ×`, stock, pieces.join(" + ")]
}

function jointLines(line: string, joints: readonly (readonly number[])[]): string[][] {
  return joints.map((at, index) => [
    `${line} ${index + 1}`,
    at.length === 0 ? "nowhere: one piece" : at.join(", "),
  ])
}

type Cut = Extract<Plan, { kind: "sheet" }>["cuts"][number]

function cutLine(one: Case, cut: Cut): string[] {
  if ("strip" in cut) return [`${cut.n} ×`, `strip ${cut.strip} high, ${cut.cap} long`, cut.cut.join(" + ")]
  const block =
    cut.block === undefined
      ? []
      : [
          `block ${cut.block}, ripped into ${(cut.rip ?? []).map(([height, count]) => `${count} of ${height}`).join(" and ")}`,
        ]
  const width = one.kind === "sheet" ? one.sheet.width : ""
  return [`${cut.n} ×`, `sheet ${width} high`, [...cut.full.map(String), ...block].join(" + ")]
}
