import type { Page } from "playwright-core"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import type { WorkbookPage } from "./workbook-page.ts"

async function openDrawings(workbook: WorkbookPage): Promise<Page> {
  await workbook.screen("Drawings")
  await workbook.page.locator("svg[data-drawn]").waitFor()
  return workbook.page
}

/** Two cores may be busy with other browsers. */
const PATIENT = { timeout: 15_000 }

const drawn = (page: Page, key: string) => page.locator(`svg [data-of="${key}"]`)

test("the plan: a layer is left out, a joist leads to its row, and an edit leaves the outline before", async () => {
  const workbook = await openPegbook()
  const page = await openDrawings(workbook)
  const joists = page.locator('svg [data-layer="joists"] [data-of]')
  // 20 ft of platform at 16 in: (240 − 1.5) ÷ 16 is 14.9, so 15 spaces, 16 joists.
  expect(await joists.count()).toBe(16)
  await page.getByRole("checkbox", { name: "Joists" }).uncheck()
  expect(await joists.count()).toBe(0)
  await page.getByRole("checkbox", { name: "Joists" }).check()

  await drawn(page, "joists#3").click()
  await page.locator('[data-pointed="joists#3"]').waitFor()
  expect(await page.locator(".lit-outline").count()).toBe(1)
  // The third joist's middle is 2 spacings of 16 in from the end.
  await page.locator(".pointed").getByText(`2' 8"`, { exact: true }).waitFor()
  await page.getByRole("link", { name: "Show in the worksheet" }).click()
  await page.waitForURL((url) => url.hash.startsWith("#/worksheet/joists."))
  await workbook.row("joists.position").getByText("Row 3 of 16").waitFor()

  await workbook.enter("platform_length", "18 ft")
  await openDrawings(workbook)
  await page.getByText("Dashed: the outline before the last change.").waitFor()
  expect(await page.locator("svg [data-ghost] path").count()).toBe(1)
  expect(await joists.count()).toBe(15)
})

test("from a row of the worksheet to the drawing, where it is outlined and named", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.open("supports")
  await page.locator("#row-supports-7-dig").click()
  await page.getByRole("button", { name: "Show row 7 in drawing" }).click()
  await page.locator('[data-pointed="supports#7"]').waitFor()
  expect(await page.locator(".lit-outline").count()).toBeGreaterThan(0)
  expect(await page.locator(".label-lit").textContent()).toContain("row 7")
})

test("the handle of the length is moved with the keyboard: an edit like any other", async () => {
  const workbook = await openPegbook()
  const page = await openDrawings(workbook)
  const handle = page.getByRole("slider", { name: /^Length/ })
  expect(await handle.getAttribute("aria-valuetext")).toBe(`20' 0"`)
  await handle.focus()
  await page.keyboard.press("ArrowRight")
  await page.locator(`[role="slider"][aria-valuetext="20' 1\\""]`).waitFor()
  expect(await workbook.focused().getAttribute("data-handle")).toBe("platform_length")
  await page.keyboard.press("ArrowLeft")
  await page.keyboard.press("ArrowLeft")
  await page.locator(`[role="slider"][aria-valuetext="19' 11\\""]`).waitFor()

  const box = await page.locator('[data-handle="platform_length"]').boundingBox()
  if (box === null) throw new Error("no handle")
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x - 60, y, { steps: 4 })
  await page.mouse.up()
  const dragged = await page.locator('[data-handle="platform_length"]').getAttribute("aria-valuetext")
  await workbook.screen("Worksheet")
  expect(await workbook.value("platform_length")).toBe(dragged)
  expect(await workbook.was("platform_length")).toBe(`19' 11"`)
})

test("while a handle is dragged the plan is drawn anew; Escape puts it back, and letting go is one change", async () => {
  const workbook = await openPegbook()
  const page = await openDrawings(workbook)
  const joists = page.locator('svg [data-layer="joists"] [data-of]')
  const handle = page.locator('[data-handle="platform_length"]')
  const scale = () => page.locator("svg[data-drawn] > g").first().getAttribute("transform")
  const take = async () => {
    await handle.hover()
    const box = await handle.boundingBox()
    if (box === null) throw new Error("no handle")
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    return { x, y }
  }
  expect(await joists.count()).toBe(16)
  const fitted = await scale()

  const { x, y } = await take()
  await page.mouse.move(x - 200, y, { steps: 5 })
  await expect.poll(() => joists.count(), PATIENT).toBeLessThan(16)
  // The drawing keeps its place, so that its end is where the pointer is.
  expect(await scale()).toBe(fitted)
  expect(await page.locator("svg [data-ghost] path").count()).toBe(1)
  await page.keyboard.press("Escape")
  await expect.poll(() => joists.count(), PATIENT).toBe(16)
  expect(await page.locator("svg [data-ghost] path").count()).toBe(0)
  await page.mouse.up()
  expect(await handle.getAttribute("aria-valuetext")).toBe(`20' 0"`)

  await take()
  for (const by of [60, 120, 180]) {
    await page.mouse.move(x - by, y)
    await page.locator(".drag-preview").waitFor()
  }
  await page.mouse.up()
  await page.locator(".drag-preview").waitFor({ state: "detached" })
  const length = (await handle.getAttribute("aria-valuetext")) ?? ""
  expect(length).not.toBe(`20' 0"`)
  await workbook.screen("Changes")
  await page.locator("[data-step]").first().waitFor()
  expect(await page.locator("[data-step]").count()).toBe(1)
  await workbook.screen("Worksheet")
  expect(await workbook.value("platform_length")).toBe(length)
  expect(await workbook.was("platform_length")).toBe(`20' 0"`)
  await page.keyboard.press("Control+z")
  expect(await workbook.value("platform_length")).toBe(`20' 0"`)
})

test("a finger drags a handle on a phone: the page stays where it is, the plan follows, and it is one change", async () => {
  const workbook = await openPegbook({ width: 360, height: 780, touch: true })
  const page = await openDrawings(workbook)
  const joists = page.locator('svg [data-layer="joists"] [data-of]')
  const handle = page.locator('[data-handle="platform_length"]')
  const fingers = await page.context().newCDPSession(page)
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", ...touchPoints: { x: number; y: number }[]) =>
    fingers.send("Input.dispatchTouchEvent", { type, touchPoints })
  await handle.scrollIntoViewIfNeeded()
  const box = await handle.boundingBox()
  if (box === null) throw new Error("no handle")
  // A finger's width, as WCAG 2.2 asks for (2.5.8: 24 pixels).
  expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24)
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  const scrolled = () => page.evaluate(() => [scrollX, scrollY])
  const before = await scrolled()

  await touch("touchStart", { x, y })
  for (const by of [10, 30, 50, 70]) await touch("touchMove", { x: x - by, y: y + by })
  await expect.poll(() => joists.count(), PATIENT).toBeLessThan(16)
  expect(await scrolled()).toEqual(before)
  expect(await workbook.overflow()).toBe(0)
  await touch("touchEnd")
  await page.locator(".drag-preview").waitFor({ state: "detached" })
  const length = (await handle.getAttribute("aria-valuetext")) ?? ""
  expect(length).not.toBe(`20' 0"`)
  await workbook.screen("Worksheet")
  expect(await workbook.value("platform_length")).toBe(length)
  expect(await workbook.was("platform_length")).toBe(`20' 0"`)
})

test("every drawing fits a narrow window, and moves with the keyboard alone", async () => {
  const workbook = await openPegbook({ width: 360, height: 780 })
  const page = await openDrawings(workbook)
  const choice = page.getByRole("combobox", { name: "Drawing" })
  for (const title of await choice.locator("option").allInnerTexts()) {
    await choice.selectOption({ label: title })
    await page.locator("svg[data-drawn] title", { hasText: title }).waitFor({ state: "attached" })
    expect(await workbook.overflow(), title).toBe(0)
  }
  const place = () => page.locator("svg[data-drawn] > g").first().getAttribute("transform")
  const fitted = await place()
  await page.locator(".picture-frame").focus()
  await page.keyboard.press("+")
  await page.keyboard.press("ArrowRight")
  expect(await place()).not.toBe(fitted)
  await page.keyboard.press("0")
  expect(await place()).toBe(fitted)
})

test("moment, shear and sag stand under each member with its supports, and the greatest leads to its row", async () => {
  const workbook = await openPegbook({ width: 360, height: 780, dark: true })
  const page = await openDrawings(workbook)
  const skids = page.locator('[data-curves="skids"]')
  await skids.waitFor()
  // Six stacks under each skid of 20 ft.
  expect(await skids.locator("[data-support]").count()).toBe(6)
  expect(await skids.locator("[data-curve]").count()).toBe(3)
  expect(await workbook.overflow()).toBe(0)
  const greatest = (await skids.locator('[data-greatest="moment"]').textContent()) ?? ""
  const [, text = ""] = /^Moment: (.+ lb·ft) at /.exec(greatest) ?? []
  await skids.getByRole("link", { name: "Moment", exact: true }).click()
  await page.waitForURL((url) => url.hash === "#/worksheet/member_curves.moment")
  await workbook.row("member_curves.moment").getByText(text, { exact: true }).first().waitFor()

  await workbook.enter("platform_length", "16 ft")
  await openDrawings(workbook)
  expect(await skids.locator('[data-greatest="moment"]').textContent()).not.toBe(greatest)
})
