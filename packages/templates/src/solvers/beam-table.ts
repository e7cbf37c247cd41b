import type { Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import type { Beam, BeamLoad } from "./beam.ts"
import { type BeamActions, fullLoad, movingPoint, patternLoad, worseOf } from "./beam-loads.ts"

/**
 * The names that the beam tables read. Columns of supports have one row a support; `dead` and `live` have one row a
 * line, in the order of the lines, in force per length of the line.
 */
export interface BeamReads {
  /** Columns: the line that each support stands under, from 1, and its place along the line. */
  readonly supportLine: string
  readonly supportAt: string
  /** The length of a line; it begins at 0. */
  readonly length: string
  /** Columns: the line of each joint, and its place. Without: each line is one piece. */
  readonly jointLine?: string
  readonly jointAt?: string
  readonly dead: string
  readonly live: string
  /** Column: places at which what lies above hands its load down. Without: the load is spread evenly. */
  readonly gatheredAt?: string
  /** One force that may stand anywhere, in place of the live load. */
  readonly point?: string
  /** Modulus of elasticity; thickness of all plies together; depth. */
  readonly modulus: string
  readonly breadth: string
  readonly depth: string
}

/** What a solver that reads the beam has to name in its `from`. */
export function beamReads(reads: BeamReads): readonly string[] {
  return Object.values(reads)
}

export interface Line {
  readonly line: number
  readonly dead: BeamActions
  readonly full: BeamActions
  /** Dead load and the worst of live load span by span and the one force. */
  readonly worst: BeamActions
  /** Live load alone: only its falls are read. */
  readonly live: BeamActions
}

/** One row a support, line by line, along each line: line, support, position, dead, full, most, least. */
export function solveReactions(reads: BeamReads): (given: SolverGiven) => Solution {
  return (given) => {
    const { lines, unmet } = solveLines(reads, given)
    const rows = lines.flatMap(({ line, dead, full, worst }) =>
      worst.supports.map((support, index) => ({
        line,
        support: index + 1,
        position: support.at,
        dead: dead.supports[index]?.most ?? 0,
        full: full.supports[index]?.most ?? 0,
        most: support.most,
        least: support.least,
      })),
    )
    const greatest = Math.max(0, ...rows.map(({ most }) => most))
    return { rows, report: reportOf(reads, "greatest push on a support", "force", greatest, unmet) }
  }
}

/**
 * One row a span, line by line: line, span, from, length, limit_length, sagging, hogging, moment, moment_at, shear,
 * fall_live, fall_total. The span before the first support and the one after the last are overhangs, where the line has them.
 * What could not be satisfied is said once, with the reactions.
 */
export function solveSpans(reads: BeamReads): (given: SolverGiven) => Solution {
  return (given) => {
    const { lines } = solveLines(reads, given)
    const rows = lines.flatMap(({ line, worst, live }) =>
      worst.spans.map(({ from, to, sagging, hogging, shear, fall }, index) => {
        const worse = hogging.value > sagging.value ? hogging : sagging
        return {
          line,
          span: index + 1,
          from,
          length: to - from,
          limit_length: isOverhang(worst, from, to) ? 2 * (to - from) : to - from,
          sagging: sagging.value,
          hogging: hogging.value,
          moment: worse.value,
          moment_at: worse.at,
          shear: shear.value,
          fall_live: live.spans[index]?.fall.value ?? 0,
          fall_total: fall.value,
        }
      }),
    )
    const greatest = Math.max(0, ...rows.map(({ moment }) => moment))
    return { rows, report: reportOf(reads, "greatest bending", "moment", greatest, []) }
  }
}

/** Whether a span lies before the first support or after the last. */
export function isOverhang(of: BeamActions, from: number, to: number): boolean {
  const middle = (from + to) / 2
  return of.supports.every(({ at }) => at > middle) || of.supports.every(({ at }) => at < middle)
}

function reportOf(
  reads: BeamReads,
  says: string,
  measure: "force" | "moment",
  value: number,
  unmet: readonly string[],
): SolverReport {
  const loads =
    reads.gatheredAt === undefined ? "load spread evenly" : "load handed down where the members above cross"
  const point =
    reads.point === undefined
      ? ""
      : "; and one force at the worst place, found exactly from its line of influence"
  return {
    method: `stiffness method, exact along each span; ${loads}; live load on every span or not, whichever is worst${point}`,
    objective: { says, measure, value },
    unmet,
  }
}

interface Worked {
  readonly lines: readonly Line[]
  readonly unmet: readonly string[]
}

/**
 * The tables of one member ask for the same lines one after the other: the last few answers are kept, by all that
 * they were worked from.
 */
const kept = new Map<string, Worked>()
const MOST_KEPT = 4

function solveLines(reads: BeamReads, given: SolverGiven): Worked {
  const key = JSON.stringify([reads, beamReads(reads).map((name) => given.column(name))])
  const known = kept.get(key)
  if (known !== undefined) return known
  const worked = workLines(reads, given)
  const [oldest] = kept.keys()
  if (oldest !== undefined && kept.size >= MOST_KEPT) kept.delete(oldest)
  kept.set(key, worked)
  return worked
}

function workLines(reads: BeamReads, given: SolverGiven): Worked {
  const numbers = (name: string | undefined) => (name === undefined ? [] : given.column(name).map(Number))
  const inLine = (lines: readonly number[], places: readonly number[], line: number) =>
    places.filter((_, row) => lines[row] === line)
  const supportLines = numbers(reads.supportLine)
  const jointLines = numbers(reads.jointLine)
  const stiffness =
    (given.number(reads.modulus) * given.number(reads.breadth) * given.number(reads.depth) ** 3) / 12
  const force = reads.point === undefined ? undefined : given.number(reads.point)
  const length = given.number(reads.length)
  const [dead, live] = [numbers(reads.dead), numbers(reads.live)]
  const crossings = reads.gatheredAt === undefined ? undefined : numbers(reads.gatheredAt)
  const lines: Line[] = []
  const unmet = new Set<string>()
  // Most lines are alike: each kind is worked once.
  const known = new Map<string, Omit<Line, "line"> | { readonly unmet: string }>()
  dead.forEach((deadLoad, index) => {
    const line = index + 1
    const beam: Beam = {
      start: 0,
      end: length,
      supports: inLine(supportLines, numbers(reads.supportAt), line),
      hinges: inLine(jointLines, numbers(reads.jointAt), line),
      stiffness,
    }
    const liveLoad = live[index] ?? 0
    const key = JSON.stringify([beam, deadLoad, liveLoad])
    const found =
      known.get(key) ??
      workLine(beam, loadOf(length, deadLoad, crossings), loadOf(length, liveLoad, crossings), force)
    known.set(key, found)
    if ("unmet" in found) unmet.add(`Line ${line}: ${found.unmet}`)
    else lines.push({ line, ...found })
  })
  return { lines, unmet: [...unmet] }
}

const NO_LOAD: BeamLoad = { spread: [], points: [] }

export function workLine(
  beam: Beam,
  dead: BeamLoad,
  live: BeamLoad,
  force: number | undefined,
): Omit<Line, "line"> | { readonly unmet: string } {
  const both = { spread: [...dead.spread, ...live.spread], points: [...dead.points, ...live.points] }
  const alone = fullLoad(beam, dead)
  const full = fullLoad(beam, both)
  const total = patternLoad(beam, dead, live)
  const coming = patternLoad(beam, NO_LOAD, live)
  const single = force === undefined ? undefined : movingPoint(beam, force, dead)
  for (const outcome of [alone, full, total, coming, single]) {
    if (outcome !== undefined && "unmet" in outcome) return { unmet: outcome.unmet }
  }
  const known = { dead: alone, full, worst: total, live: coming } as Omit<Line, "line">
  if (single === undefined || "unmet" in single) return known
  // The force's own fall, and with it the most that the platform's weight adds anywhere in the span.
  const withWeight = single.spans.map((span, index) => {
    const more = known.dead.spans[index]?.fall.value ?? 0
    return { ...span, fall: { ...span.fall, value: span.fall.value + more } }
  })
  return {
    ...known,
    worst: worseOf(known.worst, { ...single, spans: withWeight }),
    live: worseOf(known.live, single),
  }
}

/** A load per length, spread evenly, or gathered: each crossing takes half way to the next, the outer ones to the ends. */
export function loadOf(length: number, load: number, crossings: readonly number[] | undefined): BeamLoad {
  if (crossings === undefined || crossings.length === 0)
    return { spread: [{ from: 0, to: length, load }], points: [] }
  const places = crossings.toSorted((one, other) => one - other)
  return {
    spread: [],
    points: places.map((at, index) => {
      const [before, after] = [places[index - 1], places[index + 1]]
      const from = before === undefined ? 0 : (before + at) / 2
      const to = after === undefined ? length : (at + after) / 2
      return { at, load: load * (to - from) }
    }),
  }
}
