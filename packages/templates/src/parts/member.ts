import type { Remedy } from "@pegbook/engine"
import type { MemberLines } from "../solvers/member-actions.ts"

/** What every kind of member has, by the names of entries that the template has. Texts are formulas. */
interface OfMember {
  /** What a reader calls them: "joists". */
  readonly member: string
  /** Nominal size, as in `size_classes`; one ply's thickness and depth. */
  readonly size: string
  readonly thickness: string
  readonly depth: string
  /** Pieces side by side that bend together. */
  readonly plies?: string
  /** Spacing of members that share their load; without, each carries alone. */
  readonly shares?: string
  /** One force anywhere on it, a formula; without, the `point_load` of the thresholds. */
  readonly point?: string
  /** How far its upper edge is free between things that hold it, a formula; without, sheets or boards hold it all along. */
  readonly held?: string
  /** How long its load lasts in all; without, as long as the template's `load_duration`. */
  readonly duration?: string
}

/** A row of `members`, with a check of its own. */
interface Checked {
  /** The name of its check: "joist_check". */
  readonly check: string
  /** What a reader calls one of them: "joist". */
  readonly noun: string
  /** What to try, the cheapest first. */
  readonly remedies: readonly Remedy[]
  /** What no single input does. */
  readonly advice?: readonly string[]
}

/** A member that lies on supports and carries floor: its actions are solved. */
export interface FloorMember extends OfMember, Checked, MemberLines {
  /** How long the piece lies on its support. */
  readonly seat: string
  /** Most plies that a joint interrupts at one support, where others run through. */
  readonly interrupted?: string
}

/**
 * A member whose actions are formulas, each with its load factors: a post that wind bends, a board over one bay. They may name the
 * columns before them in its row.
 */
export interface LoneMember extends OfMember {
  /** How long it lies on its support; without, as of a post that lies on none, its depth. */
  readonly seat?: string
  readonly acts: {
    readonly covered: string
    readonly span: string
    readonly moment: string
    readonly shear: string
    /** On one seat; without, none. */
    readonly reaction?: string
    /** Its fastening, of what that may bear: counts for its check, and for what gives first. */
    readonly joint?: string
    /** Under people, and in all, for a stiffness of `design_thresholds.stiffness`; without, its sag is not held against a limit. */
    readonly sag?: { readonly live: string; readonly total: string }
  }
}

export type PlatformMember = FloorMember | (LoneMember & Checked)
export type AnyMember = FloorMember | LoneMember

export const isFloor = (member: AnyMember): member is FloorMember => !("acts" in member)

export const threshold = (name: string): string => `INDEX(design_thresholds.${name}; 1)`

/** For members that nothing stands on in one place. */
export const NO_POINT = `0 * ${threshold("point_load")}`
