import type { Ast } from "../formula/ast.ts"
import { fold, ungroup } from "../formula/fold.ts"
import { namesIn } from "../formula/names.ts"
import type { ValueType } from "../formula/value-type.ts"
import { isPlain, sameDimension } from "../quantity/dimension.ts"
import type { MeasureId } from "../units/measure.ts"
import { MEASURES } from "../units/measures.ts"

/** What always gives a whole number, with no second argument or a 0 there. */
const WHOLE = new Set(["ROUND", "ROUNDUP", "ROUNDDOWN", "TRUNC", "INT", "COUNT", "COUNTIF", "MATCH", "ROW"])
const ROUNDING = new Set(["ROUND", "ROUNDUP", "ROUNDDOWN", "TRUNC"])
/** What gives something of the same measure as what it is given. */
const KEEPING = new Set(["MIN", "MAX", "SUM", "ABS"])

/**
 * What a formula of this type measures, so that it is printed as a reader would: as what it is added up from; or else as
 * a name in it of the same dimension; or else as the first measure of that dimension. Nothing where none has it.
 */
export function inferMeasure(
  type: ValueType,
  ast: Ast,
  measureOf: (name: string) => MeasureId | undefined,
): MeasureId | undefined {
  if (type.kind === "text" || type.kind === "yes_no") return type.kind
  if (type.kind === "zero") return "ratio"
  const { dimension } = type
  const has = (id: MeasureId): boolean => {
    const other = MEASURES[id].dimension
    return other !== undefined && sameDimension(other, dimension)
  }
  const common = commonMeasure(ast, measureOf)
  if (typeof common === "string" && has(common)) return common
  if (isPlain(dimension)) return isWhole(ast) ? "count" : "ratio"
  for (const { name } of namesIn(ast)) {
    const used = measureOf(name)
    if (used !== undefined && has(used)) return used
  }
  return Object.values(MEASURES).find(({ id }) => has(id))?.id
}

/** The measure that sums and choices of like values keep; false where something else is done with them. */
function commonMeasure(
  ast: Ast,
  measureOf: (name: string) => MeasureId | undefined,
): MeasureId | false | undefined {
  return fold<MeasureId | false | undefined>(ast, (node, parts) => {
    switch (node.type) {
      case "name":
        return measureOf(node.name) ?? false
      case "number":
        // A whole number may be added to a count; any other makes it a plain number.
        return /^\d+$/.test(node.text) ? undefined : false
      case "text":
      case "percent":
        return false
      case "call":
        return KEEPING.has(node.function) ? agreed(parts) : false
      case "infix":
        return node.operator === "+" || node.operator === "-" ? agreed(parts) : false
      case "prefix":
      case "group":
        return parts[0]
    }
  })
}

function agreed(parts: readonly (MeasureId | false | undefined)[]): MeasureId | false | undefined {
  const known = new Set(parts.filter((part) => part !== undefined))
  if (known.size > 1) return false
  const [only] = known
  return only
}

function isWhole(ast: Ast): boolean {
  const inner = ungroup(ast)
  if (inner.type !== "call" || !WHOLE.has(inner.function)) return false
  const digits = ROUNDING.has(inner.function) ? inner.args[1] : undefined
  return digits === undefined || (digits.type === "number" && Number(digits.text) === 0)
}
