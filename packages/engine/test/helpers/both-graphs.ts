import { buildDecimalGraph, buildHyperFormulaGraph, type GraphBuilder } from "../../src/index.ts"

/** What calculates must do so on either graph. */
export const BOTH_GRAPHS: readonly (readonly [name: string, graph: GraphBuilder])[] = [
  ["HyperFormula", buildHyperFormulaGraph],
  ["decimals", buildDecimalGraph],
]
