import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test("joists too far apart: the check says so in words, finds what would make it pass, and tries it in a copy", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  await workbook.enter("joist_spacing", "2 ft")
  await workbook.enter("live_load", "200 psf")
  const check = workbook.row("joist_check")
  await workbook.open("joist_check")
  expect(await check.textContent()).toMatch(/no\. It comes to .*, where no more than 100 % is accepted/)
  expect(await check.textContent()).toContain("Your local code")

  await check.getByRole("button", { name: "What would make it pass?" }).click()
  // While it is worked out the page goes on answering.
  await workbook.enter("dead_load", "12 psf")
  expect(await workbook.value("dead_load")).toBe("12 psf")
  await workbook.enter("dead_load", "10 psf")
  const remedy = check.locator('[data-remedy="joist_spacing"]')
  await remedy.waitFor({ timeout: 60_000 })

  // The same remedies as without a screen.
  const { book } = openBook(demo())
  book.edit("joist_spacing", "2 ft")
  book.edit("live_load", "200 psf")
  const found = book.remediesFor("joist_check")
  expect(await check.locator("[data-remedy]").count()).toBe(found.length)
  const [first] = found
  expect(await remedy.textContent()).toContain(
    `${first?.label} ${first?.from?.text} → ${first?.to?.text}: passes`,
  )

  await workbook.unfold()
  const was = await workbook.scenarios()
  await remedy.getByRole("button", { name: /^Try in a copy/ }).click()
  await page.getByText("You are now working in the copy").first().waitFor()
  await workbook.unfold()
  expect((await workbook.scenarios()).length).toBe(was.length + 1)
  expect(await workbook.value("joist_check")).not.toBe("Fails")
  expect(await workbook.value("joist_spacing")).toBe(first?.to?.text)
  expect(await workbook.overflow()).toBeLessThanOrEqual(0)
})

test("a formula and a cell of a table are typed over, marked, listed together, and put back", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  const was = await workbook.value("joist_count")
  await workbook.open("joist_count")
  const over = workbook.row("joist_count").getByRole("textbox", { name: /^Your own value for/ })
  await over.fill("40")
  await over.press("Enter")
  expect(await workbook.value("joist_count")).toBe("40")
  await workbook.row("joist_count").getByText("Typed over.").first().waitFor()

  await workbook.open("dressed_sizes")
  const cell = workbook.row("dressed_sizes").locator('[data-row="1"]').last()
  const before = await cell.locator("[data-value]").getAttribute("data-value")
  await cell.click()
  const field = workbook.row("dressed_sizes").getByRole("textbox", { name: /row 1$/ })
  await field.fill("2 in")
  await field.press("Enter")
  await cell.getByText("yours", { exact: true }).waitFor()

  await workbook.screen("Changes")
  const listed = page.locator("[data-typed-over]")
  // The screen is fetched when it is first asked for.
  await listed.first().waitFor()
  expect(await listed.count()).toBe(2)
  await page
    .locator('[data-typed-over="joist_count"]')
    .getByRole("button", { name: /^Put back/ })
    .click()
  expect(await listed.count()).toBe(1)
  await listed.getByRole("button", { name: /^Put back/ }).click()
  expect(await listed.count()).toBe(0)
  await workbook.screen("Worksheet")
  expect(await workbook.value("joist_count")).toBe(was)
  expect(await cell.locator("[data-value]").getAttribute("data-value")).toBe(before)
})
