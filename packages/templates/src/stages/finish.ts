import { ofAllNets } from "../parts/of-all.ts"
import { CAUTION, consumable, DRIVER, SAW, screwsInto, timberFor, type Work } from "./work.ts"

/** Posts, ropes and net that stop a ball. */
export const netWork: Work = {
  stage: {
    id: "net",
    title: "Put up the net",
    says: [
      "{net_post_count} posts of {net_post_length}, guyed with {net_guy_count} ropes to pegs {net_guy_reach} out.",
      "Holes to dig for the posts, just outside the frame: {net_order.holes}, each {net_order.hole_depth} deep from the ground beside it. Stand the post plumb, brace it, and fill the hole with concrete to the top: {net_order.concrete} in all. On higher ground a post stands out more: saw it level with the others at its top and brush the cut. Where a hole meets the stone under a corner, tamp the stone again once the concrete is hard.",
      "Bolts through post and rim: {net_order.bolts}, {net_order.bolt_diameter} thick and at least {net_order.bolt_length} long, two to a post one above the other, a square washer at both ends of each.",
      "Hang {net_run} of net from its rope, tied every {net_tie_spacing}.",
    ],
    checks: ["net_mesh_check"],
    needs: [
      { thing: "net post", amount: "net_post_count" },
      { thing: "80 lb bag of concrete", amount: ofAllNets("bags") },
      { thing: "net bolt", amount: ofAllNets("bolts") },
      {
        thing: "square washer",
        amount: ofAllNets("washers"),
      },
      { thing: "net", amount: ofAllNets("area") },
      { thing: "net rope", amount: ofAllNets("rope") },
      { thing: "guy rope", amount: ofAllNets("guy_rope") },
      { thing: "net tie", amount: ofAllNets("ties") },
      { thing: "net peg", amount: "net_guy_count" },
    ],
    tools: ["ladder on firm ground", "hammer", "level", "spanners", "post-hole digger", "mixing tub"],
    cautions: [
      "Pegs of the guys and holes for posts go deeper than you dug: mind the marks of the locating service. Cover an open hole.",
      "Wet cement burns the skin and its dust harms eyes and lungs: wear gloves, long sleeves, goggles and a mask.",
      "Ropes at ankle height trip people, and a net in a storm pulls posts over: take it down in time.",
      CAUTION.eyes,
    ],
    waits: ["Concrete hardens for the days that its bag says before a net pulls at the posts."],
    safeStop: "Posts without a net may stand.",
  },
  rate: { of: "a post", number: "net_post_count", each: "1 h", people: 2 },
  tools: [DRIVER],
}

/** Mesh round the foot. */
export const meshWork: Work = {
  stage: {
    id: "mesh",
    title: "Close the foot with mesh",
    says: [
      "{mesh_length} of mesh, {mesh_height} high in all: {mesh_bury_depth} go down and {mesh_turn_out} turn outwards.",
    ],
    needs: [{ thing: "mesh roll", amount: "mesh_rolls" }, consumable("box of staples")],
    tools: ["snips", "stapler or hammer", "spade"],
    cautions: [
      "Cut wire springs back and cuts: gloves and goggles.",
      "Leave air gaps: the frame has to dry.",
    ],
    safeStop: "After any side.",
  },
  rate: { of: "a roll", number: "mesh_rolls", each: "2 h", people: 2 },
  tools: [],
}

/** Steps at both ends, of which a template counts only the risers. */
export const stepsWork: Work = {
  stage: {
    id: "access",
    title: "Make the steps",
    says: [
      "At the high end {risers_high_end} risers of {riser_height_high_end}; at the low end {risers_low_end} of {riser_height_low_end}.",
      "A ramp in their place would be {ramp_length} long at the slope entered. Timber for either is not in this workbook's lists.",
    ],
    hold: "All risers of a flight are alike, and its foot stands on firm, drained ground.",
    needs: [],
    tools: ["saw", "drill-driver", "level"],
    cautions: [
      "Unlike risers trip people. Ask your authority when a handrail is wanted.",
      CAUTION.eyes,
      CAUTION.treated,
      CAUTION.power,
    ],
    safeStop: "Bar the ends until the steps are fast.",
  },
  rate: { of: "a riser", number: "risers_high_end + risers_low_end", each: "45 min", people: 1 },
  tools: [SAW, DRIVER],
}

/** Ramps and steps of a walk, with their timber. */
export const walkAccess: Work = {
  stage: {
    id: "access",
    title: "Make the ramps and steps",
    says: [
      "High end: {access_high_end}. Low end: {access_low_end}. The slope of a ramp is {ramp_slope}.",
      "The foot of each stands on tamped stone, not on grass.",
    ],
    hold: "No edge to trip on where the walk begins, and nothing gives underfoot.",
    checks: ["ramp_slope_check", "ramp_rise_check", "tread_depth_check"],
    needs: [
      timberFor("timber for ramps and steps", "ramp stringer", "ramp board", "step carriage", "tread board"),
      screwsInto("screws", "board on a ramp stringer", "tread board on a carriage"),
      screwsInto("frame screws", "head of a ramp stringer or carriage"),
    ],
    tools: ["saw", "drill-driver", "level", "carpenter's square"],
    cautions: [
      CAUTION.eyes,
      CAUTION.treated,
      CAUTION.power,
      "Unlike risers trip people; a ramp in the shade is slippery.",
    ],
    safeStop: "Bar the ends until ramps and steps are fast.",
  },
  rate: { of: "an end", number: "2", each: "3 h", people: 2 },
  tools: [SAW, DRIVER],
}

export const walkRound: Work = {
  stage: {
    id: "walk-round",
    title: "Walk round it once more",
    says: [
      "The surface is {top_height} above the ground at the high corner and {height_above_ground} above the lowest ground beside it.",
      "Run a bare hand over edges, look along every row for a screw that stands proud, and rock on each corner.",
      "Look underneath: air moves, nothing of wood lies on soil, water runs away.",
      "Write down what you bought and what the tags say, and keep it with the photographs.",
    ],
    hold: "Where the height or the authority asks for a guard, nobody uses it before the guard stands.",
    checks: ["guard_check", "height_limit_check", "area_limit_check"],
    needs: [],
    tools: ["torch", "level", "driver"],
    cautions: ["Splinters and proud screws: shoes until it is done."],
    waits: ["Look again after the first winter: stone settles, screws work loose."],
  },
  rate: { of: "a side", number: "4", each: "15 min", people: 1 },
  tools: [],
}

export const disposal: Work = {
  stage: {
    id: "disposal",
    title: "Clear up and take back",
    says: [
      "Soil: {dug_volume_loose}, loose, {spoil_barrows} barrows. Fill hollows away from the platform; lay the sods on top, or stack them to rot.",
      "Timber: {timber_length_bought} were bought and {timber_length_used} are in the work. Treated off-cuts go to the tip as such: never burned, never mulched.",
      "Take back what is whole: unopened boxes, whole boards, whole rolls. Keep a few of the screws that are left over.",
      "Packaging, tins and brushes go where your authority says; a tin with preservative in it is hazardous waste.",
    ],
    needs: [],
    tools: ["barrow", "magnet on a string for lost screws", "rake"],
    cautions: [
      "Smoke and ash of treated wood are poisonous.",
      "Soil from near roads or old buildings may not be given away: ask.",
    ],
  },
  rate: { of: "a barrow of soil", number: "spoil_barrows", each: "10 min", people: 1 },
  tools: [],
}
