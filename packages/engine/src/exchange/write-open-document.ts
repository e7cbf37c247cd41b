import { strToU8, type Zippable, zipSync } from "fflate"
import { bookSheets } from "./book-sheets.ts"
import type { ExportedBook } from "./exported-book.ts"
import type { SheetCell, SheetOfCells } from "./sheet.ts"

const MEDIA_TYPE = "application/vnd.oasis.opendocument.spreadsheet"
const VERSION = "1.3"
const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>\n'
const URN = "urn:oasis:names:tc:opendocument:xmlns"
const NAMESPACES = [
  ...["office", "table", "text", "style"].map((prefix) => `xmlns:${prefix}="${URN}:${prefix}:1.0"`),
  `xmlns:fo="${URN}:xsl-fo-compatible:1.0"`,
  `xmlns:of="${URN}:of:1.2"`,
].join(" ")
/** The first moment that a zip can tell: the same workbook makes the same file. */
const NO_TIME = new Date(1980, 0, 1)

/** A workbook as an OpenDocument spreadsheet (ISO/IEC 26300, version 1.3): the bytes of an .ods file. */
export function writeOpenDocument(book: ExportedBook): Uint8Array {
  const files: Zippable = {
    // First and not compressed, so that the kind of file can be read from its first bytes.
    mimetype: [strToU8(MEDIA_TYPE), { level: 0 }],
    "META-INF/manifest.xml": strToU8(manifest()),
    "content.xml": strToU8(content(bookSheets(book))),
  }
  return zipSync(files, { mtime: NO_TIME })
}

function manifest(): string {
  const entry = (path: string, type: string, version = ""): string =>
    `<manifest:file-entry manifest:full-path="${path}"${version} manifest:media-type="${type}"/>`
  return [
    DECLARATION,
    `<manifest:manifest xmlns:manifest="${URN}:manifest:1.0" manifest:version="${VERSION}">`,
    entry("/", MEDIA_TYPE, ` manifest:version="${VERSION}"`),
    entry("content.xml", "text/xml"),
    "</manifest:manifest>",
  ].join("")
}

/** Column styles are named by their width in millimetres. */
const widthStyle = (width: number): string => `width-${Math.round(width * 10)}`

function content(sheets: readonly SheetOfCells[]): string {
  const widths = [...new Set(sheets.flatMap((sheet) => sheet.widths))]
  return [
    DECLARATION,
    `<office:document-content ${NAMESPACES} office:version="${VERSION}"><office:automatic-styles>`,
    ...widths.map(
      (width) =>
        `<style:style style:name="${widthStyle(width)}" style:family="table-column"><style:table-column-properties style:column-width="${width}cm"/></style:style>`,
    ),
    '<style:style style:name="strong" style:family="table-cell"><style:text-properties fo:font-weight="bold"/></style:style>',
    "</office:automatic-styles><office:body><office:spreadsheet>",
    // Texts in criteria mean just what they say.
    '<table:calculation-settings table:search-criteria-must-apply-to-whole-cell="true" table:use-regular-expressions="false" table:use-wildcards="false" table:automatic-find-labels="false"/>',
    ...sheets.map(sheetXml),
    "</office:spreadsheet></office:body></office:document-content>",
  ].join("")
}

function sheetXml({ title, widths, rows }: SheetOfCells): string {
  const columns = Math.max(1, ...rows.map((row) => row.length))
  const rest = columns - widths.length
  return [
    `<table:table table:name="${escaped(title)}">`,
    ...widths.map((width) => `<table:table-column table:style-name="${widthStyle(width)}"/>`),
    rest > 0 ? `<table:table-column table:number-columns-repeated="${rest}"/>` : "",
    ...rows.map(
      (row) =>
        `<table:table-row>${row.length === 0 ? "<table:table-cell/>" : row.map(cellXml).join("")}</table:table-row>`,
    ),
    "</table:table>",
  ].join("")
}

function cellXml(cell: SheetCell | undefined): string {
  if (cell === undefined || (cell.value === "" && cell.formula === undefined)) return "<table:table-cell/>"
  const { value, formula, strong } = cell
  const attributes = [
    strong ? ' table:style-name="strong"' : "",
    formula === undefined ? "" : ` table:formula="${escaped(formula)}"`,
    typedValue(value),
  ].join("")
  return `<table:table-cell${attributes}><text:p>${escaped(shown(value))}</text:p></table:table-cell>`
}

function typedValue(value: SheetCell["value"]): string {
  switch (typeof value) {
    case "number":
      return ` office:value-type="float" office:value="${value}"`
    case "boolean":
      return ` office:value-type="boolean" office:boolean-value="${value}"`
    default:
      // What a formula came to; of an error there is only the text that is shown.
      return ` office:value-type="string"`
  }
}

function shown(value: SheetCell["value"]): string {
  return value === null ? "#N/A" : String(value)
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" }

/** Text for XML: characters that XML 1.0 cannot hold are left out, and one space stands for line ends. */
function escaped(text: string): string {
  return text
    .replace(/[&<>"]/g, (character) => ESCAPES[character] ?? character)
    .replace(/[\t\r\n]+/g, " ")
    .replace(/[^\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "")
}
