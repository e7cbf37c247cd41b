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
}
