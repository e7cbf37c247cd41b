import type { Book, Reading } from "@pegbook/engine"

/** An entry's values: one, or one a row. */
export function readingsOf(book: Book, name: string): readonly (Reading | null)[] {
  const view = book.entry(name)
  return view.readings ?? [view.reading ?? null]
}

/** All that a workbook says, by name. Reading it takes as long as working some of it out: it is done once for every law. */
export type Said = ReadonlyMap<string, readonly (Reading | null)[]>

export function saidBy(book: Book): Said {
  return new Map(book.names().map((name) => [name, readingsOf(book, name)]))
}

/** Fails with the entry's name where two workbooks differ by more than a share of 1e-9; counts must be the same. */
export function sameValues(a: Said, b: Said): void {
  for (const [name, left] of a) {
    const right = b.get(name) ?? []
    if (left.length !== right.length) throw new Error(`${name}: ${left.length} rows and ${right.length}`)
    for (const [index, reading] of left.entries()) {
      const other = right[index] ?? null
      if (same(reading, other)) continue
      throw new Error(
        `${name}, row ${index + 1}: ${reading?.text} (${reading?.value}) and ${other?.text} (${other?.value})`,
      )
    }
  }
}

function same(a: Reading | null, b: Reading | null): boolean {
  if (typeof a?.value !== "number" || typeof b?.value !== "number") return a?.value === b?.value
  const allowed = a.unit === "1" && Number.isInteger(a.value) ? 0 : 1e-9
  // Millionths of a nanometre: what is left of a difference of two like lengths is noise.
  return Math.abs(a.value - b.value) <= allowed * Math.abs(a.value) + 1e-15
}
