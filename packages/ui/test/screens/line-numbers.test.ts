import { expect, test } from "vitest"
import { numbersOfLines } from "../../src/screens/explore/line-numbers.ts"

test("each line has its number where it begins, and lines that begin together share one text", () => {
  expect(numbersOfLines([100, 60, 20])).toEqual([
    { at: 20, says: "3" },
    { at: 60, says: "2" },
    { at: 100, says: "1" },
  ])
  expect(numbersOfLines([50, 50, 54, 90])).toEqual([
    { at: 52, says: "1–3" },
    { at: 90, says: "4" },
  ])
  expect(numbersOfLines([50, 90, 50, 50])[0]?.says).toBe("1 3–4")
  const crossing = numbersOfLines(Array.from({ length: 61 }, (_, place) => (place % 2) * 99))
  expect(crossing.map(({ says }) => says)).toEqual(["1 3 5 7 …", "2 4 6 8 …"])
  expect(numbersOfLines([])).toEqual([])
})
