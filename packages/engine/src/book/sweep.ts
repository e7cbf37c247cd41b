import type { Definition } from "../definition/definition.ts"
import type { Exploration } from "../definition/exploration.ts"
import type { GraphBuilder } from "../graph/graph.ts"
import type { Place, Problem } from "../problems/problem.ts"
import type { Quantity } from "../quantity/quantity.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { readValue } from "../units/read-value.ts"
import type { BookDocument } from "./document.ts"
import { outline } from "./outline.ts"
import { typedOver } from "./overrides.ts"
import { savedState, scenarioOf } from "./state.ts"
import { stepSize, stepsFrom, textOf } from "./steps.ts"
import { definitionOf, openTrial, valuesInForce } from "./trial.ts"
import type { Reading } from "./views.ts"

/** One input, and the texts to type into it. */
export interface SweptInput {
  readonly name: string
  readonly values: readonly string[]
}

export interface SweepWanted {
  /** One or two; of two, every value of the second is tried with each of the first. */
  readonly inputs: readonly [SweptInput] | readonly [SweptInput, SweptInput]
  /** Names of entries to read. */
  readonly results: readonly string[]
  readonly graph?: GraphBuilder
  /** Only every `of`-th row, from the row `part` (from 0): for several who work out one sweep together. All where absent. */
  readonly share?: Share
}

export interface Share {
  readonly part: number
  readonly of: number
}

export interface SweepRow {
  /** What was typed, in the order of the inputs. */
  readonly typed: readonly string[]
  /** In the order of the results; null where there is no value. */
  readonly values: readonly (Reading | null)[]
  /** The checks that do not pass with it. */
  readonly failing: readonly string[]
  /** A text that is not accepted: nothing was worked out. */
  readonly problem?: Problem
}

export interface SweepEnd {
  readonly rows: number
  /** It was told to stop before the last row. */
  readonly stopped: boolean
}

/**
 * Recalculates a saved workbook for every value of one input, or every pair of values of two. Each row is worked out
 * when it is asked for, so that whoever asks may listen to others in between. @throws RangeError for a result without a name
 */
export function* sweepRows(
  definition: Definition,
  document: BookDocument,
  { inputs, results, graph, share = { part: 0, of: 1 } }: SweepWanted,
): Generator<SweepRow, void> {
  const trial = openTrial(definition, document, graph)
  for (const name of results) {
    const item = trial.items.get(name)
    if (item?.kind !== "value") throw new RangeError(`there is no entry ${name} to read`)
  }
  const [first, second] = inputs
  let index = 0
  for (const one of first.values) {
    for (const other of second?.values ?? [undefined]) {
      if (index++ % share.of !== share.part) continue
      const texts =
        second === undefined || other === undefined
          ? [[first.name, one]]
          : [
              [first.name, one],
              [second.name, other],
            ]
      const problem = trial.type(Object.fromEntries(texts))
      const typed = texts.map(([, text = ""]) => text)
      if (problem !== undefined) yield { typed, values: results.map(() => null), failing: [], problem }
      else yield { typed, values: results.map((name) => trial.reading(name)), failing: trial.failing() }
    }
  }
}

/** Calls back with each row as it is ready; stops when told to. Works wherever the definition and the document are. */
export function sweep(
  definition: Definition,
  document: BookDocument,
  wanted: SweepWanted,
  onRow: (row: SweepRow, index: number) => void,
  isStopped: () => boolean = () => false,
): SweepEnd {
  let rows = 0
  const all = sweepRows(definition, document, wanted)
  while (!isStopped()) {
    const next = all.next()
    if (next.done) return { rows, stopped: false }
    onRow(next.value, rows++)
  }
  return { rows, stopped: true }
}

/**
 * What to type for the ends of an exploration and for its step: as far either side of the value in force as it says and the
 * input's limits allow. Nothing where that input is blank or cannot be stepped through.
 */
export function rangeAround(
  definition: Definition,
  document: BookDocument,
  { input, step, each }: Exploration,
): { readonly from: string; readonly to: string; readonly step: string } | undefined {
  const state = savedState(document)
  const items = outline(definitionOf(definition, document))
  const over = typedOver(input, items)
  const [now, ...more] = valuesInForce(scenarioOf(state, state.current), items, input)
  if (over === undefined || typeof now !== "object" || more.length > 0) return undefined
  const size = stepSize(step[state.system], over.entry.measure, state.system)
  if (size === undefined) return undefined
  const end = (toward: "more" | "less") => {
    const steps = stepsFrom(over.entry, now, size, toward, state.system)
    return steps.text(Math.min(each, steps.most))
  }
  return { from: end("less"), to: end("more"), step: step[state.system] }
}

/** No sweep is longer: of two inputs this is the most of each. */
const MOST_SWEPT = 200

/**
 * What to type for each value of an input from one to another, both with their units, a step apart. The last is the one
 * nearest below the end. A problem says which text cannot be read, or that there would be more than 200 values.
 */
export function sweptValues(
  definition: Definition,
  document: BookDocument,
  name: string,
  range: { readonly from: string; readonly to: string; readonly step: string },
): { readonly values: readonly string[] } | { readonly problem: Problem } {
  const items = outline(definitionOf(definition, document))
  const over = typedOver(name, items)
  const at = { entry: name }
  const system = document.unitSystem
  if (over === undefined) return { problem: { code: "no_such_entry", at: {}, name, near: [] } }
  const { measure: of } = over.entry
  const ends: Quantity[] = []
  for (const text of [range.from, range.to]) {
    const outcome = readValue(text, of, system)
    if ("problem" in outcome) return { problem: { ...outcome.problem, at } }
    if (typeof outcome.value !== "object") return { problem: unreadable(text, of, at, system) }
    ends.push(outcome.value)
  }
  const size = stepSize(range.step, of, system)
  const [start, end] = ends
  if (size === undefined || start === undefined || end === undefined)
    return { problem: unreadable(range.step, of, at, system) }
  const gap = end.si.minus(start.si)
  const count = gap.abs().div(size).floor().toNumber() + 1
  if (count > MOST_SWEPT) return { problem: { code: "too_many_values", at, given: count, most: MOST_SWEPT } }
  const stride = gap.lt(0) ? size.negated() : size
  const values = Array.from({ length: count }, (_, index) =>
    textOf({ si: start.si.plus(stride.times(index)), dimension: start.dimension }, of, system),
  )
  return { values }
}

function unreadable(given: string, of: MeasureId, at: Place, system: UnitSystem): Problem {
  return { code: "input_unreadable", at, given, example: measure(of).example[system] }
}
