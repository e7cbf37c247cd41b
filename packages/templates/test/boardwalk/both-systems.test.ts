import { expect, test } from "vitest"
import { walk } from "./walk.ts"

test("the same walk entered in feet and in millimetres gives the same answers", () => {
  const feet = walk({
    platform_length: "40 ft",
    platform_width: "4 ft",
    sleeper_spacing_max: "4 ft",
    board_gap: "1/4 in",
  })
  const metric = walk({
    platform_length: "12192 mm",
    platform_width: "1219.2 mm",
    sleeper_spacing_max: "1.2192 m",
    board_gap: "6.35 mm",
  })
  for (const name of feet.book.names()) {
    const a = feet.book.entry(name)
    const b = metric.book.entry(name)
    expect(b.reading?.value, name).toEqual(a.reading?.value)
    expect(
      b.readings?.map((one) => one?.value),
      name,
    ).toEqual(a.readings?.map((one) => one?.value))
  }
})
