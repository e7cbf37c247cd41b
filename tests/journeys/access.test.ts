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

// A phone whose reader has set text to twice its size, and a window that is zoomed into.
test.each([360, 640])(
  "with text at twice its size nothing is cut off sideways: %d wide",
  async (width) => {
    const workbook = await openPegbook({ width, height: 800 })
    await workbook.page.evaluate(() => {
      document.documentElement.style.fontSize = "200%"
    })
    await everywhere(workbook, async (where) => {
      expect(await workbook.overflow(), where).toBeLessThanOrEqual(0)
    })
  },
  60_000,
)

// WCAG 2.2, 1.4.1 and 1.4.11. By CSS Color Adjustment 1, section 3, drawings keep the colours of the page where all else
// gets the reader's, and shadows and patterns are left out.
test("with a reader's own colours, what a colour says is still told apart on every screen", async () => {
  // The page is light and the reader's colours are dark: what keeps the page's ink is not seen.
  const workbook = await openPegbook({ dark: true })
  const { page } = workbook
  await page.getByRole("combobox", { name: "Look" }).selectOption("light")
  await page.emulateMedia({ forcedColors: "active", colorScheme: "dark", reducedMotion: "reduce" })
  const apart = async (chosen: string, others: string): Promise<void> => {
    const looks = [chosen, others].map((selector) => page.locator(selector).first().evaluate(look))
    const [one, other] = await Promise.all(looks)
    expect(one, `${chosen} beside ${others}`).not.toBe(other)
  }

  await everywhere(workbook, async (where) => {
    expect(await page.evaluate(coloursNotTheReaders), where).toEqual([])
    await apart('.screens a[aria-current="page"]', ".screens a:not([aria-current])")
    await page.keyboard.press("Tab")
    expect(await workbook.focused().evaluate(outlined), `what has the keyboard on ${where}`).toBe(true)
    if (where === "Drawings")
      await apart('.drawing-tab[aria-pressed="true"]', ".drawing-tab[aria-pressed='false']")
    if (where === "Cut list") await apart(".cut-bar", ".cut-boards > li")
    if (where === "Worksheet") {
      await apart(".field-refused", ".field:not(.field-refused)")
      await apart(".row-moved:not(.row-open)", ".row:not(.row-moved, .row-open, .row-here)")
      // What moved, what is open and where one is are three things, and one row may be all of them.
      await workbook.open("platform_area")
      await workbook.walk("platform_area", "platform_length")
      const edge = (selector: string) =>
        page
          .locator(selector)
          .first()
          .evaluate((row) => getComputedStyle(row).borderInlineStartColor)
      expect(await edge(".row-open:not(.row-moved)")).toBe(await edge(".row:not(.row-moved, .row-open)"))
      expect(await edge(".row-moved")).not.toBe(await edge(".row-open:not(.row-moved)"))
      await apart(".row-open:not(.row-moved)", ".row:not(.row-moved, .row-open)")
      await apart(".row-here > .row-line", ".row:not(.row-here) > .row-line")
      await workbook.row("supports").locator("td button").nth(5).click()
      await apart(".cell-open", "td:not(.cell-open)")
      const shapes = await page
        .locator(".standing .mark")
        .evaluateAll((marks) => marks.map((mark) => mark.innerHTML))
      expect(shapes.length).toBeGreaterThanOrEqual(3)
      expect(new Set(shapes).size).toBe(shapes.length)
      await page.locator(".search-field").fill("joist")
      await page.keyboard.press("ArrowDown")
      await apart('.search-option[aria-selected="true"]', '.search-option[aria-selected="false"]')
      await page.locator(".search-field").fill("")
    }
  })
}, 180_000)

/** What of an element is seen where colours are the reader's. */
function look(element: Element): string {
  const style = getComputedStyle(element)
  const { borderTop, borderBottom, borderInlineStart, backgroundColor, backgroundImage, color } = style
  const outline = style.outlineStyle === "none" ? "" : style.outline
  return JSON.stringify([
    borderTop,
    borderBottom,
    borderInlineStart,
    backgroundColor,
    backgroundImage,
    color,
    outline,
  ])
}

function outlined(element: Element): boolean {
  const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element)
  const ground = getComputedStyle(document.documentElement).backgroundColor
  return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2 && outlineColor !== ground
}

/** Colours of drawings that are none of the reader's, with what is drawn in them. */
function coloursNotTheReaders(): readonly string[] {
  const probe = document.body.appendChild(document.createElement("i"))
  probe.style.forcedColorAdjust = "none"
  const numbers = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number).join(" ")
  const theirs = ["Canvas", "CanvasText", "LinkText", "GrayText", "ButtonText"].map((name) => {
    probe.style.color = name
    return numbers(getComputedStyle(probe).color)
  })
  probe.remove()
  const found = new Set<string>()
  for (const shape of document.querySelectorAll(
    "svg :is(path, rect, circle, line, polyline, polygon, text)",
  )) {
    const { fill, stroke } = getComputedStyle(shape)
    for (const colour of [fill, stroke])
      if (!/^(?:none|url)/.test(colour) && !theirs.includes(numbers(colour)))
        found.add(`${colour}: ${shape.tagName} ${shape.getAttribute("class") ?? ""}`)
  }
  return [...found]
}

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
