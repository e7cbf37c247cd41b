import type { DrawingSource, Reading } from "../../src/index.ts"

export const reading = (value: number | string): Reading => ({
  value,
  unit: typeof value === "number" ? "m" : "",
  text: String(value),
})

/** A workbook of plain numbers: entries by name, and tables as lists of columns. */
export function source(
  entries: Readonly<Record<string, number>>,
  tables: Readonly<Record<string, Readonly<Record<string, readonly (number | string | null)[]>>>> = {},
): DrawingSource {
  const column = (name: string) => {
    const [table = "", bare = ""] = name.split(".")
    return tables[table]?.[bare]
  }
  return {
    has: (name) => name in entries || name in tables || column(name) !== undefined,
    table: (name) => ({ rowCount: Object.values(tables[name] ?? {})[0]?.length ?? 0 }),
    entry(name) {
      const values = column(name)
      if (values !== undefined)
        return { readings: values.map((value) => (value === null ? null : reading(value))) }
      const value = entries[name]
      return value === undefined ? {} : { reading: reading(value) }
    },
  }
}
