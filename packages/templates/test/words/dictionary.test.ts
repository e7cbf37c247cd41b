import { type Definition, keptAs, loadLanguage, openBook, shownAs, useLanguage } from "@pegbook/engine"
import { afterAll, beforeAll, describe, expect, test } from "vitest"
import { demo, speak, TEMPLATES, template } from "../../src/index.ts"
import { lengthInWords } from "../../src/solvers/length-in-words.ts"
import { sawAdvice } from "../../src/solvers/saw-advice.ts"
import { type CheckedDictionary, dictionaryOf } from "../../src/words/dictionary.ts"
import { french } from "../../src/words/fr/index.ts"

let dictionary: CheckedDictionary
beforeAll(async () => {
  dictionary = french((await loadLanguage("fr")).number)
  await speak("fr")
})
afterAll(() => speak("en"))

describe("texts that are put together", () => {
  test.each([
    ["line 3, piece 2", "ligne 3, morceau 2"],
    ["2, row 1", "2, rangée 1"],
    [
      "skids: bending takes 93 % of what is accepted",
      "patins\u00a0: flexion, 93\u00a0% de ce qui est accepté",
    ],
    ["UC4A or better for the skids: too near the ground", "UC4A ou mieux (patins)\u00a0: trop près du sol"],
    ["North yard is in the suppliers twice: the first is used. Remove one.", /^North yard est deux fois/],
    ["all from North yard", "tout chez North yard"],
    ["Douglas Fir-Larch | No.2 | any width", "Douglas-mélèze | No.2 | toute largeur"],
  ])("%s", (english, said) => {
    expect(dictionary.text(english)).toMatch(said instanceof RegExp ? said : new RegExp(`^${escaped(said)}$`))
  })

  test("a solver's own sentence is said with its numbers", () => {
    const [advice = ""] = sawAdvice({
      demands: [
        { size: "2x6", length: 609_600_000, count: 8, stock: [2_438_400_000, 3_048_000_000] } as never,
      ],
      rule: { kerf: 3_175_000, endTrim: 0 } as never,
    })
    expect(advice).toContain(lengthInWords(609_600_000))
    expect(dictionary.knows(advice)).toBe(true)
    expect(dictionary.text(advice)).toMatch(/^4 × 2\u00a0pi \(0,61\u00a0m\) de 2x6 ne sort pas de 8\u00a0pi/)
  })
})

test("what nobody knows stays as it is", () => {
  expect(dictionary.text("Chez Nous, rue du Lac")).toBe("Chez Nous, rue du Lac")
  expect(dictionary.knows("Chez Nous, rue du Lac")).toBe(false)
})

test("a pattern's parts that are names stay as they are, and are not looked for twice", () => {
  const small = dictionaryOf(
    { texts: { north: "nord" }, patterns: { "to {1}": "au {1}" }, same: [] },
    (text) => text,
  )
  expect(small.text("to north")).toBe("au nord")
  expect(small.text("to Alma")).toBe("au Alma")
})

describe("what is typed is kept in English", () => {
  test.each([
    ["1,5 m", "length", "1.5 m"],
    ["oui", "yes_no", "yes"],
    ["bloc", "text", "block"],
    ["12,50", "text", "12.50"],
    ["Cour du Nord", "text", "Cour du Nord"],
  ] as const)("%s", (typed, measure, kept) => {
    expect(keptAs(typed, measure)).toBe(kept)
  })

  test("a list", () => {
    expect(keptAs("8 pi ; 12 pi", "length", true)).toBe("8 ft; 12 ft")
    expect(keptAs("2,4 m, 3 m", "length", true)).toBe("2.4 m; 3 m")
    expect(shownAs("8 ft, 12 ft", "length", true)).toBe("8\u00a0pi ; 12\u00a0pi")
  })
})

test.each(TEMPLATES.map(({ id }) => id))("%s calculates and saves alike in both languages", async (id) => {
  await speak("fr")
  const inFrench = readAll(template(id) ?? demo())
  await speak("en")
  const inEnglish = readAll(template(id) ?? demo())
  await speak("fr")
  expect(inFrench).toEqual(inEnglish)
})

/** The values of a workbook, as a machine reads them, and what is saved of it. */
function readAll(definition: Definition) {
  const { book } = openBook(definition, { now: () => 0 })
  const values = book.names().map((name) => {
    const { reading, readings = [], check } = book.entry(name)
    return [
      name,
      typeof reading?.value === "number" ? reading.value : null,
      readings.map((one) => one?.value),
      check?.verdict,
    ]
  })
  return { values, document: book.document() }
}

test("the words of a language that was chosen are used at once", async () => {
  useLanguage(await loadLanguage("en"), { text: (text) => text, english: (text) => text })
  expect(shownAs("1.5 m", "length")).toBe("1.5 m")
  await speak("fr")
  expect(shownAs("1.5 m", "length")).toBe("1,5\u00a0m")
})

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")
}
