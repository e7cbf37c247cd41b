import { GUARD_POST } from "../parts/guard-posts.ts"
import { membersOf } from "../parts/members.ts"
import { SKIDS_AND_JOISTS } from "../parts/skids-and-joists.ts"

/** Bearers, joists and guard posts of the floor, its boards beside them: bearers carry the names of skids. */
export const strength = membersOf(
  [
    ...SKIDS_AND_JOISTS.map((member) =>
      member.noun === "skid" ? { ...member, member: "bearers", noun: "bearer" } : member,
    ),
    GUARD_POST,
  ],
  ["board_strength", "guard_hold"],
)
