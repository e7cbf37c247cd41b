import { membersOf } from "../parts/members.ts"
import { SKIDS_AND_JOISTS } from "../parts/skids-and-joists.ts"

/** Bearers and joists of the floor: bearers carry the names of skids. */
export const strength = membersOf(
  SKIDS_AND_JOISTS.map((member) =>
    member.noun === "skid" ? { ...member, member: "bearers", noun: "bearer" } : member,
  ),
)
