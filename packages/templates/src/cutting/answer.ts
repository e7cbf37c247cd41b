import type { Case } from "./problem.ts"

/** Some boards that are cut alike. */
export interface CutBoards {
  readonly stock: string
  readonly count: number
  /** In the order of the cuts, longest first. */
  readonly pieces: readonly number[]
}

export interface BoardPlan {
  readonly boards: readonly CutBoards[]
  readonly buy: readonly { readonly stock: string; readonly quantity: number }[]
}

export interface SplicePlan {
  /** For each skid, the supports on which its pieces meet. */
  readonly joints: readonly (readonly number[])[]
  readonly boards: readonly {
    readonly stock: string
    readonly n: number
    readonly pieces: readonly number[]
  }[]
}

/** A sheet: crosscut into full-width pieces and at most one block, which is ripped into strips: `[height, how many]`. */
export interface CutSheets {
  readonly n: number
  readonly full: readonly number[]
  readonly block?: number
  readonly rip?: readonly (readonly [height: number, count: number])[]
}

/** A strip that was ripped from a block as long as `cap`, and is crosscut. */
export interface CutStrips {
  readonly n: number
  readonly strip: number
  readonly cap: number
  readonly cut: readonly number[]
}

export interface SheetPlan {
  readonly joints: readonly (readonly number[])[]
  readonly cuts: readonly (CutSheets | CutStrips)[]
}

export interface BuyPlan {
  readonly packs: readonly {
    readonly line: string
    readonly supplier: string
    readonly packSize: number
    readonly packs: number
    /** The offer's place in the case, from 0, where another offer is alike in line, supplier and pack. */
    readonly offer?: number
  }[]
}

export type Plan =
  | ({ readonly kind: "cut" } & BoardPlan)
  | ({ readonly kind: "splice" } & SplicePlan)
  | ({ readonly kind: "sheet" } & SheetPlan)
  | ({ readonly kind: "buy" } & BuyPlan)

/** One change that alone would make a plan possible, the smallest of its field. */
export interface Change {
  readonly field: string
  readonly from: number | boolean | null
  readonly to: number | boolean
  readonly says: string
}

/** Why there is no plan. */
export interface Obstacle {
  /** The field or fields that stop it. */
  readonly limit: string
  readonly says: string
  readonly changes: readonly Change[]
}

export interface Answer {
  readonly id: string
  readonly kind: Case["kind"]
  /** `proven`: nothing is better. `unproven`: a plan that the gap says how good it is. `impossible`: no plan, and why. */
  readonly status: "proven" | "unproven" | "impossible" | "unknown"
  /** Whole cents, or sheets. `null` where there is no plan. */
  readonly objective: number | null
  /** No plan costs less. */
  readonly bound: number | null
  /** Objective less bound, as a share of the objective. */
  readonly gap: number | null
  readonly plan: Plan | null
  readonly method: string
  readonly notices: readonly string[]
  readonly impossible?: Obstacle
}

/** An answer with a plan, a bound below it and how it was found. */
export function planned(
  { id, kind }: Case,
  found: { readonly plan: Plan; readonly objective: number },
  bound: number,
  method: string,
  notices: readonly string[] = [],
): Answer {
  const { plan, objective } = found
  const below = Math.min(bound, objective)
  const gap = objective === 0 ? 0 : (objective - below) / objective
  const said =
    gap === 0
      ? notices
      : [
          ...notices,
          `Not proven best: a plan may be up to ${(gap * 100).toFixed(2)} % cheaper, and not more.`,
        ]
  const status = gap === 0 ? "proven" : "unproven"
  return { id, kind, status, objective, bound: below, gap, plan, method, notices: said }
}

/** An answer that no plan can be made, with what stops it. */
export function impossible({ id, kind }: Case, obstacle: Obstacle, method: string): Answer {
  const nothing = { objective: null, bound: null, gap: null, plan: null }
  return {
    id,
    kind,
    status: "impossible",
    ...nothing,
    method,
    notices: [obstacle.says],
    impossible: obstacle,
  }
}

/** An answer that a plan was not found, and that none was proven not to exist. */
export function unknown(
  { id, kind }: Case,
  bound: number,
  method: string,
  notices: readonly string[],
): Answer {
  return { id, kind, status: "unknown", objective: null, bound, gap: null, plan: null, method, notices }
}
