import type { Entry } from "@pegbook/engine"
import { GEOMETRY } from "../sources.ts"
import { POST_DEPTH } from "../sources-actions.ts"
import { groundAt, groundFormula } from "./survey-between.ts"
import { NET_IN_GROUND } from "./wind-net.ts"

/** Where each post of a net stands, and how deep. Needs what the net needs, net_runs, net_corner_posts and net_post_count. */
export const netPosts: readonly Entry[] = [
  groundAt("net_posts", "the net posts"),
  {
    kind: "table",
    name: "net_posts",
    label: "Each net post",
    rows: { kind: "formula", formula: "net_post_count" },
    why: "Where the posts stand, measured on the edges of the platform.",
    sources: [GEOMETRY],
    columns: [
      {
        name: "side",
        label: "Where",
        measure: "text",
        formula:
          'IF(ROW() <= net_corner_posts; "corner"; IF(ROW() <= net_corner_posts + net_ends * (INDEX(net_runs.spaces; 1) - 1); "end"; "long side"))',
        why: "Corner posts are pulled two ways and want a brace.",
        sources: [GEOMETRY],
      },
      {
        name: "x",
        label: "Along the platform",
        measure: "length",
        formula:
          'IF(side = "corner"; IF(ROW() = 1; platform_length; IF(ROW() = 2; IF(net_ends = 0; 0; platform_length); 0)); IF(side = "end"; IF(ROW() - net_corner_posts < INDEX(net_runs.spaces; 1); platform_length; 0); (MOD(ROW() - net_corner_posts - net_ends * (INDEX(net_runs.spaces; 1) - 1) - 1; MAX(1; INDEX(net_runs.spaces; 2) - 1)) + 1) * platform_length / INDEX(net_runs.spaces; 2)))',
        why: "The first end with a net is the far one.",
        sources: [GEOMETRY],
      },
      {
        name: "y",
        label: "Across the platform",
        measure: "length",
        formula:
          'IF(side = "corner"; IF(ROW() = 2; IF(net_ends = 0; platform_width; 0); IF(ROW() = 4; 0; platform_width)); IF(side = "end"; (MOD(ROW() - net_corner_posts - 1; MAX(1; INDEX(net_runs.spaces; 1) - 1)) + 1) * platform_width / INDEX(net_runs.spaces; 1); IF(ROW() - net_corner_posts - net_ends * (INDEX(net_runs.spaces; 1) - 1) < INDEX(net_runs.spaces; 2); platform_width; 0)))',
        why: "The first side with a net is the far one.",
        sources: [GEOMETRY],
      },
      {
        name: "ground",
        label: "Ground",
        measure: "length",
        formula: groundFormula("net_posts"),
        why: "Level of the ground where the post stands, up positive.",
        sources: [GEOMETRY],
      },
      {
        name: "foot",
        label: "Level of its foot",
        measure: "length",
        formula: `IF(${NET_IN_GROUND}; ground - INDEX(net_wind.depth; 1); top_level - tile_thickness - sheet_thickness - rim_depth)`,
        why: "As deep below its own ground as a hole is counted; of a post that is bolted to the frame, the underside of the rim.",
        sources: [GEOMETRY, POST_DEPTH],
      },
    ],
  },
]
