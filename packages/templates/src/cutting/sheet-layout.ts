import {
  type Answer,
  type Change,
  type CutSheets,
  type CutStrips,
  impossible,
  type Obstacle,
  planned,
  type SheetPlan,
} from "./answer.ts"
import { offered } from "./board-list.ts"
import { countDown, rising, smallestChange } from "./freeing.ts"
import { addLines, alternatingLines, jointsOf, type LineRule, type Span, spansOf } from "./lines.ts"
import { allPatterns, maximalPatterns, type Pattern } from "./patterns.ts"
import type { SheetLayout } from "./problem.ts"
import { type Clock, Program, type Solver, type Term, wholeBound } from "./program.ts"

type Found = { readonly plan: { kind: "sheet" } & SheetPlan; readonly objective: number }

const MOST_PATTERNS = 20_000

/** Supports: both edges, and every joist that is not nearer the far edge than a quarter of the spacing. */
export function sheetSupports({ platform, joistSpacing }: SheetLayout): number[] {
  const far = platform.acrossJoists
  const supports = [0]
  for (let at = joistSpacing; at < far && 4 * (far - at) >= joistSpacing; at += joistSpacing)
    supports.push(at)
  return [...supports, far]
}

/** Length of a piece from one support to another: half a gap is left at each end that is a joint. May end in a half. */
export function pieceLength(one: SheetLayout, from: number, to: number): number {
  const ends = (from === 0 ? 0 : 1) + (to === one.platform.acrossJoists ? 0 : 1)
  const exact = to - from - (ends * one.gap) / 2
  const over = exact - one.sheet.length
  // A sheet that is made short leaves its joint as much off the centre.
  return over > 0 && over <= ends * one.jointTolerance ? one.sheet.length : exact
}

export function sheetRuleOf(one: SheetLayout): LineRule {
  const supports = sheetSupports(one)
  const spans: Span[] = []
  for (let from = 0; from < supports.length - 1; from += 1) {
    for (let to = from + one.minBaysForPiece; to < supports.length; to += 1) {
      const length = pieceLength(one, supports[from] ?? 0, supports[to] ?? 0)
      if (length > one.sheet.length) break
      if (length > 0) spans.push({ from, to, length })
    }
  }
  return { supports, spans, minBays: one.minBaysForPiece, stagger: one.stagger }
}

/** A sheet being cut, while a plan is made. */
interface OpenSheet {
  readonly full: number[]
  room: number
  block?: number
  rip?: (readonly [height: number, count: number])[]
}

interface OpenStrip {
  readonly strip: number
  readonly cap: number
  room: number
  readonly cut: number[]
}

/** The fewest pieces in two layouts in turn, then sheets filled longest first, each block ripped into strips of one height. */
function atOnce(one: SheetLayout, lines: readonly (readonly Span[])[]): Found {
  const { kerf, sheet } = one
  const sheets: OpenSheet[] = []
  const strips: OpenStrip[] = []
  const open = (): OpenSheet => {
    const fresh = { full: [], room: sheet.length + kerf }
    sheets.push(fresh)
    return fresh
  }
  const pieces = lines
    .flatMap((line, course) => line.map(({ length }) => ({ length, height: one.courses[course] ?? 0 })))
    .sort((a, b) => b.length - a.length)
  const tightest = <Room extends { room: number }>(those: readonly Room[], size: number): Room | undefined =>
    those
      .filter(({ room }) => room >= size)
      .reduce<Room | undefined>(
        (best, other) => (best === undefined || other.room < best.room ? other : best),
        undefined,
      )
  for (const { length } of pieces.filter(({ height }) => height === sheet.width)) {
    const on = tightest(sheets, length + kerf) ?? open()
    on.full.push(length)
    on.room -= length + kerf
  }
  for (const { length, height } of pieces.filter(({ height }) => height < sheet.width)) {
    const size = length + kerf
    let strip = tightest(
      strips.filter((other) => other.strip === height),
      size,
    )
    if (strip === undefined) {
      const from = tightest(sheets, size) ?? open()
      const cap = from.room - kerf
      const count = Math.floor((sheet.width + kerf) / (height + kerf))
      from.room = 0
      from.block = cap
      from.rip = [[height, count]]
      const ripped = Array.from({ length: count }, () => ({ strip: height, cap, room: cap + kerf, cut: [] }))
      strips.push(...ripped)
      strip = ripped[0] ?? { strip: height, cap, room: cap + kerf, cut: [] }
    }
    strip.cut.push(length)
    strip.room -= size
  }
  return found(one, lines, sheets, strips)
}

function found(
  one: SheetLayout,
  lines: readonly (readonly Span[])[],
  sheets: readonly Omit<CutSheets, "n">[],
  strips: readonly Omit<CutStrips, "n">[],
): Found {
  const rule = sheetRuleOf(one)
  const cuts = [
    ...counted(
      sheets.map(({ full, block, rip }) =>
        block === undefined || rip === undefined ? { full } : { full, block, rip },
      ),
    ),
    ...counted(
      strips.filter(({ cut }) => cut.length > 0).map(({ strip, cap, cut }) => ({ strip, cap, cut })),
    ),
  ]
  return {
    plan: { kind: "sheet", joints: lines.map((line) => jointsOf(rule, line)), cuts },
    objective: sheets.length,
  }
}

/** What is cut alike, once, with how many. */
function counted<Cut extends object>(cuts: readonly Cut[]): ({ readonly n: number } & Cut)[] {
  const groups = new Map<string, { n: number; cut: Cut }>()
  for (const cut of cuts) {
    const key = JSON.stringify(cut)
    groups.set(key, { n: (groups.get(key)?.n ?? 0) + 1, cut })
  }
  return [...groups.values()].map(({ n, cut }) => ({ n, ...cut }))
}

/** No layout takes fewer sheets: the area of the courses, the gaps of the most joints left out. */
function areaBound(one: SheetLayout): number {
  const bays = sheetSupports(one).length - 1
  const joints = Math.max(Math.floor(bays / one.minBaysForPiece) - 1, 0)
  const line = BigInt(Math.max(one.platform.acrossJoists - joints * (one.gap + 2 * one.jointTolerance), 1))
  const area = one.courses.reduce((sum, height) => sum + line * BigInt(height), 0n)
  const sheet = BigInt(one.sheet.length) * BigInt(one.sheet.width)
  return Number((area + sheet - 1n) / sheet)
}

/** A layout and its cutting at once, with the bound of the area; no plan where no layout keeps to the limits. */
export function sheetLayoutAtOnce(one: SheetLayout): Answer {
  const obstacle = courseThatCannotBe(one) ?? noLayout(one)
  if (obstacle !== undefined) return impossible(one, obstacle, "joint layouts compared")
  return planned(
    one,
    plannedAtOnce(one),
    areaBound(one),
    "two joint layouts in turn, then sheets filled longest first",
  )
}

function plannedAtOnce(one: SheetLayout): Found {
  const size = (span: Span): number =>
    1 / Math.max(1, Math.floor((one.sheet.length + one.kerf) / (span.length + one.kerf)))
  const plans = [size, () => 1].flatMap((costOf) => {
    const lines = alternatingLines(sheetRuleOf(one), one.courses.length, costOf)
    return lines === undefined ? [] : [atOnce(one, lines)]
  })
  const [first, ...others] = plans
  if (first === undefined) throw new Error("a layout was found before, and must be found again")
  return others.reduce((best, plan) => (plan.objective < best.objective ? plan : best), first)
}

/** A way to crosscut a sheet: full-width pieces, and the block and how it is ripped. */
interface SheetUse {
  readonly full: readonly number[]
  readonly block?: number
  readonly rip?: (readonly [height: number, count: number])[]
  readonly variable: number
}

interface StripUse {
  readonly strip: number
  readonly need: number
  readonly cut: readonly number[]
  readonly variable: number
}

/** The fewest sheets over all joint layouts. Rejects when the solver breaks down. */
export async function solveSheetLayout(one: SheetLayout, solver: Solver, clock: Clock): Promise<Answer> {
  const first = sheetLayoutAtOnce(one)
  if (first.status === "impossible") return first
  const rule = sheetRuleOf(one)
  const program = new Program()
  const lines = addLines(program, rule, one.courses.length)
  const cutting = addSheets(one, rule, lines, program)
  if (cutting === undefined)
    return {
      ...first,
      notices: [...first.notices, "There are too many ways to cut these sheets to list them all."],
    }
  const solved = await solver.solve(program, clock.left())
  const method = `paths over the joists and all patterns, whole-number program (${solver.name})`
  if (solved.status === "infeasible") throw new Error("the solver found no layout where there is one")
  const bound = Math.max(first.bound ?? 0, wholeBound(solved.bound ?? 0))
  const plans: Found[] = [plannedAtOnce(one)]
  if (solved.values !== undefined) {
    const laid = spansOf(rule, lines, solved.values)
    plans.unshift(cutAsNeeded(one, laid, cutting, solved.values))
  }
  const best = plans.reduce((least, plan) => (plan.objective < least.objective ? plan : least))
  return planned(one, best, bound, method)
}

interface SheetCutting {
  readonly sheets: readonly SheetUse[]
  readonly strips: readonly StripUse[]
}

function addSheets(
  one: SheetLayout,
  rule: LineRule,
  lines: readonly (readonly number[])[],
  program: Program,
): SheetCutting | undefined {
  const { sheet, kerf } = one
  const room = sheet.length + kerf
  const lengths = rising(rule.spans.map(({ length }) => length)).reverse()
  const items = lengths.map((length) => ({ size: length + kerf, most: Number.POSITIVE_INFINITY }))
  const listed = allPatterns(items, room, MOST_PATTERNS)
  if (listed === undefined) return undefined
  const taken = (pattern: Pattern): number =>
    pattern.reduce((sum, count, index) => sum + count * (items[index]?.size ?? 0), 0)
  const cutOf = (pattern: Pattern): number[] =>
    pattern.flatMap((count, index) => Array.from({ length: count }, () => lengths[index] ?? 0))
  const needed = (height: number, length: number): Term[] =>
    lines.flatMap((line, course) =>
      one.courses[course] === height
        ? rule.spans.flatMap((span, index): Term[] =>
            span.length === length ? [[line[index] ?? 0, -1]] : [],
          )
        : [],
    )

  const heights = rising(one.courses.filter((height) => height < sheet.width)).reverse()
  const hasFull = one.courses.includes(sheet.width)
  const strips: StripUse[] = []
  const used = listed.filter((pattern) => pattern.some((count) => count > 0))
  const caps = heights.length === 0 ? [] : rising(used.map((pattern) => taken(pattern) - kerf)).reverse()
  for (const strip of heights) {
    for (const pattern of used)
      strips.push({ strip, need: taken(pattern) - kerf, cut: cutOf(pattern), variable: program.variable(0) })
    lengths.forEach((length) => {
      const cuts = strips.filter((use) => use.strip === strip && use.cut.includes(length))
      const terms = cuts.map(
        ({ variable, cut }): Term => [variable, cut.filter((piece) => piece === length).length],
      )
      program.atLeast(0, [...terms, ...needed(strip, length)])
    })
  }

  const ways = maximalPatterns(
    heights.map((height) => ({ size: height + kerf, most: Number.POSITIVE_INFINITY })),
    sheet.width + kerf,
    MOST_PATTERNS,
  )
  if (ways === undefined) return undefined
  const sheets: SheetUse[] = []
  for (const pattern of hasFull ? listed : listed.slice(0, 1)) {
    const full = hasFull ? cutOf(pattern) : []
    const left = room - (hasFull ? taken(pattern) : 0)
    const block = caps.find((cap) => cap + kerf <= left)
    if (block === undefined) {
      const more = items.some(({ size }) => size <= left)
      if (full.length > 0 && !more) sheets.push({ full, variable: program.variable(1) })
      continue
    }
    for (const way of ways) {
      const rip = way.flatMap((count, index): [number, number][] =>
        count === 0 ? [] : [[heights[index] ?? 0, count]],
      )
      sheets.push({ full, block, rip, variable: program.variable(1) })
    }
  }
  if (hasFull)
    lengths.forEach((length) => {
      const terms = sheets.flatMap(({ full, variable }): Term[] => {
        const count = full.filter((piece) => piece === length).length
        return count === 0 ? [] : [[variable, count]]
      })
      program.atLeast(0, [...terms, ...needed(sheet.width, length)])
    })
  // Strips as long as a cap serve for what is cut from them, and those left over serve for the next shorter cap.
  for (const height of heights) {
    let handed: number | undefined
    for (const cap of caps) {
      const terms: Term[] = handed === undefined ? [] : [[handed, 1]]
      for (const { block, rip, variable } of sheets)
        if (block === cap)
          for (const [ripped, count] of rip ?? []) if (ripped === height) terms.push([variable, count])
      for (const { strip, need, variable } of strips)
        if (strip === height && need === cap) terms.push([variable, -1])
      handed = program.variable(0, Number.POSITIVE_INFINITY, false)
      program.atLeast(0, [...terms, [handed, -1]])
    }
  }
  return { sheets, strips }
}

/** The sheets of a solution, cut exactly as needed, and for each strip the shortest block that gives it. */
function cutAsNeeded(
  one: SheetLayout,
  laid: readonly (readonly Span[])[],
  { sheets, strips }: SheetCutting,
  values: readonly number[],
): Found {
  const wanted = new Map<string, number>()
  const key = (height: number, length: number): string => `${height} ${length}`
  laid.forEach((line, course) => {
    for (const { length } of line) {
      const at = key(one.courses[course] ?? 0, length)
      wanted.set(at, (wanted.get(at) ?? 0) + 1)
    }
  })
  const take = (height: number, length: number): boolean => {
    const left = wanted.get(key(height, length)) ?? 0
    if (left > 0) wanted.set(key(height, length), left - 1)
    return left > 0
  }
  const times = (variable: number): number => Math.round(values[variable] ?? 0)
  const cutStrips = strips
    .flatMap((use) => Array.from({ length: times(use.variable) }, () => use))
    .map(({ strip, need, cut }) => ({ strip, need, cut: cut.filter((length) => take(strip, length)) }))
    .filter(({ cut }) => cut.length > 0)
    .sort((a, b) => a.need - b.need)
  const cutSheets = sheets
    .flatMap((use) => Array.from({ length: times(use.variable) }, () => use))
    .map(({ full, block, rip }) => {
      const kept = full.filter((length) => take(one.sheet.width, length))
      return block === undefined || rip === undefined ? { full: kept } : { full: kept, block, rip }
    })
  const ripped = cutSheets
    .flatMap(({ block, rip }) =>
      (rip ?? []).flatMap(([strip, count]) =>
        Array.from({ length: count }, () => ({ strip, cap: block ?? 0, free: true })),
      ),
    )
    .sort((a, b) => a.cap - b.cap)
  const placed = [...cutStrips].reverse().map(({ strip, need, cut }) => {
    const from = ripped.find((other) => other.free && other.strip === strip && other.cap >= need)
    if (from !== undefined) from.free = false
    return { strip, cap: from?.cap ?? need, cut }
  })
  return found(one, laid, cutSheets, placed.reverse())
}

/** A course that is higher than a sheet is wide, or lower than a strip may be. */
function courseThatCannotBe(one: SheetLayout): Obstacle | undefined {
  const { courses, sheet, minRip } = one
  const high = courses.findIndex((height) => height > sheet.width)
  if (high >= 0) {
    const height = courses[high] ?? 0
    const changes: Change[] = [
      {
        field: `courses[${high}]`,
        from: height,
        to: sheet.width,
        says: `course ${high + 1} no higher than ${sheet.width}`,
      },
      {
        field: "sheet.width",
        from: sheet.width,
        to: Math.max(...courses),
        says: `sheets ${Math.max(...courses)} wide`,
      },
    ]
    return {
      limit: "sheet.width",
      says: `Course ${high + 1} is ${height} high and a sheet is ${sheet.width} wide. ${offered(changes)}`,
      changes,
    }
  }
  const low = courses.findIndex((height) => height < minRip && height < sheet.width)
  if (low < 0) return undefined
  const height = courses[low] ?? 0
  const changes: Change[] = [
    {
      field: "minRip",
      from: minRip,
      to: Math.min(...courses),
      says: `strips of ${Math.min(...courses)} allowed`,
    },
    { field: `courses[${low}]`, from: height, to: minRip, says: `course ${low + 1} at least ${minRip} high` },
  ]
  return {
    limit: "minRip",
    says: `Course ${low + 1} is ${height} high, and strips under ${minRip} are not cut. ${offered(changes)}`,
    changes,
  }
}

function laidOut(one: SheetLayout): boolean {
  return alternatingLines(sheetRuleOf(one), Math.min(one.courses.length, 2), () => 1) !== undefined
}

function noLayout(one: SheetLayout): Obstacle | undefined {
  if (laidOut(one)) return undefined
  const { sheet, stagger, minBaysForPiece, jointTolerance } = one
  const supports = sheetSupports(one)
  const pairs = supports.flatMap((from) =>
    supports.filter((to) => to > from).map((to) => [from, to] as const),
  )
  const loose = { ...one, jointTolerance: 0 }
  const lengths = rising(
    pairs.map(([from, to]) =>
      Math.ceil(pieceLength({ ...loose, sheet: { ...sheet, length: to } }, from, to)),
    ),
  )
  const changes: Change[] = [
    ...smallestChange({
      field: "sheet.length",
      from: sheet.length,
      values: lengths.filter((length) => length > sheet.length),
      frees: (length) => laidOut({ ...one, sheet: { ...sheet, length } }),
      says: (length) => `sheets ${length} long`,
    }),
    ...smallestChange({
      field: "stagger",
      from: stagger,
      values: rising(
        [0, ...pairs.map(([from, to]) => to - from)].filter((length) => length < stagger),
      ).reverse(),
      frees: (apart) => laidOut({ ...one, stagger: apart }),
      says: (apart) => `joints of neighbouring courses ${apart} apart`,
    }),
    ...smallestChange({
      field: "minBaysForPiece",
      from: minBaysForPiece,
      values: countDown(minBaysForPiece),
      frees: (bays) => laidOut({ ...one, minBaysForPiece: bays }),
      says: (bays) => `pieces that span ${bays} ${bays === 1 ? "bay" : "bays"}`,
    }),
    ...smallestChange({
      field: "jointTolerance",
      from: jointTolerance,
      values: rising(
        lengths.flatMap((length) => [Math.ceil((length - sheet.length) / 2), length - sheet.length]),
      ).filter((off) => off > jointTolerance && 16 * off <= one.joistSpacing),
      frees: (off) => laidOut({ ...one, jointTolerance: off }),
      says: (off) => `joints that may lie ${off} off the centre of a joist`,
    }),
  ]
  return {
    limit: changes.map(({ field }) => field).join(", "),
    says: `No layout keeps to every limit (sheets ${sheet.length} long, least bays for a piece ${minBaysForPiece}, joints ${stagger} apart). ${offered(changes)}`,
    changes,
  }
}
