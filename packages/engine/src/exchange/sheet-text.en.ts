/** The words that a workbook which was written out has of its own. */
export interface SheetText {
  readonly about: string
  readonly entries: string
  readonly lists: string
  readonly aboutLines: readonly string[]
  readonly entryHeads: readonly [
    name: string,
    label: string,
    kind: string,
    held: string,
    heldUnit: string,
    inSi: string,
    siUnit: string,
    asRead: string,
    formula: string,
    why: string,
    from: string,
  ]
  readonly tableHeads: readonly [
    name: string,
    label: string,
    heldUnit: string,
    kind: string,
    formula: string,
    why: string,
    from: string,
  ]
  readonly rowHead: string
  readonly asRead: (label: string) => string
  readonly demand: (label: string) => string
  readonly limit: (label: string) => string
  readonly verdict: (label: string) => string
  readonly ratio: (label: string) => string
  readonly rowCount: (label: string) => string
}

export const ENGLISH_SHEETS: SheetText = {
  about: "About this workbook",
  entries: "All entries",
  lists: "Lists entered",
  aboutLines: [
    "Each sheet is part of one workbook: all its entries, the lists that were entered, and one sheet for each table.",
    "The formulas are live. They work on the held values: lengths in whole nanometres (nm), so that exact fits stay exact, mass in kg, time in s, temperature in K, money in hundredths, and products of these. The unit stands beside each value, or above its column.",
    "Beside each held value stands the same in SI units (money in its major unit), worked out from it, and the text as it was read when this file was written. That text does not follow a change made here.",
    "Where a search found the rows of a table, its values are written as they were found. Here they do not follow a change.",
    "A table has as many rows as it had when this file was written. Where the number of rows is a formula and a change here moves it, write the file out again.",
    "#N/A stands where there is no value: an input that was left blank, or what waits for one.",
  ],
  entryHeads: [
    "Name",
    "What it is",
    "Kind",
    "Held value",
    "Held unit",
    "In SI units",
    "SI unit",
    "As read",
    "Formula",
    "Why",
    "Where from",
  ],
  tableHeads: ["Name", "What it is", "Held unit", "Kind", "Formula", "Why", "Where from"],
  rowHead: "Row",
  asRead: (label) => `${label}, as read`,
  demand: (label) => `${label}: demand`,
  limit: (label) => `${label}: limit`,
  verdict: (label) => `${label}: verdict`,
  ratio: (label) => `${label}: ratio`,
  rowCount: (label) => `${label}: number of rows`,
}
