import { DOMParser, type Element } from "@xmldom/xmldom"
import { strFromU8, unzipSync } from "fflate"

/** A cell as it stands in a file. */
export interface FileCell {
  readonly type: string
  /** The value that was kept beside the formula; nothing for an error. */
  readonly value: number | string | boolean | undefined
  /** OpenFormula text without its prefix. */
  readonly formula?: string
}

/** Cells by address, `B7`, and sheets by their title. */
export type FileSheets = ReadonlyMap<string, ReadonlyMap<string, FileCell>>

export const OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0"
export const TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0"

/** Well-formed XML, or the test fails. */
export function readXml(text: string): Element {
  const root = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`)
    },
  }).parseFromString(text, "text/xml").documentElement
  if (root === null) throw new Error("the XML has no root")
  return root
}

export function readSheets(file: Uint8Array): FileSheets {
  const content = unzipSync(file)["content.xml"]
  if (content === undefined) throw new Error("the file has no content.xml")
  const tables = [...readXml(strFromU8(content)).getElementsByTagNameNS(TABLE, "table")]
  return new Map(
    tables.map((table) => {
      const cells = new Map<string, FileCell>()
      for (const [row, line] of [...table.getElementsByTagNameNS(TABLE, "table-row")].entries()) {
        for (const [column, cell] of [...line.getElementsByTagNameNS(TABLE, "table-cell")].entries()) {
          const read = readCell(cell)
          if (read !== undefined) cells.set(`${letters(column)}${row + 1}`, read)
        }
      }
      return [table.getAttributeNS(TABLE, "name") ?? "", cells] as const
    }),
  )
}

function readCell(cell: Element): FileCell | undefined {
  const type = cell.getAttributeNS(OFFICE, "value-type") ?? ""
  const formula = cell.getAttributeNS(TABLE, "formula")
  if (type === "") return undefined
  return {
    type,
    value: readTyped(cell, type),
    ...(formula === null || formula === "" ? {} : { formula: formula.replace(/^of:=/, "") }),
  }
}

function readTyped(cell: Element, type: string): FileCell["value"] {
  if (type === "float") return Number(cell.getAttributeNS(OFFICE, "value"))
  if (type === "boolean") return cell.getAttributeNS(OFFICE, "boolean-value") === "true"
  const text = cell.textContent ?? ""
  return text === "#N/A" ? undefined : text
}

function letters(place: number): string {
  return (place >= 26 ? letters(Math.floor(place / 26) - 1) : "") + String.fromCharCode(65 + (place % 26))
}
