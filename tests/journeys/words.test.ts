import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test.each([1280, 360])(
  "a word of the trade is explained where it stands, and all of them are listed (%i wide)",
  async (width) => {
    const workbook = await openPegbook({ width, height: 800 })
    await workbook.open("joist_count")
    const word = workbook
      .row("joist_count")
      .getByRole("button", { name: /^joists?$/i })
      .first()
    expect(await word.getAttribute("title")).toMatch(/stand on edge/)
    await word.click()
    expect(await word.getAttribute("aria-expanded")).toBe("true")
    await workbook
      .row("joist_count")
      .getByText(/One of the timbers that stand on edge/)
      .waitFor()
    expect(await workbook.overflow()).toBeLessThanOrEqual(0)
    await word.press("Enter")
    expect(await word.getAttribute("aria-expanded")).toBe("false")

    await workbook.screen("Start")
    await workbook.page.getByText(/words of the trade, explained$/).click()
    await workbook.page
      .getByRole("term")
      .filter({ hasText: /^kerf$/ })
      .waitFor()
    expect(await workbook.overflow()).toBeLessThanOrEqual(0)
  },
)
