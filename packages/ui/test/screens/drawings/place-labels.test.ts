import { expect, test } from "vitest"
import { boxOf, type LabelWish, overlaps, placeLabels } from "../../../src/screens/drawings/place-labels.ts"

const WINDOW = { left: 0, top: 0, right: 300, bottom: 200 }

/** Whole numbers from 0 to below `most`, the same at each run (Lehmer's generator). */
function numbers(seed: number): (most: number) => number {
  let state = seed
  return (most) => {
    state = (state * 48_271) % 2_147_483_647
    return state % most
  }
}

function wishesFrom(seed: number): readonly LabelWish[] {
  const next = numbers(seed)
  return Array.from({ length: next(40) }, (_, index) => ({
    id: String(index),
    text: "8".repeat(1 + next(12)),
    stands: Array.from({ length: 1 + next(4) }, () => ({
      x: next(400) - 50,
      y: next(300) - 50,
      turned: next(2) === 1,
    })),
    weight: next(10),
  }))
}

test.each(Array.from({ length: 60 }, (_, index) => index + 1))(
  "labels never overlap, never leave the window, and stand where they were wished for (seed %i)",
  (seed) => {
    const wishes = wishesFrom(seed)
    const placed = placeLabels(wishes, WINDOW)
    for (const [index, label] of placed.entries()) {
      const box = boxOf(label)
      expect(box.left >= 0 && box.top >= 0 && box.right <= 300 && box.bottom <= 200).toBe(true)
      for (const other of placed.slice(index + 1)) expect(overlaps(box, boxOf(other))).toBe(false)
      const { stands = [] } = wishes[Number(label.id)] ?? {}
      expect(stands.some((one) => one.x === label.x && one.y === label.y)).toBe(true)
    }
  },
)

test("the heavier label takes the place, and the lighter moves or is left out", () => {
  const at = { x: 100, y: 100 }
  const wishes: LabelWish[] = [
    { id: "light", text: "10' 0\"", stands: [at], weight: 1 },
    { id: "heavy", text: "20' 0\"", stands: [at], weight: 2 },
    { id: "moves", text: "1' 4\"", stands: [at, { x: 100, y: 150 }], weight: 0 },
  ]
  expect(placeLabels(wishes, WINDOW).map(({ id, y }) => [id, y])).toEqual([
    ["heavy", 100],
    ["moves", 150],
  ])
})
