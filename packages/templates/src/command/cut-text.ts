import type { Answer, Case, Plan } from "../cutting/index.ts"
import { oneLine } from "./bad-input.ts"
import { aligned } from "./layout.ts"
import { phrases } from "./phrases.ts"

/** A case's answer as a person reads it: what it comes to, how sure that is, then the cuts in order. */
export function cutText(one: Case, answer: Answer): string[] {
  return [
    `${oneLine(one.id)}${phrases().colon}${phrases().cut.titles[one.kind]}`,
    ...verdict(one, answer).map((line) => `  ${line}`),
    ...answer.notices.map((notice) => `  ${notice}`),
    ...(answer.plan === null ? [] : planText(one, answer.plan)),
  ]
}

function verdict(one: Case, { status, objective, bound, gap, method }: Answer): string[] {
  const says = phrases().cut
  switch (status) {
    case "proven":
      return [says.best(amount(one, objective)), says.method(method)]
    case "unproven":
      return [
        says.notBest(amount(one, objective), amount(one, bound), ((gap ?? 0) * 100).toFixed(2)),
        says.method(method),
      ]
    case "impossible":
      return [says.impossible]
    case "unknown":
      return [says.notFound]
  }
}

/** Sheets are counted, and so are boards whose price is 1; everything else is money, given in hundredths. */
function amount(one: Case, value: number | null): string {
  const says = phrases().cut
  if (value === null) return says.unknown
  if (one.kind === "sheet") return says.sheets(value)
  const counted =
    (one.kind === "cut" || one.kind === "splice") && one.stocks.every(({ price }) => price === 1)
  if (counted && one.stocks.length > 0) return says.boards(value)
  return says.inAll(`${Math.floor(value / 100)}.${String(value % 100).padStart(2, "0")}`)
}

function planText(one: Case, plan: Plan): string[] {
  const says = phrases().cut
  switch (plan.kind) {
    case "cut":
      return [
        ...heading(
          says.buy,
          plan.buy.map(({ stock, quantity }) => [`${quantity} ×`, stock]),
        ),
        ...heading(
          says.inThisOrder,
          plan.boards.map(({ stock, count, pieces }) => boardLine(count, stock, pieces)),
        ),
      ]
    case "splice":
      return [
        ...heading(says.piecesMeet, jointLines(says.skid, plan.joints)),
        ...heading(
          says.inThisOrder,
          plan.boards.map(({ stock, n, pieces }) => boardLine(n, stock, pieces)),
        ),
      ]
    case "sheet":
      return [
        ...heading(says.endJoints, jointLines(says.course, plan.joints)),
        ...heading(
          says.inThisOrder,
          plan.cuts.map((cut) => cutLine(one, cut)),
        ),
      ]
    case "buy":
      return heading(
        says.buy,
        plan.packs.map(({ line, supplier, packSize, packs, offer }) => [
          line,
          says.packs(packs, packSize),
          `${says.from(supplier)}${offer === undefined ? "" : `, offers[${offer}]`}`,
        ]),
      )
  }
}

function heading(title: string, rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return []
  return [
    `  ${title}`,
    ...aligned(
      rows.map((row) => row.map(oneLine)),
      "    ",
    ),
  ]
}

function boardLine(count: number, stock: string, pieces: readonly number[]): string[] {
  return [`${count} ×`, stock, pieces.join(" + ")]
}

function jointLines(line: (number: number) => string, joints: readonly (readonly number[])[]): string[][] {
  return joints.map((at, index) => [line(index + 1), at.length === 0 ? phrases().cut.nowhere : at.join(", ")])
}

type Cut = Extract<Plan, { kind: "sheet" }>["cuts"][number]

function cutLine(one: Case, cut: Cut): string[] {
  const says = phrases().cut
  if ("strip" in cut) return [`${cut.n} ×`, says.strip(cut.strip, cut.cap), cut.cut.join(" + ")]
  const block = cut.block === undefined ? [] : [says.block(cut.block, cut.rip ?? [])]
  const width = one.kind === "sheet" ? one.sheet.width : ""
  return [`${cut.n} ×`, says.sheet(width), [...cut.full.map(String), ...block].join(" + ")]
}
