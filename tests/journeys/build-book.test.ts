import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { isDrawn, pageContents, pageSizes, paintedBoxes } from "./pdf-paths.ts"
import type { WorkbookPage } from "./workbook-page.ts"

const FOOT = 304.8

async function printed(workbook: WorkbookPage, paper: "A4" | "Letter"): Promise<Buffer> {
  await workbook.page.getByRole("radio", { name: paper }).check()
  return workbook.page.pdf({ preferCSSPageSize: true })
}

const ratioOf = (workbook: WorkbookPage, drawing: string) =>
  workbook.page.locator(`[data-printed="${drawing}"]`).getAttribute("data-ratio")

test("the printed drawings measure what they say, at 1:50 and at 1:20", async () => {
  const workbook = await openPegbook()
  await workbook.screen("Build book")
  await workbook.page.getByRole("heading", { level: 1, name: /^Build book: / }).waitFor()

  // The platform is 20 ft by 12 ft: at 1:50 a ruler reads 121.9 mm by 73.2 mm.
  expect(await ratioOf(workbook, "plan")).toBe("50")
  const first = paintedBoxes(await printed(workbook, "A4"))
  expect(isDrawn(first, (20 * FOOT) / 50, (12 * FOOT) / 50)).toBe(true)
  expect(isDrawn(first, (6 * FOOT) / 20, (5 * FOOT) / 20)).toBe(false)

  await workbook.screen("Worksheet")
  await workbook.enter("platform_length", "6 ft")
  await workbook.enter("platform_width", "5 ft")
  await workbook.screen("Build book")
  await workbook.page.locator("[data-book-size]").getByText("6' 0\"").first().waitFor()
  expect(await ratioOf(workbook, "plan")).toBe("20")
  const second = paintedBoxes(await printed(workbook, "A4"))
  expect(isDrawn(second, (6 * FOOT) / 20, (5 * FOOT) / 20)).toBe(true)
  expect(isDrawn(second, (20 * FOOT) / 50, (12 * FOOT) / 50)).toBe(false)

  // The scale bar is a third thing measured: 2 ft at 1:20.
  const bar = await workbook.page
    .locator('[data-printed="plan"] [data-scale-bar]')
    .getAttribute("data-scale-bar")
  expect(bar).toBe("2 ft")
  expect(second.some(({ wide, high }) => Math.abs(Math.max(wide, high) - (2 * FOOT) / 20) < 0.15)).toBe(true)
})

test("both papers are printed at their own size, with no dark ink for paper, also from a dark screen", async () => {
  const workbook = await openPegbook({ width: 360, height: 740, dark: true })
  await workbook.screen("Build book")
  await workbook.page.getByRole("heading", { level: 1, name: /^Build book: / }).waitFor()
  expect(await workbook.overflow()).toBe(0)
  // ISO 216: 210 mm x 297 mm. Letter is 8 1/2 in x 11 in.
  const a4 = await printed(workbook, "A4")
  expect(pageSizes(a4)).toEqual(["210 x 297"])
  expect(pageSizes(await printed(workbook, "Letter"))).toEqual(["216 x 279"])
  // Strokes, and no picture of strokes: those are coarse, and sixty of them make a book too large to send.
  expect(a4.includes("/Subtype /Image")).toBe(false)
  const pages = pageContents(a4)
  expect(pages.length).toBeGreaterThan(10)

  await workbook.page.emulateMedia({ media: "print", colorScheme: "dark" })
  const colours = await workbook.page.evaluate(() => {
    const { backgroundColor, color } = getComputedStyle(document.documentElement)
    return [backgroundColor, color]
  })
  expect(colours).toEqual(["rgb(255, 255, 255)", "rgb(0, 0, 0)"])
  for (const name of ["Print the build book", "Undo"])
    expect(await workbook.page.getByRole("button", { name }).filter({ visible: true }).count()).toBe(0)
})

test("no drawing, row or step's part is broken between two pages", async () => {
  const workbook = await openPegbook()
  await workbook.screen("Build book")
  await workbook.page.getByRole("heading", { level: 1, name: /^Build book: / }).waitFor()
  await workbook.page.emulateMedia({ media: "print" })
  const unguarded = await workbook.page.evaluate(() =>
    [".book-drawing", ".plain-table tr", ".set-out-cards > li", ".step-part"].filter((wanted) =>
      [...document.querySelectorAll(`.book ${wanted}`)].some(
        (one) => getComputedStyle(one).breakInside !== "avoid",
      ),
    ),
  )
  expect(unguarded).toEqual([])
  // And none is taller than the part of a Letter page that it may have: 279 mm less 2 x 15 mm.
  const tallest = await workbook.page.evaluate(() =>
    Math.max(
      ...[...document.querySelectorAll(".book-drawing")].map((one) => one.getBoundingClientRect().height),
    ),
  )
  expect((tallest / 96) * 25.4).toBeLessThan(249)
})
