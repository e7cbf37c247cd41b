import { membersOf } from "../parts/members.ts"
import { sheetStrength } from "../parts/sheet-strength.ts"
import { SKIDS_AND_JOISTS } from "../parts/skids-and-joists.ts"
import { NET_POST } from "../parts/wind-net.ts"

const strong = membersOf([...SKIDS_AND_JOISTS, NET_POST])

/** Skids, joists, net posts and sheets of the platform. */
export const strength = { ...strong, entries: [...strong.entries, ...sheetStrength] }
