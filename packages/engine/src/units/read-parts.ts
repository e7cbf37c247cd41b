import { Decimal } from "../quantity/decimal.ts"
import { plainMarks } from "./spelling.ts"

/** A number and the unit typed behind it, if any. */
export interface Part {
  readonly amount: Decimal
  readonly unit?: string
}

/** What was typed: `-10' 6 1/2"` is negative and has two parts. */
export interface Parts {
  readonly negative: boolean
  /** At least one. All but the last are whole numbers and have a unit. */
  readonly parts: readonly Part[]
}

const MOST_EXPONENT = 30

// "," only marks thousands: "3,2" is refused, since it could be read in two ways.
const DIGITS = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+)`
const MIXED = new RegExp(String.raw`(?:(${DIGITS})[ -])?(\d{1,6})\/(\d{1,6})(?![\d.,/])`, "y")
const DECIMAL = new RegExp(String.raw`((?:${DIGITS}(?:\.\d*)?|\.\d+))(?:e([+-]?\d+))?(?![\d.,])`, "iy")
// A 2 or 3 belongs to the unit (ft2, m^3) only where nothing makes it the start of another number.
const UNIT =
  /\s*((?:1\/(?=\p{L}|°))?(?:[\p{L}°℃%$'"/·⋅∙•*²³]|\^(?=[23])|(?<=[\p{L}^])[23](?![\d.,/'"\p{L}])|\.(?!\d)|[ -](?=[\p{L}°/·⋅∙•*%$]))+)/uy

/**
 * Splits what a person typed into numbers with their units. Undefined where it is not plainly that: junk,
 * a comma for a decimal point, `10' -6"`, two numbers in a row.
 */
export function readParts(text: string): Parts | undefined {
  const marks = plainMarks(text)
  const sign = /^([+-]?) ?(\$?) ?/.exec(marks)
  const currency = sign?.[2] ?? ""
  const parts: Part[] = []
  let at = sign?.[0].length ?? 0
  while (at < marks.length) {
    if (parts.length > 0) {
      // "10'-6" joins feet and inches; with a space before it, "-" could mean less.
      const join = /(?: |-)?(?=\d)/y
      join.lastIndex = at
      const last = parts.at(-1)
      if (!join.test(marks) || last?.unit === undefined || !last.amount.isInteger()) return undefined
      at = join.lastIndex
    }
    const number = readNumber(marks, at)
    if (number === undefined) return undefined
    const [unit, end] = readUnit(marks, number.end)
    const spelled = `${currency}${unit}`
    parts.push(spelled === "" ? { amount: number.amount } : { amount: number.amount, unit: spelled })
    at = end
  }
  const plain = parts.length === 1 || (parts.length > 1 && currency === "")
  return plain ? { negative: sign?.[1] === "-", parts } : undefined
}

function readUnit(marks: string, at: number): [unit: string, end: number] {
  UNIT.lastIndex = at
  const unit = UNIT.exec(marks)?.[1]
  return unit === undefined ? ["", at] : [unit.trim(), UNIT.lastIndex]
}

function readNumber(marks: string, at: number): { amount: Decimal; end: number } | undefined {
  MIXED.lastIndex = at
  const mixed = MIXED.exec(marks)
  if (mixed) {
    const [, whole, over = "", under = ""] = mixed
    // A mixed number's fraction is less than one: "6 5/4" is more likely a slip than a number.
    if (Number(under) === 0 || (whole !== undefined && Number(over) >= Number(under))) return undefined
    const amount = new Decimal(over).div(under).plus(ungrouped(whole ?? "0"))
    return { amount, end: MIXED.lastIndex }
  }
  DECIMAL.lastIndex = at
  const decimal = DECIMAL.exec(marks)
  if (!decimal) return undefined
  const [, digits = "", exponent = "0"] = decimal
  if (Math.abs(Number(exponent)) > MOST_EXPONENT) return undefined
  return { amount: new Decimal(`${ungrouped(digits)}e${exponent}`), end: DECIMAL.lastIndex }
}

function ungrouped(digits: string): string {
  return digits.replaceAll(",", "")
}
