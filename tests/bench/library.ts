import { openBook, writeOpenDocument } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { recalculate } from "../exchange/recalculate.ts"
import { readSheets } from "../exchange/spreadsheet-file.ts"
import { median } from "./median.ts"

const TIMES = 5

/** The demonstration workbook's formulas, as they are written out, worked out once by libraries of general use; milliseconds. */
export function timeLibrary(): { readonly formulas: number; readonly all: number } {
  const sheets = readSheets(writeOpenDocument(openBook(demo()).book))
  const formulas = recalculate(sheets).size
  return { formulas, all: median(TIMES, () => void recalculate(sheets)) }
}
