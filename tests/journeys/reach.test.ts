import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test("a narrow window never scrolls sideways", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  expect(await workbook.overflow()).toBeLessThanOrEqual(0)
  await workbook.enter("platform_length", "18 ft")
  for (const name of ["joist_count", "supports", "soil_bearing_check", "block_count"]) {
    await workbook.open(name)
    expect(await workbook.overflow(), `with ${name} open`).toBeLessThanOrEqual(0)
  }
  await workbook.saveCopy("A copy with a name that is longer than a narrow window is wide")
  await workbook.enter("platform_length", "16 ft")
  await workbook.screen("Compare")
  expect(await workbook.overflow(), "comparing").toBeLessThanOrEqual(0)
})

test("everything is reached with the keyboard alone", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  const tabTo = async (what: string, arrived: () => Promise<boolean>): Promise<void> => {
    for (let presses = 0; presses < 400; presses++) {
      if (await arrived()) return
      await page.keyboard.press("Tab")
    }
    throw new Error(`the Tab key does not reach ${what}`)
  }
  const at = (test: (element: Element) => boolean | null): Promise<boolean> =>
    workbook
      .focused()
      .count()
      .then(async (count) => count > 0 && Boolean(await workbook.focused().evaluate(test)))

  // Into the length, type, and on; the number follows without a mouse.
  await tabTo("the length", () => at((element) => element.matches('[data-entry="platform_length"] input')))
  await page.keyboard.press("ControlOrMeta+A")
  await page.keyboard.type("18 ft")
  await page.keyboard.press("Enter")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")

  // On to a result; open it with the space bar; walk to what it leans on with Enter.
  await tabTo("the joists", () => at((element) => element.matches('[data-entry="joist_count"] [data-open]')))
  await page.keyboard.press("Space")
  await tabTo("what the joists lean on", () =>
    at((element) => element.matches('[data-entry="joist_count"] a[href="#/worksheet/platform_length"]')),
  )
  await page.keyboard.press("Enter")
  await page.waitForURL((url) => url.hash === "#/worksheet/platform_length")
  expect(await at((element) => element.closest('[data-entry="platform_length"]') !== null)).toBe(true)
})

test("what has the keyboard is marked, and each field and button has a name", async () => {
  const workbook = await openPegbook()
  const nameless = await workbook.page.evaluate(() =>
    [...document.querySelectorAll("button, input, select, textarea, a[href]")]
      .filter((element) => {
        const labelled = element.getAttribute("aria-labelledby")
        const own = element.getAttribute("aria-label") ?? element.textContent ?? ""
        const label =
          element.id === "" ? null : document.querySelector(`label[for="${CSS.escape(element.id)}"]`)
        return own.trim() === "" && labelled === null && label === null && element.closest("label") === null
      })
      .map((element) => element.outerHTML.slice(0, 120)),
  )
  expect(nameless).toEqual([])

  await workbook.page.keyboard.press("Tab")
  const marked = await workbook.focused().evaluate((element) => {
    const style = getComputedStyle(element)
    return style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) > 0
  })
  expect(marked).toBe(true)
})
