import type { CheckEntry, EntryKind } from "../definition/entry.ts"
import type { SolverReport } from "../definition/solver.ts"
import { printWithValues } from "../formula/print.ts"
import type { GraphValue } from "../graph/graph.ts"
import { inLanguage, languageInForce } from "../language/in-force.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { acceptedText } from "./accepted-text.ts"
import type { Calculation } from "./calculation.ts"
import { viewCheck } from "./check-view.ts"
import { listReading } from "./compare.ts"
import { type Compiled, rowsNode } from "./compile.ts"
import type { Faults } from "./faults.ts"
import type { Holding } from "./holding.ts"
import { type Item, isList, isTyped, kindOf } from "./outline.ts"
import { figureCell, readOver, typedOver } from "./overrides.ts"
import type { FormulaNode } from "./read-formula.ts"
import { originalText, type Value } from "./typed.ts"
import type { CheckView, EntryView, Override, Reading, Working } from "./views.ts"

/** Columns up to this long are written out value by value. */
const MOST_WRITTEN_OUT = 24

type ValueItem = Item & { readonly kind: "value" }

/** Makes what a screen reads of an entry, from the graph as it stands. */
export class Viewer {
  readonly #compiled: Compiled
  readonly #calculation: Calculation
  readonly #faults: Faults
  readonly #holding: Holding
  readonly #system: UnitSystem
  readonly #typed: ReadonlyMap<string, string>
  #cells: Map<string, Map<string, Override[]>> | undefined

  constructor(
    compiled: Compiled,
    calculation: Calculation,
    faults: Faults,
    holding: Holding,
    system: UnitSystem,
    typed: ReadonlyMap<string, string>,
  ) {
    this.#compiled = compiled
    this.#calculation = calculation
    this.#faults = faults
    this.#holding = holding
    this.#system = system
    this.#typed = typed
  }

  view(name: string): EntryView {
    const item = this.#item(name)
    switch (item.kind) {
      case "table":
        return this.#viewTable(name, item)
      case "column":
        return this.#viewColumn(name, item)
      case "value":
        return item.entry.kind === "check"
          ? this.#viewCheck(name, item, item.entry)
          : this.#viewValue(name, item)
    }
  }

  /** The reading of one value: an entry, a list, a column of one row, or a part of a check; null for anything else. */
  reading(id: string): Reading | null {
    const item = this.#compiled.outline.get(id)
    if (item?.kind === "value" && isList(item.entry)) {
      return listReading(this.#calculation.column(id), item, this.#holding, this.#system)
    }
    if (item?.kind === "column") {
      const [value, ...more] = this.#calculation.column(id)
      return value === undefined || more.length > 0
        ? null
        : this.#holding.reading(value, item.entry.measure, this.#system)
    }
    if (item === undefined ? !this.#compiled.formulas.has(id) : item.kind !== "value") return null
    return this.#holding.reading(this.#calculation.scalar(id), this.#measureOf(id), this.#system)
  }

  check(name: string): CheckView {
    const item = this.#item(name)
    if (item.kind !== "value" || item.entry.kind !== "check") throw new RangeError(`${name} is not a check`)
    return viewCheck(item.entry, this.#calculation, this.#faults, (id) => this.reading(id))
  }

  working(name: string, row: number): Working | undefined {
    const nodes = this.#nodesOf(name)
    if (nodes.length === 0) return undefined
    const print = (node: FormulaNode): string =>
      node.ast === undefined
        ? node.text
        : printWithValues(node.ast, (used) => this.#textOf(used, node.table, row))
    return {
      formula: nodes.map((node) => node.text).join(this.#joint(name)),
      withValues: nodes.map(print).join(this.#joint(name)),
      leansOn: this.leansOn(name),
    }
  }

  /** Public names, in the order of the formula. */
  leansOn(name: string): readonly string[] {
    const item = this.#item(name)
    const names = this.#nodesOf(name).flatMap((node) =>
      node.names.map((used) => {
        const own = `${node.table}.${used}`
        return node.table !== undefined && this.#compiled.outline.has(own) ? own : used
      }),
    )
    if (item.kind === "table" && item.entry.rows.kind === "solved") names.push(...item.entry.rows.from)
    // A column leans on its table where a reader has something to follow there: what counts the rows, or the rows typed.
    if (
      item.kind === "column" &&
      (item.table.rows.kind === "input" || this.leansOn(item.table.name).length > 0)
    ) {
      names.push(item.table.name)
    }
    return [...new Set(names)].filter((used) => used !== name)
  }

  #item(name: string): Item {
    const item = this.#compiled.outline.get(name)
    if (item === undefined) throw new RangeError(`there is no entry ${name}`)
    return item
  }

  /** The formulas behind a name: a check has two. */
  #nodesOf(name: string): readonly FormulaNode[] {
    const item = this.#item(name)
    const isCheck = item.kind === "value" && item.entry.kind === "check"
    const ids = isCheck
      ? [`${name}.demand`, `${name}.limit`]
      : [item.kind === "table" ? rowsNode(name) : name]
    return ids.map((id) => this.#compiled.formulas.get(id)).filter((node) => node !== undefined)
  }

  #joint(name: string): string {
    const item = this.#item(name)
    const sense = item.kind === "value" && item.entry.kind === "check" ? item.entry.sense : "at_most"
    return sense === "at_most" ? " ≤ " : " ≥ "
  }

  #textOf(used: string, table: string | undefined, row: number): string | undefined {
    const own = table === undefined ? undefined : this.#compiled.outline.get(`${table}.${used}`)
    if (own?.kind === "column") {
      const value = this.#calculation.column(`${table}.${used}`)[row - 1]
      return value === undefined
        ? undefined
        : (this.#holding.reading(value, own.entry.measure, this.#system)?.text ?? "—")
    }
    if (this.#compiled.outline.get(used)?.kind === "column") return this.#columnText(used)
    return this.reading(used)?.text ?? "—"
  }

  /** A whole column, as the values that a reader would add up by hand; the middle of a long one is left out. */
  #columnText(name: string): string {
    const values = this.#calculation.column(name)
    const measureId = this.#measureOf(name)
    const text = (value: GraphValue): string =>
      this.#holding.reading(value, measureId, this.#system)?.text ?? "—"
    const { phrases } = languageInForce()
    if (values.length === 0) return phrases.noRows
    if (values.length <= MOST_WRITTEN_OUT) return values.map(text).join("; ")
    const first = values.slice(0, MOST_WRITTEN_OUT / 2).map(text)
    return `${first.join("; ")}; … ${phrases.values(values.length)}`
  }

  #measureOf(id: string): MeasureId {
    const item = this.#compiled.outline.get(id)
    if (item?.kind === "value") return item.entry.kind === "check" ? "ratio" : item.entry.measure
    if (item?.kind === "column") return item.entry.measure
    const part = /^(.+)\.(demand|limit)$/.exec(id)?.[1]
    const check = part === undefined ? undefined : this.#compiled.outline.get(part)
    return check?.kind === "value" ? check.entry.measure : "ratio"
  }

  #common(
    name: string,
    item: Item,
    kind: EntryKind,
    shape: EntryView["shape"],
    problems: EntryView["problems"],
  ): Omit<EntryView, "measure"> {
    const waits = problems.some((problem) => problem.code === "needs_entry")
    return {
      name,
      label: item.entry.label,
      kind,
      shape,
      section: item.section,
      why: item.entry.why,
      sources: item.entry.sources,
      cautions: item.entry.cautions ?? [],
      state: problems.length === 0 ? "ok" : waits ? "needs_entry" : "problem",
      changed: false,
      problems,
    }
  }

  #viewValue(name: string, item: ValueItem): EntryView {
    const { entry } = item
    if (entry.kind === "check") throw new RangeError(`${name} is a check`)
    const problems = this.#faults.at(name)
    const reading = this.reading(name)
    const view: EntryView = {
      ...this.#common(name, item, entry.kind, isList(entry) ? "list" : "one", problems),
      measure: entry.measure,
      ...(reading === null ? {} : { reading }),
      ...(entry.kind === "formula" ? { formula: entry.formula } : {}),
    }
    if (!isTyped(entry)) {
      const typed = this.#typed.get(name)
      if (typed === undefined || this.#compiled.problems.has(name)) return view
      const worked = this.#calculation.workedOut(name)
      const original = this.#holding.reading(worked, entry.measure, this.#system)
      return { ...view, typed, changed: true, overrides: [{ typed, original }] }
    }
    const original = originalText(entry)
    const typed = this.#typed.get(name) ?? original
    const accepts = entry.kind === "input" ? acceptedText(entry, this.#system) : undefined
    return {
      ...view,
      typed,
      original,
      changed: typed !== original,
      ...(entry.kind === "figure" && typed !== original
        ? { overrides: [{ typed, original: this.#readingOf(name, original) }] }
        : {}),
      ...(entry.kind === "input" && entry.choices !== undefined ? { choices: entry.choices } : {}),
      ...(entry.kind === "input" && entry.blank !== undefined ? { blank: entry.blank } : {}),
      ...(accepts === undefined ? {} : { accepts }),
      ...(isList(entry) ? { readings: this.#readings(name, entry.measure) } : {}),
    }
  }

  #viewCheck(name: string, item: ValueItem, entry: CheckEntry): EntryView {
    const check = this.check(name)
    const parts = [...this.#faults.at(`${name}.demand`), ...this.#faults.at(`${name}.limit`)]
    const problems = check.verdict === "needs_entry" || check.verdict === "no_verdict" ? parts : []
    const reading = this.reading(name)
    return {
      ...this.#common(name, item, "check", "one", problems),
      measure: entry.measure,
      ...(reading === null ? {} : { reading }),
      formula: this.#nodesOf(name)
        .map((node) => node.text)
        .join(this.#joint(name)),
      check,
    }
  }

  #viewTable(name: string, item: Item & { readonly kind: "table" }): EntryView {
    const { rows } = item.entry
    const kind = kindOf(item)
    const columns = item.entry.columns.flatMap((column) => this.#faults.at(`${name}.${column.name}`))
    const report = this.#calculation.report(name)
    const reached = report === undefined ? undefined : this.#reached(report)
    return {
      ...this.#common(name, item, kind, "table", [...this.#faults.ofTable(name), ...columns]),
      measure: "count",
      changed: this.#cellsOver(name).size > 0,
      reading: countReading(this.#calculation.rows(name)),
      ...(rows.kind === "formula" ? { formula: rows.formula } : {}),
      ...(report === undefined ? {} : { report: reportInLanguage(report) }),
      ...(reached === undefined ? {} : { reached }),
    }
  }

  #reached({ objective: aim, bound: most }: SolverReport): EntryView["reached"] {
    if (aim === undefined) return undefined
    const read = (held: number) =>
      this.#holding.reading(this.#holding.fromHeld(held, aim.measure), aim.measure, this.#system)
    const objective = read(aim.value)
    const bound = most === undefined ? null : read(most)
    if (objective === null) return undefined
    if (most === undefined || bound === null) return { objective }
    const apart = aim.value === 0 ? 0 : Math.abs(aim.value - most) / Math.abs(aim.value)
    // Up, to the hundredth of a per cent: a gap may never read smaller than it is.
    const gap = this.#holding.reading(Math.ceil(apart * 10_000) / 10_000, "share", this.#system)
    return { objective, bound, ...(gap === null ? {} : { gap }) }
  }

  #viewColumn(name: string, item: Item & { readonly kind: "column" }): EntryView {
    const { entry, table } = item
    const kind = kindOf(item)
    const overrides = this.#cellsOver(table.name).get(entry.name) ?? []
    return {
      ...this.#common(name, item, kind, "column", this.#faults.at(name)),
      table: table.name,
      measure: entry.measure,
      readings: this.#readings(name, entry.measure),
      ...(entry.formula === undefined ? {} : { formula: entry.formula }),
      ...(overrides.length === 0 ? {} : { changed: true, overrides }),
    }
  }

  /** What was typed over a table's cells, by column, in the order of the rows. */
  #cellsOver(table: string): ReadonlyMap<string, readonly Override[]> {
    let known = this.#cells
    if (known === undefined) {
      known = new Map()
      for (const [name, typed] of this.#typed) {
        const cell = figureCell(name, this.#compiled.outline)
        if (cell === undefined) continue
        const columns = known.get(cell.table.name) ?? new Map<string, Override[]>()
        known.set(cell.table.name, columns)
        const cells = columns.get(cell.column.name) ?? []
        columns.set(cell.column.name, cells)
        cells.push({ row: cell.row, typed, original: this.#readingOf(name, cell.original) })
      }
      for (const columns of known.values())
        for (const cells of columns.values()) cells.sort((a, b) => (a.row ?? 0) - (b.row ?? 0))
      this.#cells = known
    }
    return known.get(table) ?? new Map()
  }

  /** How a text of the template's own reads. */
  #readingOf(name: string, text: string): Reading | null {
    const over = typedOver(name, this.#compiled.outline)
    if (over === undefined) return null
    const outcome = readOver(over, text, "us")
    const value: Value | undefined = "problem" in outcome ? undefined : outcome.read.values[0]
    if (value === undefined) return null
    const { measure: of } = over.entry
    return this.#holding.reading(this.#holding.toGraph(value, of), of, this.#system)
  }

  #readings(name: string, of: MeasureId): readonly (Reading | null)[] {
    return this.#calculation.column(name).map((value) => this.#holding.reading(value, of, this.#system))
  }
}

function reportInLanguage(report: SolverReport): SolverReport {
  const { method, objective, unmet, advice } = report
  return {
    ...report,
    method: inLanguage(method),
    unmet: unmet.map(inLanguage),
    ...(objective === undefined ? {} : { objective: { ...objective, says: inLanguage(objective.says) } }),
    ...(advice === undefined ? {} : { advice: advice.map(inLanguage) }),
  }
}

function countReading(rows: number): Reading {
  return { value: rows, unit: measure("count").si, text: languageInForce().phrases.rows(rows) }
}
