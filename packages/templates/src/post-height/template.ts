import type { Definition } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { dressedSizes } from "../figures/dressed-sizes.ts"
import { OFFERS } from "../offers.ts"
import { memberTimber } from "../parts/member-timber.ts"
import { STRENGTH_CAUTIONS } from "../strength/cautions.ts"
import { strengthFigures } from "../strength/member-strength.ts"
import { nearLimit } from "../strength/near-limit.ts"
import { post } from "./post.ts"

/** What a post of some height carries before it bows out sideways. */
export const postHeight: Definition = {
  ...OFFERS["post-height"],
  unitSystem: "us",
  sections: [
    adapt(memberTimber, { without: ["design_method"] }),
    post,
    { ...strengthFigures, entries: [...strengthFigures.entries, nearLimit, dressedSizes] },
  ],
  cautions: [
    ...STRENGTH_CAUTIONS,
    "The load is straight down in the middle of the post, which is whole and held sideways at both ends. A post that is notched, leans, carries a beam at its side, or is pushed as by a guard or by wind carries less: that is for a designer.",
  ],
}
