import type { EntryView, Reading } from "../book/views.ts"
import type { Coordinate, Extent, Term, Where } from "../definition/drawing.ts"

/** What a drawing reads of a workbook. */
export interface DrawingSource {
  has(name: string): boolean
  entry(name: string): Pick<EntryView, "reading" | "readings">
  table(name: string): { readonly rowCount: number }
}

/** The table and row a shape is drawn for, if any. */
export interface At {
  readonly table?: string
  readonly row?: number
}

/** A name as a shape writes it, without its "-". */
export const bare = (name: string): string => (name.startsWith("-") ? name.slice(1) : name)

/** The full name that a shape's name stands for; undefined where there is none. */
export function fullName(name: string, table: string | undefined, has: (name: string) => boolean) {
  const own = `${table}.${bare(name)}`
  if (table !== undefined && has(own)) return own
  return has(bare(name)) ? bare(name) : undefined
}

/** Reads the values that a drawing's names stand for. Lengths are in metres. */
export class Values {
  readonly #source: DrawingSource
  /** A view is made anew at each asking, and every row asks for the same few. */
  readonly #views = new Map<string, ReturnType<DrawingSource["entry"]>>()

  constructor(source: DrawingSource) {
    this.#source = source
  }

  #entry(name: string): ReturnType<DrawingSource["entry"]> {
    let view = this.#views.get(name)
    if (view === undefined) {
      view = this.#source.entry(name)
      this.#views.set(name, view)
    }
    return view
  }

  reading(term: Term, at: At): Reading | undefined {
    if (typeof term === "string") {
      const name = fullName(term, at.table, (one) => this.#source.has(one))
      if (name === undefined) return undefined
      const { reading, readings } = this.#entry(name)
      return readings === undefined ? reading : (readings[(at.row ?? 1) - 1] ?? undefined)
    }
    if ("half" in term) return this.reading(term.half, at)
    const row = typeof term.row === "number" ? term.row : this.number(term.row, at)
    if (row === undefined) return undefined
    return this.#entry(bare(term.of)).readings?.[row - 1] ?? undefined
  }

  number(coordinate: Coordinate, at: At): number | undefined {
    const terms = Array.isArray(coordinate) ? (coordinate as readonly Term[]) : [coordinate as Term]
    let sum = 0
    for (const term of terms) {
      const value = this.reading(term, at)?.value
      if (typeof value !== "number") return undefined
      const half = typeof term === "object" && "half" in term
      const name = typeof term === "string" ? term : "half" in term ? term.half : term.of
      sum += (name.startsWith("-") ? -value : value) / (half ? 2 : 1)
    }
    return sum
  }

  /** From the lesser to the greater; undefined where a value is missing. */
  extent(extent: Extent, at: At): readonly [number, number] | undefined {
    const start = this.number("centre" in extent ? extent.centre : extent.from, at)
    const reach = this.number("to" in extent ? extent.to : extent.size, at)
    if (start === undefined || reach === undefined) return undefined
    if ("centre" in extent) return [start - reach / 2, start + reach / 2]
    const end = "to" in extent ? reach : start + reach
    return [Math.min(start, end), Math.max(start, end)]
  }

  picks(where: Where, at: At): boolean {
    return Object.entries(where).every(([name, wanted]) => {
      const value = this.reading(name, at)?.value
      return value !== undefined && value === (typeof wanted === "object" ? this.number(wanted, at) : wanted)
    })
  }
}
