import type { FigureEntry, FormulaEntry, Section, Source } from "@pegbook/engine"
import { BEAM_STABILITY, COLUMN_STABILITY, STATICS_HANDBOOK } from "../sources-strength.ts"
import { figureTable, isRead } from "./figure-table.ts"

const figure = (name: string, value: string, label: string, why: string, source: Source): FigureEntry => ({
  kind: "figure",
  name,
  label,
  measure: "ratio",
  value,
  why,
  sources: [source],
})

const formula = (
  name: string,
  label: string,
  measure: FormulaEntry["measure"],
  text: string,
  why: string,
  source: Source,
): FormulaEntry => ({ kind: "formula", name, label, measure, formula: text, why, sources: [source] })

/** Names of entries: two lengths of the section, the length without side support, and stresses that are already adjusted. */
export interface Slender {
  readonly prefix: string
  readonly label: string
  readonly thickness: string
  readonly depth: string
  readonly unbraced: string
  /** Of a beam: Fb with every factor but CL. Of a post: Fc along the grain with every factor but CP. */
  readonly stress: string
  readonly eMin: string
}

/**
 * What is taken off a beam that nothing keeps from leaning over: `<prefix>_stability_factor`, CL.
 * `loadCase`: the name of an entry with one of the texts in the table `effective_lengths`.
 */
export function beamStability(beam: Slender & { readonly loadCase: string }): Section {
  const { prefix: p, label } = beam
  const le = (column: string): string =>
    `INDEX(effective_lengths.${column}; MATCH(${beam.loadCase}; effective_lengths.case; 0))`
  const share = `(1 + ${p}_buckling_ratio) / beam_buckling_spread`
  return {
    id: `${p}-stability`,
    title: `${label}: leaning over`,
    says: "A tall thin beam whose upper edge is free leans over before it breaks.",
    entries: [
      figure(
        "slender_from",
        "7",
        "Long when its free length over depth is at least",
        "From here another rule for the length counts.",
        BEAM_STABILITY,
      ),
      figure(
        "buckling_share",
        "1.2",
        "Buckling stress: E over RB² times",
        "FbE = 1.20 E′min ÷ RB².",
        BEAM_STABILITY,
      ),
      figure(
        "beam_buckling_spread",
        "1.9",
        "Spread of the beam rule",
        "From the published rule for CL.",
        BEAM_STABILITY,
      ),
      figure(
        "beam_buckling_meeting",
        "0.95",
        "Meeting of crushing and buckling in beams",
        "From the published rule for CL.",
        BEAM_STABILITY,
      ),
      figureTable({
        name: "effective_lengths",
        label: "Free lengths that count",
        why: "An even load leans a beam over less than a load in one place.",
        sources: [BEAM_STABILITY],
        columns: {
          case: { label: "Load", measure: "text", why: "How the beam is loaded and held." },
          short: { label: "Short: free length times", measure: "ratio", why: "When short for its depth." },
          long: { label: "Long: free length times", measure: "ratio", why: "When long for its depth." },
          depths: { label: "Long: plus depths", measure: "ratio", why: "Added when long." },
          origin: isRead,
        },
        rows: [
          { case: "even load", short: "2.06", long: "1.63", depths: "3", origin: "read" },
          { case: "load at midspan", short: "1.8", long: "1.37", depths: "3", origin: "read" },
          { case: "load at midspan, held there", short: "1.11", long: "1.11", depths: "0", origin: "read" },
          { case: "cantilever, even load", short: "1.33", long: "0.9", depths: "3", origin: "from memory" },
          {
            case: "cantilever, load at end",
            short: "1.87",
            long: "1.44",
            depths: "3",
            origin: "from memory",
          },
        ],
      }),
      formula(
        `${p}_effective_length`,
        `${label}: free length that counts`,
        "length",
        `IF(${beam.unbraced} < slender_from * ${beam.depth}; ${le("short")} * ${beam.unbraced}; ${le("long")} * ${beam.unbraced} + ${le("depths")} * ${beam.depth})`,
        "By how the load stands.",
        BEAM_STABILITY,
      ),
      formula(
        `${p}_slenderness`,
        `${label}: slenderness, RB`,
        "ratio",
        `SQRT(${p}_effective_length * ${beam.depth} / ${beam.thickness} ^ 2)`,
        "May not be more than 50.",
        BEAM_STABILITY,
      ),
      figure(
        "slenderness_most",
        "50",
        "Slenderness of a beam, no more than",
        "Beyond this the rule does not hold.",
        BEAM_STABILITY,
      ),
      formula(
        `${p}_buckling_stress`,
        `${label}: stress at which it leans over`,
        "stress",
        `buckling_share * ${beam.eMin} / ${p}_slenderness ^ 2`,
        "FbE of the published rule.",
        BEAM_STABILITY,
      ),
      formula(
        `${p}_buckling_ratio`,
        `${label}: that stress over Fb`,
        "ratio",
        `${p}_buckling_stress / ${beam.stress}`,
        "The larger, the less is taken off.",
        BEAM_STABILITY,
      ),
      formula(
        `${p}_stability_factor`,
        `${label}: beam stability factor, CL`,
        "ratio",
        `IF(${p}_slenderness > slenderness_most; NA(); ${share} - SQRT((${share}) ^ 2 - ${p}_buckling_ratio / beam_buckling_meeting))`,
        "On bending strength.",
        BEAM_STABILITY,
      ),
    ],
  }
}

/** What is taken off a post that may bow out: `<prefix>_stability_factor`, CP, and `<prefix>_capacity`. */
export function postStability(post: Slender): Section {
  const { prefix: p, label } = post
  const half = `(1 + ${p}_buckling_ratio) / (2 * post_buckling_shape)`
  return {
    id: `${p}-stability`,
    title: `${label}: bowing out`,
    says: "A slim post bows out before it is crushed.",
    entries: [
      figure(
        "post_buckling_share",
        "0.822",
        "Buckling stress: E over (length ÷ side)² times",
        "FcE = 0.822 E′min ÷ (le ÷ d)².",
        COLUMN_STABILITY,
      ),
      figure(
        "post_buckling_shape",
        "0.8",
        "Shape of the rule for sawn timber, c",
        "Sawn timber is less even than glued.",
        COLUMN_STABILITY,
      ),
      formula(
        `${p}_buckling_stress`,
        `${label}: stress at which it bows out`,
        "stress",
        `post_buckling_share * ${post.eMin} / (${post.unbraced} / MIN(${post.thickness}; ${post.depth})) ^ 2`,
        "FcE, about the thinner side.",
        COLUMN_STABILITY,
      ),
      formula(
        `${p}_buckling_ratio`,
        `${label}: that stress over Fc`,
        "ratio",
        `${p}_buckling_stress / ${post.stress}`,
        "The larger, the less is taken off.",
        COLUMN_STABILITY,
      ),
      formula(
        `${p}_stability_factor`,
        `${label}: column stability factor, CP`,
        "ratio",
        `${half} - SQRT((${half}) ^ 2 - ${p}_buckling_ratio / post_buckling_shape)`,
        "On strength along the grain.",
        COLUMN_STABILITY,
      ),
      formula(
        `${p}_capacity`,
        `${label}: load it can take`,
        "force",
        `${post.stress} * ${p}_stability_factor * ${post.thickness} * ${post.depth}`,
        "Stress that is left, times the section.",
        STATICS_HANDBOOK,
      ),
    ],
  }
}
