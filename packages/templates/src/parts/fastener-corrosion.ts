import type { Entry } from "@pegbook/engine"
import { USER } from "../sources.ts"
import {
  BORATE_EXCEPTION,
  CORROSION_TEST,
  corrosionRank,
  FEDERAL_ADVICE,
  practice,
  RETENTIONS,
  SEVERE_PLACES,
  STAINLESS_GRADES,
  STAINLESS_RETENTION,
  TREATED_FASTENERS,
} from "../sources-frame.ts"
import { rowChoice } from "./row-choice.ts"

const COPPER = "The copper in the treatment eats plain and thinly plated steel."

/** What a treatment asks of a screw, by the ranks of the coatings below. */
const TREATMENTS = [
  {
    treatment: "none, or wood that lasts by itself",
    needs: "2",
    reason: "Bare steel rusts and stains outdoors.",
  },
  {
    treatment: "borate",
    needs: "3",
    reason: "Borate itself spares metal, but plain steel is allowed with it only indoors and dry.",
  },
  { treatment: "micronised copper (MCA)", needs: "3", reason: COPPER },
  { treatment: "copper azole, CA-B", needs: "3", reason: COPPER },
  { treatment: "copper azole, CA-C", needs: "3", reason: COPPER },
  { treatment: "copper quat (ACQ)", needs: "3", reason: COPPER },
  { treatment: "chromated copper arsenate (CCA)", needs: "3", reason: COPPER },
]

const COATINGS = [
  { coating: "plain steel", rank: "1", family: "bare steel" },
  { coating: "electroplated zinc", rank: "2", family: "zinc" },
  { coating: "mechanically plated zinc", rank: "2", family: "zinc" },
  { coating: "hot-dip zinc", rank: "3", family: "zinc" },
  { coating: "stainless 304", rank: "4", family: "stainless" },
  { coating: "stainless 316", rank: "5", family: "stainless" },
]

const SITES = [
  {
    site: "inland",
    needs: "1",
    reason: "away from the sea and from chlorine any metal that the timber allows will do",
  },
  {
    site: "always damp, or often wetted",
    needs: "4",
    reason: "Where copper-treated wood stays wet, even hot-dip zinc goes quickly.",
  },
  { site: "near salt water", needs: "5", reason: "Salt in the air eats zinc, and pits plain stainless." },
  {
    site: "by a pool or a salted road",
    needs: "5",
    reason: "Chlorine and road salt eat zinc, and pit plain stainless.",
  },
]

/** Published retentions, in the order of the use classes UC3B, UC4A and UC4B. */
const RETAINED = [
  { treatment: "micronised copper (MCA)", retained: ["0.06", "0.15", "0.23"] },
  { treatment: "copper azole, CA-B", retained: ["0.1", "0.21", "0.31"] },
  { treatment: "copper azole, CA-C", retained: ["0.06", "0.15", "0.31"] },
  { treatment: "copper quat (ACQ)", retained: ["0.25", "0.4", "0.6"] },
  { treatment: "chromated copper arsenate (CCA)", retained: ["0.25", "0.4", "0.6"] },
]

const perCubicFoot = (at: 0 | 1 | 2): readonly string[] =>
  RETAINED.map(({ retained }) => `${retained[at]} lb/ft3`)

/** Formula: what the tables of treatments and of places say, by the row of the table of demands. */
const ofCause = (column: string): string =>
  rowChoice("cause", [
    {
      row: "the timber",
      formula: `INDEX(timber_treatments.${column}; MATCH(timber_treatment; timber_treatments.treatment; 0))`,
    },
    {
      row: "the place",
      formula: `INDEX(corrosive_sites.${column}; MATCH(corrosive_site; corrosive_sites.site; 0))`,
    },
  ])

/** Formula: what a table of coatings says, in `table.column`, of the coating that an input names. */
export function ofCoating(column: string, coating: string): string {
  return `INDEX(${column}; MATCH(${coating}; ${column.split(".")[0]}.coating; 0))`
}

/** Whether the timber and the site eat the screws. Needs nothing. */
export const fastenerCorrosion: readonly Entry[] = [
  {
    kind: "table",
    name: "timber_treatments",
    label: "What treatments ask of a screw",
    rows: { kind: "figures" },
    why: "The copper that keeps wood from rotting eats the zinc off a screw, and then the steel.",
    sources: [TREATED_FASTENERS, corrosionRank("d-024"), FEDERAL_ADVICE],
    columns: [
      {
        name: "treatment",
        label: "Treatment",
        measure: "text",
        values: TREATMENTS.map(({ treatment }) => treatment),
        why: "It is on the tag at the end of the timber.",
        sources: ["d-024", "d-025", "d-026", "d-027"].map(corrosionRank),
      },
      {
        name: "needs",
        label: "Rank needed",
        measure: "count",
        values: TREATMENTS.map(({ needs }) => needs),
        why: "The code wants hot-dip zinc or better in all treated wood outdoors. Borate is easier on metal, but plain steel is allowed with it only indoors and dry.",
        sources: [TREATED_FASTENERS, BORATE_EXCEPTION, corrosionRank("d-028")],
      },
      {
        name: "reason",
        label: "Because",
        measure: "text",
        values: TREATMENTS.map(({ reason }) => reason),
        why: "Said again where a check fails.",
        sources: [TREATED_FASTENERS, BORATE_EXCEPTION],
      },
    ],
  },
  {
    kind: "table",
    name: "screw_coatings",
    label: "How well screws are protected",
    rows: { kind: "figures" },
    why: "A plain order of ranks, higher lasts longer. It is not a measure of years.",
    sources: [TREATED_FASTENERS, STAINLESS_GRADES, practice("ranks of protection")],
    columns: [
      {
        name: "coating",
        label: "Screw",
        measure: "text",
        values: COATINGS.map(({ coating }) => coating),
        why: "It is on the box. A coating of the maker's own counts as what a test report for your treatment says it equals.",
        sources: [TREATED_FASTENERS, STAINLESS_GRADES],
      },
      {
        name: "rank",
        label: "Rank",
        measure: "count",
        values: COATINGS.map(({ rank }) => rank),
        why: "The code does not let wood screws be plated mechanically only, so they rank with the electroplated.",
        sources: [TREATED_FASTENERS, CORROSION_TEST, STAINLESS_GRADES],
      },
      {
        name: "family",
        label: "Metal",
        measure: "text",
        values: COATINGS.map(({ family }) => family),
        why: "Two metals that touch in wet wood corrode.",
        sources: [SEVERE_PLACES],
      },
    ],
  },
  {
    kind: "table",
    name: "corrosion_findings",
    label: "Who says what about plated screws",
    rows: { kind: "figures" },
    why: "The sources disagree. Pegbook follows the code, and shows you the other finding rather than hide it.",
    sources: [TREATED_FASTENERS, FEDERAL_ADVICE, CORROSION_TEST],
    columns: [
      {
        name: "who",
        label: "Who",
        measure: "text",
        values: ["building code", "government advice", "government laboratory test"],
        why: "All three were read.",
        sources: [TREATED_FASTENERS, FEDERAL_ADVICE, CORROSION_TEST],
      },
      {
        name: "finding",
        label: "What it says of treated wood",
        measure: "text",
        values: [
          "hot-dip zinc, stainless, bronze or copper; wood screws not mechanically plated only",
          "hot-dip zinc with connectors of G185; no bare aluminium",
          "nails in ACQ at 100 % humidity: electroplated zinc went more slowly than hot-dip",
        ],
        why: "A test of weeks in one climate is no reason to go against the code.",
        sources: [TREATED_FASTENERS, FEDERAL_ADVICE, CORROSION_TEST],
      },
      {
        name: "followed",
        label: "Followed here",
        measure: "text",
        values: ["yes", "yes", "no"],
        why: "The check goes by the code.",
        sources: [TREATED_FASTENERS],
      },
    ],
  },
  {
    kind: "table",
    name: "corrosive_sites",
    label: "What the place asks of a screw",
    rows: { kind: "figures" },
    why: "Salt and chlorine do more harm than the treatment does.",
    sources: [SEVERE_PLACES, STAINLESS_GRADES],
    columns: [
      {
        name: "site",
        label: "Place",
        measure: "text",
        values: SITES.map(({ site }) => site),
        why: "Where the platform stands.",
        sources: [SEVERE_PLACES],
      },
      {
        name: "needs",
        label: "Rank needed",
        measure: "count",
        values: SITES.map(({ needs }) => needs),
        why: "Stainless 304 serves in wet places inland; near salt or pool chemicals it pits, and 316 lasts.",
        sources: [STAINLESS_GRADES, SEVERE_PLACES],
      },
      {
        name: "reason",
        label: "Because",
        measure: "text",
        values: SITES.map(({ reason }) => reason),
        why: "Said again where a check fails.",
        sources: [SEVERE_PLACES],
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
    name: "corrosive_site",
    label: "Where it stands",
    measure: "text",
    default: "inland",
    choices: SITES.map(({ site }) => site),
    why: "Near the sea, a pool or a salted road only the better stainless steel lasts.",
    sources: [USER, SEVERE_PLACES],
  },
  {
    kind: "input",
    name: "screw_coating",
    label: "Metal of the screws",
    measure: "text",
    default: "hot-dip zinc",
    choices: COATINGS.map(({ coating }) => coating),
    why: "Screws and metal ties should be of the same metal: two metals that touch in wet wood corrode.",
    sources: [USER, SEVERE_PLACES],
  },
  {
    kind: "table",
    name: "corrosion_demands",
    label: "What this timber and this place ask of a screw",
    rows: { kind: "figures" },
    why: "The harder of the two decides.",
    sources: [TREATED_FASTENERS, SEVERE_PLACES],
    columns: [
      {
        name: "cause",
        label: "Asked by",
        measure: "text",
        values: ["the timber", "the place"],
        why: "As chosen above.",
        sources: [USER],
      },
      {
        name: "needs",
        label: "Rank needed",
        measure: "count",
        formula: ofCause("needs"),
        why: "From the table of treatments, and from the table of places.",
        sources: [TREATED_FASTENERS, SEVERE_PLACES],
      },
      {
        name: "reason",
        label: "Because",
        measure: "text",
        formula: ofCause("reason"),
        why: "Said again where a check fails.",
        sources: [TREATED_FASTENERS, SEVERE_PLACES],
      },
    ],
  },
  {
    kind: "formula",
    name: "fastener_reason",
    label: "Why that rank",
    measure: "text",
    formula:
      "INDEX(corrosion_demands.reason; MATCH(MAX(corrosion_demands.needs); corrosion_demands.needs; 0))",
    why: "Whichever of the two asks for more.",
    sources: [TREATED_FASTENERS, SEVERE_PLACES],
  },
  {
    kind: "formula",
    name: "fastener_needed",
    label: "Least screw for this timber and place",
    measure: "text",
    formula: "INDEX(screw_coatings.coating; MATCH(MAX(corrosion_demands.needs); screw_coatings.rank; 0))",
    why: "The first in the table that reaches the rank.",
    sources: [TREATED_FASTENERS, STAINLESS_GRADES],
  },
  {
    kind: "check",
    name: "fastener_corrosion_check",
    label: "Screws that the timber and the place do not eat",
    measure: "count",
    demand: "MAX(corrosion_demands.needs)",
    limit: ofCoating("screw_coatings.rank", "screw_coating"),
    sense: "at_most",
    why: "Screws that rust through inside the wood give no sign until a board comes loose.",
    sources: [TREATED_FASTENERS, BORATE_EXCEPTION, SEVERE_PLACES, CORROSION_TEST],
    cautions: [
      "The treater's and the screw maker's own words, and the local code, go before this order of ranks.",
    ],
    advice: ["Take {fastener_needed} or better, and metal ties with their nails to match. {fastener_reason}"],
  },
  {
    kind: "table",
    name: "treatment_retentions",
    label: "Preservative that stays in the wood",
    rows: { kind: "figures" },
    why: "Timber for harder use holds more preservative, and more of it eats more metal. The tag at the end of the timber says how much yours holds.",
    sources: [RETENTIONS],
    columns: [
      {
        name: "treatment",
        label: "Treatment",
        measure: "text",
        values: RETAINED.map(({ treatment }) => treatment),
        why: "As named on the tag.",
        sources: [RETENTIONS],
      },
      {
        name: "above_ground",
        label: "UC3B",
        measure: "density",
        values: perCubicFoot(0),
        why: "Above the ground.",
        sources: [RETENTIONS],
      },
      {
        name: "ground_contact",
        label: "UC4A",
        measure: "density",
        values: perCubicFoot(1),
        why: "In contact with the ground.",
        sources: [RETENTIONS],
      },
      {
        name: "heavy_duty",
        label: "UC4B",
        measure: "density",
        values: perCubicFoot(2),
        why: "In contact with the ground, hard use.",
        sources: [RETENTIONS],
      },
    ],
  },
  {
    kind: "table",
    name: "stainless_retentions",
    label: "Above this retention, stainless is advised",
    rows: { kind: "figures" },
    why: "Where the tag says more than this, a trade article advises stainless steel though the code would take hot-dip zinc.",
    sources: [STAINLESS_RETENTION],
    columns: [
      {
        name: "treatment",
        label: "Treatment",
        measure: "text",
        values: ["copper quat (ACQ)", "copper azole, CBA-A", "copper azole, CA-B"],
        why: "As named on the tag.",
        sources: [STAINLESS_RETENTION],
      },
      {
        name: "above",
        label: "More than",
        measure: "density",
        values: ["0.4 lb/ft3", "0.41 lb/ft3", "0.21 lb/ft3"],
        why: "Advice, not a rule: no check leans on it.",
        sources: [STAINLESS_RETENTION],
      },
    ],
  },
]
