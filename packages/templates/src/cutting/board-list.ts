import {
  type Answer,
  type BoardPlan,
  type Change,
  impossible,
  type Obstacle,
  planned,
  unknown,
} from "./answer.ts"
import { bestFit, materialBound } from "./best-fit.ts"
import { addCountRules, countBound, countRules } from "./board-counts.ts"
import { generatedPatterns } from "./column-generation.ts"
import type { BoardList, Stock } from "./problem.ts"
import { type Clock, Program, type Solved, type Solver, wholeBound } from "./program.ts"
import {
  addCutting,
  alike,
  type Board,
  boardsOf,
  bought,
  byLength,
  type CuttingVariables,
  type Demand,
  mostUsed,
  patternsOf,
  priceOf,
} from "./stock-cutting.ts"

const SECONDS_FOR_FEWEST = 5

/** Boards as the answer shows them. */
export function boardPlan(
  stocks: readonly Stock[],
  boards: readonly Board[],
): { plan: { kind: "cut" } & BoardPlan; objective: number } {
  const buy = stocks
    .map((stock) => ({
      stock: stock.id,
      quantity: bought(boards.filter((one) => one.stock === stock).length, stock),
    }))
    .filter(({ quantity }) => quantity > 0)
  return { plan: { kind: "cut", boards: alike(boards), buy }, objective: priceOf(boards) }
}

/** A plan at once and the simple bound of the material; no plan where a limit shows that there is none. */
export function boardListAtOnce(one: BoardList): Answer {
  const method = "best fit, longest first"
  const tooLong = pieceTooLong(one)
  if (tooLong !== undefined) return impossible(one, tooLong, "limits compared")
  const bound = materialBound(one.stocks, one.pieces, one)
  const boards = bestFit(one.stocks, one.pieces, one)
  if (boards !== undefined) return planned(one, boardPlan(one.stocks, boards), bound, method)
  return unknown(one, bound, method, [
    "No plan was found at once with the boards that are available; an exact search may find one.",
  ])
}

/** The cheapest boards, then the fewest of them. Rejects when the solver breaks down. */
export async function solveBoardList(
  one: BoardList,
  solver: Solver,
  clock: Clock,
  better: (answer: Answer) => void = () => {},
): Promise<Answer> {
  const atOnce = boardListAtOnce(one)
  if (
    atOnce.status === "impossible" ||
    (atOnce.objective === 0 && one.pieces.every(({ quantity }) => quantity === 0))
  )
    return atOnce
  const demands = byLength(one.pieces)
  const fitted = bestFit(one.stocks, one.pieces, one)
  const listed = patternsOf(one.stocks, demands, one)
  const method = `${listed === undefined ? "patterns generated as needed" : "all patterns listed"}, whole-number program (${solver.name})`
  const generated =
    listed === undefined ? await generatedPatterns(one, demands, fitted, solver, clock) : undefined
  const first = generated?.best ?? fitted
  const patterns = listed ?? generated?.patterns ?? []
  const program = new Program()
  const cutting = addCutting(program, patterns, demands, needOf(demands))
  const rules =
    generated?.rules ?? countRules(one.stocks, demands, one, await worthOf(program, cutting, solver, clock))
  const bounds = [atOnce.bound ?? 0, generated?.bound ?? (await countBound(one.stocks, rules, solver, clock))]
  if (first !== undefined) better(planned(one, boardPlan(one.stocks, first), Math.max(...bounds), method))
  addCountRules(program, rules, cutting.used)
  const isBest = first !== undefined && priceOf(first) <= Math.max(...bounds)
  const solved: Solved = isBest ? { status: "limit" } : await solver.solve(program, clock.left())
  const complete = listed !== undefined || generated?.complete === true
  if (solved.status === "infeasible" && complete && first === undefined)
    return impossible(one, await shortOfBoards(one, solver, clock), method)
  const counts = solved.status === "infeasible" ? undefined : solved.values
  const limit = solved.status === "infeasible" ? undefined : solved.bound
  if (complete && limit !== undefined) bounds.push(wholeBound(limit))
  // Every pattern that a better plan could have is there, and none is better.
  if (generated?.complete === true && solved.status === "infeasible" && first !== undefined)
    bounds.push(priceOf(first))
  const bound = Math.max(...bounds)
  const found = counts === undefined ? [] : [boardsOf(cutting.uses, counts, demands, one)]
  const best = [...found, ...(first === undefined ? [] : [first])].reduce<Board[] | undefined>(
    (least, boards) => (least === undefined || priceOf(boards) < priceOf(least) ? boards : least),
    undefined,
  )
  if (best === undefined)
    return unknown(one, bound, method, [
      "No plan was found in the time given. Give it longer, or more boards.",
    ])
  better(planned(one, boardPlan(one.stocks, best), bound, method))
  const fewer = await fewestBoards(one, program, cutting, demands, best, solver, clock)
  return planned(one, boardPlan(one.stocks, fewer), bound, method)
}

/** What a piece of each demand is worth by the relaxed program; nothing where time ends. */
async function worthOf(
  program: Program,
  { demandRows }: CuttingVariables,
  solver: Solver,
  clock: Clock,
): Promise<readonly number[]> {
  const relaxed = await solver.relaxed(program, clock.left())
  return demandRows.map((row) => relaxed?.duals[row] ?? 0)
}

function needOf(demands: readonly Demand[]) {
  return (index: number) => ({ least: demands[index]?.quantity ?? 0, terms: [] })
}

/** Of the plans that cost no more, one with the fewest boards bought; the plan that is there where time ends. */
async function fewestBoards(
  one: BoardList,
  program: Program,
  { uses, boughts }: CuttingVariables,
  demands: readonly Demand[],
  boards: Board[],
  solver: Solver,
  clock: Clock,
): Promise<Board[]> {
  if (boards.length < 2) return boards
  const counted = new Set(boughts.values())
  const fewest = program.minimising((variable) => (counted.has(variable) ? 1 : 0))
  fewest.atMost(
    priceOf(boards),
    [...boughts].map(([{ price }, variable]) => [variable, price]),
  )
  const solved = await solver.solve(fewest, Math.min(clock.left(), SECONDS_FOR_FEWEST))
  if (solved.status === "infeasible" || solved.values === undefined) return boards
  const others = boardsOf(uses, solved.values, demands, one)
  return priceOf(others) <= priceOf(boards) && others.length < boards.length ? others : boards
}

/** A piece that comes out of no board that can be had. */
function pieceTooLong(one: BoardList): Obstacle | undefined {
  const { kerf, endTrim, stocks } = one
  const buyable = stocks.filter((stock) => mostUsed(stock) > 0)
  const longest = Math.max(0, ...buyable.map(({ length }) => length))
  const usable = Math.max(0, longest - 2 * endTrim)
  const wanted = one.pieces
    .map((piece, index) => ({ ...piece, index }))
    .filter(({ quantity }) => quantity > 0)
  const worst = wanted.reduce<(typeof wanted)[number] | undefined>(
    (most, piece) => (most === undefined || piece.length > most.length ? piece : most),
    undefined,
  )
  if (worst === undefined || worst.length + kerf <= longest - 2 * endTrim + kerf) return undefined
  const { length, index, id } = worst
  const called = id === undefined ? `pieces[${index}]` : `piece ${id}`
  const changes: Change[] = []
  const at = stocks.findIndex((stock) => stock.length === longest && mostUsed(stock) > 0)
  changes.push({
    field: at < 0 ? "stocks" : `stocks[${at}].length`,
    from: at < 0 ? null : longest,
    to: length + 2 * endTrim,
    says: `a board of ${length + 2 * endTrim} or longer to buy`,
  })
  if (usable > 0)
    changes.push({
      field: `pieces[${index}].length`,
      from: length,
      to: usable,
      says: `${called} no longer than ${usable}, or made of two pieces`,
    })
  if (endTrim > 0 && length <= longest)
    changes.push({
      field: "endTrim",
      from: endTrim,
      to: Math.floor((longest - length) / 2),
      says: `no more than ${Math.floor((longest - length) / 2)} trimmed off each end`,
    })
  stocks.forEach((stock, place) => {
    if (mostUsed(stock) > 0 || stock.length - 2 * endTrim < length) return
    const to = bought(1, stock)
    changes.push({
      field: `stocks[${place}].available`,
      from: stock.available,
      to,
      says: `${to} of ${stock.id} to be had`,
    })
  })
  const most = longest === 0 ? "there is no board to buy" : `the longest board gives ${usable}`
  return {
    limit: at < 0 ? "stocks" : `stocks[${at}].length`,
    says: `${called} is ${length} long and ${most}. ${offered(changes)}`,
    changes,
  }
}

export function offered(changes: readonly Change[]): string {
  return changes.length === 0
    ? "No single change was found that makes a plan possible."
    : `Smallest change that makes a plan possible: ${changes.map(({ says }) => says).join("; or ")}.`
}

/** Every piece fits a board, but there are too few boards: for each stock that runs out, how many of it alone would do. */
async function shortOfBoards(one: BoardList, solver: Solver, clock: Clock): Promise<Obstacle> {
  const limited = one.stocks.filter(({ available }) => available !== null)
  const changes: Change[] = []
  for (const stock of limited) {
    const least = await leastBought(one, [stock], solver, clock)
    if (least === undefined) continue
    const field = `stocks[${one.stocks.indexOf(stock)}].available`
    const to = least.get(stock.id) ?? 0
    changes.push({
      field,
      from: stock.available,
      to,
      says: `${to} of ${stock.id} to be had instead of ${stock.available}`,
    })
  }
  changes.sort((a, b) => Number(a.to) - Number(a.from) - (Number(b.to) - Number(b.from)))
  if (changes.length === 0) {
    const least = await leastBought(one, limited, solver, clock)
    for (const stock of limited) {
      const to = least?.get(stock.id) ?? 0
      if (to <= (stock.available ?? 0)) continue
      const field = `stocks[${one.stocks.indexOf(stock)}].available`
      changes.push({
        field,
        from: stock.available,
        to,
        says: `${to} of ${stock.id} instead of ${stock.available}, with the others named here`,
      })
    }
  }
  return {
    limit: "available",
    says: `Too few boards are available for these pieces (${limited.map(({ id, available }) => `${available} of ${id}`).join(", ")}). ${offered(changes)}`,
    changes,
  }
}

/** With these stocks without limit, the least over what is available; how many of each are then bought. */
async function leastBought(
  one: BoardList,
  freed: readonly Stock[],
  solver: Solver,
  clock: Clock,
): Promise<Map<string, number> | undefined> {
  const stocks = one.stocks.map((stock) => (freed.includes(stock) ? { ...stock, available: null } : stock))
  const demands = byLength(one.pieces)
  const listed = patternsOf(stocks, demands, one, "all")
  if (listed === undefined) return undefined
  const cutting = new Program()
  const { boughts } = addCutting(cutting, listed, demands, needOf(demands))
  const program = cutting.minimising(() => 0)
  for (const stock of freed) {
    const total = [...boughts].find(([{ id }]) => id === stock.id)?.[1]
    if (total === undefined) continue
    const over = program.variable(1)
    program.atLeast(-(stock.available ?? 0), [
      [over, 1],
      [total, -1],
    ])
  }
  const solved = await solver.solve(program, clock.left())
  if (solved.status !== "optimal") return undefined
  return new Map([...boughts].map(([{ id }, variable]) => [id, Math.round(solved.values[variable] ?? 0)]))
}
