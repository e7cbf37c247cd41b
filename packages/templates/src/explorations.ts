import type { Exploration, Thrift } from "@pegbook/engine"

/** Timber is shown beside the cost, which counts only what has a price; where none has, the cost is a flat line, and so is last. */
const COST = ["timber_mass", "total_cost"] as const
const GROUND = ["support_count", "greatest_dig"] as const

const SIDES: readonly Exploration[] = (["platform_length", "platform_width"] as const).map((input) => ({
  input,
  step: { us: "1 ft", metric: "300 mm" },
  each: 4,
  results: [...GROUND, ...COST],
}))

interface Spacings {
  /** The input that says how far apart the members under the surface are, and the entry that counts them. */
  readonly members: readonly [input: string, count: string]
  /** The input that says how far apart the supports may be. */
  readonly supports: string
}

/** Cost, timber, supports and the deepest dig, by spacing and by size. */
export function explorationsBy({ members: [input, count], supports }: Spacings): readonly Exploration[] {
  return [
    { input, step: { us: "2 in", metric: "50 mm" }, each: 4, results: [count, ...COST] },
    {
      input: supports,
      step: { us: "6 in", metric: "150 mm" },
      each: 3,
      results: [...GROUND, "total_cost"],
    },
    ...SIDES,
  ]
}

export const BY_JOISTS_AND_SUPPORTS = explorationsBy({
  members: ["joist_spacing", "joist_count"],
  supports: "support_spacing_max",
})

/** An inch or so moves every piece that is cut; a foot either way is still the platform that was wanted. */
const thriftOf = (...wastes: readonly string[]): Thrift => ({
  inputs: ["platform_length", "platform_width"],
  step: { us: "1 in", metric: "25 mm" },
  reach: { us: "12 in", metric: "300 mm" },
  wastes,
})

export const THRIFT_OF_TIMBER = thriftOf("timber_waste")
export const THRIFT_OF_TIMBER_AND_SHEETS = thriftOf("timber_waste", "sheet_waste")
