import {
  type Answer,
  type Change,
  impossible,
  type Obstacle,
  planned,
  type SplicePlan,
  unknown,
} from "./answer.ts"
import { bestFit, materialBound } from "./best-fit.ts"
import { offered } from "./board-list.ts"
import { countDown, rising, smallestChange } from "./freeing.ts"
import {
  addLines,
  alternatingLines,
  jointsOf,
  type LineRule,
  type LineVariables,
  type Span,
  spansOf,
} from "./lines.ts"
import type { SplicedLines, Stock } from "./problem.ts"
import { type Clock, Program, type Solver, type Term, wholeBound } from "./program.ts"
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
  roomOf,
} from "./stock-cutting.ts"

type Found = { readonly plan: { kind: "splice" } & SplicePlan; readonly objective: number }

/** The rule of the lines: where pieces may meet, and the pieces that some board is long enough for. */
export function lineRuleOf(one: SplicedLines): LineRule {
  const { supports, bearing, minBaysForPiece: minBays, minStagger: stagger } = one
  const end = supports.length - 1
  const usable =
    Math.max(0, ...one.stocks.filter((stock) => mostUsed(stock) > 0).map(({ length }) => length)) -
    2 * one.endTrim
  const stands = (place: number): boolean =>
    place === 0 || place === end || (bearing[place] ?? 0) >= 2 * one.minBearing
  const spans: Span[] = []
  for (let from = 0; from < end; from += 1) {
    for (let to = from + 1; to <= end; to += 1) {
      const length = (supports[to] ?? 0) - (supports[from] ?? 0)
      const whole = from === 0 && to === end
      if (stands(from) && stands(to) && (whole || to - from >= minBays) && length <= usable)
        spans.push({ from, to, length })
    }
  }
  return { supports, spans, minBays, stagger }
}

function piecesOf(lines: readonly (readonly Span[])[]): Demand[] {
  return byLength(lines.flat().map(({ length }) => ({ length, quantity: 1 })))
}

function found(one: SplicedLines, lines: readonly (readonly Span[])[], boards: readonly Board[]): Found {
  const joints = lines.map((line) => jointsOf(one, line))
  const cut = alike(boards).map(({ stock, count, pieces }) => ({ stock, n: count, pieces }))
  return { plan: { kind: "splice", joints, boards: cut }, objective: priceOf(boards) }
}

/** The cheapest of two plans made at once: joints for the least price of wood, and for the least price of boards. */
function atOnce(one: SplicedLines, rule: LineRule): Found | undefined {
  const buyable = one.stocks.filter((stock) => mostUsed(stock) > 0)
  const least =
    (cost: (stock: Stock, fits: number) => number) =>
    (span: Span): number => {
      const size = span.length + one.kerf
      return Math.min(
        ...buyable
          .filter((stock) => roomOf(stock, one) >= size)
          .map((stock) => cost(stock, Math.floor(roomOf(stock, one) / size))),
      )
    }
  const plans = [least(({ price }) => price), least(({ price }, fits) => price / fits)].flatMap((costOf) => {
    const lines = alternatingLines(rule, one.skids, costOf)
    const boards = lines === undefined ? undefined : bestFit(one.stocks, piecesOf(lines), one)
    return lines === undefined || boards === undefined ? [] : [found(one, lines, boards)]
  })
  return plans.reduce<Found | undefined>(
    (best, plan) => (best === undefined || plan.objective < best.objective ? plan : best),
    undefined,
  )
}

function simpleBound(one: SplicedLines): number {
  const length = (one.supports.at(-1) ?? 0) - (one.supports[0] ?? 0)
  return materialBound(one.stocks, [{ length, quantity: one.skids }], one)
}

/** A plan at once and the simple bound of the material; no plan where a limit shows that there is none. */
export function splicedLinesAtOnce(one: SplicedLines): Answer {
  const method = "two joint layouts in turn, then best fit, longest first"
  const rule = lineRuleOf(one)
  if (!laidOut(one)) return impossible(one, noLayout(one), "joint layouts compared")
  const plan = atOnce(one, rule)
  if (plan !== undefined) return planned(one, plan, simpleBound(one), method)
  return unknown(one, simpleBound(one), method, [
    "No plan was found at once with the boards that are available; an exact search may find one.",
  ])
}

interface Model {
  readonly program: Program
  readonly lines: LineVariables
  readonly cutting: CuttingVariables
  readonly lengths: readonly Demand[]
}

function modelOf(one: SplicedLines, rule: LineRule, keep: "all" | "worth buying"): Model | undefined {
  const bays = one.supports.length - 1
  const lengths = byLength(rule.spans.map(({ length }) => ({ length, quantity: 1 }))).map(({ length }) => ({
    length,
    quantity: bays * one.skids,
  }))
  const listed = patternsOf(one.stocks, lengths, one, keep)
  if (listed === undefined) return undefined
  const program = new Program()
  const lines = addLines(program, rule, one.skids)
  const needed = (index: number) => ({
    least: 0,
    terms: lines.flatMap((line) =>
      rule.spans.flatMap(({ length }, span): Term[] =>
        length === lengths[index]?.length ? [[line[span] ?? 0, -1]] : [],
      ),
    ),
  })
  const cutting = addCutting(program, listed, lengths, needed)
  return { program, lines, cutting, lengths }
}

/** The cheapest boards over all joint layouts. Rejects when the solver breaks down. */
export async function solveSplicedLines(one: SplicedLines, solver: Solver, clock: Clock): Promise<Answer> {
  const first = splicedLinesAtOnce(one)
  if (first.status === "impossible") return first
  const rule = lineRuleOf(one)
  const model = modelOf(one, rule, "worth buying")
  if (model === undefined)
    return {
      ...first,
      notices: [...first.notices, "There are too many ways to cut these boards to list them all."],
    }
  const method = `paths over the supports and all patterns, whole-number program (${solver.name})`
  const solved = await solver.solve(model.program, clock.left())
  if (solved.status === "infeasible") return impossible(one, await shortOfBoards(one, solver, clock), method)
  const bound = Math.max(first.bound ?? 0, wholeBound(solved.bound ?? 0))
  const plans: Found[] = []
  if (first.plan?.kind === "splice" && first.objective !== null)
    plans.push({ plan: first.plan, objective: first.objective })
  if (solved.values !== undefined) {
    const lines = spansOf(rule, model.lines, solved.values)
    const quantities = new Map(piecesOf(lines).map(({ length, quantity }) => [length, quantity]))
    const demands = model.lengths.map(({ length }) => ({ length, quantity: quantities.get(length) ?? 0 }))
    plans.push(found(one, lines, boardsOf(model.cutting.uses, solved.values, demands, one)))
  }
  const best = plans.reduce<Found | undefined>(
    (least, plan) => (least === undefined || plan.objective <= least.objective ? plan : least),
    undefined,
  )
  if (best !== undefined) return planned(one, best, bound, method)
  return unknown(one, bound, method, ["No plan was found in the time given. Give it longer, or more boards."])
}

function laidOut(one: SplicedLines): boolean {
  return alternatingLines(lineRuleOf(one), Math.min(one.skids, 2), () => 1) !== undefined
}

/** No lines can be laid out, whatever is bought: the limits that alone would let them. */
function noLayout(one: SplicedLines): Obstacle {
  const { supports, bearing, stocks, endTrim } = one
  const lengths = supports.flatMap((from) => supports.filter((to) => to > from).map((to) => to - from))
  const buyable = stocks.filter((stock) => mostUsed(stock) > 0)
  const longest = Math.max(0, ...buyable.map(({ length }) => length))
  const at = stocks.findIndex((stock) => stock.length === longest && mostUsed(stock) > 0)
  const changes: Change[] = [
    ...smallestChange({
      field: at < 0 ? "stocks" : `stocks[${at}].length`,
      from: at < 0 ? null : longest,
      values: rising(lengths.map((length) => length + 2 * endTrim).filter((length) => length > longest)),
      frees: (length) => {
        const longer = { id: "longer", length, price: 0, available: null, cullPermille: 0 }
        return laidOut({ ...one, stocks: [...stocks, longer] })
      },
      says: (length) => `a board of ${length} or longer to buy`,
    }),
    ...smallestChange({
      field: "minBaysForPiece",
      from: one.minBaysForPiece,
      values: countDown(one.minBaysForPiece),
      frees: (minBaysForPiece) => laidOut({ ...one, minBaysForPiece }),
      says: (bays) => `pieces that span ${bays} bays`,
    }),
    ...smallestChange({
      field: "minStagger",
      from: one.minStagger,
      values: rising([0, ...lengths].filter((length) => length < one.minStagger)).reverse(),
      frees: (minStagger) => laidOut({ ...one, minStagger }),
      says: (distance) => `joints of neighbouring lines ${distance} apart`,
    }),
    ...smallestChange({
      field: "minBearing",
      from: one.minBearing,
      values: rising(
        bearing.map((length) => Math.floor(length / 2)).filter((half) => half < one.minBearing),
      ).reverse(),
      frees: (minBearing) => laidOut({ ...one, minBearing }),
      says: (least) => `${least} of bearing under each piece at a joint`,
    }),
  ]
  return {
    limit: changes.map(({ field }) => field).join(", "),
    says: `No way to join pieces over these supports keeps to every limit (least bays for a piece ${one.minBaysForPiece}, joints ${one.minStagger} apart, bearing ${one.minBearing} under each piece, boards up to ${longest}). ${offered(changes)}`,
    changes,
  }
}

/** Lines can be laid out, but too few boards are available. */
async function shortOfBoards(one: SplicedLines, solver: Solver, clock: Clock): Promise<Obstacle> {
  const limited = one.stocks.filter(({ available }) => available !== null)
  const changes: Change[] = []
  for (const stock of limited) {
    const freed = {
      ...one,
      stocks: one.stocks.map((other) => (other === stock ? { ...stock, available: null } : other)),
    }
    const model = modelOf(freed, lineRuleOf(freed), "all")
    const total = [...(model?.cutting.boughts ?? [])].find(([{ id }]) => id === stock.id)?.[1]
    if (model === undefined || total === undefined) continue
    const solved = await solver.solve(
      model.program.minimising((variable) => (variable === total ? 1 : 0)),
      clock.left(),
    )
    if (solved.status !== "optimal") continue
    const used = model.cutting.uses
      .filter((use) => use.stock.id === stock.id)
      .reduce((sum, { variable }) => sum + Math.round(solved.values[variable] ?? 0), 0)
    const to = bought(used, stock)
    changes.push({
      field: `stocks[${one.stocks.indexOf(stock)}].available`,
      from: stock.available,
      to,
      says: `${to} of ${stock.id} to be had instead of ${stock.available}`,
    })
  }
  changes.sort((a, b) => Number(a.to) - Number(a.from) - (Number(b.to) - Number(b.from)))
  return {
    limit: "available",
    says: `Too few boards are available for these lines (${limited.map(({ id, available }) => `${available} of ${id}`).join(", ")}). ${offered(changes)}`,
    changes,
  }
}
