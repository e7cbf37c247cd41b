import type { Change, HistoryStep } from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"
import { rowIn, withoutRow } from "../../bridge/walk.ts"
import { en } from "../../text/en.ts"

/** What the words lean on: labels, what a template starts with, and the titles of scenarios. */
export type Named = Pick<Sheet, "has" | "label" | "entry" | "scenarios">

/** The most changes of one step that are told one by one. */
const TOLD = 3

/** What a step did, in words: "Platform length: 18 ft → 20 ft". */
export function stepWords(step: HistoryStep, named: Named): string {
  const madeCopy = step.changes.some((change) => change.of === "scenario")
  // Who copies or deletes a scenario goes over to another by that; it goes without saying.
  const told = step.changes.filter((change) => change.of !== "current" || !madeCopy)
  const words = told.slice(0, TOLD).map((change) => changeWords(change, named))
  if (told.length > TOLD) words.push(en.changes.andMore(told.length - TOLD))
  return words.length === 0 ? en.changes.nothing : words.join("; ")
}

function changeWords(change: Change, named: Named): string {
  switch (change.of) {
    case "typed": {
      const label = labelOf(change.name, named)
      const before = change.from ?? originalOf(change.name, named)
      return change.to === null
        ? en.changes.put(label, change.from ?? en.row.blank)
        : en.changes.typed(label, shown(before), shown(change.to))
    }
    case "rows": {
      const label = labelOf(change.name, named)
      return change.to === null ? en.changes.rowsBack(label) : en.changes.rows(label, change.to.length)
    }
    case "title":
      return en.changes.renamed(change.from, change.to)
    case "scenario":
      if (change.to === null) return en.changes.removed(change.from?.title ?? "")
      return change.to.sealed ? en.changes.sealed(change.to.title) : en.changes.copyMade(change.to.title)
    case "current": {
      const to = named.scenarios().find((one) => one.id === change.to)
      return to === undefined ? en.changes.movedAway : en.changes.moved(to.title)
    }
    case "units":
      return en.changes.units(change.to)
    case "own":
      if (change.to === null) return en.changes.ownRemoved(change.from?.label ?? "")
      return change.from === null
        ? en.changes.ownAdded(change.to.label)
        : en.changes.ownChanged(change.to.label)
  }
}

/** An entry's label; of a cell also its row. What is no longer there is called by its name. */
export function labelOf(name: string, named: Pick<Named, "has" | "label">): string {
  const entry = withoutRow(name)
  const label = named.has(entry) ? named.label(entry) : entry
  const row = rowIn(name)
  return row === undefined ? label : en.over.row(label, row)
}

/** The scenario that a step typed into, where it did. */
export function scenarioOf(step: HistoryStep): string | undefined {
  for (const change of step.changes) if (change.of === "typed" || change.of === "rows") return change.scenario
  return undefined
}

function originalOf(name: string, named: Named): string {
  if (!named.has(name)) return en.changes.template
  const { kind, original } = named.entry(name)
  return kind === "input" || kind === "figure" ? (original ?? "") : en.changes.template
}

function shown(text: string): string {
  return text === "" ? en.row.blank : text
}
