import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test("an entry is found by its words or by its name, and gone to", async () => {
  const workbook = await openPegbook()
  await workbook.page.keyboard.press("/")
  const find = workbook.page.getByRole("combobox", { name: "Find an entry" })
  await find.waitFor()
  expect(await find.evaluate((element) => element === document.activeElement)).toBe(true)

  await find.fill("bearing")
  await workbook.page.getByRole("option").first().waitFor()
  await find.fill("soil_bearing_check")
  await workbook.page.getByRole("option").first().waitFor()
  await find.press("Enter")
  await workbook.page.waitForURL((url) => url.hash === "#/worksheet/soil_bearing_check")
  expect(await workbook.row("soil_bearing_check").isVisible()).toBe(true)
  await workbook.row("soil_bearing_check").getByText("must not be more than the limit").waitFor()

  await find.fill("no such thing at all")
  await workbook.page
    .getByText(/Nothing is called/)
    .first()
    .waitFor()
})

test("the browser's own Back returns to where the reader was", async () => {
  const workbook = await openPegbook()
  await workbook.open("joist_count")
  await workbook.walk("joist_count", "joist_spacing")
  await workbook.page.goBack()
  expect(new URL(workbook.page.url()).hash).not.toBe("#/worksheet/joist_spacing")
  await workbook.page.goForward()
  expect(new URL(workbook.page.url()).hash).toBe("#/worksheet/joist_spacing")
})
