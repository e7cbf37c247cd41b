import { type Book, type Definition, openBook } from "@pegbook/engine"

const SI_OF = {
  ft: 0.3048,
  in: 0.0254,
  lb: 4.4482216152605,
  psf: 47.88025898033584,
  psi: 6894.757293168361,
  lbft: 0.3048 * 4.4482216152605,
  plf: 4.4482216152605 / 0.3048,
  si: 1,
}

export type Unit = keyof typeof SI_OF

/** A workbook read in a unit of choice. */
export interface Read {
  readonly book: Book
  /** An entry's number, or that of a column's first row. */
  in(unit: Unit, name: string): number
  column(unit: Unit, name: string): readonly number[]
  texts(name: string): readonly string[]
  verdict(name: string): string | undefined
  ratio(check: string): number | undefined
}

/**
 * Opens a workbook once, and gives a function that reads it with some inputs changed and all others as they start: opening
 * is what takes time. Inputs may be cells of figure tables, `table.column.row`. Throws when one is not accepted.
 */
export function reader(definition: Definition): (typed?: Readonly<Record<string, string>>) => Read {
  let opened: Book | undefined
  let shown: Readonly<Record<string, string>> = {}
  const showing = (typed: Readonly<Record<string, string>>): Book => {
    opened ??= openBook(definition).book
    if (typed === shown) return opened
    const book = opened
    for (const name of Object.keys(shown)) if (!(name in typed)) book.restore(name)
    const { accepted, problems } = book.editAll(typed)
    if (!accepted) throw new Error(JSON.stringify(problems))
    shown = typed
    return book
  }
  return (typed = {}) => {
    showing(typed)
    const number = (value: unknown, unit: Unit, name: string): number => {
      if (typeof value !== "number") throw new Error(`${name} has no number`)
      return value / SI_OF[unit]
    }
    const readings = (name: string) => showing(typed).entry(name).readings ?? []
    return {
      get book() {
        return showing(typed)
      },
      in: (unit, name) => {
        const { reading } = showing(typed).entry(name)
        return number((reading ?? readings(name)[0])?.value, unit, name)
      },
      column: (unit, name) => readings(name).map((reading) => number(reading?.value, unit, name)),
      texts: (name) => readings(name).map((reading) => String(reading?.value)),
      verdict: (name) => showing(typed).entry(name).check?.verdict,
      ratio: (check) => showing(typed).entry(check).check?.ratio,
    }
  }
}
