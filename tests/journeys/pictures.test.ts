import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import type { WorkbookPage } from "./workbook-page.ts"

const picture = (workbook: WorkbookPage, name: string) =>
  workbook.row(name).getByRole("img", { name: /^Sketch/ })

test("entering a field shows a picture of what is asked, and the next field takes it over", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  const pictures = page.getByRole("img", { name: /^Sketch/ })
  expect(await pictures.count()).toBe(0)

  await workbook.field("platform_length").focus()
  await picture(workbook, "platform_length").waitFor()
  expect(await picture(workbook, "platform_length").getAttribute("aria-label")).toContain(
    "Length of the platform",
  )
  const of = (name: string) => picture(workbook, name).innerHTML()
  const length = await of("platform_length")

  await workbook.field("platform_width").focus()
  expect(await pictures.count()).toBe(1)
  expect(await of("platform_width")).not.toBe(length)

  // A choice has one too; a load cannot be drawn.
  await workbook.row("skid_size").getByRole("combobox").focus()
  expect(await picture(workbook, "skid_size").isVisible()).toBe(true)
  await workbook.field("soil_bearing").focus()
  expect(await pictures.count()).toBe(0)
})

test("an entry that is opened for its explanation shows its picture, and keeps it", async () => {
  const workbook = await openPegbook()
  await workbook.open("stone_bed_thickness")
  await workbook.open("joist_count")
  await picture(workbook, "stone_bed_thickness").waitFor()
  await workbook.field("platform_width").focus()
  expect(await picture(workbook, "stone_bed_thickness").isVisible()).toBe(true)
  expect(await picture(workbook, "joist_count").count()).toBe(0)
})

test.each([1280, 360])(
  "a field stays under the finger while pictures come and go: %i wide",
  async (width) => {
    const workbook = await openPegbook({ width, height: 740 })
    const { page } = workbook
    await workbook.field("support_spacing_max").focus()
    await picture(workbook, "support_spacing_max").waitFor()
    const next = workbook.field("support_end_offset")
    await next.scrollIntoViewIfNeeded()
    const before = await next.boundingBox()
    await page.mouse.move((before?.x ?? 0) + 20, (before?.y ?? 0) + 20)
    await page.mouse.down()
    await picture(workbook, "support_end_offset").waitFor()
    await workbook.twoFrames()
    const after = await next.boundingBox()
    await page.mouse.up()
    expect(Math.abs((after?.y ?? 0) - (before?.y ?? 0))).toBeLessThanOrEqual(1)
    expect(await next.evaluate((field) => field === document.activeElement)).toBe(true)
    expect(await workbook.overflow()).toBeLessThanOrEqual(0)
    const frame = await picture(workbook, "support_end_offset").boundingBox()
    expect((frame?.x ?? 0) + (frame?.width ?? 0)).toBeLessThanOrEqual(width)
  },
)

test("what is lit stands out in both themes, and in a reader's own colours", async () => {
  for (const dark of [false, true]) {
    const workbook = await openPegbook({ dark })
    await workbook.field("skid_spacing_max").focus()
    const lit = picture(workbook, "skid_spacing_max").locator(".as-lit").first()
    const plain = picture(workbook, "skid_spacing_max").locator(".as-end:not(.as-lit)").first()
    await lit.waitFor()
    const looks = () =>
      Promise.all([lit, plain].map((one) => one.evaluate((path) => getComputedStyle(path).stroke)))
    const [litStroke, plainStroke] = await looks()
    expect(litStroke).not.toBe(plainStroke)
    await workbook.page.emulateMedia({ forcedColors: "active" })
    const [litForced, plainForced] = await looks()
    expect(litForced).not.toBe(plainForced)
  }
})
