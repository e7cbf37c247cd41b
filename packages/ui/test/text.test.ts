import { TEMPLATES } from "@pegbook/templates"
import { expect, test } from "vitest"
import { en } from "../src/text/en.ts"

test("one of a thing is not several", () => {
  expect(en.moved.count(1)).toBe("1 number moved")
  expect(en.moved.count(61)).toBe("61 numbers moved")
  expect(en.compare.same(1)).toBe("1 other entry is the same in all of them.")
  expect(en.checkCount("fails", 1)).toBe("1 fails")
  expect(en.checkCount("fails", 3)).toBe("3 fail")
  expect(en.checkCount("needs_entry", 1)).toBe("1 needs an entry")
  expect(en.checkCount("needs_entry", 4)).toBe("4 need an entry")
  expect(en.checkCount("passes", 20)).toBe("20 pass")
  expect(en.blankInputs(1)).toBe("1 input is still blank")
  expect(en.blankInputs(2)).toBe("2 inputs are still blank")
})

test("every kind of workbook says what its drawing shows, and so does one that has none", () => {
  for (const { id } of TEMPLATES) expect(en.sketches[id], id).toMatch(/^Drawing/)
  expect(en.sketches.other).toMatch(/^Drawing/)
})
