import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

test("a scenario is deleted, and comes back when that is undone", async () => {
  const workbook = await openPegbook()
  await workbook.saveCopy("Wider")
  await workbook.enter("platform_width", "14 ft")
  const wide = await workbook.value("platform_area")

  await workbook.button("Delete").first().click()
  expect(await workbook.value("platform_area")).not.toBe(wide)
  expect(await workbook.scenarios()).not.toContain("Wider")

  await workbook.button("Undo").first().click()
  expect(await workbook.scenarios()).toContain("Wider")
  expect(await workbook.value("platform_area")).toBe(wide)
})

test("a guide that was dismissed stays away", async () => {
  const workbook = await openPegbook()
  const guide = workbook.page.getByText("First time here?")
  await guide.waitFor()
  await workbook.button("Got it").click()
  expect(await guide.count()).toBe(0)
  // Kept a moment after the press, like all else.
  await workbook.page.waitForTimeout(1_000)
  await workbook.reload()
  expect(await guide.count()).toBe(0)
})

test("where the browser keeps nothing, everything works and the page says that it is not saved", async () => {
  const workbook = await openPegbook({
    before: () => {
      Object.defineProperty(globalThis, "indexedDB", {
        get() {
          throw new DOMException("Denied by the test", "SecurityError")
        },
      })
    },
  })
  await workbook.enter("platform_length", "18 ft")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
  await workbook.page
    .getByText(/^Not saved: this browser does not let pages keep anything/)
    .first()
    .waitFor()
  await workbook.saveCopy("Another")
  expect(await workbook.scenarios()).toContain("Another")
})
