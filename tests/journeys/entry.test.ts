import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test("what cannot be used is explained at the field, and the last good value stays in force", async () => {
  const workbook = await openPegbook()
  await workbook.enter("platform_length", "18 ft")
  const joists = await workbook.value("joist_count")

  for (const [typed, part] of [
    ["eighteen", "eighteen"],
    ["18 kg", "kg"],
    ["-18 ft", "-18 ft"],
    ["", "18' 0\""],
  ] as const) {
    await workbook.enter("platform_length", typed)
    expect(await workbook.complaint("platform_length"), `after typing "${typed}"`).toContain(part)
    expect(await workbook.complaint("platform_length")).toContain("18' 0\"")
    expect(await workbook.field("platform_length").getAttribute("aria-invalid")).toBe("true")
    expect(await workbook.value("joist_count")).toBe(joists)
  }

  await workbook.row("platform_length").getByRole("button", { name: "Put that back" }).click()
  expect(await workbook.field("platform_length").inputValue()).toBe("18' 0\"")
  expect(await workbook.row("platform_length").getByRole("alert").count()).toBe(0)
})

test("feet and inches and metric are both understood, whichever is shown", async () => {
  const workbook = await openPegbook()
  // 1 in is 25.4 mm exactly, so 5.4864 m is 18 ft.
  for (const typed of ["5.4864 m", "5486.4 mm", "216 in", `17' 12"`, "18' 0\""]) {
    await workbook.enter("platform_length", "20 ft")
    await workbook.enter("platform_length", typed)
    expect(await workbook.value("platform_length"), typed).toBe("18' 0\"")
  }
  const joists = await workbook.value("joist_count")

  await workbook.showIn("Metric")
  expect(await workbook.value("platform_length")).toBe("5,486 mm")
  expect(await workbook.value("joist_count")).toBe(joists)
  await workbook.enter("platform_length", "20 ft")
  expect(await workbook.value("platform_length")).toBe("6,096 mm")
})

test("an input goes back to the template's value at a press", async () => {
  const workbook = await openPegbook()
  const first = await workbook.value("joist_spacing")
  const joists = await workbook.value("joist_count")
  await workbook.enter("joist_spacing", "10 in")
  expect(await workbook.value("joist_count")).not.toBe(joists)
  await workbook
    .row("joist_spacing")
    .getByRole("button", { name: /^Put back/ })
    .click()
  expect(await workbook.value("joist_spacing")).toBe(first)
  expect(await workbook.value("joist_count")).toBe(joists)
})
