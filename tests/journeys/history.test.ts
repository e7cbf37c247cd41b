import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test("changes are taken back and done again by buttons and keys, told step by step, and copied as they were; also after a reload", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  const first = await workbook.value("platform_length")
  await workbook.enter("platform_length", "18 ft")
  await workbook.enter("platform_length", "16 ft")
  await workbook.saved()
  await workbook.reload()

  await workbook.button("Take back the last change").click()
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
  await page.getByText(/^Taken back: .*18 ft → 16 ft$/).waitFor()
  await page.keyboard.press("Control+z")
  expect(await workbook.value("platform_length")).toBe(first)
  await page.keyboard.press("Control+Shift+z")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")

  // What is being typed has an undo of its own.
  await workbook.field("platform_width").fill("9")
  await page.keyboard.press("Control+z")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
  await page.keyboard.press("Escape")

  await workbook.screen("Changes")
  const steps = page.locator("[data-step]")
  expect(await steps.count()).toBe(2)
  expect(await steps.first().textContent()).toContain("taken back")
  await steps
    .first()
    .getByRole("button", { name: /^Copy as it was then/ })
    .click()
  expect(await workbook.value("platform_length")).toBe("16' 0\"")
  expect((await workbook.scenarios()).length).toBe(2)
})

test("what was bought from is sealed: it refuses changes, and later ones show against it, the buying list too", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.button("This is what I bought from").click()
  await page.getByRole("textbox", { name: "Name of what you bought from" }).fill("Bought in May")
  await page.getByRole("button", { name: "Save", exact: true }).click()
  await workbook.enter("platform_length", "24 ft")
  await workbook.screen("Compare")
  const length = page.locator('[data-difference="platform_length"]')
  await length.waitFor({ timeout: 60_000 })
  expect(await length.textContent()).toContain("24' 0\"")
  expect(await page.locator('[data-table="stock_to_buy"] tbody tr').count()).toBeGreaterThan(0)

  await workbook.screen("Worksheet")
  await page
    .getByRole("combobox", { name: "Scenario" })
    .first()
    .selectOption({ label: "Bought in May (sealed)" })
  await workbook.enter("platform_length", "10 ft")
  expect(await workbook.complaint("platform_length")).toContain("Bought in May")
  expect(await workbook.value("platform_length")).toBe("20' 0\"")
})
