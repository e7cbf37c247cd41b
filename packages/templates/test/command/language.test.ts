import { openBook } from "@pegbook/engine"
import { afterAll, beforeAll, describe, expect, test } from "vitest"
import { demo, speak } from "../../src/index.ts"
import { calcJson, file, type Printed, pegbook, refuses, spawned } from "./run.ts"

const T = "game-table-platform"

/** English words that French does not have. */
const ENGLISH =
  /(?<![\p{L}_-])(?:the|and|with|of|is|are|at most|at least|rows?|changed|from|why|passes|fails|proven)(?![\p{L}_-])/iu

function french(...args: string[]): string {
  const { status, out, err } = spawned(...args, "--language", "fr")
  expect(err).toBe("")
  expect(status).toBe(0)
  return out
}

describe("--language fr", () => {
  test("calc says titles, values and verdicts in French, and reads what is typed in French", () => {
    const out = french(
      "calc",
      T,
      "--seconds=0",
      "--set",
      "platform_length=18 pi",
      "--set",
      "spare_screws=12,5 %",
    )
    expect(out).toMatch(/^Plateforme pour table de jeu \(game-table-platform\)$/m)
    expect(out).toMatch(/ platform_length +18' 0" {2}\(modifié\)$/m)
    expect(out).toMatch(/ spare_screws +12,5\s% {2}\(modifié\)$/m)
    expect(out).toMatch(/ platform_area +216\spi²$/m)
    expect(out).toMatch(/ joist_check +conforme : .* au plus .*\(rapport 0,\d\d\)$/m)
    expect(out).toMatch(/^Mises en garde$/m)
    // Names, those of columns at the head of a table too, are the same in all languages.
    const english = out
      .split("\n")
      .filter((line) => !/^ {6}[a-z]\w*(?: {2,}[a-z]\w*)*$/.test(line))
      .filter((line) => ENGLISH.test(line.replace(/\b[a-z]+(?:_[a-z0-9]+)+\b/g, "")))
    expect(english).toEqual([])
  })

  test("calc --json has the same names and numbers in both languages, and texts in French", () => {
    const mine = JSON.parse(french("calc", T, "--seconds=0", "--json")) as Printed
    const english = calcJson(T)
    expect(Object.keys(mine.quantities)).toEqual(Object.keys(english.quantities))
    for (const [name, { value, unit }] of Object.entries(english.quantities)) {
      expect(mine.quantities[name]?.unit, name).toBe(unit)
      if (typeof value === "number") expect(mine.quantities[name]?.value, name).toBe(value)
    }
    for (const [name, { why }] of Object.entries(mine.quantities))
      expect(why, name).not.toBe(english.quantities[name]?.why)
  })

  test("why and list are in French", () => {
    const out = french("why", T, "joist_count", "--seconds=0")
    expect(out).toMatch(/^ {2}Pourquoi : .+$/m)
    expect(out).toMatch(/^ {2}Source : .+$/m)
    expect(out).toMatch(/^ +platform_length = 20' 0" {3}entrée$/m)
    expect(french("list")).toMatch(/^shed-base +Base de cabanon +/m)
  })

  test("compare is in French, and what a person named stays as they named it", () => {
    const { book } = openBook(demo())
    book.saveCopy("Wider")
    book.edit("platform_width", "14 ft")
    const out = french("compare", file(JSON.stringify(book.document())))
    expect(out).toMatch(/^Premier plan {2}↔ {2}Wider$/m)
    expect(out).toMatch(/^Saisi$/m)
    expect(out).toMatch(/platform_width +12' 0" +→ +14' 0"/m)
    expect(out).toMatch(/^\d+ entrées sont pareilles\.$/m)
  })

  test("the build book is in French, and so is what its page is called", { timeout: 180_000 }, () => {
    const page = french("book", "shed-base", "--seconds=0")
    const head = page.slice(0, page.indexOf("<style>"))
    expect(head).toContain('<html lang="fr-CA">')
    expect(head).toMatch(/<title>Cahier de chantier\s: Base de cabanon<\/title>/)
    const body = page.slice(page.indexOf("<body>")).replace(/<[^>]*>/g, "\n")
    const english = body.split("\n").filter((line) => / (?:the|with|of|are|from) /.test(line))
    expect(english).toEqual([])
  })

  test("what cannot be read is refused in French", () => {
    const { status, out, err } = spawned("calc", T, "--language", "fr", "--set", "platform_length=gros")
    expect(status).toBe(2)
    expect(out).toBe("")
    expect(err).toMatch(/^pegbook: [^\n]*« gros » est illisible[^\n]*\n$/)
  })
})

describe("help, cut and refusals in French", () => {
  beforeAll(() => speak("fr"))
  afterAll(() => speak("en"))

  test("help has no English left but names, and says as much as the English", () => {
    const { out } = pegbook("help", "--language", "fr")
    const says = out.replace(/"[^"]*"|[<[(][^>\])]*[>\])]/g, "").replace(/--\w+|pegbook \w+/g, "")
    expect(says.split("\n").filter((line) => ENGLISH.test(line))).toEqual([])
    expect(out).toMatch(/^pegbook cut <fichier\.json>/m)
  })

  test.each<readonly [name: string, args: readonly string[]]>([
    ["no command", ["calculate"]],
    ["a name too few", ["calc"]],
    ["an unknown option", ["calc", T, "--colour"]],
    ["an option without its value", ["calc", T, "--units", "us", "--set"]],
    ["a value for none", ["calc", T, "--json=1"]],
    ["an option of no use", ["list", "--json"]],
    ["no setting", ["calc", T, "--set", "=3"]],
    ["no seconds", ["book", T, "--seconds=soon"]],
    ["no paper", ["book", T, "--paper", "a5"]],
    ["no units", ["calc", T, "--units", "feet"]],
    ["no page", ["book", T, "--out", "a.doc"]],
    ["no sheets", ["export", T, "--to", "a.xls"]],
    ["no template", ["calc", "x"]],
    ["a template meant", ["calc", "shed-bass"]],
    ["no entry", ["why", T, ""]],
    ["an entry meant", ["why", T, "joist_cuont"]],
    ["no two scenarios", ["compare", T]],
    ["two things to export", ["export", T]],
    ["no table", ["export", T, "--table", "zzzz"]],
    ["a table meant", ["export", T, "--table", "suports"]],
    ["a table's file with no table", ["calc", T, "--table", "no-such.csv"]],
    ["a file that is not there", ["calc", T, "--table", "none-at-all.json"]],
  ])("%s is refused in French", (_, args) => {
    const { status, out, err } = pegbook(...args, "--language", "fr")
    expect([status, out]).toEqual([2, ""])
    // In brackets: what the system says, and the names there are.
    const says = err.replace(/Les commandes sont [^.]*|\([^)]*\)|«[^»]*»|'[^']*'|<[^>]*>|\[[^\]]*\]/g, "")
    expect(says).toMatch(
      /(?:Écrivez|Essayez|Donnez|Nommez|Vouliez-vous dire|Les tableaux sont|Les noms sont|Enregistrez)/,
    )
    expect(says).not.toMatch(ENGLISH)
    expect(says).not.toMatch(/(?:Write|Give|Did you|Try:|no such)/)
  })

  test("a case that is wrong is refused in French, and an obstacle and a proven plan are said in French", () => {
    const board = { id: "8 ft", length: 1536, price: 655, available: null }
    const shelf = {
      id: "shelf",
      kind: "cut",
      kerf: 2,
      stocks: [board],
      pieces: [{ length: 767, quantity: 2 }],
    }
    const cases = (one: object) => file(JSON.stringify({ cases: [one] }))
    const { err } = spawned("cut", cases({ ...shelf, kerf: -1 }), "--language", "fr")
    expect(err).toMatch(
      /^pegbook: cut\s: cas shelf\s: kerf a reçu -1\. Accepté\s: un nombre entier d’au moins 0\. Ensuite\s: corrigez kerf/,
    )
    const proven = french("cut", cases(shelf))
    expect(proven).toMatch(/^shelf : planches à acheter/)
    expect(proven).toMatch(/6,55 en tout, le meilleur, c'est prouvé/)
    expect(proven).toMatch(/Acheter :\n {4}1 × {2}8 ft\n/)
    const tooLong = french("cut", cases({ ...shelf, pieces: [{ length: 1537, quantity: 1 }] }))
    expect(tooLong).toContain("une planche de 1537 ou plus à acheter")
    for (const text of [proven, tooLong]) expect(text).not.toMatch(ENGLISH)
  })
})

test("without a language, and with en, all is in English", () => {
  const said = pegbook("why", T, "joist_count")
  expect(said.out).toMatch(/^ {2}Why: /m)
  expect(pegbook("why", T, "joist_count", "--language", "en")).toEqual(said)
})

test("a language that Pegbook does not have is refused, and those that it has are named", () => {
  refuses(["calc", T, "--language", "de"], "--language", '"de"', "en", "fr", "English")
  refuses(["list", "--language", ""], "--language")
  refuses(["help", "--units", "us"], "--units", "no use")
})
