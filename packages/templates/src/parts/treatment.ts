import type { Column, Entry, InputEntry, Section } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY, GROUND_CONTACT, TREATED_TIMBER, USER } from "../sources.ts"
import { NEAR_GROUND_CANADA, TREATERS_DISAGREE, UC3, UC4A, UC4B } from "../sources-frame.ts"
import { endCuts } from "./end-cuts.ts"
import { joistTapeOf } from "./joist-tape.ts"
import { rowChoice } from "./row-choice.ts"

/** A kind of timber in the frame, as the treatment sees it. */
export interface TreatedMember {
  /** In the reader's words, the plural, once in a template: "joists". */
  readonly member: string
  /** The input that holds its use class: "joist_treatment". This part makes that input. */
  readonly treatment: string
  readonly startsWith: UseClass
  /** Formula: its underside above the ground at the high corner, where it is nearest. */
  readonly clearance: string
  /** Hard to get at later, and the platform stands on it. */
  readonly hardToReplace: boolean
}

export type UseClass = "UC3A" | "UC3B" | "UC4A" | "UC4B"

const CLASSES: readonly { class: UseClass; meaning: string }[] = [
  { class: "UC3A", meaning: "above the ground, painted, water runs off quickly" },
  { class: "UC3B", meaning: "above the ground, bare, or slow to drain" },
  { class: "UC4A", meaning: "in contact with the ground, or as good as" },
  { class: "UC4B", meaning: "in contact with the ground, hard use or hard to replace" },
]

const AC236 = [GROUND_CONTACT] as const

/** What an exposure of the site does to every member. */
function exposure(name: string, label: string, why: string, startsWith: "yes" | "no"): InputEntry {
  return {
    kind: "input",
    name,
    label,
    measure: "yes_no",
    default: startsWith,
    why,
    sources: [USER, GROUND_CONTACT],
  }
}

const EXPOSURES: readonly InputEntry[] = [
  exposure(
    "debris_builds_up",
    "Soil or leaves build up on the timber",
    "Wet leaves between timbers keep them as damp as soil does.",
    "no",
  ),
  exposure(
    "air_below",
    "Air moves below the frame",
    "Where no air gets in, the timber never dries: count that as ground contact.",
    "yes",
  ),
  exposure(
    "often_wetted",
    "Often wetted",
    "By a sprinkler, a downpipe, a pool or plants that are watered.",
    "no",
  ),
  exposure("touches_untreated", "Touches untreated or rotten wood", "Rot spreads from piece to piece.", "no"),
  exposure("tropical_climate", "Hot and wet climate", "Rot works all the year there.", "no"),
  {
    kind: "input",
    name: "severe_decay",
    label: "Severe place for rot, or salt splash",
    measure: "yes_no",
    default: "no",
    why: "A warm wet coast, for one. What carries the platform then wants the heavy-duty class.",
    sources: [USER, UC4B],
  },
]

const rank = (useClass: UseClass): string =>
  `INDEX(use_classes.rank; MATCH("${useClass}"; use_classes.class; 0))`

function columnsOf(members: readonly TreatedMember[]): readonly Column[] {
  const ofRow = (formula: (member: TreatedMember) => string): string =>
    rowChoice(
      "member",
      members.map((one) => ({ row: one.member, formula: formula(one) })),
    )
  return [
    {
      name: "member",
      label: "Timber",
      measure: "text",
      values: members.map(({ member }) => member),
      why: "Each kind of timber in the frame.",
      sources: [USER],
    },
    {
      name: "clearance",
      label: "Above the ground",
      measure: "length",
      formula: ofRow(({ clearance }) => clearance),
      why: "From the ground to its underside at the high corner, where it is nearest.",
      sources: [GEOMETRY],
    },
    {
      name: "hard_to_replace",
      label: "Hard to replace",
      measure: "yes_no",
      values: members.map(({ hardToReplace }) => (hardToReplace ? "yes" : "no")),
      why: "What lies under everything else cannot be changed without taking the platform apart.",
      sources: AC236,
    },
    {
      name: "near_ground",
      label: "Near the ground",
      measure: "yes_no",
      formula: "clearance < ground_contact_clearance",
      why: "Nearer than the limit above: it counts as touching, even where it does not.",
      sources: [GROUND_CONTACT, NEAR_GROUND_CANADA],
    },
    {
      name: "site_wet",
      label: "The place keeps timber as wet as the ground does",
      measure: "yes_no",
      formula: "OR(debris_builds_up; NOT(air_below); often_wetted; touches_untreated; tropical_climate)",
      why: "Any one of the cases above, for every timber alike.",
      sources: AC236,
    },
    {
      name: "rank_needed",
      label: "Rank needed",
      measure: "count",
      formula: `IF(AND(severe_decay; OR(hard_to_replace; near_ground)); ${rank("UC4B")}; IF(OR(hard_to_replace; near_ground; site_wet); ${rank("UC4A")}; ${rank("UC3B")}))`,
      why: "Any one of the cases is enough.",
      sources: [GROUND_CONTACT, UC4A, UC4B, UC3],
    },
    {
      name: "class_needed",
      label: "Use class needed",
      measure: "text",
      formula: "INDEX(use_classes.class; MATCH(rank_needed; use_classes.rank; 0))",
      why: "What has to be on the tag, or better.",
      sources: [GROUND_CONTACT, UC4A, UC4B, UC3],
    },
    {
      name: "because",
      label: "Because",
      measure: "text",
      formula:
        'IF(near_ground; "too near the ground"; IF(hard_to_replace; "hard to replace"; IF(site_wet; "the place keeps it wet"; "above the ground and in the air")))',
      why: "The first case that holds.",
      sources: AC236,
    },
    {
      name: "wants",
      label: "What to buy",
      measure: "text",
      formula: 'class_needed & " or better for the " & member & ": " & because',
      why: "The class, the timber and the reason in one line.",
      sources: AC236,
    },
    {
      name: "class_entered",
      label: "Use class bought",
      measure: "text",
      formula: ofRow(({ treatment }) => treatment),
      why: "As entered above.",
      sources: [USER],
    },
    {
      name: "rank_entered",
      label: "Rank bought",
      measure: "count",
      formula: "INDEX(use_classes.rank; MATCH(class_entered; use_classes.class; 0))",
      why: "From the table of use classes.",
      sources: [UC3, UC4A, UC4B],
    },
    {
      name: "enough",
      label: "Enough",
      measure: "count",
      formula: "IF(rank_entered >= rank_needed; 1; 0)",
      why: "1: the class bought is the class needed, or better.",
      sources: [ARITHMETIC],
    },
    {
      name: "clearance_needed",
      label: "Clearance that its class needs",
      measure: "length",
      formula: `IF(rank_entered < ${rank("UC4A")}; ground_contact_clearance; 0)`,
      why: "None for timber treated for ground contact.",
      sources: AC236,
    },
    {
      name: "clearance_over",
      label: "Clearance beyond that",
      measure: "length",
      formula: "clearance - clearance_needed",
      why: "Below nothing: too near for what it was treated for.",
      sources: [GEOMETRY],
    },
  ]
}

/**
 * The use class that each kind of timber needs, and whether it has it; then the cut ends and, where a template names
 * them, the tops that are taped.
 *
 * `tops`: formulas of lengths whose tops are taped, empty where nothing is.
 * Needs: what the members and tops name, cut_plan, end_trim, dressed_sizes.
 * Gives `ground_contact_check`, `treatment_check`, `end_cut_count`, `preservative_volume`, `joist_tape_length`.
 */
export function treatmentOf(members: readonly TreatedMember[], tops: readonly string[]): Section {
  return {
    id: "treatment",
    title: "Treatment against rot",
    says: "Every timber outdoors is treated for where it lies. Near the ground that means ground contact, even if it touches nothing.",
    entries: [
      ...classes,
      ...members.map(
        ({ member, treatment, startsWith }): InputEntry => ({
          kind: "input",
          name: treatment,
          label: `Treatment of the ${member}`,
          measure: "text",
          default: startsWith,
          choices: CLASSES.map((one) => one.class),
          why: "The use class on the tag at the end of the timber.",
          sources: [USER, GROUND_CONTACT],
        }),
      ),
      ...EXPOSURES,
      {
        kind: "table",
        name: "treated_members",
        label: "Use class of every timber",
        rows: { kind: "figures" },
        why: "One treater takes joists for above ground; the criteria that inspectors use count them as ground contact where they are near the ground or hard to replace. The stricter is followed here.",
        sources: [GROUND_CONTACT, TREATERS_DISAGREE],
        columns: columnsOf(members),
      },
      ...checks,
      ...endCuts,
      ...joistTapeOf(tops),
    ],
  }
}

const classes: readonly Entry[] = [
  {
    kind: "table",
    name: "use_classes",
    label: "Use classes of treated timber",
    rows: { kind: "figures" },
    why: "What a piece was treated for. In Canada they are called UC3.1, UC3.2, UC4.1 and UC4.2.",
    sources: [UC3, UC4A, UC4B],
    columns: [
      {
        name: "class",
        label: "Use class",
        measure: "text",
        values: CLASSES.map((one) => one.class),
        why: "As on the tag.",
        sources: [UC3, UC4A, UC4B],
      },
      {
        name: "rank",
        label: "Rank",
        measure: "count",
        values: CLASSES.map((_, index) => `${index + 1}`),
        why: "A later class may stand in for an earlier one.",
        sources: [ARITHMETIC],
      },
      {
        name: "meaning",
        label: "Meant for",
        measure: "text",
        values: CLASSES.map(({ meaning }) => meaning),
        why: "Where such timber may lie.",
        sources: [UC3, UC4A, UC4B],
      },
    ],
  },
  {
    kind: "figure",
    name: "ground_contact_clearance",
    label: "Counts as ground contact below",
    why: "Timber nearer to the ground than this stays damp, and wants the treatment for ground contact even where it touches nothing.",
    sources: [GROUND_CONTACT, NEAR_GROUND_CANADA],
    measure: "length",
    value: "6 in",
  },
]

const checks: readonly Entry[] = [
  {
    kind: "formula",
    name: "ground_contact_member",
    label: "Timber nearest to its limit",
    measure: "text",
    formula:
      "INDEX(treated_members.member; MATCH(MIN(treated_members.clearance_over); treated_members.clearance_over; 0))",
    why: "The timber that has least clearance beyond what its treatment needs.",
    sources: [GEOMETRY],
  },
  {
    kind: "check",
    name: "ground_contact_check",
    label: "Is the treatment right for so near the ground?",
    why: "Timber treated for above ground has rotted through in ten years where water ran.",
    sources: [GROUND_CONTACT, TREATED_TIMBER],
    cautions: [
      "Every cut exposes untreated wood: brush the cut end with an end-cut preservative before it is laid.",
    ],
    measure: "length",
    demand:
      "INDEX(treated_members.clearance; MATCH(MIN(treated_members.clearance_over); treated_members.clearance_over; 0))",
    limit:
      "INDEX(treated_members.clearance_needed; MATCH(MIN(treated_members.clearance_over); treated_members.clearance_over; 0))",
    sense: "at_least",
    advice: [
      "Buy the {ground_contact_member} tagged for ground contact, UC4A or better, or raise them to {ground_contact_clearance} above the ground.",
    ],
  },
  {
    kind: "formula",
    name: "treatment_short",
    label: "First timber with too weak a class",
    measure: "text",
    formula: 'IFERROR(INDEX(treated_members.wants; MATCH(0; treated_members.enough; 0)); "none")',
    why: "Change this one first.",
    sources: [GROUND_CONTACT],
  },
  {
    kind: "check",
    name: "treatment_check",
    label: "Every timber in the class that it needs",
    measure: "count",
    demand: "SUM(treated_members.enough)",
    limit: "COUNT(treated_members.enough)",
    sense: "at_least",
    why: "One weak row of timber lets the rest down. The clearance is not the only case: what cannot be replaced needs the better class too.",
    sources: [GROUND_CONTACT, UC4A, UC4B],
    cautions: [
      "The treater's tag, the local code and the inspector decide. Where they ask for more, they are right.",
    ],
    advice: ["Buy {treatment_short}. Or change what makes it so: more clearance, a dry place, air below."],
  },
]

/** The treated timber of a platform of joists on skids under sheets, with edge boards. */
export const treatment: Section = treatmentOf(
  [
    {
      member: "skids",
      treatment: "skid_treatment",
      startsWith: "UC4A",
      clearance: "underside_clearance",
      hardToReplace: true,
    },
    {
      member: "joists and blocking",
      treatment: "joist_treatment",
      startsWith: "UC4A",
      clearance: "underside_clearance + skid_depth",
      hardToReplace: true,
    },
    {
      member: "rims",
      treatment: "rim_treatment",
      startsWith: "UC4A",
      clearance: "underside_clearance + skid_depth + joist_depth - rim_depth",
      hardToReplace: true,
    },
    {
      member: "edge boards",
      treatment: "edge_board_treatment",
      startsWith: "UC3B",
      clearance: "underside_clearance + skid_depth + joist_depth - edge_board_overlap",
      hardToReplace: false,
    },
  ],
  ["SUM(joists.length)", "SUM(rim_pieces.length)", "blocking_length"],
)
