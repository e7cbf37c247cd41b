import type { Section, Solution, SolverGiven } from "@pegbook/engine"
import { planSheetCuts } from "../solvers/sheet-cuts.ts"
import { GEOMETRY, USER } from "../sources.ts"
import { PANEL_GAP, PANEL_LAYOUT, practice } from "../sources-frame.ts"

function lengths(given: SolverGiven, name: string): readonly number[] {
  return given.column(name).map(Number)
}

function solveSheetCuts(given: SolverGiven): Solution {
  // Lengths that a formula divided are whole nanometres again here: a saw does not see the difference.
  const along = lengths(given, "sheet_pieces.length").map(Math.round)
  const across = lengths(given, "sheet_pieces.width").map(Math.round)
  const rowOf = lengths(given, "sheet_pieces.row")
  const pieceOf = lengths(given, "sheet_pieces.piece")
  const pieces = along.map((length, index) => ({ length, width: across[index] ?? 0 }))
  const sheet = { length: given.number("sheet_length"), width: given.number("sheet_width") }
  const plan = planSheetCuts(pieces, sheet, given.number("saw_kerf"))
  const used = plan.sheets.length
  return {
    rows: plan.sheets.flatMap((indices, index) =>
      indices.map((at) => ({
        sheet: index + 1,
        row: rowOf[at] ?? 0,
        piece: pieceOf[at] ?? 0,
        length: along[at] ?? 0,
        width: across[at] ?? 0,
      })),
    ),
    report: {
      method:
        used === plan.bound
          ? "crosscuts packed along the sheets, best fit first; no layout of these pieces needs fewer sheets"
          : "crosscuts packed along the sheets, best fit first; not proven best",
      objective: { says: "sheets used", measure: "count", value: used },
      bound: plan.bound,
      unmet:
        plan.misfits.length === 0
          ? []
          : [
              `${plan.misfits.length} pieces are larger than a sheet: check sheet_length, sheet_width and joist_spacing`,
            ],
    },
  }
}

/**
 * Sheets over the joists, long side across them, in rows along the platform.
 *
 * Needs: platform_length, platform_width, joists, joist_count, joist_spacing, joist_thickness, blocking_rows, saw_kerf,
 * near_limit_share.
 */
export const sheets: Section = {
  id: "sheets",
  title: "Sheets",
  says: "Sheets lie in rows along the platform, their long side across the joists, their ends on joists and staggered from row to row.",
  entries: [
    {
      kind: "input",
      name: "sheet_length",
      label: "Sheet length",
      measure: "length",
      default: "8 ft",
      least: "4 ft",
      most: "16 ft",
      why: "The long side. It is the stiff one, so it goes across the joists. Measure a sheet: some are made 1/8 in short, to leave room for the gap.",
      sources: [USER, PANEL_LAYOUT],
    },
    {
      kind: "input",
      name: "sheet_width",
      label: "Sheet width",
      measure: "length",
      default: "4 ft",
      least: "1 ft",
      most: "8 ft",
      why: "The short side. It sets how many rows there are.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "sheet_thickness",
      label: "Sheet thickness",
      measure: "length",
      default: "3/4 in",
      least: "1/4 in",
      most: "2 in",
      why: "Thicker sheets bend less between joists. It is also part of the height, and of the length of the screws.",
      sources: [USER],
      cautions: [
        "The joist spacing that a sheet may span is stamped on it. Outdoors use sheets that their maker allows outdoors, seal every cut edge, and let water drain off.",
      ],
    },
    {
      kind: "figure",
      name: "sheet_gap",
      label: "Gap between sheets",
      measure: "length",
      value: "1/8 in",
      why: "Sheets swell when they are wet. Laid tight they push each other up. A common nail is about this thick and makes a good spacer.",
      sources: [PANEL_GAP],
    },
    {
      kind: "formula",
      name: "sheet_row_count",
      label: "Rows of sheets",
      measure: "count",
      formula: "ROUNDUP(platform_width / (sheet_width + sheet_gap); 0)",
      why: "Each row takes its width and one gap. A row begun is a row to buy; what is left beside the last one, when it is no wider than a gap, is left bare.",
      sources: [GEOMETRY, PANEL_GAP],
    },
    {
      kind: "formula",
      name: "sheet_seam_spacing",
      label: "From one seam to the next in a row",
      measure: "length",
      formula: "FLOOR(sheet_length + sheet_gap; joist_spacing)",
      why: "A sheet's end needs a joist under it, so seams stand a whole number of joist spacings apart: as many as a sheet and its gap reach over.",
      sources: [PANEL_LAYOUT],
    },
    {
      kind: "formula",
      name: "sheet_stagger",
      label: "First seam in every other row",
      measure: "length",
      formula: "MAX(joist_spacing; FLOOR(sheet_seam_spacing / 2; joist_spacing))",
      why: "Every second row starts with about half a sheet, so that seams of neighbouring rows do not make one long line that opens.",
      sources: [PANEL_LAYOUT],
    },
    {
      kind: "formula",
      name: "sheet_seams_odd",
      label: "Seams in the first, third … row",
      measure: "count",
      formula: "MAX(0; ROUNDUP((platform_length - sheet_gap - sheet_length) / sheet_seam_spacing; 0))",
      why: "How often a sheet ends inside the row: once for each seam spacing that is left where one whole sheet, with half a gap at either end, does not reach.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "sheet_seams_even",
      label: "Seams in the second, fourth … row",
      measure: "count",
      formula:
        "IF(sheet_seams_odd = 0; 0; 1 + MAX(0; ROUNDUP((platform_length - sheet_stagger - sheet_gap - sheet_length) / sheet_seam_spacing; 0)))",
      why: "How often a sheet ends inside the rows that start with half a sheet. Where one sheet reaches from end to end, no row has a seam.",
      sources: [GEOMETRY],
    },
    {
      kind: "table",
      name: "sheet_rows",
      label: "Each row of sheets",
      rows: { kind: "formula", formula: "sheet_row_count" },
      why: "Where each row lies and how it is made up. Blocking goes under the middle of the gap between two rows.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "row",
          label: "Row",
          measure: "count",
          formula: "ROW()",
          why: "Counted from the long edge that all widths are measured from.",
          sources: [GEOMETRY],
        },
        {
          name: "y",
          label: "Near edge, from the long edge",
          measure: "length",
          formula: "(row - 1) * (sheet_width + sheet_gap)",
          why: "Where to snap the line for this row. Half a gap before it is the middle of the blocking.",
          sources: [GEOMETRY],
        },
        {
          name: "width",
          label: "Width to cut",
          measure: "length",
          formula: "MIN(sheet_width; platform_width - y)",
          why: "The last row is ripped down to what is left.",
          sources: [GEOMETRY],
        },
        {
          name: "blocked",
          label: "Blocking under its near edge",
          measure: "yes_no",
          formula: "AND(row > 1; row <= blocking_rows + 1)",
          why: "Rows of blocking go under the edges between the rows of sheets, the first edge first. The long edge itself lies on the rim.",
          sources: [PANEL_LAYOUT],
        },
        {
          name: "first",
          label: "First seam, from the end",
          measure: "length",
          formula: "IF(seams = 0; platform_length; IF(MOD(row; 2) = 1; sheet_seam_spacing; sheet_stagger))",
          why: "A whole sheet in odd rows, about half a sheet in even rows; the other end where there is no seam.",
          sources: [GEOMETRY, PANEL_LAYOUT],
        },
        {
          name: "seams",
          label: "Seams in the row",
          measure: "count",
          formula: "IF(MOD(row; 2) = 1; sheet_seams_odd; sheet_seams_even)",
          why: "Each lies on a joist and is screwed on both sides.",
          sources: [GEOMETRY],
        },
        {
          name: "pieces",
          label: "Pieces in the row",
          measure: "count",
          formula: "seams + 1",
          why: "One more than there are seams.",
          sources: [GEOMETRY],
        },
      ],
    },
    {
      kind: "formula",
      name: "sheet_seam_count",
      label: "End seams in all",
      measure: "count",
      formula: "SUM(sheet_rows.seams)",
      why: "Each of them has to be found and screwed along both sides.",
      sources: [GEOMETRY],
    },
    {
      kind: "table",
      name: "sheet_seams",
      label: "Each end seam",
      rows: { kind: "formula", formula: "sheet_seam_count" },
      why: "Where sheets meet end to end, and whether a joist is really under the place.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "row",
          label: "Row",
          measure: "count",
          formula:
            "2 * INT((ROW() - 1) / (sheet_seams_odd + sheet_seams_even)) + IF(MOD(ROW() - 1; sheet_seams_odd + sheet_seams_even) < sheet_seams_odd; 1; 2)",
          why: "Which row of sheets.",
          sources: [GEOMETRY],
        },
        {
          name: "number",
          label: "Seam in the row",
          measure: "count",
          formula:
            "MOD(ROW() - 1; sheet_seams_odd + sheet_seams_even) + 1 - IF(MOD(row; 2) = 1; 0; sheet_seams_odd)",
          why: "Counted from the end that all marks are measured from.",
          sources: [GEOMETRY],
        },
        {
          name: "position",
          label: "Middle of the gap, from the end",
          measure: "length",
          formula: "INDEX(sheet_rows.first; row) + (number - 1) * sheet_seam_spacing",
          why: "The line to snap on the joist.",
          sources: [GEOMETRY],
        },
        {
          name: "before",
          label: "Last joist up to there",
          measure: "count",
          formula: "MATCH(position; joists.position; 1)",
          why: "The joists' marks are searched, so that a changed joist shows here.",
          sources: [GEOMETRY],
        },
        {
          name: "joist",
          label: "Nearest joist",
          measure: "count",
          formula:
            "IF(ABS(INDEX(joists.position; MIN(joist_count; before + 1)) - position) < ABS(position - INDEX(joists.position; before)); before + 1; before)",
          why: "The joist that has to carry both ends.",
          sources: [GEOMETRY],
        },
        {
          name: "distance",
          label: "From that joist's middle",
          measure: "length",
          formula: "ABS(position - INDEX(joists.position; joist))",
          why: "Should be nothing.",
          sources: [GEOMETRY],
        },
        {
          name: "bearing",
          label: "Wood under each end",
          measure: "length",
          formula: "joist_thickness / 2 - distance - sheet_gap / 2",
          why: "Half the joist, less half the gap, less what the seam is off the middle.",
          sources: [GEOMETRY],
        },
      ],
    },
    {
      kind: "figure",
      name: "sheet_bearing_least",
      label: "Least wood under a sheet's end",
      measure: "length",
      value: "1/2 in",
      why: "A screw needs wood around it: 3/8 in from the sheet's edge, and not at the very edge of the joist.",
      sources: [practice("half an inch under a sheet's end")],
    },
    {
      kind: "check",
      name: "sheet_seam_check",
      label: "A joist under every seam",
      measure: "length",
      demand: "IF(sheet_seam_count = 0; sheet_bearing_least; MIN(sheet_seams.bearing))",
      limit: "sheet_bearing_least",
      sense: "at_least",
      why: "A sheet's end with no joist under it gives way under a foot.",
      sources: [PANEL_LAYOUT, GEOMETRY],
      advice: [
        "Move the joists under the seams to their marks, or screw a second piece of joist timber to the side of each.",
        "Seams stand {sheet_seam_spacing} apart: joists spaced by an even part of this meet them all.",
      ],
    },
    {
      kind: "formula",
      name: "sheet_piece_count",
      label: "Pieces of sheet",
      measure: "count",
      formula: "SUM(sheet_rows.pieces)",
      why: "How many pieces to lay; several may come out of one sheet.",
      sources: [GEOMETRY],
    },
    {
      kind: "table",
      name: "sheet_pieces",
      label: "Each piece of sheet",
      rows: { kind: "formula", formula: "sheet_piece_count" },
      why: "The sizes to cut and where each piece lies.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "row",
          label: "Row",
          measure: "count",
          formula:
            "2 * INT((ROW() - 1) / (sheet_seams_odd + sheet_seams_even + 2)) + IF(MOD(ROW() - 1; sheet_seams_odd + sheet_seams_even + 2) <= sheet_seams_odd; 1; 2)",
          why: "Which row of sheets.",
          sources: [GEOMETRY],
        },
        {
          name: "piece",
          label: "Piece in the row",
          measure: "count",
          formula:
            "MOD(ROW() - 1; sheet_seams_odd + sheet_seams_even + 2) + 1 - IF(MOD(row; 2) = 1; 0; sheet_seams_odd + 1)",
          why: "Counted from the end that all marks are measured from.",
          sources: [GEOMETRY],
        },
        {
          name: "start",
          label: "From",
          measure: "length",
          formula: "IF(piece = 1; 0; INDEX(sheet_rows.first; row) + (piece - 2) * sheet_seam_spacing)",
          why: "The end of the platform, or the middle of a seam.",
          sources: [GEOMETRY],
        },
        {
          name: "run",
          label: "Room for it",
          measure: "length",
          formula:
            "IF(piece = INDEX(sheet_rows.pieces; row); platform_length; INDEX(sheet_rows.first; row) + (piece - 1) * sheet_seam_spacing) - start",
          why: "From the middle of one seam to the middle of the next, or to the end.",
          sources: [GEOMETRY],
        },
        {
          name: "length",
          label: "Length to cut",
          measure: "length",
          formula: "run - sheet_gap",
          why: "Half a gap less at either end. At the ends of the platform that leaves half a gap of frame showing, which lets the edge dry.",
          sources: [GEOMETRY, PANEL_GAP],
        },
        {
          name: "width",
          label: "Width to cut",
          measure: "length",
          formula: "INDEX(sheet_rows.width; row)",
          why: "The width of its row.",
          sources: [GEOMETRY],
        },
      ],
    },
    {
      kind: "figure",
      name: "sheet_bays_least",
      label: "Joist bays that a piece should cross",
      measure: "count",
      value: "2",
      why: "A piece over one bay only bends more than one that runs on over the next joist.",
      sources: [PANEL_LAYOUT],
    },
    {
      kind: "check",
      name: "sheet_piece_check",
      label: "No piece of sheet too short",
      measure: "length",
      demand: "MIN(sheet_pieces.run)",
      limit: "sheet_bays_least * joist_spacing",
      sense: "at_least",
      why: "The last piece of a row takes what is left, and may be a strip that crosses a single bay.",
      sources: [PANEL_LAYOUT],
      advice: [
        "Start that row with a shorter piece so that the last one grows, or put an extra joist in the middle of the bay under the short piece.",
      ],
    },
    {
      kind: "check",
      name: "sheet_strip_check",
      label: "No row of sheets too narrow",
      measure: "length",
      demand: "MIN(sheet_rows.width)",
      limit: "4 * joist_thickness",
      sense: "at_least",
      why: "The last row takes what is left. Its near edge lies on blocking and its far edge on the rim: when the strip is narrower than the two and as much again between them, there is no room to fix the blocking, and a strip splits where it is screwed.",
      sources: [practice("no strip of sheet so narrow that its blocking has no room beside the rim")],
      advice: [
        "Change the platform's width, so that the last row grows or is not needed.",
        "Or rip the first row narrower by as much as the last one is to grow, and move the blocking with its edge.",
      ],
    },
    {
      kind: "check",
      name: "sheet_edge_check",
      label: "Blocking under the long seams",
      measure: "count",
      demand: "blocking_rows",
      limit: "sheet_row_count - 1",
      sense: "at_least",
      why: "Between two joists the long edges of two sheets hang free unless a line of blocking runs below: one edge sinks under a foot and the other does not.",
      sources: [practice("blocking under sheet edges that fall between joists")],
      advice: [
        "There are {sheet_row_count} rows of sheets, with a long seam between each two: enter one line of blocking for each, or use sheets with a tongue and groove.",
      ],
    },
    {
      kind: "table",
      name: "sheet_cuts",
      label: "What to cut from each sheet",
      rows: {
        kind: "solved",
        from: [
          "sheet_pieces.row",
          "sheet_pieces.piece",
          "sheet_pieces.length",
          "sheet_pieces.width",
          "sheet_length",
          "sheet_width",
          "saw_kerf",
        ],
        solve: solveSheetCuts,
      },
      why: "The off-cut of one row serves in another: counting row by row would buy sheets that are not needed. No piece is turned, so that the stiff way stays across the joists.",
      sources: [GEOMETRY, PANEL_LAYOUT],
      columns: [
        {
          name: "sheet",
          label: "Sheet",
          measure: "count",
          why: "Which sheet the piece is cut from.",
          sources: [GEOMETRY],
        },
        { name: "row", label: "Row", measure: "count", why: "Where it goes.", sources: [GEOMETRY] },
        {
          name: "piece",
          label: "Piece in the row",
          measure: "count",
          why: "Where it goes.",
          sources: [GEOMETRY],
        },
        { name: "length", label: "Length", measure: "length", why: "What to cut.", sources: [GEOMETRY] },
        { name: "width", label: "Width", measure: "length", why: "What to cut.", sources: [GEOMETRY] },
      ],
    },
    {
      kind: "formula",
      name: "sheet_count",
      label: "Sheets to buy",
      measure: "count",
      formula: "MAX(sheet_cuts.sheet)",
      why: "Whole sheets, by the layout: never the area divided by a sheet's area, which forgets what cannot be used.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "sheet_area",
      label: "Area of the pieces",
      measure: "area",
      formula: "SUMPRODUCT(sheet_pieces.length; sheet_pieces.width)",
      why: "What lies on the frame, gaps left out.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "sheet_waste",
      label: "Sheet left over",
      measure: "share",
      formula: "1 - sheet_area / (sheet_count * sheet_length * sheet_width)",
      why: "The part of the bought sheets that is not laid, saw cuts included.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "sheet_seal_length",
      label: "Edges to seal",
      measure: "length",
      formula: "2 * (SUM(sheet_pieces.length) + SUM(sheet_pieces.width))",
      why: "All four edges of every piece. Sheets take in water at the edges first; seal them before they are laid.",
      sources: [GEOMETRY, practice("seal the edges of sheets outdoors")],
    },
  ],
}
