import { describe, expect, test } from "vitest"
import { MM, scaleBar, toScale, usualPaper } from "../../src/screens/build-book/to-scale.ts"

const NONE = { left: 0, right: 0, top: 0, bottom: 0 }
const ROOM = { width: 180 * MM, height: 218 * MM }
const bounds = (u: number, v: number) => ({ least: { u: 0, v: 0 }, most: { u, v } })

describe("the scale of a drawing", () => {
  test.each([
    // Worked by hand: 180 mm by 218 mm of room.
    { u: 0.15, v: 0.1, ratio: 1, turned: false },
    { u: 3.6, v: 1, ratio: 20, turned: false },
    { u: 3.61, v: 1, ratio: 20, turned: true },
    { u: 4.36, v: 1, ratio: 20, turned: true },
    { u: 4.37, v: 1, ratio: 50, turned: false },
    { u: 30, v: 2, ratio: 200, turned: false },
  ])("$u m by $v m is drawn at 1:$ratio, turned $turned", ({ u, v, ratio, turned }) => {
    const drawn = toScale(bounds(u, v), NONE, ROOM)
    expect({ ratio: drawn.ratio, turned: drawn.turned }).toEqual({ ratio, turned })
    expect(drawn.width).toBeCloseTo(((u * 1000) / ratio) * MM, 9)
  })

  test("what is larger than any scale has room for still has one", () => {
    expect(toScale(bounds(1e6, 1), NONE, ROOM).ratio).toBe(5_000)
  })

  test("the scale bar is a round length, never longer than 60 mm", () => {
    for (const ratio of [1, 2, 5, 10, 20, 50, 100, 200, 500]) {
      const camera = { scale: (1000 * MM) / ratio, left: 0, top: 0 }
      for (const system of ["us", "metric"] as const) {
        const { length } = scaleBar(camera, system)
        expect(length / MM, `1:${ratio} ${system}`).toBeLessThanOrEqual(60)
        expect(length / MM, `1:${ratio} ${system}`).toBeGreaterThan(10)
      }
    }
    expect(scaleBar({ scale: (1000 * MM) / 50, left: 0, top: 0 }, "metric")).toEqual({
      text: "2 m",
      length: 40 * MM,
    })
  })
})

// Canada measures in metres and prints on P4, 215 mm by 280 mm: Letter rounded to five millimetres (from memory).
test("the paper is the region's, whatever the units; without a region, that of where the units are usual", () => {
  expect(usualPaper("metric", "fr-CA")).toBe("letter")
  expect(usualPaper("metric", "en-US")).toBe("letter")
  expect(usualPaper("us", "en-GB")).toBe("a4")
  expect(usualPaper("metric", "fr-FR")).toBe("a4")
  expect(usualPaper("metric", "zh-Hant-TW")).toBe("a4")
  expect(usualPaper("metric", "en")).toBe("a4")
  expect(usualPaper("us", "")).toBe("letter")
})
