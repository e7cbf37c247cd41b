import { type Change, type HistoryStep, shownAs } from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"
import { rowIn, withoutRow } from "../../bridge/walk.ts"
import { spoken } from "../../text/spoken.ts"

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
  if (told.length > TOLD) words.push(spoken.changes.andMore(told.length - TOLD))
  return words.length === 0 ? spoken.changes.nothing : words.join("; ")
}

function changeWords(change: Change, named: Named): string {
  switch (change.of) {
    case "typed": {
      const label = labelOf(change.name, named)
      const before =
        change.from === null ? originalOf(change.name, named) : shown(change.from, change.name, named)
      return change.to === null
        ? spoken.changes.put(label, shown(change.from ?? "", change.name, named))
        : spoken.changes.typed(label, before, shown(change.to, change.name, named))
    }
    case "rows": {
      const label = labelOf(change.name, named)
      return change.to === null
        ? spoken.changes.rowsBack(label)
        : spoken.changes.rows(label, change.to.length)
    }
    case "title":
      return spoken.changes.renamed(change.from, change.to)
    case "scenario":
      if (change.to === null) return spoken.changes.removed(change.from?.title ?? "")
      return change.to.sealed
        ? spoken.changes.sealed(change.to.title)
        : spoken.changes.copyMade(change.to.title)
    case "current": {
      const to = named.scenarios().find((one) => one.id === change.to)
      return to === undefined ? spoken.changes.movedAway : spoken.changes.moved(to.title)
    }
    case "units":
      return spoken.changes.units(change.to)
    case "own":
      if (change.to === null) return spoken.changes.ownRemoved(change.from?.label ?? "")
      return change.from === null
        ? spoken.changes.ownAdded(change.to.label)
        : spoken.changes.ownChanged(change.to.label)
  }
}

/** An entry's label; of a cell also its row. What is no longer there is called by its name. */
export function labelOf(name: string, named: Pick<Named, "has" | "label">): string {
  const entry = withoutRow(name)
  const label = named.has(entry) ? named.label(entry) : entry
  const row = rowIn(name)
  return row === undefined ? label : spoken.over.row(label, row)
}

/** The scenario that a step typed into, where it did. */
export function scenarioOf(step: HistoryStep): string | undefined {
  for (const change of step.changes) if (change.of === "typed" || change.of === "rows") return change.scenario
  return undefined
}

function originalOf(name: string, named: Named): string {
  if (!named.has(name)) return spoken.changes.template
  const { kind, original } = named.entry(name)
  return kind === "input" || kind === "figure" ? shown(original ?? "", name, named) : spoken.changes.template
}

/** A text that was kept under a name, as it is read. */
function shown(text: string, name: string, named: Pick<Named, "has" | "entry">): string {
  if (text === "") return spoken.row.blank
  const entry = withoutRow(name)
  if (!named.has(entry)) return text
  const { measure, shape } = named.entry(entry)
  return shownAs(text, measure, shape === "list")
}
