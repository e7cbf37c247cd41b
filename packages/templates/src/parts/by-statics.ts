import type { Section } from "@pegbook/engine"
import { BEAM_STATICS } from "../sources-actions.ts"

/**
 * The supports with each one's load by statics of the lines above it, not by half the way to each neighbour.
 * The first rows of `member_reactions` have to be those of the supports, in their order.
 * Throws when the section has no table `supports` with a column `load`.
 */
export function loadedByStatics(layout: Section): Section {
  let found = false
  const entries = layout.entries.map((entry) => {
    if (entry.kind !== "table" || entry.name !== "supports") return entry
    return {
      ...entry,
      columns: entry.columns.map((column) => {
        if (column.name !== "load") return column
        found = true
        return {
          ...column,
          formula: `IFERROR(INDEX(member_reactions.full; ROW()); ${column.formula})`,
          why: "By statics, as heavy as the loads that you entered: a timber that runs on over a support leans harder on it. Half the way to each neighbour counts only where the lines cannot be worked out.",
          sources: [...column.sources, BEAM_STATICS],
        }
      }),
    }
  })
  if (!found) throw new RangeError(`The part "${layout.id}" has no column supports.load`)
  return { ...layout, entries }
}
