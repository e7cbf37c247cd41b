import type { CheckEntry, Column, Remedy, Section } from "@pegbook/engine"
import { GEOMETRY, STATICS } from "../sources.ts"
import { BEAM_STATICS } from "../sources-actions.ts"

/** A layout with its table `supports` changed. Throws when the section has no such table with the column `load`. */
function withColumns(layout: Section, change: (columns: readonly Column[]) => readonly Column[]): Section {
  const has = layout.entries.some(
    (entry) =>
      entry.kind === "table" &&
      entry.name === "supports" &&
      entry.columns.some(({ name }) => name === "load"),
  )
  if (!has) throw new RangeError(`The part "${layout.id}" has no column supports.load`)
  return {
    ...layout,
    entries: layout.entries.map((entry) =>
      entry.kind === "table" && entry.name === "supports"
        ? { ...entry, columns: change(entry.columns) }
        : entry,
    ),
  }
}

/**
 * The supports with each one's load by statics of the lines above it, not by half the way to each neighbour.
 * The first rows of `member_reactions` have to be those of the supports, in their order.
 */
export function loadedByStatics(layout: Section): Section {
  return withColumns(layout, (columns) =>
    columns.map((column) =>
      column.name === "load"
        ? {
            ...column,
            formula: `IFERROR(INDEX(member_reactions.full; ROW()); ${column.formula})`,
            why: "By statics, as heavy as the loads that you entered: a timber that runs on over a support leans harder on it. Half the way to each neighbour counts only where the lines cannot be worked out.",
            sources: [...column.sources, BEAM_STATICS],
          }
        : column,
    ),
  )
}

/**
 * The supports with both: `load` by half the way to each neighbour, as trade tables and footing tables count it, and
 * beside it `reaction`, by statics. The first rows of `member_reactions` have to be those of the supports, in their order.
 *
 * Gives: supports.reaction, supports.reaction_pressure, and {@link reactionCheck} asks them.
 */
export function withReactions(layout: Section): Section {
  return withColumns(layout, (columns) => [
    ...columns,
    {
      name: "reaction",
      label: "Load by statics",
      measure: "force",
      formula: "IFERROR(INDEX(member_reactions.full; ROW()); load)",
      why: "What the timber really hands down: where it runs on over a support it leans harder on it than half the way to each neighbour says, and less on the next.",
      sources: [BEAM_STATICS],
    },
    {
      name: "reaction_pressure",
      label: "Pressure by statics",
      measure: "pressure",
      formula: "IF(load = 0; 0 * pressure; pressure * reaction / load)",
      why: "Under the same face as the pressure before.",
      sources: [STATICS, GEOMETRY],
    },
  ])
}

/** The greater of both pressures, a formula. Needs: {@link withReactions}. */
export const GREATEST_PRESSURE = "MAX(soil_pressure_max; MAX(supports.reaction_pressure))"

/** Whether the ground bears the supports when their loads are worked by statics. Needs: {@link withReactions}. */
export function reactionCheck(stack: string, remedies: readonly Remedy[]): CheckEntry {
  return {
    kind: "check",
    name: "reaction_check",
    label: `Can the ground bear the busiest ${stack} by statics?`,
    why: "Loads by half the way to each neighbour are how footing tables count; a beam that runs on over a support leans up to a quarter harder on it. This second check takes that, and everything loaded at once; the harder of the two decides.",
    sources: [BEAM_STATICS, STATICS],
    measure: "pressure",
    demand: "MAX(supports.reaction_pressure)",
    limit: "soil_bearing",
    sense: "at_most",
    near: "near_limit_share",
    advice: [`Give the busiest ${stack} a larger foot, or set the supports closer together.`],
    remedies,
  }
}
