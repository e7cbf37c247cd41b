import type { Column, MeasureId, Section, Source } from "@pegbook/engine"
import { column } from "../columns.ts"
import { FOUND, sizeClass } from "../parts/member-values.ts"
import { ARITHMETIC, GEOMETRY, PS_20, STATICS, USER } from "../sources.ts"
import {
  COLUMN_STABILITY,
  DESIGN_VALUES,
  INCISED_SPECIES,
  INCISING,
  LOAD_DURATION,
  SIZE_FACTORS,
  WET_SERVICE,
} from "../sources-strength.ts"
import { lookUp } from "../strength/member.ts"

const step = (name: string): string => `INDEX(post_strength.${name}; 1)`
const wet = (name: string): string =>
  `IF(wet_service; INDEX(wet_factors.${name}; MATCH(thickness_class; wet_factors.thickness; 0)); 1)`
const incising = (name: string): string =>
  `IF(AND(incised; ${lookUp("species_traits", "incised", "species", "species")}); ${name}; 1)`
const known = (formula: string): string => `IF(found = 0; NA(); ${formula})`

/** Name, label, measure, formula, why and source of a step. */
type Step = readonly [string, string, MeasureId, string, string, Source]

// biome-ignore format: one step a line
const STEPS: readonly Column[] = ([
  ["size", "Size", "text", "post_size", "As it is sold.", USER],
  ["thickness", "Narrow side", "length", lookUp("dressed_sizes", "thickness", "size", "nominal"), "As it is planed. It bows out this way.", PS_20],
  ["depth", "Wide side", "length", lookUp("dressed_sizes", "depth", "size", "nominal"), "As it is planed.", PS_20],
  ["area", "Area", "area", "thickness * depth", "That bears the load.", GEOMETRY],
  ["thickness_class", "Class of thickness", "text", sizeClass("thickness_class"), "Timbers of 5 in and more are graded by other rules.", PS_20],
  ["sizes", "Class of published values", "text", sizeClass("grading"), "Where a species is published by width or shape.", DESIGN_VALUES],
  ["found", "Row of the published table", "count", FOUND, "0 where the table has no row for this species, grade and size: then there is no answer.", DESIGN_VALUES],
  ["fc_published", "Compression, published: Fc", "stress", known("INDEX(design_values.fc; found)"), "Along the grain, before any factor.", DESIGN_VALUES],
  ["e_min_published", "Low stiffness, published: Emin", "stress", known("INDEX(design_values.e_min; found)"), "For bowing out, before any factor.", DESIGN_VALUES],
  ["duration_factor", "Load duration factor, CD", "ratio", lookUp("load_durations", "factor", "load_duration", "duration"), "On strength, not on stiffness.", LOAD_DURATION],
  ["size_factor", "Size factor, CF", "ratio", known(`IF(OR(INDEX(design_values.size_inside; MAX(1; found)); thickness_class = "5 in and more"); 1; INDEX(size_factors.compression; MATCH(${sizeClass("width")}; size_factors.width; 0)))`), "On compression. 1 where the size is inside the published value.", SIZE_FACTORS],
  ["wet_factor", "Wet service factor on compression", "ratio", wet("fc"), "1 where it stays dry.", WET_SERVICE],
  ["wet_stiffness_factor", "Wet service factor on stiffness", "ratio", wet("e"), "1 where it stays dry.", WET_SERVICE],
  ["incising_factor", "Incising factor on strength", "ratio", incising("incising_strength_factor"), "Only a species that needs it.", INCISED_SPECIES],
  ["incising_stiffness_used", "Incising factor on stiffness", "ratio", incising("incising_stiffness_factor"), "The slits cost little stiffness.", INCISING],
  ["fc_star", "Compression before bowing out: Fc*", "stress", "fc_published * duration_factor * wet_factor * temperature_factor * size_factor * incising_factor", "The published value with every factor but the last.", COLUMN_STABILITY],
  ["e_min_used", "Low stiffness in use", "stress", "e_min_published * wet_stiffness_factor * temperature_factor * incising_stiffness_used", "The published value with its factors.", COLUMN_STABILITY],
  ["free_length", "Length that counts", "length", "post_end_factor * post_height", "By how its ends are held.", COLUMN_STABILITY],
  ["slenderness", "Slenderness", "ratio", "free_length / MIN(thickness; depth)", "That length over the narrow side.", COLUMN_STABILITY],
  ["bowing_stress", "Stress at which it bows out: FcE", "stress", "bowing_share * e_min_used / slenderness ^ 2", "Twice the height, a quarter of it.", COLUMN_STABILITY],
  ["bowing_ratio", "FcE over Fc*", "ratio", "bowing_stress / fc_star", "Below 1 it bows out before it is crushed.", COLUMN_STABILITY],
  ["half_sum", "Half sum of the rule", "ratio", "(1 + bowing_ratio) / (2 * bowing_shape)", "A step of the rule for CP.", COLUMN_STABILITY],
  ["stability_factor", "Column stability factor, CP", "ratio", "half_sum - SQRT(half_sum ^ 2 - bowing_ratio / bowing_shape)", "1 for a short block; the taller and slimmer, the less is left.", COLUMN_STABILITY],
  ["fc_allowed", "Compression it may bear", "stress", "fc_star * stability_factor", "All factors in.", COLUMN_STABILITY],
  ["stress", "Compression under your load", "stress", "post_load / area", "Load over area.", STATICS],
  ["load_allowed", "Load it may carry", "force", "fc_allowed * area", "Straight down.", STATICS],
  ["ratio", "Of what it may bear", "share", "stress / fc_allowed", "Over 100 % it bows out or is crushed.", STATICS],
] satisfies readonly Step[]).map(([name, label, measure, formula, why, source]: Step) => column(name, label, measure, formula, why, source))

const figure = (name: string, label: string, value: string, why: string) =>
  ({ kind: "figure", name, label, measure: "ratio", value, why, sources: [COLUMN_STABILITY] }) as const

/**
 * A post under a load straight down. Needs: species, grade, wet_service, incised, load_duration, the published tables, near_limit_share.
 * Gives: post_size, post_height, post_load, post_end_factor, bowing_share, bowing_shape, post_slenderness_most, post_strength (one row),
 * post_load_allowed, post_check, post_slenderness_check.
 */
export const post: Section = {
  id: "post",
  title: "The post and its load",
  says: "Which post it is, how tall, and what stands on it.",
  entries: [
    {
      kind: "input",
      name: "post_size",
      label: "Post size",
      measure: "text",
      default: "4x4",
      choices: ["4x4", "4x6", "6x6", "89x89", "89x140", "140x140"],
      why: "The name of the timber in the shop.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "post_height",
      label: "Height between what holds it",
      measure: "length",
      default: "4 ft",
      least: "1 in",
      most: "40 ft",
      why: "From where its foot is held sideways to where its head is.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "post_load",
      label: "Load on the post",
      measure: "force",
      default: "2000 lb",
      least: "1 lb",
      most: "200000 lb",
      why: "What the beam on it hands down: the floor that it carries, times dead and live load.",
      sources: [USER],
    },
    figure(
      "post_end_factor",
      "Length that counts, over the height",
      "1",
      "Ke. 1 where both ends are held sideways but can turn, as on a post base and under a beam.",
    ),
    figure(
      "bowing_share",
      "Stiffness over slenderness squared, times",
      "0.822",
      "FcE = 0.822 E′min ÷ slenderness².",
    ),
    figure("bowing_shape", "Shape of the rule: c", "0.8", "Of sawn timber."),
    figure("post_slenderness_most", "Slenderness at most", "50", "Beyond this the rule does not hold."),
    {
      kind: "table",
      name: "post_strength",
      label: "The post, step by step",
      why: "From the published strength to the load it may carry, in one row.",
      sources: [COLUMN_STABILITY, DESIGN_VALUES],
      rows: { kind: "formula", formula: "1" },
      columns: STEPS,
    },
    {
      kind: "formula",
      name: "post_load_allowed",
      label: "Load that the post may carry",
      measure: "force",
      formula: step("load_allowed"),
      why: "The answer. Beams are often crushed across the grain where they sit on it before that: check their seat as well.",
      sources: [COLUMN_STABILITY],
    },
    {
      kind: "check",
      name: "post_check",
      label: "Does the post carry its load?",
      measure: "force",
      demand: "post_load",
      limit: "post_load_allowed",
      covered: `AND(${step("found")} > 0; ${step("slenderness")} <= post_slenderness_most)`,
      sense: "at_most",
      near: "near_limit_share",
      why: "A tall, slim post bows out sideways long before it is crushed.",
      sources: [COLUMN_STABILITY, ARITHMETIC],
      advice: [
        "Take a thicker post, a shorter one, or more of them: {post_load} stand on one that may carry {post_load_allowed}.",
      ],
      remedies: [
        { input: "post_size", toward: "more" },
        { input: "post_height", toward: "less", step: "6 in" },
      ],
    },
    {
      kind: "check",
      name: "post_slenderness_check",
      label: "Is the post stout enough for the rule?",
      measure: "ratio",
      demand: step("slenderness"),
      limit: "post_slenderness_most",
      sense: "at_most",
      why: "A post slimmer than this must not be used at all, however small its load.",
      sources: [COLUMN_STABILITY],
      advice: ["Take a thicker post, or hold it sideways half way up."],
      remedies: [
        { input: "post_size", toward: "more" },
        { input: "post_height", toward: "less", step: "6 in" },
      ],
    },
  ],
}
