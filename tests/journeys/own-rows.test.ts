import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { holdWorkers, letWorkersStart } from "./held-workers.ts"
import type { WorkbookPage } from "./workbook-page.ts"

async function begin({ page }: WorkbookPage, kind: string, label: string): Promise<void> {
  await page.getByRole("button", { name: "Add one of your own" }).click()
  await page.getByRole("combobox", { name: "What to add" }).selectOption({ label: kind })
  await page.getByRole("textbox", { name: "What it is" }).fill(label)
}

test("an input and a formula of one's own: a name completed, a row pointed at, the unit worked out; kept, renamed, removed", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  const add = page.getByRole("button", { name: "Add it" })
  await begin(workbook, "An input", "Gate width")
  await page.getByRole("textbox", { name: /^Value/ }).fill("4 ft")
  await add.click()
  expect(await workbook.value("gate_width")).toBe("4' 0\"")

  await begin(workbook, "A formula", "All the gates")
  const formula = page.getByRole("combobox", { name: "Formula", exact: true })
  await formula.pressSequentially("gate_w")
  await page.getByRole("option", { name: /gate_width/ }).waitFor()
  await formula.press("Enter")
  await formula.pressSequentially(" * ")
  await workbook.press(workbook.row("joist_count").getByRole("button", { name: /^Use .* in the formula$/ }))
  expect(await formula.inputValue()).toBe("gate_width * joist_count")
  // 4 ft for each of the 16 joists.
  expect(await workbook.value("joist_count")).toBe("16")
  await page.getByText("A length: 64' 0\"").waitFor({ timeout: 60_000 })
  await add.click()
  expect(await workbook.value("all_the_gates")).toBe("64' 0\"")

  await workbook.enter("gate_width", "2 ft")
  expect(await workbook.value("all_the_gates")).toBe("32' 0\"")
  await workbook.saved()
  await workbook.reload()
  await workbook.row("all_the_gates").waitFor()

  await page.getByRole("button", { name: "Rename Gate width in formulas" }).click()
  await page.getByRole("textbox", { name: "New name in formulas" }).fill("door_width")
  await page.getByRole("button", { name: "Save", exact: true }).click()
  expect(await workbook.value("door_width")).toBe("2' 0\"")
  expect(await workbook.value("all_the_gates")).toBe("32' 0\"")

  await page.getByRole("button", { name: "Remove Gate width" }).click()
  await page.getByText("1 entry leans on it:").waitFor()
  await page.getByRole("button", { name: "Keep it" }).click()
  await page.getByRole("button", { name: "Remove All the gates" }).click()
  expect(await workbook.row("all_the_gates").count()).toBe(0)
  await workbook.button("Take back the last change").click()
  expect(await workbook.value("all_the_gates")).toBe("32' 0\"")
})

test("what cannot be added says why, and nothing is lost: a name that is not there, a figure from nowhere", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  const add = page.getByRole("button", { name: "Add it" })
  await begin(workbook, "A formula", "Wrong")
  const formula = page.getByRole("combobox", { name: "Formula", exact: true })
  await formula.fill("joist_countt * 2")
  await add.click()
  await page.getByText('nothing is called "joist_countt"').last().waitFor()
  await formula.fill("joist_count * 2")
  await add.click()
  expect(await workbook.value("wrong")).toBe("32")

  await begin(workbook, "A figure", "Found somewhere")
  await page.getByRole("textbox", { name: "Value" }).fill("3 in")
  await add.click()
  await page.getByText("does not say where the figure is from").waitFor()
  await page.getByRole("textbox", { name: "Where the figure is from" }).fill("The label on the box")
  await add.click()
  expect(await workbook.value("found_somewhere")).toBe('3"')
  expect(await workbook.overflow()).toBeLessThanOrEqual(0)
})

test.each([1280, 360])(
  "a press on what stands below the names that fit does not miss (%i wide)",
  async (width) => {
    const workbook = await openPegbook({ width, height: 800 })
    const { page } = workbook
    await begin(workbook, "A formula", "Half")
    // Nothing that would throw away what is being typed.
    expect(await page.getByRole("button", { name: "Add one of your own" }).count()).toBe(0)
    const formula = page.getByRole("combobox", { name: "Formula", exact: true })
    await formula.pressSequentially("2 * joist_coun")
    const names = page.getByRole("listbox", { name: "Names that fit" })
    await names.getByRole("option").first().waitFor()
    // They lie over what follows: nothing is where it will not be when the press is over.
    const add = page.getByRole("button", { name: "Add it" })
    const listed = await names.boundingBox()
    const next = await page.getByRole("textbox", { name: "Why (optional)" }).boundingBox()
    expect(next?.y).toBeLessThan((listed?.y ?? 0) + (listed?.height ?? 0))
    await page.keyboard.press("Escape")
    await formula.fill("2 * joist_count + 3 ft")
    await page.getByText("A formula has no units in it").waitFor({ timeout: 60_000 })
    await formula.fill("2 * joist_count")
    await page.keyboard.press("Escape")
    await add.click()
    expect(await workbook.value("half")).toBe("32")
  },
)

// Only a column of one's own can lean on what is proven, in a table whose rows are typed.
test("a cell that is being typed keeps its text when a proof moves its table, and goes in force after", async () => {
  const workbook = await openPegbook({ before: holdWorkers, proofs: true })
  const { page } = workbook
  await workbook.open("prices")
  const table = workbook.row("prices")
  const cell = (column: string) => table.getByRole("textbox", { name: `${column}, row 1` })
  await table.getByRole("button", { name: "Add a row" }).click()
  await cell("What").fill("6x6")
  await cell("By").fill("ft")
  await cell("Price").fill("3.10")
  await page.keyboard.press("Tab")

  await begin(workbook, "A column on a table", "Timber in all")
  await page.getByRole("combobox", { name: "Table" }).selectOption({ label: "Your prices" })
  await page.getByRole("combobox", { name: "Formula", exact: true }).fill("timber_length_bought")
  await page.keyboard.press("Escape")
  await page.getByRole("button", { name: "Add it" }).click()
  await page.getByText("Added “Timber in all”.").waitFor()
  const bought = await workbook.value("timber_length_bought")
  await cell("Price").click()
  await cell("Price").pressSequentially("4")

  await letWorkersStart(workbook)
  await expect.poll(() => workbook.value("timber_length_bought"), { timeout: 30_000 }).not.toBe(bought)
  expect(await cell("Price").inputValue()).toBe("4")
  await cell("Price").pressSequentially(".20")
  await page.keyboard.press("Tab")
  await workbook.saved()
  await workbook.reload()
  await workbook.open("prices")
  expect(await cell("Price").inputValue()).toBe("4.20")
})
