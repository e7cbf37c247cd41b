import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

/** What must follow when a platform of 20 ft becomes one of 18 ft. */
const FOLLOWS = [
  "platform_area",
  "platform_diagonal",
  "skid_length",
  "support_count",
  "block_count",
  "dug_volume",
  "stone_in_place",
  "joist_count",
  "sheet_count",
  "tile_count",
  "screw_count",
  "screws_to_buy",
]

/** The shortest way down from one entry to another, by what each leans on. */
function wayDown(from: string, to: string): string[] {
  const { book } = openBook(demo())
  const ways = [[from]]
  const seen = new Set([from])
  for (const way of ways) {
    const at = way.at(-1) ?? from
    if (at === to) return way
    for (const next of book.leansOn(at)) {
      if (!seen.has(next)) ways.push([...way, next])
      seen.add(next)
    }
  }
  throw new Error(`${from} does not lean on ${to}`)
}

test("a shorter platform: everything follows, and says what it was; then the way down, a copy, a comparison, a reload", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.enter("platform_length", "20 ft")
  const before = await workbook.values(FOLLOWS)

  await workbook.enter("platform_length", "18 ft")
  const after = await workbook.values(FOLLOWS)
  expect
    .soft(
      FOLLOWS.filter((name) => after[name] === before[name]),
      "what stays as it was",
    )
    .toEqual([])
  for (const name of FOLLOWS.filter((name) => after[name] !== before[name])) {
    expect(await workbook.was(name), name).toBe(before[name])
  }
  expect(await workbook.was("platform_length")).toBe("20' 0\"")
  // Counted by hand. 18 ft by 12 ft is 216 sq ft; √(216² + 144²) in is 259.6 in; (216 − 1.5) ÷ 16 in is 13.4, so 14 spaces, 15 joists.
  expect(after).toMatchObject({
    platform_area: "216 sq ft",
    platform_diagonal: `21' 7 5/8"`,
    joist_count: "15",
  })
  expect(await workbook.movedCount()).toBeGreaterThan(FOLLOWS.length)
  await page
    .getByText(/^[\d,]+ numbers moved$/)
    .first()
    .waitFor()

  // Down from the blocks to the fall of the ground, pressing what each leans on.
  const way = wayDown("block_count", "ground_fall_length")
  expect(way.length).toBeGreaterThan(2)
  await workbook.open("block_count")
  for (const [index, name] of way.entries()) {
    const next = way[index + 1]
    if (next !== undefined) await workbook.walk(name, next)
  }
  expect(await workbook.value("ground_fall_length")).not.toBe("")

  // A copy with joists closer together, beside the first.
  const spacing = await workbook.value("joist_spacing")
  const joists = await workbook.value("joist_count")
  await workbook.saveCopy("Closer joists")
  await workbook.enter("joist_spacing", "12 in")
  const closer = await workbook.value("joist_spacing")
  const moreJoists = await workbook.value("joist_count")
  expect(Number(moreJoists)).toBeGreaterThan(Number(joists))
  await workbook.screen("Compare")
  expect(await workbook.compared("joist_spacing")).toEqual([spacing, closer])
  expect(await workbook.compared("joist_count")).toEqual([joists, moreJoists])

  // All is there after closing and coming back.
  await workbook.screen("Worksheet")
  await workbook.saved()
  const kept = await workbook.values([...FOLLOWS, "joist_spacing", "platform_length"])
  await workbook.reload()
  expect(await workbook.values(Object.keys(kept))).toEqual(kept)
  expect(kept.platform_length).toBe("18' 0\"")
})
