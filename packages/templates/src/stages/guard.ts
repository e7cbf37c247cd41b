import { ofAllGuardPosts } from "../parts/of-all.ts"
import { CAUTION, DRIVER, SAW, type Work } from "./work.ts"

/** Posts of a guard; nothing to do where none is needed. */
export const guardWork: Work = {
  stage: {
    id: "guard",
    title: "Bolt on the guard posts, where a guard is needed",
    says: [
      "{guard_post.number} posts of {guard_post_size}, each {guard_post.length} long, no more than {guard_post.spacing} apart. 0: no guard is counted; look at the section on its posts for why.",
      "Bore right through post and timber, brush preservative into the holes, and put a square washer at both ends of every bolt.",
      "A tested connector at each upper bolt ties the post back into the framing, as its maker draws it.",
    ],
    hold: "Whole posts, never notched; nuts tight, and tight again after the first dry month. An inspector may want to see the bolts before the boards hide them.",
    checks: [
      "guard_check",
      "guard_post_check",
      "guard_joint_check",
      "guard_anchor_check",
      "loaded_joint_check",
    ],
    needs: [
      { thing: "guard post", amount: ofAllGuardPosts("number") },
      { thing: "guard bolt", amount: ofAllGuardPosts("bolts") },
      { thing: "square washer", amount: ofAllGuardPosts("washers") },
      { thing: "guard connector", amount: ofAllGuardPosts("connectors") },
    ],
    tools: ["saw", "drill-driver", "level", "clamps", "spanners"],
    cautions: [
      "A guard that gives way is worse than none: people lean on it. Keep everybody off the edge until posts, rails and infill stand as your code says.",
      CAUTION.eyes,
      CAUTION.treated,
      CAUTION.power,
    ],
    safeStop: "Bar the edge with a rope set well back until the guard is whole.",
  },
  rate: { of: "a post", number: "INDEX(guard_post.number; 1)", each: "1 h", people: 2 },
  tools: [SAW, DRIVER],
}
