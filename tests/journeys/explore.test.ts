import { openBook, seek, sweep } from "@pegbook/engine"
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
