import type { Column, Section } from "@pegbook/engine"
import { type BeamReads, beamReads, solveReactions, solveSpans } from "../solvers/beam-table.ts"
import { ARITHMETIC, GEOMETRY, STATICS } from "../sources.ts"
import { BEAM_PATTERN, BEAM_STATICS } from "../sources-actions.ts"

/** Lines of one member, and where their numbers come from. Every text is the name of an entry, or a formula. */
export interface BeamActionsOf {
  /** Begins every name: "skid" gives skid_moment_max. */
  readonly prefix: string
  /** What a reader calls it: "skid", "beam", "joist". */
  readonly member: string
  /** How many lines: a formula. */
  readonly lines: string
  /** Columns of one row a support, line by line: its line and its place along the line. */
  readonly supports: { readonly line: string; readonly at: string }
  /** The length of a line, from 0. */
  readonly length: string
  /** Columns: the line and the place of every joint. */
  readonly joints?: { readonly line: string; readonly at: string }
  /** Formulas of the load per length of a line, in which `line` is its number. */
  readonly load: { readonly dead: string; readonly live: string }
  /** Column of the places where the members above cross and hand down their load. */
  readonly gatheredAt?: string
  /** Name of one force that may stand anywhere. */
  readonly point?: string
  readonly modulus: string
  /** Thickness of all plies together. */
  readonly breadth: string
  readonly depth: string
}

/**
 * What acts in the lines of a member, by statics of continuous beams with their joints.
 *
 * Needs: the names that it is given. Typically supports.line, supports.x, skid_length, skid_count, skid_joints.line,
 * skid_joints.position, dead_load, live_load, skids.carries, skid_thickness, skid_depth, and a modulus of elasticity.
 *
 * Gives, with the prefix before each: `_lines` (table: line, dead, live); `_reactions` (table: line, support, position,
 * dead, full, most, least; the rows are in the order of `supports`, so a template may set its supports' load to
 * INDEX(skid_reactions.full; ROW())); `_spans` (table: line, span, from, length, limit_length, sagging, hogging, moment, moment_at,
 * shear, fall_live, fall_total, bend_share); `_moment_max`, `_moment_sagging`, `_moment_hogging`, `_shear_max`,
 * `_reaction_max`, `_reaction_least`, `_lift_max`, `_deflection_live`, `_deflection_total`, `_deflection_share`
 * (the fall under live load over its span), `_load_total` (of all lines, equal to the sum of `_reactions.full`).
 */
export function beamActions(of: BeamActionsOf): Section {
  const { prefix, member } = of
  const reads: BeamReads = {
    supportLine: of.supports.line,
    supportAt: of.supports.at,
    length: of.length,
    dead: `${prefix}_lines.dead`,
    live: `${prefix}_lines.live`,
    modulus: of.modulus,
    breadth: of.breadth,
    depth: of.depth,
    ...(of.joints === undefined ? {} : { jointLine: of.joints.line, jointAt: of.joints.at }),
    ...(of.gatheredAt === undefined ? {} : { gatheredAt: of.gatheredAt }),
    ...(of.point === undefined ? {} : { point: of.point }),
  }
  const from = beamReads(reads)
  const line: Column = {
    name: "line",
    label: "Line",
    why: "Counted as in the layout.",
    sources: [ARITHMETIC],
    measure: "count",
  }
  const solved = (name: string, label: string, measure: Column["measure"], why: string): Column => ({
    name,
    label,
    measure,
    why,
    sources: [BEAM_STATICS, BEAM_PATTERN],
  })
  const most = (
    name: string,
    label: string,
    measure: Column["measure"],
    formula: string,
    why: string,
  ): Section["entries"][number] => ({
    kind: "formula",
    name: `${prefix}_${name}`,
    label,
    measure,
    formula,
    why,
    sources: [BEAM_STATICS, BEAM_PATTERN],
  })
  return {
    id: `${prefix}-actions`,
    title: `What acts in the ${member}s`,
    says: `How hard each ${member} is bent and sheared, how far it sags, and what it hands to each support.`,
    entries: [
      {
        kind: "table",
        name: `${prefix}_lines`,
        label: `Load on each line of ${member}s`,
        rows: { kind: "formula", formula: of.lines },
        why: "What each foot of the line carries.",
        sources: [STATICS],
        columns: [
          { ...line, formula: "ROW()" },
          {
            name: "dead",
            label: "Own weight of the platform",
            measure: "line_load",
            formula: of.load.dead,
            why: "Always there.",
            sources: [STATICS],
          },
          {
            name: "live",
            label: "People and things",
            measure: "line_load",
            formula: of.load.live,
            why: "Comes and goes, and may stand on some spans only.",
            sources: [STATICS],
          },
        ],
      },
      {
        kind: "table",
        name: `${prefix}_reactions`,
        label: `What each support under the ${member}s carries`,
        rows: { kind: "solved", from, solve: solveReactions(reads) },
        why: `By statics: a ${member} that runs on over a support leans harder on it than half way to each neighbour says, and a joint lets off its neighbours.`,
        sources: [BEAM_STATICS, BEAM_PATTERN],
        cautions: [
          "Supports are taken as equally firm. On soft ground the load moves to the firmer ones.",
          "Your local code and a licensed engineer decide where people's safety leans on this.",
        ],
        columns: [
          line,
          solved("support", "Support in the line", "count", "Counted along the line from the first end."),
          solved("position", "Along the line", "length", "Where the support stands."),
          solved("dead", "From the platform alone", "force", "What the support carries with nobody there."),
          solved("full", "With everything loaded", "force", "Adds up to the whole load, over all supports."),
          solved("most", "At most", "force", "With people on those spans that press hardest here."),
          solved(
            "least",
            "At least",
            "force",
            "With people on the other spans. Below 0 the member would lift off its block unless it is tied down.",
          ),
        ],
      },
      {
        kind: "table",
        name: `${prefix}_spans`,
        label: `Each span of the ${member}s`,
        rows: { kind: "solved", from, solve: solveSpans(reads) },
        why: "From support to support, and the ends that reach past the outer supports.",
        sources: [BEAM_STATICS, BEAM_PATTERN],
        columns: [
          line,
          solved("span", "Span", "count", "Counted along the line from the first end."),
          solved("from", "From", "length", "Where the span begins."),
          solved("length", "Length", "length", "From centre to centre of the supports."),
          solved(
            "limit_length",
            "Length that the sag is held against",
            "length",
            "An overhang counts twice its length, as its tip falls like the middle of a span twice as long.",
          ),
          solved("sagging", "Bending between the supports", "moment", "The underside is pulled."),
          solved("hogging", "Bending over the supports", "moment", "The top is pulled."),
          solved("moment", "Greatest bending", "moment", "The greater of the two decides the size."),
          solved("moment_at", "Where it is bent most", "length", "Keep big knots and cuts away from here."),
          solved(
            "shear",
            "Greatest shear",
            "force",
            "Greatest beside a support. Never notch a member there.",
          ),
          solved("fall_live", "Sag under people", "length", "What comes and goes is what feels springy."),
          solved("fall_total", "Sag in all", "length", "With the platform's own weight."),
          {
            name: "bend_share",
            label: "Sag under people, of the span",
            measure: "ratio",
            formula: "fall_live / limit_length",
            why: "Codes put a limit on this share: 1/360 for many floors.",
            sources: [ARITHMETIC],
          },
        ],
      },
      most(
        "moment_max",
        "Greatest bending",
        "moment",
        `MAX(${prefix}_spans.moment)`,
        "Decides how deep the member must be.",
      ),
      most(
        "moment_sagging",
        "Greatest bending between supports",
        "moment",
        `MAX(${prefix}_spans.sagging)`,
        "Where people stand on every second span.",
      ),
      most(
        "moment_hogging",
        "Greatest bending over a support",
        "moment",
        `MAX(${prefix}_spans.hogging)`,
        "Only where a member runs on over a support; a joint there takes it away.",
      ),
      most(
        "shear_max",
        "Greatest shear",
        "force",
        `MAX(${prefix}_spans.shear)`,
        "Tries to split the member along its grain beside a support.",
      ),
      most(
        "reaction_max",
        "Greatest load on a support",
        "force",
        `MAX(${prefix}_reactions.most)`,
        "What the busiest block and the ground under it carry.",
      ),
      most(
        "reaction_least",
        "Least load on a support",
        "force",
        `MIN(${prefix}_reactions.least)`,
        "A big difference from support to support means uneven sinking on soft ground.",
      ),
      most(
        "lift_max",
        "Greatest lift at a support",
        "force",
        `MAX(0; -${prefix}_reaction_least)`,
        "Above 0, people on one span pry the member off a neighbouring support: tie it down there.",
      ),
      most(
        "deflection_live",
        "Greatest sag under people",
        "length",
        `MAX(${prefix}_spans.fall_live)`,
        "How springy it feels.",
      ),
      most(
        "deflection_total",
        "Greatest sag in all",
        "length",
        `MAX(${prefix}_spans.fall_total)`,
        "With its own weight. Wet timber goes on sagging for years, to about twice this.",
      ),
      most(
        "deflection_share",
        "Greatest sag under people, of its span",
        "ratio",
        `MAX(${prefix}_spans.bend_share)`,
        "The number that codes put a limit on.",
      ),
      {
        kind: "formula",
        name: `${prefix}_load_total`,
        label: `Load on all ${member}s`,
        measure: "force",
        formula: `(SUM(${prefix}_lines.dead) + SUM(${prefix}_lines.live)) * ${of.length}`,
        why: "The supports' loads with everything loaded add up to exactly this.",
        sources: [GEOMETRY],
      },
    ],
  }
}
