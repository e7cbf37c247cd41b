import type { SpliceCase } from "../../src/solvers/splice.ts"

interface Layout {
  readonly joints: readonly number[]
  readonly cost: number
  readonly pieces: number
}

/**
 * The least cost, then the fewest pieces, over every choice of joints in every line: slow, and obviously right.
 * Nothing when no choice keeps all the rules. Without shortfall.
 */
export function leastCost(given: SpliceCase): { readonly cost: number; readonly pieces: number } | undefined {
  const layouts = layoutsOfOneLine(given)
  let best: { cost: number; pieces: number } | undefined
  const lay = (line: number, before: Layout | undefined, cost: number, pieces: number): void => {
    if (line === given.lines) {
      if (best === undefined || cost < best.cost || (cost === best.cost && pieces < best.pieces)) {
        best = { cost, pieces }
      }
      return
    }
    for (const layout of layouts) {
      const clash = before?.joints.some((one) =>
        layout.joints.some((other) => one === other || Math.abs(one - other) < given.stagger),
      )
      if (!clash) lay(line + 1, layout, cost + layout.cost, pieces + layout.pieces)
    }
  }
  lay(0, undefined, 0, 0)
  return best
}

function layoutsOfOneLine(given: SpliceCase): readonly Layout[] {
  const places = given.supports.filter(
    (_, index) =>
      index > 0 && index < given.supports.length - 1 && (given.bearings[index] ?? 0) >= 2 * given.bearingMin,
  )
  const layouts: Layout[] = []
  for (let choice = 0; choice < 2 ** places.length; choice++) {
    const joints = places.filter((_, index) => (choice >> index) % 2 === 1)
    const stops = [given.start, ...joints, given.end]
    const costs = stops.slice(1).map((to, index) => {
      const length = to - (stops[index] ?? 0)
      const fits = given.stocks.filter((stock) => stock.length >= length)
      const tooShort = joints.length > 0 && length < given.pieceMin
      return tooShort || fits.length === 0 ? undefined : Math.min(...fits.map((stock) => stock.cost))
    })
    if (costs.every((cost) => cost !== undefined)) {
      layouts.push({ joints, cost: costs.reduce((sum, cost) => sum + cost, 0), pieces: costs.length })
    }
  }
  return layouts
}
