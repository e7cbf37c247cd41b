/** What boards lie across, by the names of its entries and in the reader's words. */
export interface BoardBearers {
  /** One of them, and several: "joist", "joists". */
  readonly noun: string
  readonly nouns: string
  /** How many there are; the thickness of one; how far they stand apart, centre to centre. */
  readonly count: string
  readonly thickness: string
  readonly spacing: string
  /** The input to set them closer by. */
  readonly closer: string
  /** Their centres along the boards' own run, ascending: a column. */
  readonly positions: string
  /** The frame's size along the boards, and across them. */
  readonly along: string
  readonly across: string
}

/** Boards along the platform, on joists across it. */
export const BOARDS_ON_JOISTS: BoardBearers = {
  noun: "joist",
  nouns: "joists",
  count: "joist_count",
  thickness: "joist_thickness",
  spacing: "joist_spacing",
  closer: "joist_spacing",
  positions: "joists.position",
  along: "platform_length",
  across: "platform_width",
}
