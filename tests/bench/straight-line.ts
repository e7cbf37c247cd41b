/** What the straight-line calculation is given: inches, pounds, square feet; the surveyed ground is a plane. */
export interface Given {
  readonly length: number
  readonly width: number
  readonly fallLength: number
  readonly fallWidth: number
  readonly clearance: number
  readonly skidThickness: number
  readonly skidSpacingMost: number
  readonly supportSpacingMost: number
  readonly supportEndOffset: number
  readonly blockHeight: number
  readonly bedLength: number
  readonly bedWidth: number
  readonly bedThickness: number
  readonly digLeast: number
  readonly joistThickness: number
  readonly joistSpacing: number
}

/** The main numbers that are plain arithmetic, by the workbook's names. Lengths in inches, volumes in cubic inches. */
export interface Worked {
  platform_area: number
  platform_diagonal: number
  skid_count: number
  support_count: number
  block_count: number
  greatest_dig: number
  dug_volume: number
  stone_in_place: number
  joist_count: number
  crossing_count: number
}

const TOLERANCE = 1e-6

/** The same rules as the template's, written as a program would have them: no graph, no names, no reasons. */
export function straightLine(given: Given): Worked {
  const { length, width } = given
  const acrossWidth = width - given.skidThickness
  const skids = Math.ceil(acrossWidth / given.skidSpacingMost - TOLERANCE) + 1
  const skidSpacing = acrossWidth / (skids - 1)
  const along = length - 2 * given.supportEndOffset
  const perSkid = Math.ceil(along / given.supportSpacingMost - TOLERANCE) + 1
  const spacing = along / (perSkid - 1)

  let blocks = 0
  let greatestDig = 0
  let dug = 0
  let stone = 0
  for (let skid = 0; skid < skids; skid++) {
    const y = given.skidThickness / 2 + skid * skidSpacing
    for (let support = 0; support < perSkid; support++) {
      const x = given.supportEndOffset + support * spacing
      const ground = (-x / length) * given.fallLength - (y / width) * given.fallWidth
      const courses = Math.max(1, Math.ceil((given.clearance - ground) / given.blockHeight - TOLERANCE))
      const top = given.clearance - courses * given.blockHeight
      const bottom = Math.min(top - given.bedThickness, ground - given.digLeast)
      blocks += courses
      greatestDig = Math.max(greatestDig, ground - bottom)
      dug += (ground - bottom) * given.bedLength * given.bedWidth
      stone += (top - bottom) * given.bedLength * given.bedWidth
    }
  }
  const joists = Math.ceil((length - given.joistThickness) / given.joistSpacing) + 1
  return {
    platform_area: length * width,
    platform_diagonal: Math.hypot(length, width),
    skid_count: skids,
    support_count: skids * perSkid,
    block_count: blocks,
    greatest_dig: greatestDig,
    dug_volume: dug,
    stone_in_place: stone,
    joist_count: joists,
    crossing_count: skids * joists,
  }
}
