import type { Stage, StageValue } from "../definition/stage.ts"

const IN_TEXT = /\{([a-z0-9_.]+)\}/g

/** Every name that a stage reads: in its texts, its checks, its needs, and its people and time. */
function namesOf(stage: Stage): readonly string[] {
  const ofValue = (value: StageValue | undefined): readonly string[] => {
    if (value === undefined) return []
    return typeof value === "string" ? [value] : [value.column, value.where]
  }
  const { title, says, hold, tools, cautions, waits = [], weather, safeStop, checks = [], needs } = stage
  const texts = [title, ...says, hold, ...tools, ...cautions, ...waits, weather, safeStop]
  return [
    ...texts.flatMap((text) => [...(text ?? "").matchAll(IN_TEXT)].map((match) => match[1] ?? "")),
    ...checks,
    ...needs.flatMap((need) =>
      "amount" in need
        ? ofValue(need.amount)
        : [need.table, ...[need.where, ...need.columns].map((column) => `${need.table}.${column}`)],
    ),
    ...[stage.people, stage.hours, stage.days].flatMap(ofValue),
  ]
}

/** Throws on a stage that reads what is not there: that is the template author's mistake. */
export function checkStage(owner: string, stage: Stage, has: (name: string) => boolean): void {
  for (const name of namesOf(stage)) {
    if (!has(name)) throw new Error(`${owner}: stage "${stage.id}" names nothing in the workbook: "${name}"`)
  }
}
