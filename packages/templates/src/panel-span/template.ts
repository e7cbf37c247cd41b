import type { Definition } from "@pegbook/engine"
import { OFFERS } from "../offers.ts"
import { STRENGTH_CAUTIONS } from "../strength/cautions.ts"
import { deckingSpacing } from "../strength/decking.ts"
import { loadsAndLimits } from "../strength/loads-and-limits.ts"
import { nearLimit } from "../strength/near-limit.ts"
import { panel } from "./panel.ts"

/** What floor sheets carry between joists, and how far apart joists may lie under deck boards. */
export const panelSpan: Definition = {
  ...OFFERS["panel-span"],
  unitSystem: "us",
  sections: [
    panel,
    deckingSpacing,
    {
      id: "panel-figures",
      title: "Loads and limits",
      says: "What codes ask of a floor.",
      entries: [...loadsAndLimits, nearLimit],
    },
  ],
  cautions: STRENGTH_CAUTIONS,
}
