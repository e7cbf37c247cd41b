import type { Section } from "@pegbook/engine"
import { ARITHMETIC, COMMON_PRACTICE, GEOMETRY, USER } from "../sources.ts"
import { SKIDS, type SupportedLines } from "./supported-lines.ts"
import { supportsTableUnder } from "./supports-table.ts"
import { groundAt } from "./survey-between.ts"

/**
 * Where the supports stand under such lines: the grid that is pegged out and dug.
 *
 * Needs: the lines, the site, block_length, rounding_tolerance, and what the table of supports needs.
 */
export function supportLayoutUnder(lines: SupportedLines): Section {
  const { noun, nouns, stack, block, count, length, supportsPerLine } = lines
  return {
    id: "supports",
    title: "Supports",
    says: `Where the ${stack}s stand under each ${noun}, how high each one is, and what it carries.`,
    entries: [
      {
        kind: "input",
        name: "underside_clearance",
        label: "Clearance under the timber",
        why: "Air between the ground at the high corner and the lowest timber. Timber that touches soil rots; a little more air costs height.",
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "1 in",
        least: "0 in",
        most: "4 ft",
      },
      {
        kind: "formula",
        name: "underside_level",
        label: `Level of the ${nouns}' underside`,
        why: `The one level line of the whole job: the top of every ${stack} is here.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: "ground_high + underside_clearance",
      },
      {
        kind: "input",
        name: "support_spacing_max",
        label: "Widest spacing of the supports",
        why: `How far a ${noun} may span from ${stack} to ${stack}. Closer ${stack}s share the load better and cost more digging.`,
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "4 ft 6 in",
        least: "18 in",
        most: "12 ft",
      },
      {
        kind: "input",
        name: "support_end_offset",
        label: "First support in from the end",
        why: `From the ${noun}'s end to the middle of the first and the last ${stack}, so that the end lies full on its ${block}.`,
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "6 in",
        least: "0 in",
        most: "18 in",
      },
      {
        kind: "formula",
        name: supportsPerLine,
        label: `Supports under one ${noun}`,
        why: "The spaces between the first and the last, counted up, and one more.",
        sources: [GEOMETRY],
        measure: "count",
        formula: `ROUNDUP((${length} - 2 * support_end_offset) / support_spacing_max - rounding_tolerance; 0) + 1`,
      },
      {
        kind: "formula",
        name: "support_spacing",
        label: "Spacing of the supports, centre to centre",
        why: `The spaces shared out evenly. Mark this along each ${noun}'s string.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: `(${length} - 2 * support_end_offset) / (${supportsPerLine} - 1)`,
      },
      {
        kind: "formula",
        name: "support_count",
        label: "Supports in all",
        why: `As many holes to dig, beds to tamp and ${stack}s to level: the slowest part of the work.`,
        sources: [GEOMETRY],
        measure: "count",
        formula: `${count} * ${supportsPerLine}`,
      },
      {
        kind: "table",
        name: "support_stations",
        label: `Supports along one ${noun}`,
        why: `The marks on the string of any one ${noun}; a joint may lie over all but the first and the last.`,
        sources: [GEOMETRY],
        rows: { kind: "formula", formula: supportsPerLine },
        columns: [
          {
            name: "number",
            label: "Support",
            why: `Counted along the ${noun} from the first end.`,
            sources: [ARITHMETIC],
            measure: "count",
            formula: "ROW()",
          },
          {
            name: "x",
            label: "Along the length",
            why: `From the frame's first end to the middle of the ${stack}.`,
            sources: [GEOMETRY],
            measure: "length",
            formula: "support_end_offset + (number - 1) * support_spacing",
          },
          {
            name: "carries_from",
            label: "Carries from",
            why: "Half way to the support before it, or the end of the frame.",
            sources: [GEOMETRY],
            measure: "length",
            formula: "IF(number = 1; 0; x - support_spacing / 2)",
          },
          {
            name: "carries_to",
            label: "Carries to",
            why: "Half way to the next support, or the end of the frame.",
            sources: [GEOMETRY],
            measure: "length",
            formula: `IF(number = ${supportsPerLine}; platform_length; x + support_spacing / 2)`,
          },
          {
            name: "carries",
            label: "Length carried",
            why: "How much of the platform's length rests on this support.",
            sources: [GEOMETRY],
            measure: "length",
            formula: "carries_to - carries_from",
          },
          {
            name: "bearing",
            label: `Block under the ${noun}`,
            why: `How much of the ${noun} lies on the ${block}: the ${block}'s length, which lies along the ${noun}.`,
            sources: [GEOMETRY],
            measure: "length",
            formula: "block_length",
          },
        ],
      },
      groundAt("supports", "the supports"),
      supportsTableUnder(lines),
    ],
  }
}

/** Stacks under skids. */
export const supportLayout: Section = supportLayoutUnder(SKIDS)
