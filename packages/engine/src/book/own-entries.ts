import type { Definition } from "../definition/definition.ts"
import type { Column, Entry, InputEntry } from "../definition/entry.ts"
import type { Ast } from "../formula/ast.ts"
import { checkTypes } from "../formula/check-types.ts"
import { namesIn } from "../formula/names.ts"
import { parseFormula } from "../formula/parse.ts"
import { findRings } from "../graph/cycles.ts"
import type { Problem } from "../problems/problem.ts"
import type { UnitSystem } from "../units/measure.ts"
import { readValue } from "../units/read-value.ts"
import { inferMeasure } from "./infer-measure.ts"
import { type Item, isLegalName, type Outline } from "./outline.ts"
import { type OwnEntry, OwnEntrySchema, ownName } from "./own-entry.ts"
import { formulasOf } from "./own-formulas.ts"
import { shapeOf } from "./read-formula.ts"
import { schemaFault } from "./schema-fault.ts"
import { originalText, readTyped } from "./typed.ts"

export const MOST_OWN = 20_000
const LONGEST_NAME = 60
/** A batch is refused whole; more problems than these nobody reads at once. */
const MOST_PROBLEMS = 20
export const OWN_SECTION = "own"

/** The title of the section of the user's own entries, and the sentence under it. */
export interface OwnHeading {
  readonly title: string
  readonly says: string
}

const UNTITLED: OwnHeading = { title: "", says: "" }

/**
 * A definition with the user's own entries in it: a section at the end, and columns in their tables. Entries that do not
 * fit into this definition (any more) are left out, with why.
 */
export function withOwn(
  definition: Definition,
  items: Outline,
  own: readonly OwnEntry[],
  heading: OwnHeading = UNTITLED,
): { readonly definition: Definition; readonly unfit: ReadonlyMap<OwnEntry, Problem> } {
  const unfit = new Map<OwnEntry, Problem>()
  const entries: Entry[] = []
  const columns = new Map<string, Column[]>()
  const taken = new Set<string>()
  for (const entry of own) {
    const found = namingProblem(entry, items, taken) ?? keptProblem(entry)
    if (found !== undefined || entry.measure === undefined) {
      const at = { entry: ownName(entry) }
      unfit.set(entry, found ?? { code: "bad_entry", at, reason: "it does not say what it measures." })
      continue
    }
    taken.add(ownName(entry))
    const made = toEntry(entry)
    if (made !== undefined) entries.push(made)
    else if (entry.kind === "column") {
      const known = columns.get(entry.table)
      if (known === undefined) columns.set(entry.table, [toColumn(entry)])
      else known.push(toColumn(entry))
    }
  }
  const sections = definition.sections.map((section) => ({
    ...section,
    entries: section.entries.map((entry) => {
      const more = entry.kind === "table" ? columns.get(entry.name) : undefined
      return more === undefined || entry.kind !== "table"
        ? entry
        : { ...entry, columns: [...entry.columns, ...more] }
    }),
  }))
  const added = entries.length === 0 ? [] : [{ id: OWN_SECTION, ...heading, entries }]
  const merged = own.length === 0 ? definition : { ...definition, sections: [...sections, ...added] }
  return { definition: merged, unfit }
}

/**
 * Drafts made ready to be kept: names and texts checked, formulas judged, what each measures worked out where it was not
 * said. All or none.
 *
 * @param items of the template alone
 * @param known of the template and the own entries that stay
 */
export function readDrafts(
  drafts: readonly OwnEntry[],
  items: Outline,
  known: Outline,
  system: UnitSystem,
): { readonly entries: readonly OwnEntry[] } | { readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const ready: OwnEntry[] = []
  const taken = new Set([...known.keys()].filter((name) => !items.has(name)))
  for (const draft of drafts) {
    if (problems.length >= MOST_PROBLEMS) return { problems }
    const parsed = OwnEntrySchema.safeParse(draft)
    if (!parsed.success) {
      problems.push({ code: "bad_entry", at: {}, ...schemaFault(parsed.error) })
      continue
    }
    const entry = parsed.data
    const found = namingProblem(entry, items, taken) ?? readingProblem(entry, system)
    if (found === undefined) {
      taken.add(ownName(entry))
      ready.push(withUnits(entry, system))
    } else problems.push(found)
  }
  return problems.length > 0 ? { problems } : judged(ready, known)
}

/** Why a name cannot be this entry's; nothing where it can. */
export function namingProblem(
  entry: OwnEntry,
  items: Outline,
  taken: ReadonlySet<string>,
): Problem | undefined {
  const name = ownName(entry)
  const at = { entry: name }
  // Names such as "constructor" are legal words, and the doors to every object's prototype.
  if (!isLegalName(entry.name) || entry.name.length > LONGEST_NAME || entry.name in {})
    return { code: "bad_name", at: {}, name: entry.name }
  if (entry.kind === "column") {
    if (items.get(entry.table)?.kind !== "table")
      return { code: "no_such_entry", at, name: entry.table, near: [] }
    // In its table's formulas a column comes before an entry of the same name, which some may mean.
    if (items.has(entry.name) || taken.has(entry.name))
      return { code: "name_taken", at: {}, name: entry.name }
  }
  return items.has(name) || taken.has(name) ? { code: "name_taken", at: {}, name } : undefined
}

/** An own entry is never altered: a change of one of thousands leaves what was found out about the others. */
const KEPT = new WeakMap<OwnEntry, { readonly problem: Problem | undefined }>()

/** The same of an entry that is kept already, whose texts have their units. */
function keptProblem(entry: OwnEntry): Problem | undefined {
  let known = KEPT.get(entry)
  if (known === undefined) {
    known = { problem: readingProblem(entry, "us") }
    KEPT.set(entry, known)
  }
  return known.problem
}

/** Why an entry's own texts cannot be taken; formulas are judged apart. */
function readingProblem(entry: OwnEntry, system: UnitSystem): Problem | undefined {
  const at = { entry: ownName(entry) }
  if (entry.label.trim() === "") return { code: "bad_entry", at, reason: "it has no label." }
  if (entry.kind === "figure") {
    if (!entry.sources?.some(({ title }) => title.trim() !== ""))
      return { code: "bad_entry", at, reason: "it does not say where the figure is from." }
  } else if (entry.kind !== "input") return undefined
  const made = toEntry(entry)
  if (made === undefined || (made.kind !== "input" && made.kind !== "figure")) return undefined
  if (made.kind === "input") {
    if (made.choices !== undefined && made.measure !== "text")
      return { code: "bad_entry", at, reason: "only a text has choices." }
    for (const limit of [made.least, made.most]) {
      if (limit === undefined) continue
      const outcome = readValue(limit, made.measure, system)
      if ("problem" in outcome) return { ...outcome.problem, at }
      if (typeof outcome.value !== "object")
        return { code: "bad_entry", at, reason: "only a number has limits." }
    }
  }
  const outcome: ReturnType<typeof readTyped> = readTyped(made, originalText(made), system)
  return "problem" in outcome ? { ...outcome.problem, at } : undefined
}

/** Its texts with their units, so that they mean the same whatever is shown. */
function withUnits(entry: OwnEntry, system: UnitSystem): OwnEntry {
  const made = toEntry(entry)
  if (made === undefined || (made.kind !== "input" && made.kind !== "figure")) return entry
  const text = (of: InputEntry | typeof made, typed: string): string => {
    const outcome = readTyped(of, typed, system)
    return "problem" in outcome ? typed : outcome.read.text
  }
  if (entry.kind === "figure") return { ...entry, value: text(made, entry.value) }
  if (entry.kind !== "input" || made.kind !== "input") return entry
  const { least: _least, most: _most, ...unlimited } = made
  const limit = (typed: string): string => text(unlimited, typed)
  return {
    ...entry,
    default: entry.default === null ? null : text(made, entry.default),
    ...(entry.least === undefined ? {} : { least: limit(entry.least) }),
    ...(entry.most === undefined ? {} : { most: limit(entry.most) }),
  }
}

/** Judges the formulas of entries that may lean on each other, and works out what each measures. */
function judged(
  entries: readonly OwnEntry[],
  known: Outline,
): { readonly entries: readonly OwnEntry[] } | { readonly problems: readonly Problem[] } {
  const items = new Map<string, Item>(known)
  const problems: Problem[] = []
  const trees = new Map<string, readonly Ast[]>()
  const waiting = new Map<string, OwnEntry>()
  for (const entry of entries) {
    const name = ownName(entry)
    const parsed = formulasOf(entry).map((text) => parseFormula(text))
    for (const problem of parsed.flatMap((one) => one.problems)) problems.push(located(problem, name))
    trees.set(
      name,
      parsed.flatMap(({ ast }) => (ast === undefined ? [] : [ast])),
    )
    if (entry.measure === undefined) waiting.set(name, entry)
    else items.set(name, toItem(entry, known))
  }
  if (problems.length > 0) return { problems: problems.slice(0, MOST_PROBLEMS) }

  const measured = new Map<string, OwnEntry>()
  const ordered = inOrder(waiting, trees)
  if ("problem" in ordered) return { problems: [ordered.problem] }
  for (const entry of ordered.entries) {
    const outcome = withMeasure(entry, trees.get(ownName(entry)) ?? [], items)
    if ("problems" in outcome) return outcome
    measured.set(ownName(entry), outcome.entry)
    items.set(ownName(entry), toItem(outcome.entry, known))
  }
  const complete = entries.map((entry) => measured.get(ownName(entry)) ?? entry)
  const all = [...items.keys()]
  for (const entry of complete) {
    const name = ownName(entry)
    const table = entry.kind === "column" ? entry.table : undefined
    for (const ast of trees.get(name) ?? []) {
      const found = checkTypes(ast, (used) => shapeOf(used, table, items), table !== undefined, all)
      problems.push(...found.problems.map((problem) => located(problem, name)))
    }
    if (problems.length >= MOST_PROBLEMS) break
  }
  return problems.length > 0 ? { problems: problems.slice(0, MOST_PROBLEMS) } : { entries: complete }
}

/** Entries without a measure, each after those that it leans on. */
function inOrder(
  waiting: ReadonlyMap<string, OwnEntry>,
  trees: ReadonlyMap<string, readonly Ast[]>,
): { readonly entries: readonly OwnEntry[] } | { readonly problem: Problem } {
  const needs = new Map<string, readonly string[]>()
  for (const [name, entry] of waiting) {
    const used = (trees.get(name) ?? []).flatMap((ast) => namesIn(ast).map((use) => use.name))
    const known = used.flatMap((one) => {
      const own = entry.kind === "column" && waiting.has(`${entry.table}.${one}`)
      const cut = one.indexOf(".")
      const check = cut < 0 ? one : one.slice(0, cut)
      if (own) return [`${entry.table}.${one}`]
      if (waiting.has(one)) return [one]
      return waiting.get(check)?.kind === "check" ? [check] : []
    })
    needs.set(name, [...new Set(known)])
  }
  const [ring] = findRings(needs)
  if (ring !== undefined) return { problem: { code: "cycle", at: { entry: ring[0] ?? "" }, ring: [...ring] } }
  const left = new Map([...needs].map(([name, list]) => [name, list.length]))
  const users = new Map<string, string[]>()
  for (const [name, list] of needs)
    for (const need of list) {
      const known = users.get(need)
      if (known === undefined) users.set(need, [name])
      else known.push(name)
    }
  const ready = [...left].filter(([, count]) => count === 0).map(([name]) => name)
  const entries: OwnEntry[] = []
  for (let index = 0; index < ready.length; index++) {
    const name = ready[index] ?? ""
    const entry = waiting.get(name)
    if (entry !== undefined) entries.push(entry)
    for (const user of users.get(name) ?? []) {
      const count = (left.get(user) ?? 0) - 1
      left.set(user, count)
      if (count === 0) ready.push(user)
    }
  }
  return { entries }
}

function withMeasure(
  entry: OwnEntry,
  trees: readonly Ast[],
  items: Outline,
): { readonly entry: OwnEntry } | { readonly problems: readonly Problem[] } {
  const name = ownName(entry)
  const table = entry.kind === "column" ? entry.table : undefined
  const measureOf = (used: string) => {
    const item = items.get(`${table}.${used}`) ?? items.get(used)
    if (item === undefined || item.kind === "table") return undefined
    return item.kind === "value" && item.entry.kind === "check" ? "ratio" : item.entry.measure
  }
  // A check measures what its demand does; a demand of 0, what its limit does.
  for (const ast of trees.slice(0, 2)) {
    const { shape, problems } = checkTypes(
      ast,
      (used) => shapeOf(used, table, items),
      table !== undefined,
      items.keys(),
    )
    if (shape === undefined) return { problems: problems.map((problem) => located(problem, name)) }
    if (entry.kind === "check" && shape.type.kind === "zero" && ast === trees[0]) continue
    const measure = inferMeasure(shape.type, ast, measureOf)
    return measure === undefined
      ? { problems: [{ code: "no_measure", at: { entry: name }, given: shape.type }] }
      : { entry: { ...entry, measure } }
  }
  return { entry }
}

function located(problem: Problem, entry: string): Problem {
  return { ...problem, at: { ...problem.at, entry } }
}

function toItem(entry: OwnEntry, known: Outline): Item {
  const made = toEntry(entry)
  if (made !== undefined && made.kind !== "table") return { kind: "value", section: OWN_SECTION, entry: made }
  const table = entry.kind === "column" ? known.get(entry.table) : undefined
  if (entry.kind !== "column" || table?.kind !== "table")
    throw new RangeError(`${ownName(entry)} has no table`)
  return { kind: "column", section: table.section, entry: toColumn(entry), table: table.entry }
}

const MADE = new WeakMap<OwnEntry, Entry>()

/** As a definition has it, always the same object; nothing for a column. */
function toEntry(entry: OwnEntry): Entry | undefined {
  const known = MADE.get(entry)
  if (known !== undefined) return known
  const made = makeEntry(entry)
  if (made !== undefined) MADE.set(entry, made)
  return made
}

function makeEntry(entry: OwnEntry): Entry | undefined {
  const { name, label, why = "", sources = [] } = entry
  const described = { name, label, why, sources }
  switch (entry.kind) {
    case "input":
      return {
        ...described,
        kind: "input",
        measure: entry.measure,
        default: entry.default,
        ...(entry.least === undefined ? {} : { least: entry.least }),
        ...(entry.most === undefined ? {} : { most: entry.most }),
        ...(entry.choices === undefined ? {} : { choices: entry.choices }),
        ...(entry.list === undefined ? {} : { list: entry.list }),
      }
    case "figure":
      return { ...described, kind: "figure", measure: entry.measure, value: entry.value }
    case "formula":
      return { ...described, kind: "formula", measure: entry.measure ?? "ratio", formula: entry.formula }
    case "check":
      return {
        ...described,
        kind: "check",
        measure: entry.measure ?? "ratio",
        demand: entry.demand,
        limit: entry.limit,
        sense: entry.sense,
        advice: entry.advice ?? [],
        ...(entry.near === undefined ? {} : { near: entry.near }),
        ...(entry.covered === undefined ? {} : { covered: entry.covered }),
      }
    case "column":
      return undefined
  }
}

const COLUMNS = new WeakMap<OwnEntry, Column>()

function toColumn(entry: OwnEntry & { readonly kind: "column" }): Column {
  const { name, label, why = "", sources = [], measure = "ratio", formula } = entry
  const column = COLUMNS.get(entry) ?? { name, label, why, sources, measure, formula }
  COLUMNS.set(entry, column)
  return column
}
