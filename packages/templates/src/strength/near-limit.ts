import type { FigureEntry } from "@pegbook/engine"
import { COMMON_PRACTICE } from "../sources.ts"

/** The share of a limit from which a pass is called near. A platform's template has it among its house rules. */
export const nearLimit: FigureEntry = {
  kind: "figure",
  name: "near_limit_share",
  label: "A pass is near from",
  why: "A check that uses more than this share of its limit passes, but has little room for a heavier load.",
  sources: [COMMON_PRACTICE],
  measure: "share",
  value: "90 %",
}
