import type { BoardBearers } from "../parts/board-bearers.ts"
import type { SupportedLines } from "../parts/supported-lines.ts"

/** Boards across the walk, on stringers along it. */
export const BOARDS_ON_STRINGERS: BoardBearers = {
  noun: "stringer",
  nouns: "stringers",
  count: "stringer_count",
  thickness: "stringer_thickness",
  spacing: "stringer_spacing",
  positions: "stringers.y",
  along: "platform_width",
  across: "platform_length",
}

/** Sleepers on strips of stone, for the words of the parts that tell of supports: one sleeper, one strip, one support. */
export const SLEEPERS_ON_STRIPS: SupportedLines = {
  noun: "sleeper",
  nouns: "sleepers",
  stack: "strip",
  block: "sleeper",
  table: "sleepers",
  count: "sleeper_count",
  length: "stringer_length",
  supportsPerLine: "sleeper_count",
  remedies: [
    { input: "sleeper_spacing_max", toward: "less", step: "6 in" },
    { input: "sleeper_size", toward: "more" },
  ],
}
