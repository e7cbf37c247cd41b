import { openBook } from "@pegbook/engine"
import { expect, test } from "vitest"
import { demo } from "../../src/index.ts"
import { calcJson, file, pegbook, refuses } from "./run.ts"

/** A workbook with two scenarios, saved as the browser saves it. */
function saved(): string {
  const { book } = openBook(demo())
  book.edit("platform_length", "16 ft")
  book.saveCopy("Shorter")
  book.edit("platform_length", "12 ft")
  return file(JSON.stringify(book.document()))
}

test("a saved workbook opens with its last scenario", () => {
  const { template, quantities } = calcJson(saved())
  expect(template).toBe(demo().id)
  expect(quantities.platform_length).toMatchObject({ value: 3.6576, changed: true })
})

test("two scenarios are compared, and differ as they were made to", () => {
  const path = saved()
  const { status, out } = pegbook("compare", path)
  expect(status).toBe(0)
  expect(out).toMatch(/platform_length +16' 0" +→ +12' 0" +\([−-]4' 0"\)/)
  expect(out).toMatch(/joist_count/)
  refuses(["compare", path, "Shorter", "Longer"], "Longer", "Shorter")
  refuses(["compare", demo().id], "two scenarios")
})
