import { readFile } from "node:fs/promises"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { holdWorkers, letWorkersStart } from "./held-workers.ts"
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

test("a note that is being typed is still there when a proof arrives, and is kept", async () => {
  const workbook = await openPegbook({ before: holdWorkers, proofs: true })
  await workbook.screen("Steps")
  const bought = await workbook.value("timber_length_bought")
  const notes = step(workbook, "mark-out").getByRole("textbox")
  await notes.click()
  await notes.pressSequentially("Gas pipe ")

  await letWorkersStart(workbook)
  await expect.poll(() => workbook.value("timber_length_bought"), { timeout: 30_000 }).not.toBe(bought)
  expect(await notes.inputValue()).toBe("Gas pipe ")
  await notes.pressSequentially("at C.")
  await workbook.page.keyboard.press("Tab")
  await workbook.page.waitForTimeout(1_000)
  await workbook.page.reload()
  await notes.waitFor()
  expect(await notes.inputValue()).toBe("Gas pipe at C.")
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
  const workbook = await openPegbook({ width: 360, height: 740, before: holdWorkers, proofs: true })
  const bought = await workbook.value("timber_length_bought")
  await workbook.screen("Set-out")
  const page = workbook.page
  await page.getByRole("heading", { level: 1, name: "Set-out sheet" }).waitFor()
  const field = (name: string) => page.locator(".set-out").getByRole("textbox", { name })
  await field("Diagonal A to C, as measured").fill("23 ft 5 in")
  await field("Diagonal A to C, as measured").press("Enter")
  // A proof that arrives in the middle of a number takes none of it away.
  await field("Diagonal B to D, as measured").fill("23 ft 3 in")
  await letWorkersStart(workbook)
  await expect.poll(() => workbook.value("timber_length_bought"), { timeout: 30_000 }).not.toBe(bought)
  expect(await field("Diagonal B to D, as measured").inputValue()).toBe("23 ft 3 in")
  await field("Diagonal B to D, as measured").press("Enter")
  // The cosine rule by hand: (281² − 144² + 240²) / 480 = 241.302 in, of which 240 are wanted.
  const corner = page.locator('[data-set-out="corrections"] > li').filter({ hasText: "Push C" })
  await corner.getByText("the way from B to A").waitFor()
  await corner.getByText('1 5/16"').waitFor()
  expect(await workbook.overflow()).toBe(0)
})

test("the steps and the days to order by are saved as a calendar file", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  await workbook.screen("Steps")
  const { page } = workbook
  const save = page.getByRole("button", { name: "Save the dates as a calendar file" })
  expect(await save.isDisabled()).toBe(true)
  await page.getByLabel("First day").fill("2026-05-04")
  await page.getByLabel("Days from order to delivery").fill("10")
  const [download] = await Promise.all([page.waitForEvent("download"), save.click()])
  const file = await readFile(await download.path(), "utf8")
  expect(file).toContain("SUMMARY:Mark out\\, and have services found\r\n")
  expect(file).toContain("DTSTART;VALUE=DATE:20260504\r\n")
  // Ten days before.
  expect(file).toContain("DTSTART;VALUE=DATE:20260424\r\n")
  expect(await workbook.overflow()).toBe(0)
})

test("a photo is kept with its step, made smaller, and can be taken away and brought back", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  await workbook.screen("Steps")
  const { page } = workbook
  const first = step(workbook, "mark-out")
  const data = await page.evaluate(() => {
    const canvas = document.createElement("canvas")
    canvas.width = 3_200
    canvas.height = 1_600
    canvas.getContext("2d")?.fillRect(0, 0, 900, 900)
    return canvas.toDataURL("image/png").split(",")[1] ?? ""
  })
  const input = first.getByLabel("Add photos to: Mark out, and have services found")
  await input.setInputFiles({
    name: "pegs.png",
    mimeType: "image/png",
    buffer: Buffer.from(data, "base64"),
  })
  const photo = first.getByRole("img", { name: /^Photo 1 of: Mark out/ })
  await photo.waitFor()
  const width = () => photo.evaluate((one) => (one as HTMLImageElement).naturalWidth)
  await expect.poll(width).toBe(1_600)
  expect(await workbook.overflow()).toBe(0)

  await input.setInputFiles({ name: "list.txt", mimeType: "text/plain", buffer: Buffer.from("no picture") })
  await first.getByRole("alert").getByText("“list.txt” was not added").waitFor()

  await page.waitForTimeout(1_000)
  await page.reload()
  await photo.waitFor()
  await first.getByRole("button", { name: "Remove photo 1 of: Mark out, and have services found" }).click()
  await photo.waitFor({ state: "detached" })
  await page.getByRole("button", { name: "Undo" }).click()
  await photo.waitFor()
})
