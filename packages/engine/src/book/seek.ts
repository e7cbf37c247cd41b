import type { Definition } from "../definition/definition.ts"
import type { FigureEntry, InputEntry } from "../definition/entry.ts"
import type { GraphBuilder } from "../graph/graph.ts"
import type { Problem } from "../problems/problem.ts"
import { Decimal } from "../quantity/decimal.ts"
import type { Quantity } from "../quantity/quantity.ts"
import { measure } from "../units/measures.ts"
import { readValue } from "../units/read-value.ts"
import type { BookDocument } from "./document.ts"
import { typedOver } from "./overrides.ts"
import { stepSize, textOf } from "./steps.ts"
import { openTrial, type Trial } from "./trial.ts"
import { limits } from "./typed.ts"
import type { Reading } from "./views.ts"

export interface SeekWanted {
  readonly input: string
  readonly toward: "largest" | "smallest"
  /** The ends of the search, with their units; the input's own limits where absent. */
  readonly least?: string
  readonly most?: string
  /** With its unit. Values tried are whole steps from the end that is sought. */
  readonly step: string
  readonly graph?: GraphBuilder
  readonly isStopped?: () => boolean
}

export interface Sought {
  /** What to type; absent where no value that was tried keeps every check passing. */
  readonly typed?: string
  readonly reading?: Reading
  /**
   * The checks that do not pass one step further; none where the search's end was reached. Where nothing was found,
   * those that fail at every value tried.
   */
  readonly binds: readonly string[]
  /** How many values were worked out. */
  readonly tried: number
  readonly stopped: boolean
}

/** Up to so many values are tried one by one; of more, as many spread evenly, and then the gap is halved. */
const MOST_ONE_BY_ONE = 128
/** Of an input without a limit: this many steps from its present value. */
const STEPS_WITHOUT_LIMIT = 1_000

/**
 * The largest or smallest value of an input with which every check passes, found by recalculating. With up to 128
 * values between the limits each is tried, from the end that is sought; with more, a passing value that lies alone
 * between two that were tried may be missed, but what is found passes, and one step further does not.
 */
export function seek(
  definition: Definition,
  document: BookDocument,
  wanted: SeekWanted,
): Sought | { readonly problem: Problem } {
  const trial = openTrial(definition, document, wanted.graph)
  const around = quantityAround(trial, wanted.input, wanted.step)
  if ("problem" in around) return around
  const { entry, from, size } = around
  const { least, most } = entry.kind === "input" ? limits(entry, trial.system) : {}
  const room = size.times(STEPS_WITHOUT_LIMIT)
  const lower = endOf(wanted.least, entry, trial, least?.si ?? floorOf(from, from.si.minus(room)))
  if ("problem" in lower) return lower
  const upper = endOf(wanted.most, entry, trial, most?.si ?? from.si.plus(room))
  if ("problem" in upper) return upper
  const [start, sign] = wanted.toward === "largest" ? [upper.si, -1] : [lower.si, 1]
  const count = Math.max(0, upper.si.minus(lower.si).div(size).floor().toNumber())
  const text = (index: number): string => {
    const si = start.plus(size.times(index * sign))
    return textOf({ si, dimension: from.dimension }, entry.measure, trial.system)
  }
  return search(trial, wanted, count, text)
}

function search(
  trial: Trial,
  { input, isStopped = () => false }: SeekWanted,
  count: number,
  text: (index: number) => string,
): Sought {
  let tried = 0
  let always: readonly string[] | undefined
  const failing = (index: number): readonly string[] | undefined => {
    tried++
    if (trial.type({ [input]: text(index) }) !== undefined) return undefined
    const found = trial.failing()
    always = always === undefined ? found : always.filter((name) => found.includes(name))
    return found
  }
  const passes = (index: number): boolean => failing(index)?.length === 0

  const stride = Math.max(1, Math.ceil(count / MOST_ONE_BY_ONE))
  let passing: number | undefined
  let before = -1
  for (let index = 0; passing === undefined; index = Math.min(index + stride, count)) {
    if (isStopped()) return { binds: [], tried, stopped: true }
    if (passes(index)) passing = index
    else if (index >= count) return { binds: always ?? [], tried, stopped: false }
    else before = index
  }
  while (passing - before > 1) {
    if (isStopped()) break
    const middle: number = Math.floor((passing + before) / 2)
    if (passes(middle)) passing = middle
    else before = middle
  }
  const binds = passing === 0 ? [] : (failing(passing - 1) ?? [])
  const typed = text(passing)
  trial.type({ [input]: typed })
  const reading = trial.reading(input)
  return { typed, ...(reading === null ? {} : { reading }), binds, tried, stopped: passing - before > 1 }
}

export interface SeekNearWanted {
  readonly input: string
  /** With their units: how far apart the values are, and how far from the present one they go either way. */
  readonly step: string
  readonly reach: string
  /** The entry to make least. */
  readonly score: string
  readonly graph?: GraphBuilder
  readonly isStopped?: () => boolean
}

export interface NearValue {
  readonly typed: string
  readonly reading: Reading | null
  readonly score: Reading
  /** The checks that do not pass with it. */
  readonly failing: readonly string[]
}

const MOST_NEAR_VALUES = 1_000

/**
 * The values of an input near its present one, those with the least score first, and of equals the nearest first. The
 * present value is among them; those that give no score are not. @throws RangeError where there is no score of that name
 */
export function seekNear(
  definition: Definition,
  document: BookDocument,
  { input, step, reach, score, graph, isStopped = () => false }: SeekNearWanted,
): readonly NearValue[] | { readonly problem: Problem } {
  const trial = openTrial(definition, document, graph)
  if (trial.items.get(score)?.kind !== "value") throw new RangeError(`there is no entry ${score}`)
  const around = quantityAround(trial, input, step)
  if ("problem" in around) return around
  const { entry, from, size } = around
  const far = stepSize(reach, entry.measure, trial.system)
  if (far === undefined) return { problem: notRead(reach, input) }
  const most = Math.min(far.div(size).floor().toNumber(), MOST_NEAR_VALUES / 2)
  const found: (NearValue & { readonly held: number; readonly away: number })[] = []
  for (let away = 0; away <= most && !isStopped(); away++) {
    for (const count of away === 0 ? [0] : [away, -away]) {
      const si = from.si.plus(size.times(count))
      const typed = textOf({ si, dimension: from.dimension }, entry.measure, trial.system)
      if (trial.type({ [input]: typed }) !== undefined) continue
      const held = trial.value(score)
      const reading = trial.reading(score)
      if (typeof held !== "number" || reading === null) continue
      found.push({
        typed,
        reading: trial.reading(input),
        score: reading,
        failing: trial.failing(),
        held,
        away,
      })
    }
  }
  return found
    .sort((a, b) => a.held - b.held || a.away - b.away)
    .map(({ held: _held, away: _away, ...value }) => value)
}

interface Around {
  readonly entry: InputEntry | FigureEntry
  /** The present value. */
  readonly from: Quantity
  readonly size: Decimal
}

/** An input's present value and the size of a step; or why it cannot be stepped. */
function quantityAround(trial: Trial, input: string, step: string): Around | { readonly problem: Problem } {
  const at = { entry: input }
  const over = typedOver(input, trial.items)
  if (over === undefined) return { problem: trial.type({ [input]: "" }) ?? notRead(step, input) }
  const values = trial.values(input)
  const [from] = values
  const { measure: of } = over.entry
  if (from === undefined)
    return { problem: { code: "input_empty", at, example: measure(of).example[trial.system] } }
  if (typeof from !== "object" || values.length > 1) return { problem: notRead(step, input) }
  const size = stepSize(step, of, trial.system)
  return size === undefined ? { problem: notRead(step, input) } : { entry: over.entry, from, size }
}

function endOf(
  typed: string | undefined,
  entry: InputEntry | FigureEntry,
  trial: Trial,
  otherwise: Decimal,
): { readonly si: Decimal } | { readonly problem: Problem } {
  if (typed === undefined) return { si: otherwise }
  const outcome = readValue(typed, entry.measure, trial.system)
  if ("problem" in outcome) return { problem: { ...outcome.problem, at: { entry: entry.name } } }
  return typeof outcome.value === "object"
    ? { si: outcome.value.si }
    : { problem: notRead(typed, entry.name) }
}

/** A value that is not below zero is not sought there. */
function floorOf(from: Quantity, floor: Decimal): Decimal {
  return from.si.gte(0) ? Decimal.max(floor, 0) : floor
}

function notRead(given: string, entry: string): Problem {
  return { code: "input_unreadable", at: { entry }, given, example: "1" }
}
