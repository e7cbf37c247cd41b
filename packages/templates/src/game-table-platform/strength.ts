import { membersOf } from "../parts/members.ts"
import { sheetStrength } from "../parts/sheet-strength.ts"
import { SKIDS_AND_JOISTS } from "../parts/skids-and-joists.ts"

const strong = membersOf(SKIDS_AND_JOISTS)

/** Skids, joists and sheets of the platform. */
export const strength = { ...strong, entries: [...strong.entries, ...sheetStrength] }
