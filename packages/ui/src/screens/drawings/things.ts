import type { DrawnShape } from "@pegbook/engine"
import type { Lit } from "../../bridge/walk.ts"

/** One thing that can be pointed at: an entry or a row, however many shapes it is drawn as. */
export interface Thing extends Lit {
  readonly key: string
  readonly reads: readonly string[]
}

export const keyOf = (of: Lit): string => (of.row === undefined ? of.name : `${of.name}#${of.row}`)

/** The things of a drawing in the order drawn, each once. */
export function thingsOf(shapes: readonly DrawnShape[]): readonly Thing[] {
  const things = new Map<string, Thing>()
  for (const shape of shapes) {
    const key = keyOf(shape.of)
    const known = things.get(key)
    const reads = known === undefined ? shape.reads : [...new Set([...known.reads, ...shape.reads])]
    things.set(key, { ...shape.of, key, reads })
  }
  return [...things.values()]
}

/** What is to be lit: the row itself; without one, all that is drawn of the name. */
export function isLit(of: Lit, lit: Lit | undefined): boolean {
  return lit !== undefined && of.name === lit.name && (lit.row === undefined || of.row === lit.row)
}
