import type { Section } from "@pegbook/engine"
import { dressedSizes } from "../figures/dressed-sizes.ts"
import { ARITHMETIC, COMMON_PRACTICE } from "../sources.ts"

/** Figures that every other part leans on: how counts are rounded, when a pass is called near, timber sizes. */
export const houseRules: Section = {
  id: "house-rules",
  title: "Rules and published sizes",
  says: "What the other sections lean on: how a count is rounded, when a pass is a near thing, and what timber really measures.",
  entries: [
    {
      kind: "figure",
      name: "rounding_tolerance",
      label: "Slack when counting up",
      why: "A spacing that was itself divided can miss a whole number by a hair. This much is forgiven, so that an exact fit does not cost you one piece too many.",
      sources: [ARITHMETIC],
      measure: "ratio",
      value: "0.000001",
    },
    {
      kind: "figure",
      name: "near_limit_share",
      label: "A pass is near from",
      why: "A check that uses more than this share of its limit passes, but has little room for a heavier load or softer ground.",
      sources: [COMMON_PRACTICE],
      measure: "share",
      value: "90 %",
    },
    dressedSizes,
  ],
}
