import { buildHyperFormulaGraph } from "../../src/graph/hyperformula-graph.ts"
import { buildDecimalGraph, buildDoubleGraph, type GraphBuilder } from "../../src/index.ts"

/** What calculates must do so on each graph. */
export const EVERY_GRAPH: readonly (readonly [name: string, graph: GraphBuilder])[] = [
  ["doubles", buildDoubleGraph],
  ["HyperFormula", buildHyperFormulaGraph],
  ["decimals", buildDecimalGraph],
]
