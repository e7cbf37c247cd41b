import { GUARD_POST } from "../parts/guard-posts.ts"
import type { PlatformMember } from "../parts/member.ts"
import { membersOf } from "../parts/members.ts"
import { sheetStrength } from "../parts/sheet-strength.ts"
import { SKIDS_AND_JOISTS } from "../parts/skids-and-joists.ts"

/**
 * Skids lie on stone all along, and bend only where it has settled: they are worked as though it held them at the
 * places of `support_stations` alone, with their joints there, and each place's share of the skid for its seat.
 */
const ON_STONE: readonly PlatformMember[] = SKIDS_AND_JOISTS.map((member) =>
  member.noun === "skid"
    ? {
        ...member,
        supports: { at: "support_stations.x" },
        seat: "support_spacing",
        remedies: [
          { input: "support_spacing_max", toward: "less", step: "6 in" },
          { input: "skid_spacing_max", toward: "less", step: "6 in" },
          { input: "skid_size", toward: "more" },
        ],
      }
    : member,
)

const strong = membersOf([...ON_STONE, GUARD_POST], ["sheet_strength", "guard_hold"])

/** Skids, joists, guard posts and sheets of the base. */
export const strength = {
  ...strong,
  says: `${strong.says} The skids are worked as though the stone had settled between the places along them, and held them only there.`,
  entries: [...strong.entries, ...sheetStrength],
}
