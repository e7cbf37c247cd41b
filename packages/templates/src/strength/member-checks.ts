import type { CheckEntry, FormulaEntry, Section } from "@pegbook/engine"
import {
  BEARING_LENGTH,
  DEFLECTION,
  DESIGN_VALUES,
  SHEAR_STRESS,
  STATICS_HANDBOOK,
} from "../sources-strength.ts"
import { type Member, namesOf } from "./member.ts"

/** Names of entries that say what a member has to bear. */
export interface Demands {
  readonly moment: string
  readonly shear: string
  /** On one seat. */
  readonly reaction: string
  readonly deflection: string
  readonly deflectionLimit: string
  /** Length of the seat along the member. */
  readonly seat: string
}

/** Columns of a table that hold a member's stresses, one row a species. */
export interface Stresses {
  readonly fb: string
  readonly fv: string
  readonly fcPerp: string
  readonly e: string
}

export const allowableStresses = (prefix: string): Stresses => ({
  fb: `${prefix}_stresses.fb_adjusted`,
  fv: `${prefix}_stresses.fv_adjusted`,
  fcPerp: `${prefix}_stresses.fc_perp_adjusted`,
  e: `${prefix}_stresses.e_adjusted`,
})

/**
 * The least stress of the group's species, and what the member's section bears under it.
 *
 * Gives: `<prefix>_fb_adjusted`, `_fv_adjusted`, `_fc_perp_adjusted`, `_e_adjusted`, `_section_modulus`,
 * `_moment_capacity`, `_shear_capacity`.
 */
export function memberCapacity(
  member: Member,
  stresses: Stresses = allowableStresses(member.prefix),
): Section {
  const { p, width } = namesOf(member)
  const stress = (name: string, label: string, from: string, why: string): FormulaEntry => ({
    kind: "formula",
    name: `${p}_${name}_adjusted`,
    label: `${member.label}: ${label}`,
    measure: "stress",
    formula: `MIN(${from})`,
    why,
    sources: [DESIGN_VALUES],
  })
  return {
    id: `${p}-capacity`,
    title: `${member.label}: what the section carries`,
    says: "The least species of the group, times the shape of the piece.",
    entries: [
      stress("fb", "bending stress it may bear", stresses.fb, "The weakest species of the group in bending."),
      stress("fv", "shear stress it may bear", stresses.fv, "The weakest species of the group in shear."),
      stress(
        "fc_perp",
        "bearing stress it may bear",
        stresses.fcPerp,
        "The softest species of the group across the grain.",
      ),
      stress("e", "stiffness in use", stresses.e, "The springiest species of the group."),
      {
        kind: "formula",
        name: `${p}_section_modulus`,
        label: `${member.label}: section modulus`,
        measure: "volume",
        formula: `${width} * ${member.depth} ^ 2 / section_modulus_divisor`,
        why: "How well the shape resists bending. Twice the depth counts four times, twice the width only twice.",
        sources: [STATICS_HANDBOOK],
      },
      {
        kind: "formula",
        name: `${p}_moment_capacity`,
        label: `${member.label}: moment it can take`,
        measure: "moment",
        formula: `${p}_fb_adjusted * ${p}_section_modulus`,
        why: "Bending stress times section modulus.",
        sources: [STATICS_HANDBOOK],
      },
      {
        kind: "formula",
        name: `${p}_shear_capacity`,
        label: `${member.label}: shear it can take`,
        measure: "force",
        formula: `${p}_fv_adjusted * ${width} * ${member.depth} / shear_shape_factor`,
        why: "Shear stress times the area, with its peak in the middle of the depth.",
        sources: [SHEAR_STRESS],
      },
    ],
  }
}

/**
 * Checks of a member against its capacity: `<prefix>_bending_check`, `_shear_check`, `_bearing_check`,
 * `_deflection_check`, and `<prefix>_seat_needed`. `covered`: the name of a yes or no; no gives "outside the table".
 * `bearingCheck`: another name for the check of the seat. Needs {@link memberCapacity} and near_limit_share.
 */
export function memberChecks(
  member: Member,
  demands: Demands,
  options: { readonly covered?: string; readonly bearingCheck?: string } = {},
): Section {
  const { p, width } = namesOf(member)
  const covered = options.covered ?? `${p}_published`
  const check = (
    given: Pick<CheckEntry, "name" | "label" | "why" | "measure" | "demand" | "limit" | "advice" | "sources">,
  ): CheckEntry => ({ kind: "check", sense: "at_most", near: "near_limit_share", covered, ...given })
  return {
    id: `${p}-strength-checks`,
    title: `${member.label}: strong and stiff enough?`,
    says: "What the loads ask for, against what the piece can take.",
    entries: [
      check({
        name: `${p}_bending_check`,
        label: `${member.label}: bending`,
        why: "Too much bending breaks a piece at its lower edge, in the middle of the span.",
        measure: "moment",
        demand: demands.moment,
        limit: `${p}_moment_capacity`,
        advice: [
          `Choose a deeper size, a shorter span, a closer spacing or a better grade: a moment of {${demands.moment}} meets {${p}_moment_capacity}.`,
        ],
        sources: [STATICS_HANDBOOK, DESIGN_VALUES],
      }),
      check({
        name: `${p}_shear_check`,
        label: `${member.label}: shear`,
        why: "Too much shear splits a piece along the grain near its end. The full force at the support is counted.",
        measure: "force",
        demand: demands.shear,
        limit: `${p}_shear_capacity`,
        advice: [
          `Choose a larger size or a shorter span: a shear of {${demands.shear}} meets {${p}_shear_capacity}.`,
        ],
        sources: [SHEAR_STRESS],
      }),
      check({
        name: options.bearingCheck ?? `${p}_bearing_check`,
        label: `${member.label}: bearing on its seat`,
        why: "The wood is crushed across the grain where it sits. Span tables leave this out, so it is checked apart.",
        measure: "stress",
        demand: `${demands.reaction} / (${width} * ${demands.seat})`,
        limit: `${p}_fc_perp_adjusted`,
        advice: [`Give it a seat of at least {${p}_seat_needed}, or shorten the span.`],
        sources: [BEARING_LENGTH, DESIGN_VALUES],
      }),
      {
        kind: "formula",
        name: `${p}_seat_needed`,
        label: `${member.label}: seat needed`,
        measure: "length",
        formula: `${demands.reaction} / (${width} * ${p}_fc_perp_adjusted)`,
        why: "How much of the piece has to rest on its support.",
        sources: [BEARING_LENGTH, DESIGN_VALUES],
      },
      check({
        name: `${p}_deflection_check`,
        label: `${member.label}: sag`,
        why: "A floor that sags more than this feels soft and cracks what lies on it, long before it breaks.",
        measure: "length",
        demand: demands.deflection,
        limit: demands.deflectionLimit,
        advice: [
          `It sags {${demands.deflection}} where {${demands.deflectionLimit}} is accepted: choose a deeper size or a shorter span.`,
        ],
        sources: [DEFLECTION, STATICS_HANDBOOK],
      }),
    ],
  }
}
