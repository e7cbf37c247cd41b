import type { Remedy } from "@pegbook/engine"

/** Lines of heavy timber that lie on the supports, by the names of their entries and in the reader's words. */
export interface SupportedLines {
  /** One of them, and several: "skid", "skids". */
  readonly noun: string
  readonly nouns: string
  /** What stands under them, one: "stack" of blocks, or "pad". What it is made of: "block", or "pad". */
  readonly stack: string
  readonly block: string
  /** A table, one row a line, with the columns `y` and `carries`. */
  readonly table: string
  readonly count: string
  readonly length: string
  /** Given by the supports: how many there are under one line. */
  readonly supportsPerLine: string
  /** What to try where the ground is pressed too hard, the cheapest first. */
  readonly remedies: readonly Remedy[]
}

export const SKIDS: SupportedLines = {
  noun: "skid",
  nouns: "skids",
  stack: "stack",
  block: "block",
  table: "skids",
  count: "skid_count",
  length: "skid_length",
  supportsPerLine: "supports_per_skid",
  remedies: [
    { input: "support_spacing_max", toward: "less", step: "6 in" },
    { input: "skid_spacing_max", toward: "less", step: "6 in" },
    { input: "block_length", toward: "more", step: "2 in" },
  ],
}

export const BEAMS_ON_PADS: SupportedLines = {
  noun: "beam",
  nouns: "beams",
  stack: "pad",
  block: "pad",
  table: "beams",
  count: "beam_count",
  length: "beam_length",
  supportsPerLine: "supports_per_beam",
  remedies: [
    { input: "support_spacing_max", toward: "less", step: "6 in" },
    { input: "beam_spacing_max", toward: "less", step: "6 in" },
    { input: "block_length", toward: "more", step: "2 in" },
  ],
}
