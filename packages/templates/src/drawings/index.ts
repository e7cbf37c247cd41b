import type { Drawing } from "@pegbook/engine"
import type { Build, LinesOf } from "./build.ts"
import { details } from "./details.ts"
import { setOut } from "./set-out.ts"
import { elevations, pictorial, plan, sectionAcross, sectionAlong } from "./views.ts"

function drawingsOf(build: Build): readonly Drawing[] {
  return [
    plan(build),
    sectionAlong(build),
    sectionAcross(build),
    ...elevations(build),
    ...details(build),
    pictorial(build),
    setOut(build),
  ]
}

const SKIDS: LinesOf = {
  table: "skids",
  count: "skid_count",
  pieces: "skid_pieces",
  joints: "skid_joints",
  thickness: "skid_thickness",
  depth: "skid_depth",
  length: "skid_length",
  spacing: "skid_spacing",
  level: "underside_level",
}

export const GAME_TABLE_DRAWINGS = drawingsOf({
  lines: SKIDS,
  stands: "supports",
  perLine: "supports_per_skid",
  joists: true,
  surface: "tiles",
  edge: "upright",
  ramps: false,
  net: true,
  blocking: "under joints",
})

/** Guard posts against the rims, which are the platform's own edges. */
const RIM_GUARD = { near: [], far: "platform_width" } as const

export const SHED_DRAWINGS = drawingsOf({
  lines: SKIDS,
  stands: "pad",
  joists: true,
  surface: "sheets",
  ramps: false,
  net: false,
  guard: RIM_GUARD,
  blocking: "under joints",
})

export const BOARDWALK_DRAWINGS = drawingsOf({
  lines: {
    table: "stringers",
    count: "stringer_count",
    pieces: "stringer_pieces",
    joints: "stringer_joints",
    thickness: "stringer_thickness",
    depth: "stringer_depth",
    length: "stringer_length",
    spacing: "stringer_spacing",
    level: ["underside_level", "sleeper_depth"],
  },
  stands: "sleepers",
  joists: false,
  surface: "boards across",
  edge: "kerb",
  ramps: true,
  net: false,
  guard: {
    near: [{ of: "stringers.y", row: 1 }, { half: "-stringer_thickness" }],
    far: [{ of: "stringers.y", row: "stringer_count" }, { half: "stringer_thickness" }],
  },
})

export const DECK_DRAWINGS = drawingsOf({
  lines: {
    table: "beams",
    count: "beam_count",
    pieces: "beam_pieces",
    joints: "beam_joints",
    planks: "beam_planks",
    jointStands: "ply_joints.beam",
    thickness: "beam_thickness",
    depth: "beam_depth",
    length: "beam_length",
    spacing: "beam_spacing",
    level: "underside_level",
  },
  stands: "supports",
  perLine: "supports_per_beam",
  joists: true,
  surface: "boards along",
  ramps: false,
  net: false,
  guard: RIM_GUARD,
  blocking: "even",
})

export const GREENHOUSE_DRAWINGS = drawingsOf({
  lines: SKIDS,
  stands: "supports",
  perLine: "supports_per_skid",
  joists: true,
  surface: "boards along",
  ramps: false,
  net: false,
  guard: RIM_GUARD,
  blocking: "even",
})
