import type { Solution, SolverGiven, SolverValue } from "@pegbook/engine"
import { type Beam, solveBeam } from "./beam.ts"
import type { BeamActions } from "./beam-loads.ts"
import { greaterOf, turns, valueAt } from "./beam-polynomial.ts"
import { isOverhang, type Line, loadOf, workLine } from "./line-actions.ts"

/**
 * Where the lines of one kind of member lie and what holds them up, by names of entries.
 * Without `supports.line`, all its lines lie on the same supports: one stands for them, or where `joints` differ, each
 * row of `carries` is a line.
 */
export interface MemberLines {
  /** What a reader calls them: "joists". */
  readonly member: string
  /** Columns of one row a support: its line, and its place along the line. */
  readonly supports: { readonly line?: string; readonly at: string }
  /** Columns of one row a joint, where a line is in several pieces. */
  readonly joints?: { readonly line: string; readonly at: string }
  /** The length of a line, which begins at `from` on the scale of the supports; 0 where it is left out. */
  readonly length: string
  readonly from?: string
  /**
   * Width of floor that a line carries: a column of one row a line, or one length for all; or the member that lies
   * across the lines, in one piece from end to end: each line then carries what that hands down to it.
   */
  readonly carries: string | { readonly across: string }
}

/** Columns of `members` that the solvers read, one row a member, in the order of the members. */
const COLUMNS = ["breadth", "depth", "dead", "live", "dead_factor", "live_factor", "point_load"].map(
  (name) => `members.${name}`,
)

/** What a solver over these members has to name in its `from`. */
export function memberReads(members: readonly MemberLines[]): readonly string[] {
  const names = members.flatMap(({ supports, joints, length, from, carries }) => [
    supports.line,
    supports.at,
    joints?.line,
    joints?.at,
    length,
    from,
    typeof carries === "string" ? carries : undefined,
  ])
  return [...new Set([...names.flatMap((name) => (name === undefined ? [] : [name])), ...COLUMNS])]
}

interface WorkedLine {
  readonly member: string
  readonly line: number
  readonly beam: Beam
  /** Service loads per length, all spans loaded. */
  readonly load: number
  readonly service: Line
  /** With each load times its factor; where the factors are 1, the same as `service`. */
  readonly design: Line
}

interface WorkedMember {
  readonly lines: readonly WorkedLine[]
  readonly unmet: readonly string[]
}

const METHOD =
  "stiffness method, exact along each span; live load on every span or not, or one force anywhere, whichever is worst; joints turn freely"

/**
 * One row a member, the worst of its lines: span, moment, shear, reaction, and its greatest sags over the length they
 * are held against, for a stiffness of one held unit (1 GPa): sag_live, sag_total, share_live, share_total.
 */
export function solveMembers(members: readonly MemberLines[]): (given: SolverGiven) => Solution {
  return (given) => {
    const worked = workMembers(members, given)
    const rows = worked.map(({ lines }, index) => {
      const spans = lines.flatMap(spansOf)
      const most = (values: readonly number[]) => Math.max(0, ...values)
      return {
        member: members[index]?.member ?? "",
        span: most(spans.map(({ length }) => length)),
        moment: most(spans.map(({ moment }) => moment)),
        shear: most(spans.map(({ shear }) => shear)),
        reaction: most(lines.flatMap(({ design }) => design.worst.supports.map((support) => support.most))),
        sag_live: most(spans.map(({ sag_live }) => sag_live)),
        sag_total: most(spans.map(({ sag_total }) => sag_total)),
        share_live: most(spans.map(({ sag_live, limit_length }) => sag_live / limit_length)),
        share_total: most(spans.map(({ sag_total, limit_length }) => sag_total / limit_length)),
        solved: lines.length > 0 && worked[index]?.unmet.length === 0,
      }
    })
    return { rows, report: { method: METHOD, unmet: worked.flatMap(({ unmet }) => unmet) } }
  }
}

/** One row a span: member, line, span, from, length, limit_length, moment, moment_at, shear, sag_live, sag_total. */
export function solveMemberSpans(members: readonly MemberLines[]): (given: SolverGiven) => Solution {
  return (given) => ({
    rows: workMembers(members, given).flatMap(({ lines }) => lines.flatMap(spansOf)),
    report: { method: METHOD, unmet: [] },
  })
}

/** One row a support, in the order of the members, their lines, and along each line: member, line, position, dead, full, most, least. */
export function solveMemberReactions(members: readonly MemberLines[]): (given: SolverGiven) => Solution {
  return (given) => ({
    rows: workMembers(members, given).flatMap(({ lines }) =>
      lines.flatMap(({ member, line, service: { dead, full, worst } }) =>
        worst.supports.map(({ at, most, least }, index) => ({
          member,
          line,
          position: at,
          dead: dead.supports[index]?.most ?? 0,
          full: full[index] ?? 0,
          most,
          least,
        })),
      ),
    ),
    report: { method: METHOD, unmet: [] },
  })
}

const POINTS_A_STRETCH = 8

/**
 * Points along the hardest bent line of each member, everything loaded: member, position, at_support, at_joint, moment, shear,
 * sag (for 1 GPa). A place where the shear leaps has two rows, one for either side.
 */
export function solveMemberCurves(members: readonly MemberLines[]): (given: SolverGiven) => Solution {
  return (given) => ({
    rows: workMembers(members, given).flatMap(({ lines }) => {
      const hardest = lines.reduce<WorkedLine | undefined>(
        (best, line) => (best === undefined || momentIn(line) > momentIn(best) ? line : best),
        undefined,
      )
      return hardest === undefined ? [] : curveOf(hardest)
    }),
    report: {
      method:
        "the beam's own curves, read off at even steps between supports and joints, and where they turn",
      unmet: [],
    },
  })
}

/** Of the greatest value along the line: what is left where the rest cancels has few digits that mean anything. */
const NOISE = 1e-6
/** Of the length of the line: places nearer than this are one. */
const SAME_PLACE = 1e-9

const momentIn = (line: WorkedLine): number => Math.max(0, ...spansOf(line).map(({ moment }) => moment))

/** Over a support and at a free end the last digits cancel to almost nothing: nothing is meant. */
function withoutNoise(values: readonly number[]): (value: number) => number {
  const noise = NOISE * Math.max(0, ...values.map(Math.abs))
  return (value) => (Math.abs(value) <= noise ? 0 : value)
}

function curveOf({ member, beam, load }: WorkedLine) {
  const answer = solveBeam(beam, [loadOf(beam.end, load)])
  if ("unmet" in answer) return []
  const stretches = answer.effects[0]?.stretches ?? []
  const isAmong = (places: readonly number[], position: number) =>
    places.some((place) => Math.abs(place - position) <= SAME_PLACE * (beam.end - beam.start))
  const points = stretches.flatMap(({ from, to, moment, shear, deflection }) => {
    const length = to - from
    const steps = Array.from(
      { length: POINTS_A_STRETCH + 1 },
      (_, step) => (length * step) / POINTS_A_STRETCH,
    )
    const between = [...turns(moment, length), ...turns(deflection, length)]
    const places = [...steps, ...between.filter((place) => !isAmong(steps, place))]
    return places
      .sort((a, b) => a - b)
      .map((along) => ({
        member,
        position: from + along,
        at_support: isAmong(beam.supports, from + along),
        at_joint: isAmong(beam.hinges, from + along),
        shear: valueAt(shear, along),
        moment: valueAt(moment, along),
        sag: valueAt(deflection, along),
      }))
  })
  const moment = withoutNoise(points.map((point) => point.moment))
  const shear = withoutNoise(points.map((point) => point.shear))
  const sag = withoutNoise(points.map((point) => point.sag))
  return points.map((point) => ({
    ...point,
    moment: moment(point.moment),
    shear: shear(point.shear),
    sag: sag(point.sag),
  }))
}

function spansOf({ member, line, service, design }: WorkedLine) {
  return design.worst.spans.map(({ from, to, sagging, hogging, shear }, index) => {
    const worse = greaterOf(sagging, hogging)
    const fall = (of: BeamActions): number => of.spans[index]?.fall.value ?? 0
    const [live, force] = [service.liveFalls[index] ?? 0, service.forceFalls[index] ?? 0]
    return {
      member,
      line,
      span: index + 1,
      from,
      length: to - from,
      limit_length: isOverhang(design.worst, from, to) ? 2 * (to - from) : to - from,
      moment: worse.value,
      moment_at: worse.at,
      shear: shear.value,
      sag_live: Math.max(live, force),
      sag_total: Math.max(fall(service.worst), fall(service.dead) + force),
    }
  })
}

/** Four tables ask for the same members one after the other: the last answers are kept, by all they were worked from. */
const kept = new Map<string, readonly WorkedMember[]>()
const MOST_KEPT = 4

function workMembers(members: readonly MemberLines[], given: SolverGiven): readonly WorkedMember[] {
  const key = JSON.stringify([members, memberReads(members).map((name) => given.column(name))])
  const known = kept.get(key)
  if (known !== undefined) return known
  const worked = members.map((member, index) => workMember(member, members, index, given))
  const [oldest] = kept.keys()
  if (oldest !== undefined && kept.size >= MOST_KEPT) kept.delete(oldest)
  kept.set(key, worked)
  return worked
}

/** The width of floor that each line of supports takes from the member across it: what it pushes back with, for an even load of 1. */
function handedDown(member: MemberLines | undefined, given: SolverGiven): readonly number[] {
  if (member === undefined) return []
  const begins = member.from === undefined ? 0 : given.number(member.from)
  const end = given.number(member.length)
  const at = given.column(member.supports.at).map((place) => Number(place) - begins)
  const answer = solveBeam({ start: 0, end, supports: at, hinges: [], stiffness: 1 }, [loadOf(end, 1)])
  if ("unmet" in answer) return []
  return at.map((place) => {
    const reaction = answer.effects[0]?.reactions[answer.supports.indexOf(place)] ?? 0
    return Math.max(0, reaction)
  })
}

function workMember(
  of: MemberLines,
  members: readonly MemberLines[],
  index: number,
  given: SolverGiven,
): WorkedMember {
  const numbers = (name: string | undefined): readonly number[] =>
    name === undefined ? [] : given.column(name).map((value: SolverValue) => Number(value))
  const own = (name: string): number => Number(given.column(`members.${name}`)[index] ?? Number.NaN)
  const begins = of.from === undefined ? 0 : given.number(of.from)
  const places = (line: number, at: readonly number[], lines?: readonly number[]) =>
    at.filter((_, row) => lines === undefined || lines[row] === line).map((place) => place - begins)
  const supportLines = of.supports.line === undefined ? undefined : numbers(of.supports.line)
  const { carries } = of
  const carried =
    typeof carries === "string"
      ? numbers(carries)
      : handedDown(
          members.find(({ member }) => member === carries.across),
          given,
        )
  const widths = supportLines === undefined && of.joints === undefined ? [Math.max(...carried)] : carried
  const lineCount =
    supportLines !== undefined ? Math.max(0, ...supportLines) : of.joints === undefined ? 1 : carried.length
  const [supportAt, jointAt, jointLines] = [
    numbers(of.supports.at),
    numbers(of.joints?.at),
    numbers(of.joints?.line),
  ]
  const known = new Map<string, Omit<WorkedLine, "line" | "member"> | { readonly unmet: string }>()
  const unmet = new Set<string>()
  const lines: WorkedLine[] = []
  for (let line = 1; line <= lineCount; line++) {
    const beam: Beam = {
      start: 0,
      end: given.number(of.length),
      supports: places(line, supportAt, supportLines),
      hinges: of.joints === undefined ? [] : places(line, jointAt, jointLines),
      stiffness: (own("breadth") * own("depth") ** 3) / 12,
    }
    const width = widths[line - 1] ?? widths[0] ?? 0
    const loads = { dead: own("dead") * width, live: own("live") * width }
    const key = JSON.stringify([beam, loads])
    const found =
      known.get(key) ?? workLoads(beam, loads, own("point_load"), own("dead_factor"), own("live_factor"))
    known.set(key, found)
    if ("unmet" in found) unmet.add(`${of.member}, line ${line}: ${found.unmet}`)
    else lines.push({ member: of.member, line, ...found })
  }
  return { lines, unmet: [...unmet] }
}

function workLoads(
  beam: Beam,
  loads: { readonly dead: number; readonly live: number },
  point: number,
  deadFactor: number,
  liveFactor: number,
): Omit<WorkedLine, "line" | "member"> | { readonly unmet: string } {
  const work = (dead: number, live: number, force: number) =>
    workLine(beam, loadOf(beam.end, dead), loadOf(beam.end, live), force)
  const service = work(loads.dead, loads.live, point)
  if ("unmet" in service) return service
  const design =
    deadFactor === 1 && liveFactor === 1
      ? service
      : work(loads.dead * deadFactor, loads.live * liveFactor, point * liveFactor)
  return "unmet" in design ? design : { beam, load: loads.dead + loads.live, service, design }
}
