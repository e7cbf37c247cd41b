import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import type { WorkbookPage } from "./workbook-page.ts"

const step = (workbook: WorkbookPage, id: string) => workbook.page.locator(`[data-step="${id}"]`)

test("a step's numbers follow an edit, and what was ticked and noted is there after a reload", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  await workbook.screen("Steps")
  const first = step(workbook, "mark-out")
  await first.getByText("mark 20' 0\" on it").waitFor()

  await workbook.screen("Worksheet")
  await workbook.enter("platform_length", "18 ft")
  await workbook.screen("Steps")
  await first.getByText("mark 18' 0\" on it").waitFor()
  expect(await workbook.overflow()).toBe(0)

  await first
    .getByRole("textbox", { name: "Your notes on: Mark out, and have services found" })
    .fill("Gas pipe at C.")
  await workbook.page.getByRole("checkbox", { name: "Done: Mark out, and have services found" }).check()
  await workbook.page.getByText("1 of 15 steps done").waitFor()
  // Kept a moment after the press, like all else; the word for it stands on the worksheet.
  await workbook.page.waitForTimeout(1_000)
  await workbook.page.locator('[data-kept="saved"]').first().waitFor({ state: "attached" })

  await workbook.page.reload()
  await workbook.page.getByText("1 of 15 steps done").waitFor()
  expect(
    await workbook.page
      .getByRole("checkbox", { name: "Done: Mark out, and have services found" })
      .isChecked(),
  ).toBe(true)
  await first.getByRole("button", { name: /Mark out, and have services found/ }).click()
  expect(await first.getByRole("textbox").inputValue()).toBe("Gas pipe at C.")
})

test("what the next step needs is listed, and counted as it is put out", async () => {
  const workbook = await openPegbook()
  await workbook.screen("Steps")
  const ready = workbook.page.getByRole("region", { name: "Is everything for the next step here?" })
  await ready.getByText("Next: Mark out, and have services found.").waitFor()
  await ready.getByText("0 of 6 things here").waitFor()
  const peg = ready.getByRole("listitem").filter({ hasText: "peg" }).first()
  expect(await peg.getByRole("link").textContent()).toBe("12")
  await ready.getByRole("checkbox", { name: "peg" }).check()
  await ready.getByText("1 of 6 things here").waitFor()

  await workbook.page.getByRole("checkbox", { name: "Done: Mark out, and have services found" }).check()
  await ready.getByText("Next: Take the levels.").waitFor()
})

test("a measured diagonal says at the string line which way to push", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  await workbook.screen("Set-out")
  const page = workbook.page
  await page.getByRole("heading", { level: 1, name: "Set-out sheet" }).waitFor()
  for (const [name, text] of [
    ["Diagonal A to C, as measured", "23 ft 5 in"],
    ["Diagonal B to D, as measured", "23 ft 3 in"],
  ] as const) {
    const field = page.locator(".set-out").getByRole("textbox", { name })
    await field.fill(text)
    await field.press("Enter")
  }
  // The cosine rule by hand: (281² − 144² + 240²) / 480 = 241.302 in, of which 240 are wanted.
  const corner = page.locator('[data-set-out="corrections"] > li').filter({ hasText: "Push C" })
  await corner.getByText("the way from B to A").waitFor()
  await corner.getByText('1 5/16"').waitFor()
  expect(await workbook.overflow()).toBe(0)
})
