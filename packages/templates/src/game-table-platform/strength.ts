import { fastenerTables } from "../parts/fastener-strength.ts"
import { membersOf } from "../parts/members.ts"
import { sheetStrength } from "../parts/sheet-strength.ts"
import { SKIDS_AND_JOISTS } from "../parts/skids-and-joists.ts"
import { NET_JOINT, NET_POST } from "../parts/wind-net.ts"

const strong = membersOf([...SKIDS_AND_JOISTS, NET_POST], ["sheet_strength"])

/** Skids, joists, net posts and sheets of the platform. */
export const strength = { ...strong, entries: [...strong.entries, ...sheetStrength] }

/** Bolts of the net posts. They count in the net posts' check. */
export const fasteners = fastenerTables([NET_JOINT])
