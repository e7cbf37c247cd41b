import { readFileSync } from "node:fs"
import { TEMPLATES, translateDefinition } from "@pegbook/templates"
import { describe, expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { findings } from "./findings.ts"
import type { WorkbookPage } from "./workbook-page.ts"

const SCREENS = [
  "Accueil",
  "Feuille",
  "Dessins",
  "Coupe",
  "Achats",
  "Implantation",
  "Étapes",
  "Cahier",
  "Comparer",
  "Explorer",
  "Changements",
]

/** The words of the interface as they are written, without those that something is put into. */
function interfaceWords(language: "en" | "fr"): readonly string[] {
  const source = readFileSync(new URL(`../../packages/ui/src/text/${language}.ts`, import.meta.url), "utf8")
  return [...source.matchAll(/"([^"\n]+)"/g)].map(([, text = ""]) => text)
}

/** Texts that are English and nothing else. */
function knownEnglish(): readonly string[] {
  const english = new Set(interfaceWords("en"))
  for (const definition of TEMPLATES)
    translateDefinition(definition, (text) => {
      english.add(text)
      return text
    })
  const french = new Set(interfaceWords("fr"))
  return [...english].filter((text) => /\p{L}{3}/u.test(text) && !french.has(text))
}

/** Written alike in French, or the title of what was published in English. */
const ALIKE = new Set([
  ...["Points", "Joints", "Concrete", "Action", "Distance", "Direction", "Plan", "Position", "Point"],
  ...["Sand", "Station", "Stations", "Surface", "Face", "Centre", "Joint", "Volume", "English", "Moment"],
  "Triangle 3-4-5",
])

/** What can be read on a page, aloud as well; formulas and names in them are the same in every language. */
async function readable({ page }: WorkbookPage): Promise<readonly string[]> {
  return page.evaluate(() => {
    const left = (element: Element | null) =>
      element?.closest("code, .formula, .sources, [lang=en], [hidden], noscript, script, style") !== null
    const texts: string[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    while (walker.nextNode()) {
      const text = walker.currentNode.textContent?.trim() ?? ""
      if (text !== "" && !left(walker.currentNode.parentElement)) texts.push(text)
    }
    for (const element of document.querySelectorAll("[aria-label], [title], [placeholder]")) {
      if (left(element)) continue
      for (const name of ["aria-label", "title", "placeholder"]) {
        const text = element.getAttribute(name)
        if (text !== null) texts.push(text)
      }
    }
    return texts
  })
}

const KNOWN = new Set(knownEnglish())
const LITTLE_WORDS = /(?:^|\s)(?:the|of|and|with|is|are|from|what|each)(?:\s|$)/i

async function englishOn(workbook: WorkbookPage): Promise<readonly string[]> {
  const texts = await readable(workbook)
  return texts.filter((text) => (KNOWN.has(text) && !ALIKE.has(text)) || LITTLE_WORDS.test(text))
}

async function toScreen(workbook: WorkbookPage, name: string): Promise<void> {
  await workbook.screen(name)
  await workbook.page.waitForTimeout(400)
}

// The two of the four that access.test.ts does not see in English.
describe.each([
  { width: 1280, dark: true },
  { width: 360, dark: false },
])("in French, $width wide, dark $dark", ({ width, dark }) => {
  test("from the start to the build book no English is left, and axe-core finds nothing", async () => {
    const workbook = await openPegbook({ width, height: width < 500 ? 740 : 900, dark, locale: "fr-CA" })
    const { page } = workbook
    expect(await page.locator("html").getAttribute("lang")).toBe("fr-CA")

    await toScreen(workbook, "Accueil")
    await page.getByRole("button", { name: "Commencer celui-ci : Plateforme pour table de jeu" }).click()
    await workbook.row("platform_length").waitFor()

    // In metric a bare comma is a decimal, and the number is shown the French way.
    await workbook.enter("platform_length", "5,5 m")
    expect(await workbook.value("platform_length")).toMatch(/^(5\u202f500\u00a0mm|18' 0 9\/16")$/)
    await workbook.enter("platform_width", "large")
    expect(await workbook.complaint("platform_width")).toContain("est illisible")
    for (const name of ["platform_length", "joist_count", "supports", "soil_bearing_check", "buy_list"])
      await workbook.open(name)

    const english: string[] = []
    const found: string[] = []
    for (const screen of SCREENS) {
      await toScreen(workbook, screen)
      english.push(...(await englishOn(workbook)).map((text) => `${screen}: ${text}`))
      found.push(...(await findings(workbook)).map((one) => `${screen}: ${one}`))
    }
    expect.soft([...new Set(english)]).toEqual([])
    expect.soft(found).toEqual([])
  }, 300_000)
})

test("a workbook that was saved in English reads the same when it comes back from French", async () => {
  const workbook = await openPegbook({ locale: "en-CA" })
  const { page } = workbook
  await workbook.enter("platform_length", "18 ft 6 in")
  await workbook.enter("joist_stock", "8 ft, 12 ft, 16 ft")
  const names = ["platform_length", "joist_stock", "joist_count", "timber_species", "total_cost"]
  const known = []
  for (const name of names) if ((await workbook.row(name).count()) > 0) known.push(name)
  const before = await workbook.values(known)
  const saved = await savedDocument(workbook)

  await workbook.screen("Start")
  await page.getByText("Français", { exact: true }).click()
  await page.locator("html[lang=fr-CA]").waitFor()
  await toScreen(workbook, "Feuille")
  await workbook.ready()
  expect(await workbook.value("joist_stock")).toBe("8\u00a0pi ; 12\u00a0pi ; 16\u00a0pi")

  await toScreen(workbook, "Accueil")
  await page.getByText("English", { exact: true }).click()
  await page.locator("html[lang=en]").waitFor()
  await workbook.screen("Worksheet")
  await workbook.ready()
  expect(await workbook.values(known)).toEqual(before)
  expect(await savedDocument(workbook)).toEqual(saved)
})

/** What a person gets who saves the open workbook to a file. */
async function savedDocument({ page }: WorkbookPage): Promise<unknown> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save to a file" }).first().click(),
  ])
  return JSON.parse(readFileSync(await download.path(), "utf8"))
}
