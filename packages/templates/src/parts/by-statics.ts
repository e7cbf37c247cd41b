import type { Column, Section } from "@pegbook/engine"
import { BEAM_STATICS } from "../sources-actions.ts"

const byStatics = (load: Column): Column => ({
  ...load,
  formula: "IFERROR(INDEX(member_reactions.full; ROW()); load_by_area)",
  why: "By statics, as heavy as the loads that you entered: a timber that runs on over a support leans harder on it. Half the way to each neighbour counts only where the lines cannot be worked out.",
  sources: [...load.sources, BEAM_STATICS],
})

const byArea = (load: Column): Column => ({
  ...load,
  name: "load_by_area",
  label: "Load by area, to compare",
  why: "Half the way to each neighbour, as footing tables count it. Nothing leans on it while the lines can be worked out.",
})

/**
 * The supports with each one's load by statics of the lines above it, and beside it the estimate by half the way to each
 * neighbour. The first rows of `member_reactions` have to be those of the supports, in their order.
 * Throws when the section has no table `supports` with the column `load`.
 *
 * Gives: supports.load_by_area; `supports.load` is what all checks of the ground lean on.
 */
export function loadedByStatics(layout: Section): Section {
  let found = false
  const entries = layout.entries.map((entry) => {
    if (entry.kind !== "table" || entry.name !== "supports") return entry
    const columns = entry.columns.flatMap((column) => {
      if (column.name !== "load") return [column]
      found = true
      return [byStatics(column), byArea(column)]
    })
    return { ...entry, columns }
  })
  if (!found) throw new RangeError(`The part "${layout.id}" has no column supports.load`)
  return { ...layout, entries }
}
