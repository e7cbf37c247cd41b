import type { Program, Term } from "./program.ts"

/** A piece between two supports, by their places, and the length it is cut to. */
export interface Span {
  readonly from: number
  readonly to: number
  readonly length: number
}

/** Lines of pieces that all run over the same supports, neighbours with their joints apart. */
export interface LineRule {
  readonly supports: readonly number[]
  /** Pieces that may be part of a line. */
  readonly spans: readonly Span[]
  /** Least bays under a piece: two joints of a line are at least so far apart. */
  readonly minBays: number
  /** Least distance between joints of neighbouring lines; they are never on the same support. */
  readonly stagger: number
}

/** For each line the variables of its spans, in the order of the rule's spans. */
export type LineVariables = readonly (readonly number[])[]

function last({ supports }: LineRule): number {
  return supports.length - 1
}

function apart(rule: LineRule, a: number, b: number): boolean {
  const distance = Math.abs((rule.supports[a] ?? 0) - (rule.supports[b] ?? 0))
  return a !== b && distance >= rule.stagger
}

/** Adds to a program that each line is a path of spans from its first support to its last, neighbours staggered. */
export function addLines(program: Program, rule: LineRule, count: number): LineVariables {
  const lines = Array.from({ length: count }, () => rule.spans.map(() => program.variable(0, 1)))
  const end = last(rule)
  const joint = (line: readonly number[], place: number): Term[] =>
    rule.spans.flatMap(({ to }, index) => (to === place ? [[line[index] ?? 0, 1] as const] : []))
  for (const line of lines) {
    for (let place = 0; place < end; place += 1) {
      const leaving = rule.spans.flatMap(({ from }, index): Term[] =>
        from === place ? [[line[index] ?? 0, 1]] : [],
      )
      const arriving = joint(line, place).map(([variable]): Term => [variable, -1])
      const ends = place === 0 ? 1 : 0
      program.row(ends, ends, [...leaving, ...arriving])
    }
  }
  const jointed = new Set(rule.spans.map(({ to }) => to).filter((to) => to !== end))
  for (const [index, line] of lines.entries()) {
    const next = lines[index + 1]
    if (next === undefined) continue
    for (const group of exclusive(rule, jointed))
      program.atMost(1, [
        ...group.mine.flatMap((place) => joint(line, place)),
        ...group.others.flatMap((place) => joint(next, place)),
      ])
  }
  return lines
}

interface Exclusive {
  readonly mine: readonly number[]
  readonly others: readonly number[]
}

/**
 * Groups of joints of two neighbouring lines of which one at most can be: runs of supports so near each other that a line
 * has one joint there at most, and the single pairs that no run holds.
 */
function exclusive(rule: LineRule, jointed: ReadonlySet<number>): Exclusive[] {
  const groups: Exclusive[] = []
  const together = new Set<string>()
  for (let first = 1; first < last(rule); first += 1) {
    const run: number[] = []
    for (let place = first; place < Math.min(first + rule.minBays, last(rule)); place += 1)
      if (place === first || !apart(rule, first, place)) run.push(place)
    const held = run.filter((place) => jointed.has(place))
    groups.push({ mine: held, others: held })
    for (const a of held) for (const b of held) together.add(`${a} ${b}`)
  }
  for (const a of jointed)
    for (const b of jointed)
      if (!apart(rule, a, b) && !together.has(`${a} ${b}`)) groups.push({ mine: [a], others: [b] })
  return groups.filter(({ mine }) => mine.length > 0)
}

/** The spans of each line, read from a solution. */
export function spansOf(rule: LineRule, lines: LineVariables, values: readonly number[]): Span[][] {
  return lines.map((line) =>
    rule.spans.filter((_, index) => (values[line[index] ?? -1] ?? 0) > 0.5).sort((a, b) => a.from - b.from),
  )
}

/** The supports on which a line's pieces meet. */
export function jointsOf({ supports }: Pick<LineRule, "supports">, line: readonly Span[]): number[] {
  return line.slice(0, -1).map(({ to }) => supports[to] ?? 0)
}

/**
 * Lines at once: two that may be neighbours, one after the other, of the least cost by `costOf`. `undefined` where no two
 * lines may be neighbours (of one line: where there is none), and then no plan of so many lines exists.
 */
export function alternatingLines(
  rule: LineRule,
  count: number,
  costOf: (span: Span) => number,
): Span[][] | undefined {
  const end = last(rule)
  interface State {
    readonly cost: number
    readonly lines: readonly [readonly Span[], readonly Span[]]
  }
  // Always the line that is behind is lengthened: its new joint can then be near no other joint than the other line's last.
  const byPair = new Map<number, State>()
  const key = (a: number, b: number): number => a * (end + 1) + b
  byPair.set(key(0, count === 1 ? end : 0), { cost: 0, lines: [[], []] })
  const from = Array.from({ length: end + 1 }, (_, place) => rule.spans.filter((span) => span.from === place))
  for (let behind = 0; behind < end; behind += 1) {
    for (const side of [0, 1] as const) {
      for (let other = behind; other <= end; other += 1) {
        const state = byPair.get(side === 0 ? key(behind, other) : key(other, behind))
        if (state === undefined) continue
        for (const span of from[behind] ?? []) {
          const joins = span.to < end && other > 0 && other < end
          if (joins && !apart(rule, span.to, other)) continue
          const weight = side === 0 ? Math.ceil(count / 2) : Math.floor(count / 2)
          const cost = state.cost + weight * costOf(span)
          const at = side === 0 ? key(span.to, other) : key(other, span.to)
          if ((byPair.get(at)?.cost ?? Number.POSITIVE_INFINITY) <= cost) continue
          const [first, second] = state.lines
          byPair.set(at, {
            cost,
            lines: side === 0 ? [[...first, span], second] : [first, [...second, span]],
          })
        }
      }
    }
  }
  const best = byPair.get(key(end, end))
  if (best === undefined) return undefined
  return Array.from({ length: count }, (_, index) => [...best.lines[index % 2 === 0 ? 0 : 1]])
}
