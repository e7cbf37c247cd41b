/** Deeper than any saved workbook, and far from where a walk over it could fail. */
const MOST_DEEP = 40
/** Values in all: lists, objects, texts and the rest. */
const MOST_VALUES = 3_000_000
/** Of one text. */
const LONGEST_TEXT = 100_000

/** Keys through which a careless copy would reach the prototype of every object. */
const REFUSED_KEYS: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"])

/**
 * Why something that came from outside is not plain data of a bearable size, in a sentence; nothing where it is. It is
 * walked without recursion, so that depth and rings cannot exhaust the stack, and may be anything at all.
 */
export function notPlainData(data: unknown): string | undefined {
  const open: { readonly value: unknown; readonly depth: number }[] = [{ value: data, depth: 0 }]
  let seen = 0
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { value, depth } = next
    if (++seen > MOST_VALUES) return "It holds too many values."
    if (typeof value === "string" && value.length > LONGEST_TEXT)
      return `It holds a text of ${value.length} characters.`
    if (typeof value === "bigint" || typeof value === "function" || typeof value === "symbol")
      return `It holds a ${typeof value}.`
    if (typeof value !== "object" || value === null) continue
    // A ring is endlessly deep.
    if (depth >= MOST_DEEP) return "Its parts lie too deep in each other."
    for (const key of Object.keys(value)) {
      if (REFUSED_KEYS.has(key)) return `It holds a member called "${key}".`
      open.push({ value: (value as Record<string, unknown>)[key], depth: depth + 1 })
    }
  }
  return undefined
}
