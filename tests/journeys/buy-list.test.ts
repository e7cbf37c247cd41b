import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import type { WorkbookPage } from "./workbook-page.ts"

/** Two yards, of which one has cheaper timber and the other cheaper sheets; the third line is a break of the second. */
const PRICES = [
  "item;unit;price;supplier;pack;from;lead",
  "2x6;each;12.00;North yard;;;7",
  "2x6;each;13.00;South yard;;;",
  "2x6;each;9.00;South yard;;100;",
  "sheet;each;40.00;North yard;;;7",
  "sheet;each;30.00;South yard;;;",
].join("\n")

async function withPrices(width: number): Promise<WorkbookPage> {
  const workbook = await openPegbook({ width, height: width < 500 ? 740 : 900 })
  await workbook.screen("Buy list")
  const prices = workbook.page.getByRole("region", { name: "Prices" })
  await prices.getByRole("button", { name: "Bring in from CSV…" }).click()
  await prices.getByRole("textbox", { name: "Or paste it here" }).fill(PRICES)
  await prices.getByRole("button", { name: "Put 5 rows in" }).click()
  return workbook
}

const amount = (text: string | null): number => Number(/[\d,]+\.\d\d/.exec(text ?? "")?.[0]?.replace(",", ""))

const line = ({ page }: WorkbookPage, name: string | RegExp) =>
  page.locator("[data-line]").filter({ has: page.getByText(name, { exact: true }) })

test("two suppliers: the mixed plan, what it saves, and one of them alone", async () => {
  const workbook = await withPrices(1280)
  const { page } = workbook
  const plan = (name: string) => page.locator(`[data-plan="${name}"]`)
  const mixed = plan("the least in all, suppliers mixed")
  await mixed.waitFor()
  const sum = async (name: string) => amount(await plan(name).locator(".buy-plan-sum").textContent())
  const [least, north, south] = [
    await sum("the least in all, suppliers mixed"),
    await sum("all from North yard"),
    await sum("all from South yard"),
  ]
  // Timber is cheaper at the one, sheets at the other, and nobody charges for bringing it.
  expect(least).toBeLessThan(Math.min(north, south))
  const saves = amount(await plan("all from North yard").locator(".buy-saving").textContent())
  expect(saves).toBeCloseTo(north - least, 2)

  await plan("all from North yard").getByRole("radio").check()
  await page.locator('[data-order="North yard"]').waitFor()
  expect(await page.locator('[data-order="South yard"]').count()).toBe(0)
  expect(amount(await page.locator('[data-cost="materials"] dd').textContent())).toBeCloseTo(north, 2)
})

test("what is ticked as bought is kept, and what is short follows the size", async () => {
  const workbook = await withPrices(360)
  const { page } = workbook
  expect(await workbook.overflow()).toBe(0)
  const sheets = page.getByRole("checkbox", { name: "Bought: sheet", exact: true })
  await sheets.check()
  await line(workbook, "sheet").getByRole("button", { name: "More on sheet" }).click()
  const paid = page.getByRole("textbox", { name: "Really paid: sheet" })
  await paid.fill("255")
  await paid.press("Enter")
  await page.locator('[data-spent="paid so far"]').getByText("255.00").waitFor()
  await page.waitForTimeout(1_000)
  await page.locator('[data-kept="saved"]').first().waitFor({ state: "attached" })

  await page.reload()
  await sheets.waitFor()
  expect(await sheets.isChecked()).toBe(true)

  await workbook.screen("Worksheet")
  await workbook.enter("platform_length", "32 ft")
  await workbook.screen("Buy list")
  await line(workbook, "sheet")
    .getByText(/^Still short: \d+ each$/)
    .waitFor()
  expect(await sheets.isChecked()).toBe(false)

  await workbook.screen("Worksheet")
  await workbook.enter("platform_length", "12 ft")
  await workbook.screen("Buy list")
  await line(workbook, "sheet")
    .getByText(/^May go back: \d+ each$/)
    .waitFor()
  expect(await workbook.overflow()).toBe(0)
})

test("the next step says what is still short for it until that is ticked", async () => {
  const workbook = await openPegbook()
  await workbook.screen("Buy list")
  const next = workbook.page.locator(".buy-next")
  await next.getByText("Still short for the next step: Mark out, and have services found").waitFor()
  for (const thing of ["peg", "roll of string", "can of marking paint"])
    await workbook.page.getByRole("checkbox", { name: `Bought: ${thing}`, exact: true }).check()
  await next.getByText("Everything that is bought for it is here.").waitFor()
})

test("a line of one's own joins the list, the cost and what is sealed; later changes are told as things to buy or to return", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  await workbook.screen("Buy list")
  const own = page.getByRole("region", { name: "Something else to buy" })
  const cell = (column: string) => own.getByRole("textbox", { name: `${column}, row 1` })
  await own.getByRole("button", { name: "Add a row" }).click()
  await cell("What").fill("gate hinge")
  await cell("Price of one").fill("12.50")
  await cell("How many").fill("3")
  await page.keyboard.press("Tab")
  await line(workbook, "gate hinge").waitFor()
  expect(await line(workbook, "gate hinge").locator(".buy-take").textContent()).toBe("3")
  // By hand: three at 12.50.
  expect(amount(await page.locator('[data-cost="materials"] dd').textContent())).toBe(37.5)
  expect(await workbook.overflow()).toBe(0)

  await workbook.screen("Worksheet")
  await workbook.unfold()
  await workbook.button("This is what I bought from").click()
  await page.getByRole("textbox", { name: "Name of what you bought from" }).fill("Bought in May")
  await page.getByRole("button", { name: "Save", exact: true }).click()
  await workbook.screen("Buy list")
  const since = page.getByRole("region", { name: "Since “Bought in May”" })
  await since.getByText("Nothing to buy or to return").waitFor({ timeout: 60_000 })
  await cell("How many").fill("5")
  await page.keyboard.press("Tab")
  await since.locator('[data-since="short"]').getByText("gate hinge").waitFor({ timeout: 60_000 })
  expect(await since.locator('[data-since="short"] li').allTextContents()).toEqual(["gate hinge2"])
  await cell("How many").fill("1")
  await page.keyboard.press("Tab")
  await since.locator('[data-since="returns"]').getByText("gate hinge").waitFor({ timeout: 60_000 })
  expect(await workbook.overflow()).toBe(0)

  // In the sealed scenario a tick is refused, says so, and does not stay.
  await workbook.screen("Worksheet")
  await workbook.unfold()
  await page
    .getByRole("combobox", { name: "Scenario" })
    .first()
    .selectOption({ label: "Bought in May (sealed)" })
  await workbook.screen("Buy list")
  const tick = page.getByRole("checkbox", { name: "Bought: gate hinge", exact: true })
  await tick.click()
  await page
    .getByText(/"Bought in May" is sealed/)
    .first()
    .waitFor()
  expect(await tick.isChecked()).toBe(false)
})
