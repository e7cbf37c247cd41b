import type { Column, Section } from "@pegbook/engine"
import { dressedSizes } from "../figures/dressed-sizes.ts"
import {
  cutPlanProof,
  STOCK_READS,
  solveCutPlan,
  solvePieces,
  solveStockToBuy,
} from "../solvers/timber-plan.ts"
import { pieceReads, type TimberMember, timberReads } from "../solvers/timber-problem.ts"
import { GEOMETRY, PS_20, TREATED_TIMBER, USER } from "../sources.ts"
import { BOARD_FOOT, BOARD_FOOT_SOFTWOOD, NOMINAL, practice } from "../sources-frame.ts"

const NAMES = dressedSizes.columns.find(({ name }) => name === "nominal")?.values ?? []

/** The two numbers in a size's name: inches up to 18, millimetres above. "5/4x6" is 5/4 in by 6 in. */
function nominal(name: string, side: 0 | 1): string {
  const sides = name.split("x")
  const metric = Number.parseFloat(sides[0] ?? "") > 18
  return `${sides[side]} ${metric ? "mm" : "in"}`
}

const size: Column = {
  name: "size",
  label: "Size",
  measure: "text",
  why: "The size to ask for.",
  sources: [USER],
}

/**
 * Every piece of timber, what to buy for them and what to cut from each board.
 *
 * Needs: what the members name, dressed_sizes, prices, buying_rules.
 */
export function timberOf(members: readonly TimberMember[]): Section {
  return {
    id: "timber",
    title: "Timber to buy and to cut",
    says: "All pieces of one size are cut together from the lengths sold, with the width of the saw cut counted, so that it costs as little as possible by your prices. Without prices, as little as possible is bought.",
    entries: [
      {
        kind: "input",
        name: "saw_kerf",
        label: "Width of a saw cut",
        measure: "length",
        default: "1/8 in",
        least: "0 in",
        most: "1/2 in",
        why: "Every cut turns this much into dust. Four 36 in pieces do not come out of a 12 ft board.",
        sources: [USER, practice("a circular saw takes about 1/8 in")],
      },
      {
        kind: "input",
        name: "end_trim",
        label: "Trimmed off each end of a board",
        measure: "length",
        default: "0 in",
        least: "0 in",
        most: "12 in",
        why: "Board ends are split, wet or not square. Enter what you saw off; boards are often a little longer than they say, and then it is nothing.",
        sources: [USER],
      },
      {
        kind: "table",
        name: "offcuts_owned",
        label: "Boards and off-cuts you have",
        rows: { kind: "input", most: 100, default: [] },
        why: "Straight, sound pieces of the same timber that lie in your shed. They are cut before any board is bought.",
        sources: [USER],
        cautions: [
          "Use only timber treated for the place that it goes to; old treated wood can hold arsenic.",
        ],
        columns: [
          { ...size, why: "The size as it is called here: it has to be the very same." },
          {
            name: "length",
            label: "Length",
            measure: "length",
            why: "Of the sound part, splits sawn off.",
            sources: [USER],
          },
          {
            name: "count",
            label: "How many",
            measure: "count",
            why: "Of this length.",
            sources: [USER],
          },
        ],
      },
      {
        kind: "table",
        name: "timber_pieces",
        label: "Pieces wanted",
        rows: { kind: "solved", from: pieceReads(members), solve: solvePieces(members) },
        why: "Everything that has to be cut, like with like.",
        sources: [GEOMETRY],
        columns: [
          {
            name: "part",
            label: "For",
            measure: "text",
            why: "Where it goes.",
            sources: [GEOMETRY],
          },
          size,
          {
            name: "length",
            label: "Cut length",
            measure: "length",
            why: "Measure the place before you cut the last ones.",
            sources: [GEOMETRY],
          },
          {
            name: "count",
            label: "Pieces",
            measure: "count",
            why: "How many alike.",
            sources: [GEOMETRY],
          },
          {
            name: "volume",
            label: "Wood",
            measure: "volume",
            formula:
              "count * length * INDEX(dressed_sizes.thickness; MATCH(size; dressed_sizes.nominal; 0)) * INDEX(dressed_sizes.depth; MATCH(size; dressed_sizes.nominal; 0))",
            why: "By the real size.",
            sources: [PS_20],
          },
        ],
      },
      {
        kind: "table",
        name: "stock_to_buy",
        label: "Timber to buy",
        rows: { kind: "solved", from: STOCK_READS, solve: solveStockToBuy },
        why: "Whole boards of the lengths sold: those of the cutting plan, without what you have already.",
        sources: [GEOMETRY],
        cautions: [
          "Nothing is added here for boards that turn out bent or split. Look each one over in the yard, or buy one or two more of what you need most of.",
        ],
        columns: [
          size,
          {
            name: "length",
            label: "Length sold",
            measure: "length",
            why: "The board to ask for.",
            sources: [GEOMETRY],
          },
          {
            name: "count",
            label: "Boards",
            measure: "count",
            why: "How many of them.",
            sources: [GEOMETRY],
          },
          {
            name: "board_feet",
            label: "Board feet",
            measure: "ratio",
            formula:
              "count * length * MAX(board_foot_thinnest; INDEX(nominal_sizes.thickness; MATCH(size; nominal_sizes.nominal; 0))) * INDEX(nominal_sizes.width; MATCH(size; nominal_sizes.nominal; 0)) / board_foot",
            why: "By the size in the name, as timber is priced.",
            sources: [BOARD_FOOT, BOARD_FOOT_SOFTWOOD],
          },
          {
            name: "volume",
            label: "Wood",
            measure: "volume",
            formula:
              "count * length * INDEX(dressed_sizes.thickness; MATCH(size; dressed_sizes.nominal; 0)) * INDEX(dressed_sizes.depth; MATCH(size; dressed_sizes.nominal; 0))",
            why: "By the real size: what there is to carry.",
            sources: [PS_20],
          },
        ],
      },
      {
        kind: "table",
        name: "cut_plan",
        label: "What to cut from each board",
        rows: {
          kind: "solved",
          from: timberReads(members),
          solve: solveCutPlan(members),
          proof: cutPlanProof(members),
        },
        why: "Cut the longest piece of a board first. A board that was spoilt can then still give the shorter ones.",
        sources: [GEOMETRY],
        cautions: [
          "Dust of treated wood is harmful: saw outdoors with mask, goggles and gloves. Never burn the off-cuts. Brush every cut end with preservative.",
        ],
        columns: [
          {
            name: "board",
            label: "Board",
            measure: "count",
            why: "Write the number on the board.",
            sources: [GEOMETRY],
          },
          size,
          {
            name: "stock",
            label: "Length sold",
            measure: "length",
            why: "Which board to take.",
            sources: [GEOMETRY],
          },
          {
            name: "own",
            label: "Of your own",
            measure: "length",
            why: "The length of a board that you have already, once a board; nothing for one that is bought.",
            sources: [USER],
          },
          {
            name: "part",
            label: "For",
            measure: "text",
            why: "Write it on the piece.",
            sources: [GEOMETRY],
          },
          {
            name: "mark",
            label: "Which one",
            measure: "text",
            why: "Its line and place, or its number among its like. Write it on the piece too.",
            sources: [GEOMETRY],
          },
          {
            name: "length",
            label: "Cut length",
            measure: "length",
            why: "What to cut.",
            sources: [GEOMETRY],
          },
          {
            name: "left",
            label: "Left over",
            measure: "length",
            why: "Of the board, after its last piece.",
            sources: [GEOMETRY],
          },
        ],
      },
      {
        kind: "formula",
        name: "timber_length_bought",
        label: "Timber bought, end to end",
        measure: "length",
        formula: "SUMPRODUCT(stock_to_buy.length; stock_to_buy.count)",
        why: "What the plan makes small, as long as your prices have none of it. Of a size with a price it makes the money small.",
        sources: [GEOMETRY],
      },
      {
        kind: "formula",
        name: "timber_length_used",
        label: "Timber used, end to end",
        measure: "length",
        formula: "SUMPRODUCT(timber_pieces.length; timber_pieces.count)",
        why: "The pieces alone.",
        sources: [GEOMETRY],
      },
      {
        kind: "formula",
        name: "timber_waste",
        label: "Timber left over",
        measure: "share",
        formula: "1 - timber_length_used / (timber_length_bought + SUM(cut_plan.own))",
        why: "Off-cuts and sawdust, as a part of the length bought, and of your own that is cut.",
        sources: [GEOMETRY],
        cautions: ["Treated off-cuts may not be burnt or composted: ask where they may be taken."],
      },
      {
        kind: "figure",
        name: "board_foot",
        label: "A board foot",
        measure: "volume",
        value: "144 cu in",
        why: "One foot of a board one inch thick and one foot wide, by its name. Yards price timber by it.",
        sources: [BOARD_FOOT],
      },
      {
        kind: "figure",
        name: "board_foot_thinnest",
        label: "Thinner boards count as",
        measure: "length",
        value: "1 in",
        why: "A board under an inch is sawn from one of an inch.",
        sources: [BOARD_FOOT],
      },
      {
        kind: "table",
        name: "nominal_sizes",
        label: "Sizes by name",
        rows: { kind: "figures" },
        why: "A 2x6 was two inches by six before it was dried and planed. Board feet go by the name.",
        sources: [NOMINAL],
        columns: [
          {
            name: "nominal",
            label: "Name",
            measure: "text",
            values: NAMES,
            why: "What it is called in the shop.",
            sources: [NOMINAL],
          },
          {
            name: "thickness",
            label: "Thickness in the name",
            measure: "length",
            values: NAMES.map((name) => nominal(name, 0)),
            why: "The first number. Sizes in millimetres are named by their real size.",
            sources: [NOMINAL],
          },
          {
            name: "width",
            label: "Width in the name",
            measure: "length",
            values: NAMES.map((name) => nominal(name, 1)),
            why: "The second number.",
            sources: [NOMINAL],
          },
        ],
      },
      {
        kind: "formula",
        name: "board_feet",
        label: "Board feet bought",
        measure: "ratio",
        formula: "SUM(stock_to_buy.board_feet)",
        why: "By the sizes in the names: compare prices with it, not weights.",
        sources: [BOARD_FOOT, BOARD_FOOT_SOFTWOOD],
      },
      {
        kind: "formula",
        name: "timber_volume",
        label: "Wood bought",
        measure: "volume",
        formula: "SUM(stock_to_buy.volume)",
        why: "By the real sizes: weight follows from this.",
        sources: [PS_20, TREATED_TIMBER],
      },
    ],
  }
}

/** The members of a frame of joists on skids under sheets. */
export const FRAME_MEMBERS: readonly TimberMember[] = [
  {
    part: "skid",
    size: "skid_size",
    lengths: "skid_pieces.length",
    stock: { board: "skid_pieces.stock" },
    line: "skid_pieces.line",
  },
  { part: "joist", size: "joist_size", lengths: "joists.length", stock: { list: "joist_stock" } },
  {
    part: "rim",
    size: "rim_size",
    lengths: "rim_pieces.length",
    stock: { list: "rim_stock" },
    line: "rim_pieces.line",
  },
  { part: "rim block", size: "rim_size", lengths: "rim_blocks.length", stock: { list: "blocking_stock" } },
  {
    part: "blocking",
    size: "joist_size",
    lengths: "blocking.length",
    stock: { list: "blocking_stock" },
    times: "blocking_rows",
  },
]

/** The same frame with edge boards. */
export const PLATFORM_MEMBERS: readonly TimberMember[] = [
  ...FRAME_MEMBERS,
  {
    part: "edge board",
    size: "edge_board_size",
    lengths: "edge_pieces.length",
    stock: { list: "edge_board_stock" },
  },
]

export const timber: Section = timberOf(PLATFORM_MEMBERS)
