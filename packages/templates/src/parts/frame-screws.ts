import { GEOMETRY, USER } from "../sources.ts"
import { JOIST_TO_SILL, practice } from "../sources-frame.ts"
import type { JointGroup } from "./fixings.ts"

/** Joists over skids. Needs: skids, skid_count, joists, joist_count, joist_thickness. */
export const skidCrossings: JointGroup = {
  entries: [
    {
      kind: "input",
      name: "ties_per_crossing",
      label: "Ties where a joist crosses a skid",
      measure: "count",
      default: "1",
      least: "0",
      most: "2",
      why: "A small metal tie keeps the joist on the skid when wind or a push lifts it.",
      sources: [USER, practice("one tie a crossing")],
    },
    {
      kind: "input",
      name: "screws_per_crossing",
      label: "Frame screws where a joist crosses a skid",
      measure: "count",
      default: "2",
      least: "0",
      most: "8",
      why: "Driven at a slant, one from either face, they hold the joist on its mark until the tie is on. Without ties the code's table asks for three nails.",
      sources: [USER, JOIST_TO_SILL],
    },
    {
      kind: "formula",
      name: "crossing_count",
      label: "Crossings of joists and skids",
      measure: "count",
      formula: "skid_count * joist_count",
      why: "Every joist crosses every skid.",
      sources: [GEOMETRY],
    },
    {
      kind: "table",
      name: "crossings",
      label: "Each crossing",
      rows: { kind: "formula", formula: "crossing_count" },
      why: "Each is a place to fasten, so ties and screws are counted here and not by area.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "line",
          label: "Skid",
          measure: "count",
          formula: "INT((ROW() - 1) / joist_count) + 1",
          why: "Which skid.",
          sources: [GEOMETRY],
        },
        {
          name: "joist",
          label: "Joist",
          measure: "count",
          formula: "MOD(ROW() - 1; joist_count) + 1",
          why: "Which joist.",
          sources: [GEOMETRY],
        },
        {
          name: "x",
          label: "Along the platform",
          measure: "length",
          formula: "INDEX(joists.position; joist)",
          why: "The joist's middle.",
          sources: [GEOMETRY],
        },
        {
          name: "y",
          label: "Across the platform",
          measure: "length",
          formula: "INDEX(skids.y; line)",
          why: "The skid's middle.",
          sources: [GEOMETRY],
        },
        {
          name: "ties",
          label: "Ties",
          measure: "count",
          formula: "ties_per_crossing",
          why: "As chosen above.",
          sources: [GEOMETRY],
        },
        {
          name: "screws",
          label: "Frame screws",
          measure: "count",
          formula: "screws_per_crossing",
          why: "As chosen above.",
          sources: [GEOMETRY],
        },
      ],
    },
    {
      kind: "formula",
      name: "tie_count",
      label: "Ties",
      measure: "count",
      formula: "SUM(crossings.ties)",
      why: "Over all crossings.",
      sources: [GEOMETRY],
      cautions: ["Use the nails or screws that the ties' maker names, in every hole that he says."],
    },
  ],
  joints: [
    {
      joint: "joist over a skid, at a slant",
      screw: "frame screws",
      places: "crossing_count",
      each: "screws_per_crossing",
      through: "joist_thickness",
    },
  ],
  hardware: [{ piece: "tie", wanted: "crossing ties", number: "tie_count" }],
}

/** Joists between two rims. Needs: joist_count, rim_thickness. */
export const joistEnds: JointGroup = {
  entries: [
    {
      kind: "input",
      name: "screws_per_joist_end",
      label: "Frame screws into a joist's end",
      measure: "count",
      default: "3",
      least: "0",
      most: "8",
      why: "Through the rim into the end of the joist. Screws in end grain hold the frame together; what carries the load is the skid below.",
      sources: [USER, practice("three screws through a rim into a joist")],
    },
  ],
  joints: [
    {
      joint: "joist end, through the rim",
      screw: "frame screws",
      places: "2 * joist_count",
      each: "screws_per_joist_end",
      through: "rim_thickness",
    },
  ],
}

/** Blocking between joists. Needs: blocking_count, joist_thickness. */
export const blockingEnds: JointGroup = {
  entries: [
    {
      kind: "input",
      name: "screws_per_block_end",
      label: "Frame screws at a blocking end",
      measure: "count",
      default: "2",
      least: "0",
      most: "8",
      why: "Through the joist, or at a slant where the next piece is in the way.",
      sources: [USER, practice("two screws at a blocking end")],
    },
  ],
  joints: [
    {
      joint: "blocking end, through the joist",
      screw: "frame screws",
      places: "2 * blocking_count",
      each: "screws_per_block_end",
      through: "joist_thickness",
    },
  ],
}

/** Blocks behind the joints of a rim. Needs: rim_blocks_per_joint, rim_joint_count, rim_thickness. */
export const rimJointBlocks: JointGroup = {
  entries: [
    {
      kind: "input",
      name: "screws_per_rim_block",
      label: "Frame screws in a block behind a rim joint",
      measure: "count",
      default: "6",
      least: "0",
      most: "20",
      why: "Four into the rim, two into the joist.",
      sources: [USER, practice("blocks behind a butt joint")],
    },
  ],
  joints: [
    {
      joint: "block behind a rim joint",
      screw: "frame screws",
      places: "rim_blocks_per_joint * rim_joint_count",
      each: "screws_per_rim_block",
      through: "rim_thickness",
    },
  ],
}

/**
 * Edge boards along the frame. Needs: edge_runs with a column `places`, edge_board_thickness.
 */
export const edgeBoardScrews: JointGroup = {
  entries: [
    {
      kind: "input",
      name: "edge_screw_spacing",
      label: "Edge-board screws, places at most apart",
      measure: "length",
      default: "16 in",
      least: "4 in",
      most: "4 ft",
      why: "The boards are stepped on and kicked.",
      sources: [USER, practice("an edge board screwed at every joist")],
    },
    {
      kind: "figure",
      name: "edge_screws_per_place",
      label: "Edge-board screws at a place",
      measure: "count",
      value: "2",
      why: "One above the other, so that the board cannot cup.",
      sources: [practice("two screws above each other")],
    },
    {
      kind: "formula",
      name: "edge_screw_places",
      label: "Edge-board screws, places",
      measure: "count",
      formula: "SUMPRODUCT(edge_runs.number; edge_runs.pieces; edge_runs.places)",
      why: "Along each board, both its ends counted.",
      sources: [GEOMETRY],
    },
  ],
  joints: [
    {
      joint: "edge board against the frame",
      screw: "frame screws",
      places: "edge_screw_places",
      each: "edge_screws_per_place",
      through: "edge_board_thickness",
    },
  ],
}
