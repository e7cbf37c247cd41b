import { solveEquations } from "./beam-equations.ts"
import type { Polynomial } from "./beam-polynomial.ts"

/**
 * A straight beam of one stiffness along its length. Any units that go together: metres, newtons and newton
 * square metres, or the held ones. Positions are measured from any one point.
 */
export interface Beam {
  readonly start: number
  readonly end: number
  /** Where it is held up; each support holds up and down, and lets it turn. Any order. */
  readonly supports: readonly number[]
  /** Where pieces meet and no bending passes from one to the other. Any order; one at an end says nothing. */
  readonly hinges: readonly number[]
  /** Modulus of elasticity times second moment of area. */
  readonly stiffness: number
}

/** Load downwards is positive. */
export interface BeamLoad {
  /** Even loads, each in force per length over its stretch; what lies beyond the beam does not count. */
  readonly spread: readonly { readonly from: number; readonly to: number; readonly load: number }[]
  readonly points: readonly { readonly at: number; readonly load: number }[]
}

/** What happens along one stretch without a break. Polynomials in the distance from `from`. */
export interface BeamStretch {
  readonly from: number
  readonly to: number
  /** Positive where the left part pushes the right part up. */
  readonly shear: Polynomial
  /** Positive where the beam sags, tension below. */
  readonly moment: Polynomial
  /** Positive down. */
  readonly deflection: Polynomial
}

/** One load's effect. The stretches of all loads of one beam are the same. */
export interface BeamEffect {
  readonly stretches: readonly BeamStretch[]
  /** Upwards positive, in the order of `supports`, ascending. */
  readonly reactions: readonly number[]
}

export type BeamAnswer =
  | { readonly supports: readonly number[]; readonly effects: readonly BeamEffect[] }
  /** A sentence that says what is wrong, and what would mend it. */
  | { readonly unmet: string; readonly at: number }

/** Places nearer than this share of the whole length are one place. */
const SAME_PLACE = 1e-9

export interface Node {
  readonly at: number
  readonly isSupport: boolean
  readonly isHinge: boolean
}

/** A piece between two neighbouring nodes, with the numbers of its four unknowns; a support has no `fall`. */
export interface Piece {
  readonly from: number
  readonly length: number
  readonly fallLeft: number | undefined
  readonly turnLeft: number
  readonly fallRight: number | undefined
  readonly turnRight: number
}

/**
 * Solves the beam for each load by the stiffness method: unknown are the falls of what is not held and the turns
 * left and right of each node; between nodes the answer is integrated exactly from the loads.
 * Never throws: a beam that could move freely, or is not a beam, gives `unmet`.
 */
export function solveBeam(beam: Beam, loads: readonly BeamLoad[]): BeamAnswer {
  const wrong = notABeam(beam, loads)
  if (wrong !== undefined) return wrong
  const nodes = nodesOf(beam)
  const settled = loads.map((load) => settledOn(nodes, load))
  const { pieces, size, places } = piecesOf(nodes)
  const unit = Math.max(...pieces.map(({ length }) => length))
  const outcome = solveEquations(
    stiffnessMatrix(pieces, size, unit),
    settled.map((load) => loadVector(pieces, size, unit, load)),
  )
  if ("loose" in outcome) return notHeld(places[outcome.loose] ?? beam.start)
  const worked = workedPieces(pieces, unit, breaksOf(nodes, settled))
  const effects = outcome.solutions.map((solution, index) =>
    effectOf(beam, nodes, worked, unit, solution, settled[index] ?? NO_LOAD),
  )
  return { supports: nodes.filter(({ isSupport }) => isSupport).map(({ at }) => at), effects }
}

export const NO_LOAD: BeamLoad = { spread: [], points: [] }

export function notHeld(at: number): { unmet: string; at: number } {
  return {
    at,
    unmet:
      "The beam is not held: a piece of it can swing or fall freely. Every piece between two hinges needs two supports, or one support and a neighbour that holds it. Move a joint onto a support, or add a support.",
  }
}

export function notABeam(beam: Beam, loads: readonly BeamLoad[]): { unmet: string; at: number } | undefined {
  const numbers = [beam.start, beam.end, beam.stiffness, ...beam.supports, ...beam.hinges]
  const ofLoads = loads.flatMap(({ spread, points }) => [
    ...spread.flatMap(({ from, to, load }) => [from, to, load]),
    ...points.flatMap(({ at, load }) => [at, load]),
  ])
  const at = beam.start
  if (![...numbers, ...ofLoads].every(Number.isFinite)) return { at, unmet: "A length or a load is missing." }
  if (!(beam.end > beam.start)) return { at, unmet: "The beam has no length. Give it one." }
  if (!(beam.stiffness > 0))
    return { at, unmet: "The beam has no stiffness. Give its size and its modulus of elasticity." }
  const slack = SAME_PLACE * (beam.end - beam.start)
  const off = beam.supports.find((place) => place < beam.start - slack || place > beam.end + slack)
  if (off !== undefined)
    return { at: off, unmet: "A support stands beyond the end of the beam. Move it under." }
  const beside = loads
    .flatMap(({ points }) => points.map((point) => point.at))
    .find((place) => place < beam.start - slack || place > beam.end + slack)
  if (beside !== undefined)
    return { at: beside, unmet: "A load stands beyond the end of the beam. Move it onto the beam." }
  return undefined
}

/** Loads with every place next to a node put on the node. */
function settledOn(nodes: readonly Node[], load: BeamLoad): BeamLoad {
  const [first = 0, last = 0] = [nodes[0]?.at, nodes.at(-1)?.at]
  const slack = SAME_PLACE * (last - first)
  const settle = (at: number) => nodes.find((node) => Math.abs(node.at - at) <= slack)?.at ?? at
  return {
    spread: load.spread.map((each) => ({ ...each, from: settle(each.from), to: settle(each.to) })),
    points: load.points.map((each) => ({ ...each, at: settle(each.at) })),
  }
}

/** The ends, supports and hinges, ascending, each place once. */
export function nodesOf(beam: Beam): readonly Node[] {
  const slack = SAME_PLACE * (beam.end - beam.start)
  const same = (one: number) => (other: number) => Math.abs(one - other) <= slack
  const inside = beam.hinges.filter((at) => at > beam.start + slack && at < beam.end - slack)
  const places = [...beam.supports, beam.start, beam.end, ...inside].sort((one, other) => one - other)
  const distinct = places.filter((at, index) => index === 0 || !same(at)(places[index - 1] ?? 0))
  return distinct.map((at) => ({
    at,
    isSupport: beam.supports.some(same(at)),
    isHinge: inside.some(same(at)),
  }))
}

export function piecesOf(nodes: readonly Node[]): {
  readonly pieces: readonly Piece[]
  readonly size: number
  readonly places: readonly number[]
} {
  const places: number[] = []
  const unknown = (node: Node): number => places.push(node.at) - 1
  const ofNodes = nodes.map((node) => {
    const fall = node.isSupport ? undefined : unknown(node)
    const turnLeft = unknown(node)
    return { fall, turnLeft, turnRight: node.isHinge ? unknown(node) : turnLeft }
  })
  const pieces = nodes.slice(1).map((right, index): Piece => {
    const left = nodes[index]
    const before = ofNodes[index]
    const after = ofNodes[index + 1]
    if (left === undefined || before === undefined || after === undefined)
      throw new Error("a piece has two ends")
    return {
      from: left.at,
      length: right.at - left.at,
      fallLeft: before.fall,
      turnLeft: before.turnRight,
      fallRight: after.fall,
      turnRight: after.turnLeft,
    }
  })
  return { pieces, size: places.length, places }
}

/** The four unknowns of a piece, in the order of its stiffness. */
function unknownsOf(piece: Piece): readonly (number | undefined)[] {
  return [piece.fallLeft, piece.turnLeft, piece.fallRight, piece.turnRight]
}

/** Lengths in `unit`, stiffness 1: the matrix depends on the beam's proportions alone. */
export function stiffnessMatrix(pieces: readonly Piece[], size: number, unit: number): number[][] {
  const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  for (const piece of pieces) {
    const own = pieceStiffness(piece.length / unit)
    const unknowns = unknownsOf(piece)
    unknowns.forEach((row, one) => {
      if (row === undefined) return
      const values = matrix[row] ?? []
      unknowns.forEach((column, other) => {
        if (column !== undefined) values[column] = (values[column] ?? 0) + (own[one]?.[other] ?? 0)
      })
    })
  }
  return matrix
}

function pieceStiffness(length: number): readonly (readonly number[])[] {
  const [force, mixed, near, far] = [12 / length ** 3, 6 / length ** 2, 4 / length, 2 / length]
  return [
    [force, mixed, -force, mixed],
    [mixed, near, -mixed, far],
    [-force, -mixed, force, -mixed],
    [mixed, far, -mixed, near],
  ]
}

function loadVector(pieces: readonly Piece[], size: number, unit: number, load: BeamLoad): readonly number[] {
  const vector = new Array<number>(size).fill(0)
  pieces.forEach((piece, index) => {
    const own = pieceLoads(piece, unit, loadsOn(piece, index === pieces.length - 1, load))
    unknownsOf(piece).forEach((row, at) => {
      if (row !== undefined) vector[row] = (vector[row] ?? 0) + (own[at] ?? 0)
    })
  })
  return vector
}

/** The part of a load that lies on a piece, measured from its left end. A point on a node belongs to the right. */
function loadsOn(piece: Piece, isLast: boolean, load: BeamLoad): BeamLoad {
  const { from, length } = piece
  return {
    spread: load.spread.flatMap((each) => {
      const left = Math.max(0, each.from - from)
      const right = Math.min(length, each.to - from)
      return right > left ? [{ from: left, to: right, load: each.load }] : []
    }),
    points: load.points.flatMap(({ at, load: force }) => {
      const place = at - from
      const lies = place >= 0 && (isLast ? place <= length : place < length)
      return lies ? [{ at: place, load: force }] : []
    }),
  }
}

export const NOTHING_HELD: readonly number[] = [0, 0, 0, 0]

/** Forces and moments at the ends that do the same work as the loads between them, lengths in `unit`. */
export function pieceLoads(piece: Piece, unit: number, load: BeamLoad): readonly number[] {
  if (load.points.length === 0 && load.spread.length === 0) return NOTHING_HELD
  const length = piece.length / unit
  const shape = (at: number): readonly number[] => [
    1 - 3 * at ** 2 + 2 * at ** 3,
    length * (at - 2 * at ** 2 + at ** 3),
    3 * at ** 2 - 2 * at ** 3,
    length * (at ** 3 - at ** 2),
  ]
  const areaTo = (at: number): readonly number[] => [
    length * (at - at ** 3 + at ** 4 / 2),
    length ** 2 * (at ** 2 / 2 - (2 * at ** 3) / 3 + at ** 4 / 4),
    length * (at ** 3 - at ** 4 / 2),
    length ** 2 * (at ** 4 / 4 - at ** 3 / 3),
  ]
  const sum = [0, 0, 0, 0]
  const add = (shares: readonly number[], force: number) => {
    shares.forEach((share, index) => {
      sum[index] = (sum[index] ?? 0) + share * force
    })
  }
  for (const { at, load: force } of load.points) add(shape(at / piece.length), force)
  for (const each of load.spread) {
    add(areaTo(each.to / piece.length), each.load * unit)
    add(areaTo(each.from / piece.length), -each.load * unit)
  }
  return sum
}

/** Every place where any load's answer has a break, ascending. */
function breaksOf(nodes: readonly Node[], loads: readonly BeamLoad[]): readonly number[] {
  const [first = 0, last = 0] = [nodes[0]?.at, nodes.at(-1)?.at]
  const ofLoads = loads
    .flatMap(({ spread, points }) => [
      ...spread.flatMap(({ from, to }) => [from, to]),
      ...points.map(({ at }) => at),
    ])
    .filter((at) => at > first && at < last)
  const all = [...nodes.map(({ at }) => at), ...ofLoads].sort((one, other) => one - other)
  return all.filter((at, index) => index === 0 || at > (all[index - 1] ?? 0))
}

/** Along one piece, from its left end to a place on it. */
interface State {
  readonly shear: number
  readonly moment: number
  readonly turn: number
  readonly fall: number
}

/** What is alike for all loads on a piece. */
export interface WorkedPiece {
  readonly piece: Piece
  readonly unknowns: readonly (number | undefined)[]
  readonly stiffness: readonly (readonly number[])[]
  /** Its ends and the breaks between them, ascending. */
  readonly stops: readonly number[]
}

export function workedPieces(
  pieces: readonly Piece[],
  unit: number,
  breaks: readonly number[] = [],
): readonly WorkedPiece[] {
  return pieces.map((piece) => {
    const { from, length } = piece
    const inside = breaks.filter((at) => at > from && at < from + length)
    return {
      piece,
      unknowns: unknownsOf(piece),
      stiffness: pieceStiffness(length / unit),
      stops: [from, ...inside, from + length],
    }
  })
}

function effectOf(
  beam: Beam,
  nodes: readonly Node[],
  pieces: readonly WorkedPiece[],
  unit: number,
  solution: readonly number[],
  load: BeamLoad,
): BeamEffect {
  const value = (unknown: number | undefined): number =>
    unknown === undefined ? 0 : (solution[unknown] ?? 0)
  const stretches: BeamStretch[] = []
  const ends: { readonly left: number; readonly right: number }[] = []
  const fallOf = (unknown: number | undefined): number => (value(unknown) * unit ** 3) / beam.stiffness
  pieces.forEach(({ piece, unknowns, stiffness, stops }, index) => {
    const own = loadsOn(piece, index === pieces.length - 1, load)
    const moments = endMoments(nodes, piece, index, own, () =>
      momentsByStiffness(stiffness, unknowns.map(value), pieceLoads(piece, unit, own), unit),
    )
    const begin = beginning(beam, piece, own, moments, fallOf(piece.fallLeft), fallOf(piece.fallRight))
    walk(beam, piece, own, begin, stops, stretches)
    ends.push({ left: begin.shear, right: begin.shear - totalOf(own) })
  })
  const reactions = nodes.flatMap((node, index) => {
    if (!node.isSupport) return []
    return [(ends[index]?.left ?? 0) - (ends[index - 1]?.right ?? 0)]
  })
  return { stretches, reactions }
}

const totalOf = (load: BeamLoad): number =>
  load.points.reduce((sum, each) => sum + each.load, 0) +
  load.spread.reduce((sum, each) => sum + each.load * (each.to - each.from), 0)

/** The loads' turning effect about a place on the piece. */
const turningOf = (load: BeamLoad, about: number): number =>
  load.points.reduce((sum, each) => sum + each.load * (each.at - about), 0) +
  load.spread.reduce(
    (sum, each) => sum + each.load * (each.to - each.from) * ((each.from + each.to) / 2 - about),
    0,
  )

/**
 * The bending at both ends of a piece. At a free end and at a hinge there is none, and what hangs from a free end is
 * known from its load alone: taking it from there keeps all digits where a short end hangs from a long span.
 */
export function endMoments(
  nodes: readonly Node[],
  piece: Piece,
  index: number,
  load: BeamLoad,
  byStiffness: () => { readonly left: number; readonly right: number },
): { readonly left: number; readonly right: number } {
  const [left, right] = [nodes[index], nodes[index + 1]]
  if (index === 0 && left?.isSupport === false && right?.isSupport === true && !right.isHinge)
    return { left: 0, right: turningOf(load, piece.length) }
  if (index === nodes.length - 2 && right?.isSupport === false && left?.isSupport === true && !left.isHinge)
    return { left: -turningOf(load, 0), right: 0 }
  const found = byStiffness()
  const leftIsFree = left?.isHinge === true || index === 0
  const rightIsFree = right?.isHinge === true || index === nodes.length - 2
  return { left: leftIsFree ? 0 : found.left, right: rightIsFree ? 0 : found.right }
}

/** The bending at both ends of a piece from how its ends moved, less what holds against the loads between them. */
export function momentsByStiffness(
  stiffness: readonly (readonly number[])[],
  moved: readonly number[],
  held: readonly number[],
  unit: number,
): { readonly left: number; readonly right: number } {
  const action = (at: 1 | 3) =>
    moved.reduce((sum, each, column) => sum + (stiffness[at]?.[column] ?? 0) * each, 0) - (held[at] ?? 0)
  return { left: action(1) * unit, right: -action(3) * unit }
}

/** Shear and turn at the left end: shear from the moments by statics, turn so that the right end falls as it does. */
export function beginning(
  beam: Beam,
  piece: Piece,
  load: BeamLoad,
  moments: { readonly left: number; readonly right: number },
  fallLeft: number,
  fallRight: number,
): State {
  const { length } = piece
  const shear = (moments.right - moments.left - turningOf(load, length)) / length
  let bend = (moments.left * length ** 2) / 2 + (shear * length ** 3) / 6
  for (const { at, load: force } of load.points) bend -= (force * (length - at) ** 3) / 6
  for (const each of load.spread)
    bend -= (each.load * ((length - each.from) ** 4 - (length - each.to) ** 4)) / 24
  const turn = (fallRight - fallLeft + bend / beam.stiffness) / length
  return { shear, moment: moments.left, turn, fall: fallLeft }
}

/** Integrates from the left end over every stop, and adds each stretch to `stretches`. */
function walk(
  beam: Beam,
  piece: Piece,
  load: BeamLoad,
  begin: State,
  stops: readonly number[],
  stretches: BeamStretch[],
): void {
  let state = begin
  for (let index = 1; index < stops.length; index++) {
    const [from, to] = [stops[index - 1] ?? 0, stops[index] ?? 0]
    const [left, length] = [from - piece.from, to - from]
    const middle = left + length / 2
    const even = load.spread.reduce(
      (sum, each) => (each.from <= middle && each.to >= middle ? sum + each.load : sum),
      0,
    )
    const here = load.points.reduce((sum, each) => (each.at === left ? sum + each.load : sum), 0)
    const shear = state.shear - here
    const { moment, turn, fall } = state
    const { stiffness } = beam
    stretches.push({
      from,
      to,
      shear: [shear, -even],
      moment: [moment, shear, -even / 2],
      deflection: [fall, turn, -moment / (2 * stiffness), -shear / (6 * stiffness), even / (24 * stiffness)],
    })
    state = {
      shear: shear - even * length,
      moment: moment + shear * length - (even * length ** 2) / 2,
      turn: turn - (moment * length + (shear * length ** 2) / 2 - (even * length ** 3) / 6) / stiffness,
      fall:
        fall +
        turn * length -
        ((moment * length ** 2) / 2 + (shear * length ** 3) / 6 - (even * length ** 4) / 24) / stiffness,
    }
  }
}
