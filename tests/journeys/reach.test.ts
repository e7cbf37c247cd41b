import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

/**
 * Targets that WCAG 2.2, 2.5.8 (target size, minimum) would have larger: under 24 by 24 CSS pixels, and with a circle of 24
 * around their middle in which another one is, or the circle of another one that is too small. What stands within a line of
 * text is as large as that; what has a label around it is as large as the label.
 */
function smallTargets(): readonly string[] {
  const LEAST = 24
  const inText = (element: Element): boolean =>
    getComputedStyle(element).display === "inline" &&
    [...(element.parentElement?.childNodes ?? [])].some(
      (node) => node.nodeType === Node.TEXT_NODE && /\w/.test(node.textContent ?? ""),
    )
  const shown = [...document.querySelectorAll("a[href], button, input, select, textarea, summary")]
    .map((element) => element.closest("label") ?? element)
    .filter((element) => element.checkVisibility({ visibilityProperty: true }))
  const targets = [...new Set(shown)]
    .map((element) => ({ element, box: element.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 1 && box.height > 1)
    .map(({ element, box }) => ({
      element,
      box,
      x: box.x + box.width / 2,
      y: box.y + box.height / 2,
      small: box.width < LEAST - 0.01 || box.height < LEAST - 0.01,
    }))
  return targets
    .filter(({ element, small }) => small && !inText(element))
    .filter((one) =>
      targets.some(({ element, box, x, y, small }) => {
        if (element === one.element || element.contains(one.element) || one.element.contains(element))
          return false
        const dx = Math.max(box.left - one.x, 0, one.x - box.right)
        const dy = Math.max(box.top - one.y, 0, one.y - box.bottom)
        const circles = small && Math.hypot(x - one.x, y - one.y) < LEAST
        return Math.hypot(dx, dy) < LEAST / 2 || circles
      }),
    )
    .map(
      ({ element, box }) =>
        `${box.width.toFixed(1)} by ${box.height.toFixed(1)}: ${element.outerHTML.slice(0, 120)}`,
    )
}

// WCAG 2.2, 1.4.10 (reflow): at 320 CSS pixels nothing is scrolled sideways but what has its meaning from its two directions,
// as tables and drawings have, and those in a frame of their own. 360 is a small phone's.
test("a narrow window never scrolls sideways, and what is pressed there is large enough", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  const fits = async (where: string): Promise<void> => {
    for (const width of [320, 360]) {
      await page.setViewportSize({ width, height: 740 })
      await page.evaluate(() => new Promise(requestAnimationFrame))
      expect(await workbook.overflow(), `${where} at ${width}`).toBeLessThanOrEqual(0)
    }
  }
  await fits("as it opens")
  for (const width of [320, 360]) {
    await page.setViewportSize({ width, height: 740 })
    const room = await page.locator(".search-field").evaluate((field) => {
      const { font, paddingLeft, paddingRight } = getComputedStyle(field)
      const pen = document.createElement("canvas").getContext("2d")
      if (pen === null || !(field instanceof HTMLInputElement)) return 0
      pen.font = font
      const inside = field.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight)
      return inside - pen.measureText(field.placeholder).width
    })
    expect(room, `what the search field says, at ${width}`).toBeGreaterThan(0)
  }
  await workbook.enter("platform_length", "18 ft")
  await workbook.enter("platform_width", "wide")
  for (const name of ["joist_count", "supports", "soil_bearing_check", "block_count"]) {
    await workbook.open(name)
    await fits(`with ${name} open`)
  }
  await workbook.saveCopy("A copy with a name that is longer than a narrow window is wide")
  await workbook.enter("platform_length", "16 ft")
  for (const screen of await workbook.screens()) {
    await workbook.screen(screen)
    await page.waitForTimeout(300)
    await fits(screen)
    expect(await page.evaluate(smallTargets), `${screen}, too small to press`).toEqual([])
  }

  // And it does find one: two narrow lines that touch.
  await page.evaluate(() => {
    for (const text of ["One", "Other"]) {
      const button = document.createElement("button")
      button.textContent = text
      button.style.cssText = "display:block;height:12px;min-height:0;font-size:8px;padding:0;border:0"
      document.querySelector("main")?.prepend(button)
    }
  })
  expect(await page.evaluate(smallTargets)).toHaveLength(2)
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
