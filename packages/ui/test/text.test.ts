import { expect, test } from "vitest"
import { en } from "../src/text/en.ts"

test("one of a thing is not several", () => {
  expect(en.moved.count(1)).toBe("1 number moved")
  expect(en.moved.count(61)).toBe("61 numbers moved")
  expect(en.compare.same(1)).toBe("1 other entry is the same in both.")
  expect(en.checkCount("fails", 1)).toBe("1 fails")
  expect(en.checkCount("fails", 3)).toBe("3 fail")
  expect(en.blankInputs(2)).toBe("2 inputs are still blank")
})
