import type { Entry } from "@pegbook/engine"
import { USER } from "../sources.ts"
import {
  BORATE_EXCEPTION,
  CORROSION_TEST,
  corrosionRank,
  practice,
  SEVERE_PLACES,
  TREATED_FASTENERS,
} from "../sources-frame.ts"

/** What a treatment asks of a screw, by the ranks of the coatings below. */
const TREATMENTS = [
  { treatment: "none, or wood that lasts by itself", needs: "2" },
  { treatment: "borate", needs: "3" },
  { treatment: "micronised copper (MCA)", needs: "3" },
  { treatment: "copper azole (CA-B, CA-C)", needs: "3" },
  { treatment: "copper quat (ACQ)", needs: "3" },
  { treatment: "chromated copper arsenate (CCA)", needs: "3" },
]

const COATINGS = [
  { coating: "plain steel", rank: "1" },
  { coating: "electroplated zinc", rank: "2" },
  { coating: "mechanically plated zinc", rank: "2" },
  { coating: "hot-dip zinc", rank: "3" },
  { coating: "stainless steel", rank: "4" },
]

/** Whether the timber's treatment eats its screws. Needs nothing. */
export const fastenerCorrosion: readonly Entry[] = [
  {
    kind: "table",
    name: "timber_treatments",
    label: "What treatments ask of a screw",
    rows: { kind: "figures" },
    why: "The copper that keeps wood from rotting eats the zinc off a screw, and then the steel.",
    sources: [TREATED_FASTENERS, corrosionRank("d-024"), CORROSION_TEST],
    columns: [
      {
        name: "treatment",
        label: "Treatment",
        measure: "text",
        values: TREATMENTS.map(({ treatment }) => treatment),
        why: "It is on the tag at the end of the timber.",
        sources: [
          corrosionRank("d-024"),
          corrosionRank("d-025"),
          corrosionRank("d-026"),
          corrosionRank("d-027"),
        ],
      },
      {
        name: "needs",
        label: "Rank needed",
        measure: "count",
        values: TREATMENTS.map(({ needs }) => needs),
        why: "The code wants hot-dip zinc or better in all treated wood outdoors. Borate is easier on metal, but plain steel is allowed with it only indoors and dry.",
        sources: [TREATED_FASTENERS, BORATE_EXCEPTION, corrosionRank("d-028")],
      },
    ],
  },
  {
    kind: "table",
    name: "screw_coatings",
    label: "How well screws are protected",
    rows: { kind: "figures" },
    why: "A plain order of ranks, higher lasts longer. It is not a measure of years.",
    sources: [TREATED_FASTENERS, practice("ranks of protection")],
    columns: [
      {
        name: "coating",
        label: "Screw",
        measure: "text",
        values: COATINGS.map(({ coating }) => coating),
        why: "It is on the box. A coating of the maker's own counts as what a test report for your treatment says it equals.",
        sources: [TREATED_FASTENERS],
      },
      {
        name: "rank",
        label: "Rank",
        measure: "count",
        values: COATINGS.map(({ rank }) => rank),
        why: "The code does not let wood screws be plated mechanically only, so they rank with the electroplated.",
        sources: [TREATED_FASTENERS, CORROSION_TEST],
      },
    ],
  },
  {
    kind: "input",
    name: "timber_treatment",
    label: "Treatment of the timber",
    measure: "text",
    default: "micronised copper (MCA)",
    choices: TREATMENTS.map(({ treatment }) => treatment),
    why: "What the timber was treated with decides what screws and metal ties it may touch.",
    sources: [USER],
    cautions: [
      "Sawdust of treated wood is harmful: gloves, mask and goggles. Never burn the off-cuts, in the open or in a stove. Brush cut ends with preservative.",
    ],
  },
  {
    kind: "input",
    name: "screw_coating",
    label: "Screws",
    measure: "text",
    default: "hot-dip zinc",
    choices: COATINGS.map(({ coating }) => coating),
    why: "Screws and metal ties should be of the same metal: two metals that touch in wet wood corrode.",
    sources: [USER, SEVERE_PLACES],
  },
  {
    kind: "input",
    name: "severe_place",
    label: "Near salt water, a pool or salted roads",
    measure: "yes_no",
    default: "no",
    why: "Salt and chlorine eat zinc quickly: only stainless steel lasts there.",
    sources: [USER, SEVERE_PLACES],
  },
  {
    kind: "figure",
    name: "severe_place_needs",
    label: "Rank needed in such a place",
    measure: "count",
    value: "4",
    why: "Stainless steel.",
    sources: [SEVERE_PLACES],
  },
  {
    kind: "formula",
    name: "fastener_rank_needed",
    label: "Rank that the screws need",
    measure: "count",
    formula:
      "MAX(INDEX(timber_treatments.needs; MATCH(timber_treatment; timber_treatments.treatment; 0)); IF(severe_place; severe_place_needs; 0))",
    why: "The harder of two: the treatment and the place.",
    sources: [TREATED_FASTENERS],
  },
  {
    kind: "formula",
    name: "fastener_rank",
    label: "Rank that the screws have",
    measure: "count",
    formula: "INDEX(screw_coatings.rank; MATCH(screw_coating; screw_coatings.coating; 0))",
    why: "From the table of coatings.",
    sources: [TREATED_FASTENERS],
  },
  {
    kind: "check",
    name: "fastener_corrosion_check",
    label: "Screws that the treatment does not eat",
    measure: "count",
    demand: "fastener_rank_needed",
    limit: "fastener_rank",
    sense: "at_most",
    why: "Screws that rust through inside the wood give no sign until a board comes loose.",
    sources: [TREATED_FASTENERS, BORATE_EXCEPTION, SEVERE_PLACES, CORROSION_TEST],
    cautions: [
      "The treater's and the screw maker's own words, and the local code, go before this order of ranks.",
    ],
    advice: [
      "In treated wood outdoors use hot-dip zinc or stainless steel; near salt or a pool only stainless. Metal ties and their nails to match.",
    ],
  },
]
