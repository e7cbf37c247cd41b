import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { findings } from "./findings.ts"
import type { WorkbookPage } from "./workbook-page.ts"

/** Visits each screen; on the worksheet with details open, an entry refused and numbers moved. */
async function everywhere(workbook: WorkbookPage, look: (where: string) => Promise<void>): Promise<void> {
  await workbook.saveCopy("Wider")
  await workbook.enter("platform_length", "19 ft")
  await workbook.enter("platform_width", "wide")
  for (const name of ["platform_length", "joist_count", "supports", "soil_bearing_check"])
    await workbook.open(name)
  for (const screen of await workbook.screens()) {
    await workbook.screen(screen)
    await workbook.page.waitForTimeout(300)
    await look(screen)
  }
}

// Each screen is seen in both themes at both widths: the other two of the four in French (french.test.ts).
test.each([
  { width: 1280, dark: false },
  { width: 360, dark: true },
])(
  "axe-core finds nothing on any screen: $width wide, dark $dark",
  async ({ width, dark }) => {
    const workbook = await openPegbook({ width, height: width < 500 ? 740 : 900, dark })
    const found: string[] = []
    await everywhere(workbook, async (where) => {
      for (const one of await findings(workbook)) found.push(`${where}: ${one}`)
    })
    expect(found).toEqual([])

    // And it does find what is there to be found.
    await workbook.screen("Start")
    await workbook.page.evaluate(() => document.querySelector("main")?.append(new Image(9, 9)))
    expect(await findings(workbook)).toEqual([expect.stringMatching(/^image-alt: /)])
  },
  300_000,
)

test("with text at twice its size nothing is cut off sideways", async () => {
  const workbook = await openPegbook({ width: 640, height: 800 })
  await workbook.page.evaluate(() => {
    document.documentElement.style.fontSize = "200%"
  })
  await everywhere(workbook, async (where) => {
    expect(await workbook.overflow(), where).toBeLessThanOrEqual(0)
  })
})

test("with a reader's own colours the screen that is shown is still told apart", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await page.emulateMedia({ forcedColors: "active", reducedMotion: "reduce" })
  const ground = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
  const shown = await page
    .getByRole("navigation", { name: "Screens" })
    .getByRole("link")
    .evaluateAll((links) =>
      links.map((link) => ({
        current: link.getAttribute("aria-current") === "page",
        line: getComputedStyle(link).borderBottomColor,
      })),
    )
  expect(shown.length).toBeGreaterThanOrEqual(3)
  for (const { current, line } of shown) expect(line === ground).toBe(!current)
})

test("a table is a grid: one stop of the Tab key, and arrows, Home and End go about in it", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.open("supports")
  const grid = workbook.row("supports").getByRole("grid").first()
  expect(await grid.locator('button[tabindex="0"]').count()).toBe(1)
  const at = () =>
    workbook.focused().evaluate((element) => {
      const cell = element.closest<HTMLTableCellElement>("td, th")
      return [cell?.closest("tr")?.rowIndex, cell?.cellIndex]
    })
  await grid.locator('button[tabindex="0"]').focus()
  expect(await at()).toEqual([1, 1])
  await page.keyboard.press("ArrowDown")
  await page.keyboard.press("ArrowRight")
  expect(await at()).toEqual([2, 2])
  await page.keyboard.press("Home")
  expect(await at()).toEqual([2, 1])
  await page.keyboard.press("ArrowUp")
  await page.keyboard.press("ArrowUp")
  expect(await at(), "a column's title").toEqual([0, 1])
  await page.keyboard.press("Control+End")
  const last = await grid.evaluate((table: HTMLTableElement) => [
    table.rows.length - 1,
    (table.rows[0]?.cells.length ?? 0) - 1,
  ])
  expect(await at()).toEqual(last)
  // Tab leaves it, and comes back to where it was left.
  await page.keyboard.press("Tab")
  expect(await at()).not.toEqual(last)
  await page.keyboard.press("Shift+Tab")
  expect(await at()).toEqual(last)
})

test("Up and Down go from one entry's title to the next", async () => {
  const workbook = await openPegbook()
  const title = (name: string) => workbook.row(name).locator("[data-open]").first()
  await title("platform_length").focus()
  await workbook.page.keyboard.press("ArrowDown")
  const next = await workbook.focused().getAttribute("id")
  expect(next).toMatch(/^open-/)
  expect(next).not.toBe("open-platform_length")
  await workbook.page.keyboard.press("ArrowUp")
  expect(await workbook.focused().getAttribute("id")).toBe("open-platform_length")
})
