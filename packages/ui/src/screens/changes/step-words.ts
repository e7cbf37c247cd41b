import { type Change, type HistoryStep, type OwnEntry, ownName, shownAs } from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"
import { rowIn, withoutRow } from "../../bridge/walk.ts"
import { spoken } from "../../text/spoken.ts"
import { progressWords } from "./progress-words.ts"
import { rowsWords } from "./rows-words.ts"
import { shownText } from "./shown-text.ts"

/** What the words lean on: labels, what a template starts with, and the titles of scenarios and stages. */
export type Named = Pick<Sheet, "has" | "label" | "entry" | "scenarios" | "originalRows" | "definition">

/** The most changes of one step that are told one by one. */
const TOLD = 3

/** What a step did, in words: "Platform length: 18 ft → 20 ft". */
export function stepWords(step: HistoryStep, named: Named): string {
  const madeCopy = step.changes.some((change) => change.of === "scenario")
  // Who copies or deletes a scenario goes over to another by that; it goes without saying.
  const told = step.changes.filter((change) => change.of !== "current" || !madeCopy)
  const renamed = renameWords(told)
  if (renamed !== undefined) return renamed
  const words = told.slice(0, TOLD).map((change) => changeWords(change, named))
  if (told.length > TOLD) words.push(spoken.changes.andMore(told.length - TOLD))
  return words.length === 0 ? spoken.changes.nothing : words.join("; ")
}

/** Of a step that gave an own entry another name: that alone. All else in it is what leans on the name. */
function renameWords(changes: readonly Change[]): string | undefined {
  const own = changes.filter((change) => change.of === "own")
  const from = own.find(({ to }) => to === null)?.from
  const to = own.find((one) => one.from === null)?.to
  if (from == null || to == null || from.label !== to.label || from.kind !== to.kind) return undefined
  return spoken.changes.ownRenamed(to.label, ownName(from), ownName(to))
}

function changeWords(change: Change, named: Named): string {
  switch (change.of) {
    case "typed": {
      const label = labelOf(change.name, named)
      const before =
        change.from === null ? originalOf(change.name, named) : shownText(change.from, change.name, named)
      return change.to === null
        ? spoken.changes.put(label, shownText(change.from ?? "", change.name, named))
        : spoken.changes.typed(label, before, shownText(change.to, change.name, named))
    }
    case "rows":
      return rowsWords(change, labelOf(change.name, named), named)
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
      return ownWords(change.from, change.to)
    case "progress": {
      const stage = named.definition.stages?.find(({ id }) => id === change.stage)
      return progressWords(change, stage?.title ?? change.stage)
    }
  }
}

function ownWords(from: OwnEntry | null, to: OwnEntry | null): string {
  if (to === null) return spoken.changes.ownRemoved(from?.label ?? "")
  if (from === null) return spoken.changes.ownAdded(to.label)
  const [before, after] = [saidOf(from), saidOf(to)]
  if (before !== after) return spoken.changes.typed(to.label, before, after)
  if (from.label !== to.label) return spoken.changes.ownLabelled(from.label, to.label)
  return spoken.changes.ownChanged(to.label)
}

/** What an own entry is given by: its value, or its formula. */
function saidOf(entry: OwnEntry): string {
  switch (entry.kind) {
    case "input":
      return shownAs(entry.default ?? "", entry.measure) || spoken.row.blank
    case "figure":
      return shownAs(entry.value, entry.measure)
    case "formula":
    case "column":
      return entry.formula
    case "check":
      return spoken.row.against(entry.demand, entry.limit, entry.sense)
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
  return kind === "input" || kind === "figure"
    ? shownText(original ?? "", name, named)
    : spoken.changes.template
}
