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

test("ticks, notes, own entries, copies, titles and starting again are steps as well: taken back one by one after a reload", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  const undo = workbook.button("Take back the last change")
  await workbook.enter("platform_length", "18 ft")
  await workbook.screen("Steps")
  const tick = page.getByRole("checkbox", { name: /^Done: / }).first()
  await tick.check()
  await page.keyboard.press("Control+z")
  expect(await tick.isChecked()).toBe(false)
  await page.keyboard.press("Control+Shift+z")
  expect(await tick.isChecked()).toBe(true)
  const note = page.getByRole("textbox", { name: /^Your notes on: / }).first()
  await note.fill("The string sags.")
  await note.blur()

  await workbook.screen("Worksheet")
  await workbook.saveCopy("Longer")
  await workbook.enter("platform_length", "24 ft")
  await workbook.button("Start again from the template’s values").click()
  expect(await workbook.value("platform_length")).toBe("20' 0\"")
  await workbook.saved()
  await workbook.reload()

  await workbook.screen("Changes")
  const says = page.locator("[data-step] .change-says")
  expect((await says.allTextContents()).slice(0, 2)).toEqual([
    expect.stringContaining("put back what the template has"),
    expect.stringMatching(/18 ft → 24 ft$/),
  ])
  await page.getByText(/^Your notes on .*: blank → “The string sags.”$/).waitFor()
  await page.getByText(/^Ticked: /).waitFor()

  await undo.click()
  await workbook.screen("Worksheet")
  expect(await workbook.value("platform_length")).toBe("24' 0\"")
  await undo.click()
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
  await undo.click()
  expect(await workbook.scenarios()).toHaveLength(1)
  await workbook.screen("Steps")
  await undo.click()
  await page.getByText(/^Taken back: Your notes on/).waitFor()
  expect(await tick.isChecked()).toBe(true)
  await undo.click()
  expect(await tick.isChecked()).toBe(false)
})

test("what is taken back below a notice is what the notice is about, never a later change", async () => {
  const workbook = await openPegbook()
  await workbook.enter("platform_length", "18 ft")
  await workbook.button("Start again from the template’s values").click()
  await workbook.page.getByText("is back to the template’s values").waitFor()
  await workbook.enter("platform_width", "10 ft")
  expect(await workbook.page.getByText("is back to the template’s values").count()).toBe(0)
})
