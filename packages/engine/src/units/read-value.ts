import type { Problem } from "../problems/problem.ts"
import { Decimal } from "../quantity/decimal.ts"
import type { Quantity } from "../quantity/quantity.ts"
import { Remembered } from "../remembered.ts"
import type { MeasureId, UnitSystem } from "./measure.ts"
import { formOf, measure } from "./measures.ts"
import type { NumberForm } from "./number-form.ts"
import { type Part, readParts } from "./read-parts.ts"
import { isUnit } from "./registry.ts"
import { fromSi, toSi, type Unit } from "./unit.ts"

export type ReadValue = { readonly value: Quantity | string | boolean } | { readonly problem: Problem }

const MOST_CHARACTERS = 500
const MOST_SHOWN = 60
/** Far beyond any use, and far within what a double holds. */
const MOST_SI = "1e30"

/** Templates start from the same few thousand texts whenever a workbook is opened. */
const READ = new Remembered<string, ReadValue>(10_000)

const YES = new Set(["yes", "true", "y", "1"])
const NO = new Set(["no", "false", "n", "0"])

/**
 * Reads what a person typed. Both systems' units are accepted; `system` only says which unit a bare number
 * is in. Never throws; the problem's `at` is empty, for the caller to fill.
 */
export function readValue(text: string, measureId: MeasureId, system: UnitSystem): ReadValue {
  const typed = text.trim()
  if (typed.length > MOST_CHARACTERS) {
    return { problem: { code: "input_too_long", at: {}, length: typed.length, most: MOST_CHARACTERS } }
  }
  if (measureId === "text") return { value: typed }

  const example = measure(measureId).example[system]
  if (typed === "") return { problem: { code: "input_empty", at: {}, example } }
  const form = formOf(measureId)
  const read = form === undefined ? readYesNo : (text: string) => readNumber(text, form, system)
  return READ.of(
    `${system} ${measureId} ${typed}`,
    () => read(typed) ?? { problem: { code: "input_unreadable", at: {}, given: shown(typed), example } },
  )
}

function readYesNo(typed: string): ReadValue | undefined {
  const word = typed.toLowerCase()
  if (YES.has(word)) return { value: true }
  if (NO.has(word)) return { value: false }
  return undefined
}

/** Undefined where nothing better can be said than that it cannot be read. */
function readNumber(typed: string, form: NumberForm, system: UnitSystem): ReadValue | undefined {
  const read = readParts(typed)
  if (read === undefined) return undefined
  const given = shown(typed)

  const sizes: Decimal[] = []
  let si = new Decimal(0)
  let before: Unit | undefined
  for (const part of read.parts) {
    const unit = unitOf(part, form, before, form.writing[system].bare, given)
    if (unit === undefined || "problem" in unit) return unit
    sizes.push(toSi(new Decimal(1), unit))
    si = si.plus(toSi(read.negative ? part.amount.neg() : part.amount, unit))
    before = unit
  }
  if (!mayBeAdded(sizes, form)) return undefined

  const problem = outOfRange(si, form, system, given)
  return problem ? { problem } : { value: { si, dimension: form.dimension } }
}

function unitOf(
  part: Part,
  form: NumberForm,
  before: Unit | undefined,
  bare: Unit,
  given: string,
): Unit | { readonly problem: Problem } | undefined {
  if (part.unit === undefined) return before === undefined ? bare : before.bareAfter
  const unit = form.index.find(part.unit)
  if (unit !== undefined) return unit
  const accepted = form.units.flatMap(({ names }) => names.slice(0, 1))
  const code = isUnit(part.unit) ? "input_wrong_unit" : "input_unknown_unit"
  return { problem: { code, at: {}, given, unit: shown(part.unit), accepted } }
}

/** Parts go from the greater unit to the less, "10 ft 6 in", and points of a scale cannot be added. */
function mayBeAdded(sizes: readonly Decimal[], form: NumberForm): boolean {
  if (sizes.length > 1 && form.dimension.point) return false
  return sizes.every((size, at) => sizes[at + 1]?.lt(size) ?? true)
}

function outOfRange(si: Decimal, form: NumberForm, system: UnitSystem, given: string): Problem | undefined {
  const { bare } = form.writing[system]
  if (form.whole && !si.isInteger()) return { code: "input_not_whole", at: {}, given }
  if (form.dimension.point && si.lt(0)) {
    const least = `${fromSi(new Decimal(0), bare)} ${bare.names[0]}`
    return { code: "input_below", at: {}, given, least }
  }
  if (si.abs().gt(MOST_SI)) {
    return { code: "input_above", at: {}, given, most: form.si === "1" ? MOST_SI : `${MOST_SI} ${form.si}` }
  }
  return undefined
}

/** What a message may repeat of the text: no control characters, and not a page of it. */
function shown(text: string): string {
  const printable = text.replace(/\p{C}/gu, " ")
  return printable.length > MOST_SHOWN ? `${printable.slice(0, MOST_SHOWN)}…` : printable
}

/** Splits a list typed with commas or semicolons; a comma between a digit and just three digits is a thousands mark. */
export function splitList(text: string): string[] {
  return text
    .split(/;|(?<!\d),|,(?!\d{3}(?!\d))/)
    .map((item) => item.trim())
    .filter((item) => item !== "")
}

/** Writes the usual unit behind a bare number, so that saved text keeps its meaning when other units are shown. */
export function withUsualUnit(text: string, measureId: MeasureId, system: UnitSystem): string {
  const typed = text.trim()
  const { usual } = measure(measureId)
  const parts = formOf(measureId) && readParts(typed)?.parts
  const isBare = parts?.length === 1 && parts[0]?.unit === undefined
  return isBare && usual[system] !== "" ? `${typed} ${usual[system]}` : typed
}
