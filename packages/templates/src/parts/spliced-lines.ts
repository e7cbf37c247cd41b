import type { Column, Entry } from "@pegbook/engine"
import { type SplicedMember, solveLineJoints, solveLinePieces, spliceReads } from "../solvers/splice-lines.ts"
import { ARITHMETIC, COMMON_PRACTICE, GEOMETRY, USER } from "../sources.ts"

/** Lines of one member over supports, in the reader's words. */
export interface SplicedLines {
  /** One of them, lower case: "stringer"; the entries' names begin with it, that of its size among them. */
  readonly noun: string
  /** What a joint lies on, lower case: "sleeper". */
  readonly support: string
  readonly member: Omit<SplicedMember, "size" | "stock">
  /** The lengths sold that a workbook starts with. */
  readonly stock: string
  readonly bearingMin: string
}

const lineColumn = (noun: string): Column => ({
  name: "line",
  label: "Line",
  why: `The line of ${noun}s, as in the layout.`,
  sources: [ARITHMETIC],
  measure: "count",
})

/** Lengths sold, and the rules that a joint keeps. */
function rules({ noun, support, stock, bearingMin }: SplicedLines): readonly Entry[] {
  return [
    {
      kind: "input",
      name: `${noun}_stock`,
      label: `Lengths sold, ${noun}s`,
      why: `The lengths on the rack. A line longer than the longest is made of pieces that meet over a ${support}.`,
      sources: [USER],
      measure: "length",
      list: true,
      default: stock,
      least: "1 ft",
      most: "60 ft",
    },
    {
      kind: "input",
      name: "joint_bearing_min",
      label: "Least rest at a joint",
      why: `Each piece must lie on the ${support} by at least this much, or a little movement lets it slip off.`,
      sources: [COMMON_PRACTICE, USER],
      measure: "length",
      default: bearingMin,
      least: "1 in",
      most: "24 in",
    },
    {
      kind: "input",
      name: "joint_stagger_min",
      label: "Least stagger between neighbours",
      why: "Joints of two lines side by side are kept this far apart, so that nothing hinges right across.",
      sources: [COMMON_PRACTICE, USER],
      measure: "length",
      default: "2 ft",
      least: "0 in",
      most: "20 ft",
    },
    {
      kind: "input",
      name: "piece_length_min",
      label: "Shortest piece in a line",
      why: "A stub rocks. Pieces shorter than this are not used, unless the whole line is one piece.",
      sources: [COMMON_PRACTICE, USER],
      measure: "length",
      default: "4 ft",
      least: "0 in",
      most: "20 ft",
    },
    {
      kind: "input",
      name: "shortfall_allowed",
      label: "A line may stop short by",
      why: `Sometimes a line can end a little inside the end and so be cut from the lengths you have. It must still lie full on the last ${support}.`,
      sources: [USER],
      measure: "length",
      default: "0 in",
      least: "0 in",
      most: "12 in",
    },
  ]
}

/** The pieces and the joints, found by the splice solver. */
function layout({ noun, support, member }: SplicedLines): readonly Entry[] {
  const spliced: SplicedMember = { ...member, size: `${noun}_size`, stock: `${noun}_stock` }
  const from = spliceReads(spliced)
  return [
    {
      kind: "table",
      name: `${noun}_pieces`,
      label: `Pieces of the ${noun}s`,
      why: "What to cut each line from: every piece has a board of its own.",
      sources: [COMMON_PRACTICE, GEOMETRY],
      cautions: ["Long boards are a lift for two. Bend your knees, and lower the board together."],
      rows: { kind: "solved", from, solve: solveLinePieces(spliced) },
      columns: [
        lineColumn(noun),
        {
          name: "piece",
          label: "Piece",
          why: "Counted along the line from the first end.",
          sources: [ARITHMETIC],
          measure: "count",
        },
        {
          name: "from",
          label: "From",
          why: "Where the piece begins, along the length.",
          sources: [GEOMETRY],
          measure: "length",
        },
        {
          name: "to",
          label: "To",
          why: `Where the piece ends: in the middle of a ${support}, or at the end.`,
          sources: [GEOMETRY],
          measure: "length",
        },
        {
          name: "length",
          label: "Cut to",
          why: "The length to cut.",
          sources: [GEOMETRY],
          measure: "length",
        },
        {
          name: "stock",
          label: "Bought as",
          why: "The length on sale that the piece comes out of: the cheapest by your prices, the shortest where there are none.",
          sources: [USER],
          measure: "length",
        },
      ],
    },
    {
      kind: "table",
      name: `${noun}_joints`,
      label: `Joints of the ${noun}s`,
      why: `Where two pieces of one line meet, always over a ${support}; neighbouring lines meet over different ones.`,
      sources: [COMMON_PRACTICE, GEOMETRY],
      cautions: [
        `Tie the two ends of every joint together beside the joint; a ${support} alone does not hold them.`,
      ],
      rows: { kind: "solved", from, solve: solveLineJoints(spliced) },
      columns: [
        lineColumn(noun),
        {
          name: "position",
          label: "Along the length",
          why: "Where the two ends meet.",
          sources: [GEOMETRY],
          measure: "length",
        },
        {
          name: "support",
          label: `Over ${support}`,
          why: `The ${support}'s number, from the first end.`,
          sources: [ARITHMETIC],
          measure: "count",
        },
        {
          name: "bearing",
          label: "Rest of each end",
          why: `How much of the ${support} lies under each of the two ends.`,
          sources: [GEOMETRY],
          measure: "length",
        },
      ],
    },
  ]
}

/** What the pieces come to. */
function totals({ noun }: SplicedLines): readonly Entry[] {
  return [
    {
      kind: "formula",
      name: `${noun}_piece_count`,
      label: `Pieces of ${noun}`,
      why: "As many boards to buy: each piece is cut from a board of its own.",
      sources: [ARITHMETIC],
      measure: "count",
      formula: `COUNT(${noun}_pieces.length)`,
    },
    {
      kind: "formula",
      name: `${noun}_joint_count`,
      label: `Joints in the ${noun}s`,
      why: "Each joint has to be held together from the side.",
      sources: [ARITHMETIC],
      measure: "count",
      formula: `COUNT(${noun}_joints.position)`,
    },
  ]
}

/** Lengths sold, the rules of a joint, pieces, joints and what they come to, of lines made of several pieces. */
export function splicedLines(lines: SplicedLines): readonly Entry[] {
  return [...rules(lines), ...layout(lines), ...totals(lines)]
}
