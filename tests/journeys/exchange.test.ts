import { readFileSync } from "node:fs"
import { unzipSync } from "fflate"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { holdWorkers, letWorkersStart } from "./held-workers.ts"

const PRICES = "item;unit;price\n2x6;each;12,50\n2x4;each;cheap\n3/4 in plywood;each;40,00\n2x6;each;12,50\n"

test("prices are brought in from CSV: bad rows are named by line, the cost follows, and it can be undone", async () => {
  const workbook = await openPegbook()
  await workbook.start("Shed base")
  await workbook.open("prices")
  const before = await workbook.value("materials_cost")
  const table = workbook.row("prices")
  await table.getByRole("button", { name: "Bring in from CSV…" }).click()
  await table.getByRole("textbox", { name: "Or paste it here" }).fill(PRICES)

  await table.getByText("2 rows can be put in; 1 row cannot.").waitFor()
  const bad = (await table.locator('[data-line="3"]').textContent()) ?? ""
  expect(bad).toContain("line 3")
  expect(bad).toContain("cheap")
  expect(bad).toMatch(/like this/)
  await table.getByText("Line 5 says the same as line 2; it is left out.").waitFor()
  // Nothing is in force before it is put in.
  expect(await workbook.value("materials_cost")).toBe(before)

  await table.getByRole("button", { name: "Put 2 rows in" }).click()
  expect(await table.getByRole("textbox", { name: "Price, row 1" }).inputValue()).toBe("12.50")
  const priced = await workbook.value("materials_cost")
  expect(priced).not.toBe(before)

  await table.getByRole("textbox", { name: "Price, row 1" }).fill("25")
  await table.getByRole("textbox", { name: "Price, row 1" }).press("Enter")
  const amount = (text: string) => Number(text.replace(/,/g, ""))
  expect(amount(await workbook.value("materials_cost"))).toBeGreaterThan(amount(priced))
  await table.getByRole("button", { name: "Put back the template’s rows" }).click()
  expect(await workbook.value("materials_cost")).toBe(before)
})

test("a list of 10,000 lines is read beside the page, which answers meanwhile", async () => {
  const workbook = await openPegbook({ before: holdWorkers, proofs: true })
  await workbook.start("Shed base")
  await workbook.open("prices")
  const table = workbook.row("prices")
  await table.getByRole("button", { name: "Bring in from CSV…" }).click()
  const lines = Array.from({ length: 10_000 }, (_, at) => `thing ${at};each;${at === 41 ? "ask" : at % 90}`)
  const file = { name: "prices.csv", mimeType: "text/csv" }
  const bring = (text: string) =>
    table.locator("input[type=file]").setInputFiles({ ...file, buffer: Buffer.from(text) })
  await bring(`item;unit;price\n${lines.join("\n")}\n`)
  await table.getByText(/^Being read\./).waitFor()
  expect(await table.getByRole("button", { name: /^Put .* in$/ }).count()).toBe(0)
  await workbook.enter("platform_length", "17 ft")
  expect(await workbook.value("platform_length")).toContain("17")

  await letWorkersStart(workbook)
  await table.getByText("9,999 rows can be put in; 1 row cannot.").waitFor()
  expect(await table.locator('[data-line="43"]').textContent()).toContain("ask")
  expect(await table.getByText(/^Being read\./).count()).toBe(0)
  // The last of two texts is the one that is shown, though the first is longer.
  await bring(`item;unit;price\n${lines.join("\n")}\nmore;each;1\n`)
  await bring(PRICES)
  await table.getByText("2 rows can be put in; 1 row cannot.").waitFor()
})

test("bringing in is undone from what is said of it", async () => {
  const workbook = await openPegbook()
  await workbook.start("Shed base")
  await workbook.open("prices")
  const before = await workbook.value("materials_cost")
  const table = workbook.row("prices")
  await table.getByRole("button", { name: "Bring in from CSV…" }).click()
  await table.getByRole("textbox", { name: "Or paste it here" }).fill("item,unit,price\n2x6,each,10\n")
  await table.getByRole("button", { name: "Put 1 row in" }).click()
  expect(await workbook.value("materials_cost")).not.toBe(before)
  await workbook.button("Undo").first().click()
  expect(await workbook.value("materials_cost")).toBe(before)
})

test("a table is saved as CSV and the workbook as OpenDocument", async () => {
  const workbook = await openPegbook()
  await workbook.open("supports")
  const [csv] = await Promise.all([
    workbook.page.waitForEvent("download"),
    workbook.row("supports").getByRole("button", { name: "Save as CSV" }).click(),
  ])
  expect(csv.suggestedFilename()).toBe("supports.csv")
  const rows = readFileSync(await csv.path(), "utf8")
    .trimEnd()
    .split("\r\n")
  expect(rows[0]).toContain("x (m),y (m)")
  expect(`${rows.length - 1} rows`).toBe(await workbook.value("supports"))

  const [ods] = await Promise.all([
    workbook.page.waitForEvent("download"),
    workbook.button("Save as OpenDocument").click(),
  ])
  expect(ods.suggestedFilename()).toMatch(/^[a-z-]+\.ods$/)
  expect(Object.keys(unzipSync(readFileSync(await ods.path())))).toContain("content.xml")
})

test("in a narrow window the preview stays within it", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  await workbook.start("Shed base")
  await workbook.open("prices")
  const table = workbook.row("prices")
  await table.getByRole("button", { name: "Bring in from CSV…" }).click()
  await table.getByRole("textbox", { name: "Or paste it here" }).fill(PRICES)
  await table.getByRole("button", { name: "Put 2 rows in" }).waitFor()
  expect(await workbook.overflow()).toBe(0)
})
