import { openBook, seek, seekNear, sweep } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test("values of an input are tried one after the other, drawn, and listed; one is taken into a copy", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  await workbook.screen("Explore")
  const span = page.getByRole("region", { name: "Try a span of values" })
  await span.getByRole("combobox", { name: "Input" }).first().selectOption("joist_spacing")
  await span.getByRole("textbox", { name: "From" }).fill("12 in")
  await span.getByRole("textbox", { name: "To" }).fill("24 in")
  await span.getByRole("textbox", { name: "In steps of" }).fill("4 in")
  await span.getByRole("combobox", { name: "Show" }).selectOption("joist_count")
  await span.getByRole("button", { name: "Try them" }).click()
  const rows = span.locator("tr[data-tried]")
  await rows.nth(3).waitFor({ timeout: 60_000 })
  expect(await rows.count()).toBe(4)

  // The same as without a screen.
  const { book } = openBook(demo())
  const expected: string[] = []
  const values = ["12 in", "16 in", "20 in", "24 in"]
  sweep(
    demo(),
    book.document(),
    { inputs: [{ name: "joist_spacing", values }], results: ["joist_count"] },
    (row) => {
      expected.push(row.values[0]?.text ?? "")
    },
  )
  for (const [place, count] of expected.entries())
    expect(await rows.nth(place).locator("td").first().textContent()).toBe(count)
  await span.getByRole("img", { name: /^Chart of/ }).waitFor()
  expect(await workbook.overflow()).toBeLessThanOrEqual(0)

  await rows
    .first()
    .getByRole("button", { name: /^Try in a copy/ })
    .click()
  expect(await workbook.value("joist_spacing")).toBe("1' 0\"")
  await workbook.unfold()
  expect((await workbook.scenarios()).length).toBe(2)
})

test("a stranger gets charts of supports, dig and cost by the length at one press", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  await workbook.screen("Explore")
  const span = page.getByRole("region", { name: "Try a span of values" })
  await span.getByRole("button", { name: /^Length of the platform 16' 0" to 24' 0"/ }).click()
  // Four feet either side of the twenty that the demonstration has, a foot apart.
  const rows = span.locator("tr[data-tried]")
  await rows.nth(8).waitFor({ timeout: 60_000 })
  expect(await rows.count()).toBe(9)
  expect(await rows.nth(4).locator("th").textContent()).toBe(`20' 0"`)
  expect(await span.getByRole("textbox", { name: "In steps of" }).inputValue()).toBe("1 ft")
  const charts = await span.getByRole("heading", { name: /, by Length of the platform$/ }).allTextContents()
  expect(charts).toHaveLength(4)
  for (const name of ["Cost in all", "Supports in all", "Deepest hole"])
    expect(
      charts.some((chart) => chart.startsWith(name)),
      name,
    ).toBe(true)
  // The row of the present value reads what the workbook reads; no price is entered, and that is said.
  const { book } = openBook(demo())
  const shown = await rows.nth(4).locator("td").allTextContents()
  for (const name of ["support_count", "greatest_dig"])
    expect(shown).toContain(book.entry(name).reading?.text)
  await span.getByText(/a cost is the sum of what has a price/).waitFor()
  expect(await workbook.overflow()).toBeLessThanOrEqual(0)
})

test("how far an input can go, and what stands in the way; a span that is too long says so", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.screen("Explore")
  const edge = page.getByRole("region", { name: "How far can it go?" })
  await edge.getByRole("combobox", { name: "Input" }).selectOption("joist_spacing")
  await edge.getByRole("textbox", { name: "In steps of" }).fill("1 in")
  await edge.getByRole("button", { name: "Look" }).click()
  const { book } = openBook(demo())
  const found = seek(demo(), book.document(), { input: "joist_spacing", toward: "largest", step: "1 in" })
  if ("problem" in found) throw new Error("the search itself was refused")
  await edge
    .getByText(`${found.reading?.text}. It was tried; every check passes.`)
    .waitFor({ timeout: 60_000 })
  const said = await edge.locator("[data-sought]").textContent()
  for (const name of found.binds) expect(said).toContain(book.entry(name).label)

  const span = page.getByRole("region", { name: "Try a span of values" })
  await span.getByRole("combobox", { name: "Input" }).first().selectOption("joist_spacing")
  await span.getByRole("textbox", { name: "From" }).fill("6 in")
  await span.getByRole("textbox", { name: "To" }).fill("30 in")
  await span.getByRole("textbox", { name: "In steps of" }).fill("1/16 in")
  await span.getByRole("button", { name: "Try them" }).click()
  await span.getByText("At most 200 are tried.").waitFor({ timeout: 60_000 })
})

test("a stranger gets, at one press, the sizes near theirs that leave least over; one is taken into a copy", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  await workbook.screen("Explore")
  const near = page.getByRole("region", { name: "Sizes near yours that leave least over" }).first()
  await near.getByRole("button", { name: "Look near mine" }).click()
  const rows = near.locator("tr[data-near]")
  await rows.first().waitFor({ timeout: 90_000 })
  const { book } = openBook(demo())
  const wanted = { input: "platform_length", step: "1 in", reach: "12 in", score: "timber_waste" }
  const found = seekNear(demo(), book.document(), wanted)
  if ("problem" in found) throw new Error("the search itself was refused")
  const [best] = found.filter(({ failing }) => failing.length === 0)
  if (best === undefined) throw new Error("no size near this one passes every check")
  expect(await rows.first().getAttribute("data-near")).toBe(best.typed)
  expect(await rows.first().locator("td").first().textContent()).toBe(best.score.text)
  expect(await near.getByText("as it is now").count()).toBe(1)
  expect(await workbook.overflow()).toBe(0)
  // No more is left over than now: by recalculation of the whole workbook, in which it is read.
  const before = book.entry("timber_waste").reading?.value as number
  await rows
    .first()
    .getByRole("button", { name: /^Try in a copy/ })
    .click()
  expect(await workbook.value("timber_waste")).toBe(best.score.text)
  book.edit("platform_length", best.typed)
  expect(book.entry("timber_waste").reading?.value).toBeLessThanOrEqual(before)
})

test("a span says how far it has come, and to stop it ends its worker; what was tried stays, and it can be asked again", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  await workbook.screen("Explore")
  const span = page.getByRole("region", { name: "Try a span of values" })
  await span.getByRole("combobox", { name: "Input" }).first().selectOption("joist_spacing")
  await span.getByRole("textbox", { name: "From" }).first().fill("12 in")
  await span.getByRole("textbox", { name: "To" }).fill("24 in")
  await span.getByRole("textbox", { name: "In steps of" }).fill("1/16 in")
  await span.getByRole("combobox", { name: /^And with each/ }).selectOption("platform_length")
  await span.getByRole("textbox", { name: "From" }).nth(1).fill("15 ft")
  await span.getByRole("textbox", { name: "To" }).nth(1).fill("20 ft")
  await span.getByRole("textbox", { name: "In steps of" }).nth(1).fill("1 in")
  // Of 193 spacings and 61 lengths: many minutes of work, were it not stopped.
  const all = 193 * 61
  for (const result of ["greatest_dig", "support_count"])
    await span.getByRole("combobox", { name: "Show" }).selectOption(result)

  const started = async () => {
    const [worker] = await Promise.all([
      page.waitForEvent("worker"),
      span.getByRole("button", { name: "Try them" }).click(),
    ])
    return worker
  }
  const worker = await started()
  const rows = span.locator("tr[data-tried]")
  await rows.nth(2).waitFor({ timeout: 60_000 })
  expect(page.workers()).toContain(worker)
  // As many as there are cores, up to four.
  const cores = await page.evaluate(() => navigator.hardwareConcurrency)
  expect(page.workers()).toHaveLength(Math.min(4, cores))
  // However fast each of them is, the rows stand in their order.
  const spacings = await rows.locator("th:first-child").allTextContents()
  expect(new Set(spacings.slice(0, 61))).toEqual(new Set([`1' 0"`]))
  const progress = span.getByRole("progressbar")
  expect(await progress.getAttribute("max")).toBe(`${all}`)
  const come = Number(await progress.getAttribute("value"))
  expect(come).toBeGreaterThanOrEqual(3)
  expect(come).toBeLessThan(all)
  await span.getByText(/^[\d,]+ of 11,?773 tried$/).waitFor()
  expect(await span.getByRole("img", { name: /^Chart of/ }).count()).toBe(2)
  // Of several lines each is told from the others without a colour: by its number, beside where it begins.
  const chart = span.locator(".chart").first()
  const legend = await chart.locator(".legend b").allTextContents()
  expect(legend.length).toBeGreaterThan(8)
  expect(new Set(legend).size).toBe(legend.length)
  expect(await chart.locator(".chart-number").count()).toBeGreaterThan(0)

  const ended = worker.waitForEvent("close")
  await span.getByRole("button", { name: "Stop" }).click()
  await ended
  await expect.poll(() => page.workers()).toEqual([])
  await span.getByText("Stopped; this is what was tried until then.").waitFor()
  const stopped = await rows.count()
  expect(stopped).toBeLessThan(all)
  await page.waitForTimeout(2_000)
  expect(await rows.count()).toBe(stopped)
  expect(await workbook.overflow()).toBe(0)

  // A second question starts anew, and to leave the screen ends it too.
  const second = await started()
  await rows.nth(0).waitFor({ timeout: 60_000 })
  const left = second.waitForEvent("close")
  await workbook.screen("Worksheet")
  await left
  await expect.poll(() => page.workers()).toEqual([])
})
