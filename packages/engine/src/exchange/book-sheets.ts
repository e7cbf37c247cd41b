import { compile, rowsNode } from "../book/compile.ts"
import { LIST_COLUMN } from "../book/outline.ts"
import type { FormulaNode } from "../book/read-formula.ts"
import type { EntryView, Reading } from "../book/views.ts"
import { languageInForce } from "../language/in-force.ts"
import type { MeasureId } from "../units/measure.ts"
import { columnName, type ExportedBook, entriesOf, sourcesInOneLine } from "./exported-book.ts"
import { heldUnit, siPerHeld, toHeldValue } from "./held-unit.ts"
import { type CellPlaces, openFormula } from "./open-formula.ts"
import { columnLetters, quotedTitle, type SheetCell, type SheetOfCells, type SheetRow } from "./sheet.ts"
import type { SheetText } from "./sheet-text.en.ts"
import { sheetText } from "./sheet-text.ts"

/** In the sheet of all entries, from 0. */
const HELD_COLUMN = 3
/** Above the rows of a table: one line for each thing said of a column, and a blank one. */
const firstTableRow = ({ tableHeads }: SheetText): number => tableHeads.length + 2

/** The sheets of a workbook: about it, its entries, its lists, and each of its tables. */
export function bookSheets(book: ExportedBook): readonly SheetOfCells[] {
  const formulas = compile(book.definition).formulas
  const views = entriesOf(book)
  const lines = entryLines(views)
  const tables = views.filter(({ shape }) => shape === "table")
  const lists = views.filter(({ shape }) => shape === "list")
  const places = placesOf(book, lines, tables, lists)
  return [
    aboutSheet(book),
    entriesSheet(lines, formulas, places),
    ...(lists.length === 0 ? [] : [listsSheet(lists)]),
    ...tables.map((view) => tableSheet(book, view.name, formulas, places)),
  ]
}

/** One line of the sheet of entries: an entry, or a part of a check. */
interface Line {
  /** The formula's node. */
  readonly id: string
  readonly view: EntryView
  readonly label: string
  readonly measure: MeasureId
  readonly reading: Reading | null
}

function entryLines(views: readonly EntryView[]): readonly Line[] {
  const words = sheetText()
  return views.flatMap((view): Line[] => {
    const { name, label, reading = null } = view
    if (view.shape === "table") {
      return [{ id: rowsNode(name), view, label: words.rowCount(label), measure: "count", reading }]
    }
    if (view.check === undefined) return [{ id: name, view, label, measure: view.measure, reading }]
    const { demand = null, limit = null, verdict } = view.check
    const said = languageInForce().entries.verdicts[verdict]
    return [
      { id: `${name}.demand`, view, label: words.demand(label), measure: view.measure, reading: demand },
      { id: `${name}.limit`, view, label: words.limit(label), measure: view.measure, reading: limit },
      { id: name, view, label: words.ratio(label), measure: "ratio", reading },
      {
        id: `${name}.verdict`,
        view,
        label: words.verdict(label),
        measure: "text",
        reading: { value: said, unit: "", text: said },
      },
    ]
  })
}

function placesOf(
  book: ExportedBook,
  lines: readonly Line[],
  tables: readonly EntryView[],
  lists: readonly EntryView[],
): CellPlaces {
  const words = sheetText()
  const known = new Map<string, string>()
  const column = (title: string, place: number, first: number, count: number): string => {
    const letters = `$${columnLetters(place)}`
    return `[${quotedTitle(title)}.${letters}$${first}:.${letters}$${first + Math.max(1, count) - 1}]`
  }
  for (const [index, { id }] of lines.entries()) {
    known.set(id, `[${quotedTitle(words.entries)}.$${columnLetters(HELD_COLUMN)}$${index + 2}]`)
  }
  for (const [index, { name, readings = [] }] of lists.entries()) {
    known.set(`${name}.${LIST_COLUMN}`, column(words.lists, index, 3, readings.length))
  }
  for (const { name } of tables) {
    const { columns, rowCount } = book.table(name)
    for (const [index, { name: id }] of columns.entries()) {
      known.set(id, column(name, index + 1, firstTableRow(words), rowCount))
    }
  }
  return {
    of(id) {
      const place = known.get(id)
      if (place === undefined) throw new RangeError(`no cell holds ${id}`)
      return place
    },
  }
}

function text(value: string): SheetCell {
  return { value }
}

function heading(value: string): SheetCell {
  return { value, strong: true }
}

function aboutSheet({ definition }: ExportedBook): SheetOfCells {
  const words = sheetText()
  return {
    title: words.about,
    widths: [30],
    rows: [
      [heading(definition.title)],
      [text(definition.says)],
      ...words.aboutLines.map((line) => [text(line)]),
      [],
      ...definition.cautions.map((line) => [text(line)]),
    ],
  }
}

/** A value as the formulas hold it; where there is none, the error that stands for it. */
function heldCell(reading: Reading | null, id: MeasureId, formula?: string): SheetCell {
  if (reading === null) return { value: null, formula: formula ?? "of:=NA()" }
  const { value } = reading
  const held = typeof value === "number" ? toHeldValue(value, id) : value
  return { value: held, ...(formula === undefined ? {} : { formula }) }
}

function entriesSheet(
  lines: readonly Line[],
  formulas: ReadonlyMap<string, FormulaNode>,
  places: CellPlaces,
): SheetOfCells {
  const words = sheetText()
  const rows = lines.map(({ id, view, label, measure: of, reading }, index): SheetRow => {
    const node = formulas.get(id)
    const isList = view.shape === "list"
    // A formula that was typed over holds a value of the user's own.
    const live =
      node?.resolved !== undefined && !view.changed ? openFormula(node.resolved, places) : undefined
    const value = reading?.value
    const held = `[.${columnLetters(HELD_COLUMN)}${index + 2}]`
    const inSi: SheetCell | undefined =
      typeof value === "number" ? { value, formula: `of:=${held}*${siPerHeld(of)}` } : undefined
    return [
      text(id.replace("#rows", "")),
      text(label),
      text(languageInForce().entries.kinds[view.kind]),
      isList ? text(reading?.text ?? "") : heldCell(reading, of, live),
      text(isList ? "" : heldUnit(of)),
      isList ? undefined : inSi,
      text(isList ? "" : (reading?.unit ?? "")),
      text(reading?.text ?? ""),
      text(node?.text ?? ""),
      text(view.why),
      text(sourcesInOneLine(view.sources)),
    ]
  })
  return {
    title: words.entries,
    widths: [6, 7, 2.2, 4, 2.6, 4, 2, 4, 9, 12, 12],
    rows: [words.entryHeads.map(heading), ...rows],
  }
}

function listsSheet(lists: readonly EntryView[]): SheetOfCells {
  const words = sheetText()
  const longest = Math.max(...lists.map(({ readings = [] }) => readings.length))
  const rows = Array.from({ length: longest }, (_, row) =>
    lists.map(({ readings = [], measure: of }) =>
      row < readings.length ? heldCell(readings[row] ?? null, of) : undefined,
    ),
  )
  return {
    title: words.lists,
    widths: lists.map(() => 4),
    rows: [
      lists.map(({ name }) => heading(name)),
      lists.map(({ measure: of }) => text(heldUnit(of))),
      ...rows,
    ],
  }
}

function tableSheet(
  book: ExportedBook,
  table: string,
  formulas: ReadonlyMap<string, FormulaNode>,
  places: CellPlaces,
): SheetOfCells {
  const words = sheetText()
  const { columns, rowCount } = book.table(table)
  const positions = new Map(columns.map(({ name }, index) => [columnName(name), columnLetters(index + 1)]))
  const said: readonly (readonly string[])[] = columns.map((column) => [
    columnName(column.name),
    column.label,
    heldUnit(column.measure),
    languageInForce().entries.kinds[column.kind],
    formulas.get(column.name)?.text ?? "",
    column.why,
    sourcesInOneLine(column.sources),
  ])
  const heads = words.tableHeads.map((head, line): SheetRow => {
    const cell = line === 0 ? heading : text
    const asRead = columns.map(({ label }) => (line === 1 ? text(words.asRead(label)) : undefined))
    return [heading(head), ...said.map((of) => cell(of[line] ?? "")), ...asRead]
  })
  const rows = Array.from({ length: rowCount }, (_, index): SheetRow => {
    const line = firstTableRow(words) + index
    const inRow: CellPlaces = {
      ...places,
      inRow: { column: (name) => `[.$${positions.get(name) ?? ""}${line}]`, number: `[.$A${line}]` },
    }
    const held = columns.map(({ name, measure: of, readings }) => {
      const resolved = formulas.get(name)?.resolved
      return heldCell(
        readings?.[index] ?? null,
        of,
        resolved === undefined ? undefined : openFormula(resolved, inRow),
      )
    })
    return [
      { value: index + 1 },
      ...held,
      ...columns.map(({ readings }) => text(readings?.[index]?.text ?? "")),
    ]
  })
  return {
    title: table,
    widths: [2.5],
    rows: [...heads, [heading(words.rowHead)], ...rows],
  }
}
