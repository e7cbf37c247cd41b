import { openBook, writeOpenDocument } from "@pegbook/engine"
import { demo, QUICK_TEMPLATES, speak, TEMPLATES } from "@pegbook/templates"
import { strFromU8, unzipSync } from "fflate"
import { expect, onTestFinished, test } from "vitest"
import { type Outcome, recalculate } from "./recalculate.ts"
import { type FileSheets, readSheets, readXml } from "./spreadsheet-file.ts"

/*
 * The file is read back as a stranger would, and each of its formulas is worked out again, from the constants up, by two
 * libraries of formulas from outside the project (fast-formula-parser reads them; @formulajs/formulajs has the functions
 * that it lacks). What they come to must be what Pegbook says.
 */

const SAME = 1e-9

function differ(a: unknown, b: unknown): boolean {
  if (typeof a !== "number" || typeof b !== "number") return a !== b
  return Math.abs(a - b) > SAME * Math.max(Math.abs(a), Math.abs(b))
}

function differences(sheets: FileSheets, outcomes: ReadonlyMap<string, Outcome>): string[] {
  return [...outcomes].flatMap(([key, outcome]) => {
    const dot = key.lastIndexOf(".")
    const cell = sheets.get(key.slice(0, dot))?.get(key.slice(dot + 1))
    if (outcome.kind === "not_supported" || !differ(outcome.value, cell?.value)) return []
    return [`${key}: ${String(cell?.value)} here, ${String(outcome.value)} there: ${cell?.formula}`]
  })
}

test.each([...TEMPLATES, ...QUICK_TEMPLATES])(
  "every formula of $id comes to the same when others work it out",
  (definition) => {
    const sheets = readSheets(writeOpenDocument(openBook(definition).book))
    const outcomes = recalculate(sheets)
    const different = differences(sheets, outcomes)
    const unsupported = [...outcomes.values()].filter(({ kind }) => kind === "not_supported").length
    const equal = outcomes.size - different.length - unsupported
    console.log(
      `${definition.id}: ${outcomes.size} formulas written, ${equal} equal, ${different.length} different, ${unsupported} not supported by the libraries`,
    )
    expect(different).toEqual([])
    // Else the file would hold no formulas, or none that can be read.
    expect(equal).toBeGreaterThan(30)
  },
)

test("another constant in the file moves what leans on it, and that is noticed", () => {
  const { book } = openBook(demo())
  const sheets = readSheets(writeOpenDocument(book))
  const entries = sheets.get("All entries") ?? new Map()
  const row = [...entries].find(([, cell]) => cell.value === "platform_length")?.[0].slice(1)
  const typed = entries.get(`D${row}`)
  expect(typed?.value).toBe((book.entry("platform_length").reading?.value as number) * 1e9)
  const longer = new Map(entries).set(`D${row}`, { ...typed, value: Number(typed?.value) * 2 })
  const changed = new Map(sheets).set("All entries", longer)
  expect(differences(changed, recalculate(changed)).length).toBeGreaterThan(100)
})

test("the file is packed as OpenDocument asks: its kind first and plain, all of it named in the manifest", () => {
  const file = writeOpenDocument(openBook(demo()).book)
  const kind = "application/vnd.oasis.opendocument.spreadsheet"
  // ISO/IEC 26300-3 (from memory): from byte 30 the name, from byte 38 the kind itself, readable by eye.
  expect(strFromU8(file.slice(30, 38 + kind.length))).toBe(`mimetype${kind}`)
  const parts = unzipSync(file)
  const manifest = readXml(strFromU8(parts["META-INF/manifest.xml"] ?? new Uint8Array()))
  const named = [...manifest.getElementsByTagName("manifest:file-entry")].map((entry) =>
    entry.getAttribute("manifest:full-path"),
  )
  const packed = Object.keys(parts).filter((name) => name !== "mimetype" && !name.startsWith("META-INF/"))
  expect(named).toEqual(["/", ...packed])
  expect(writeOpenDocument(openBook(demo()).book)).toEqual(file)
})

test("the first sheet says in which units the formulas work, and each table has a sheet", () => {
  const { book } = openBook(demo())
  const sheets = readSheets(writeOpenDocument(book))
  const about = [...(sheets.get("About this workbook")?.values() ?? [])].map(({ value }) => String(value))
  expect(about.join(" ")).toMatch(/whole nanometres \(nm\)/)
  const tables = book.sections.flatMap(({ entries }) => entries.filter(({ kind }) => kind === "table"))
  expect([...sheets.keys()]).toEqual(expect.arrayContaining(tables.map(({ name }) => name)))
})

/** What the first line of a sheet says. */
const firstLine = (sheets: FileSheets, title: string): readonly unknown[] =>
  [...(sheets.get(title) ?? new Map())].filter(([at]) => /^[A-Z]+1$/.test(at)).map(([, { value }]) => value)

/** What the first column of a sheet says. */
const firstColumn = (sheets: FileSheets, title: string): readonly unknown[] =>
  [...(sheets.get(title) ?? new Map())].filter(([at]) => /^A\d+$/.test(at)).map(([, { value }]) => value)

test("a workbook in French has its titles, headings and kinds in French, and the same formulas", async () => {
  const english = readSheets(writeOpenDocument(openBook(demo()).book))
  await speak("fr")
  onTestFinished(() => speak("en"))
  const french = readSheets(writeOpenDocument(openBook(demo()).book))

  const own = (sheets: FileSheets) => [...sheets.keys()].filter((title) => !/^[a-z_0-9]+$/.test(title))
  expect(own(english)).toEqual(["About this workbook", "All entries", "Lists entered"])
  expect(own(french)).toEqual(["À propos de ce classeur", "Toutes les entrées", "Listes saisies"])
  const heads = firstLine(french, "Toutes les entrées")
  expect(heads).toHaveLength(11)
  expect(heads.filter((head) => firstLine(english, "All entries").includes(head))).toEqual([])
  expect(firstColumn(french, "supports").slice(0, 9)).toEqual([
    "Nom",
    "Ce que c’est",
    "Unité tenue",
    "Sorte",
    "Formule",
    "Pourquoi",
    "Source",
    "Ligne",
    1,
  ])
  const kinds = [...(french.get("Toutes les entrées") ?? new Map())].filter(([at]) => /^C\d+$/.test(at))
  expect(new Set(kinds.slice(1).map(([, { value }]) => value))).toEqual(
    new Set(["entrée", "donnée", "formule", "colonne", "recherche", "vérification"]),
  )

  const [mine, theirs] = [recalculate(french), recalculate(english)]
  expect(mine.size).toBe(theirs.size)
  expect(differences(french, mine)).toEqual([])
})
