import type { Highs, Model } from "highs"
import type { Program, Solved, Solver } from "./program.ts"

export interface HighsOptions {
  /** Where the solver's `highs.wasm` is, for a host that moves files. */
  readonly locateFile?: (file: string) => string
}

/** Costs are whole, so a proof to within half of one is a proof. */
const GAP = 0.5

/** The HiGHS solver, loaded on first need. A load that failed is tried again at the next call. */
export function highsSolver(options: HighsOptions = {}): Solver {
  let loading: Promise<Highs> | undefined
  const load = (): Promise<Highs> => {
    loading ??= import("highs").then(({ default: loadHighs }) => loadHighs(options))
    return loading.catch((error: unknown) => {
      loading = undefined
      throw error
    })
  }
  return {
    name: "HiGHS",
    solve: async (program, seconds) => {
      const highs = await load()
      return highs.withModel(dataOf(program, highs, true), (model) => solved(highs, model, seconds))
    },
    relaxed: async (program, seconds) => {
      const highs = await load()
      return highs.withModel(dataOf(program, highs, false), (model) => {
        model.options.set({ output_flag: false, time_limit: seconds })
        model.run()
        if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return undefined
        return { value: model.getObjectiveValue(), duals: Array.from(model.getSolution().rowDual) }
      })
    },
  }
}

function dataOf({ variables, rows }: Program, { infinity, constants }: Highs, whole: boolean) {
  const end = (value: number): number => (Number.isFinite(value) ? value : Math.sign(value) * infinity)
  const starts = [0]
  const indices: number[] = []
  const values: number[] = []
  for (const { terms } of rows) {
    for (const [variable, factor] of terms) {
      indices.push(variable)
      values.push(factor)
    }
    starts.push(indices.length)
  }
  const { integer, continuous } = constants.variableType
  return {
    numCols: variables.length,
    numRows: rows.length,
    colCost: variables.map(({ cost }) => cost),
    colLower: variables.map(() => 0),
    colUpper: variables.map(({ most }) => end(most)),
    rowLower: rows.map(({ least }) => end(least)),
    rowUpper: rows.map(({ most }) => end(most)),
    matrix: { format: "csr", numRows: rows.length, numCols: variables.length, starts, indices, values },
    ...(whole ? { integrality: variables.map((one) => (one.whole ? integer : continuous)) } : {}),
  } as const
}

function solved(highs: Highs, model: Model, seconds: number): Solved {
  model.options.set({
    output_flag: false,
    time_limit: Math.max(seconds, 0.1),
    mip_rel_gap: 0,
    mip_abs_gap: GAP,
    mip_feasibility_tolerance: 1e-8,
    primal_feasibility_tolerance: 1e-8,
  })
  model.run()
  const { modelStatus, solutionStatus } = highs.constants
  const status = model.getModelStatus()
  if (status === modelStatus.infeasible) return { status: "infeasible" }
  const bound = Number(model.info.get("mip_dual_bound"))
  const values =
    Number(model.info.get("primal_solution_status")) === solutionStatus.feasible
      ? Array.from(model.getSolution().colValue)
      : undefined
  if (status === modelStatus.optimal && values !== undefined) return { status: "optimal", values, bound }
  const limits: readonly number[] = [
    modelStatus.timeLimit,
    modelStatus.iterationLimit,
    modelStatus.solutionLimit,
  ]
  if (!limits.includes(status)) throw new Error(`the solver ended with its status ${status}`)
  return {
    status: "limit",
    ...(values === undefined ? {} : { values }),
    ...(Math.abs(bound) < highs.infinity ? { bound } : {}),
  }
}
