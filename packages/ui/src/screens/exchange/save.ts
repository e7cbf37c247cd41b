// Loaded when it is first asked for: what writes files is no part of the first screen.
import { tableCsv, writeOpenDocument } from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"
import { fileName } from "./file-name.ts"

/** Saves a table as a CSV file. */
export function saveTable(sheet: Sheet, table: string): void {
  save(`${table}.csv`, new Blob([tableCsv(sheet, table)], { type: "text/csv;charset=utf-8" }))
}

/** Saves the whole workbook as an OpenDocument spreadsheet. */
export function saveOpenDocument(sheet: Sheet, title: string): void {
  const bytes = new Uint8Array(writeOpenDocument(sheet))
  save(
    `${fileName(title)}.ods`,
    new Blob([bytes], { type: "application/vnd.oasis.opendocument.spreadsheet" }),
  )
}

function save(name: string, content: Blob): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement("a")
  link.href = address
  link.download = name
  link.click()
  // The browser has taken the content by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
