import { lengthInWords } from "./length-in-words.ts"

/** A length that can be bought, and what it costs: its length again, when least length is wanted. */
export interface Stock {
  readonly length: number
  readonly cost: number
}

/** Lines of a long member over a row of supports. All lengths in one unit: whole nanometres, or any other. */
export interface SpliceCase {
  /** Centres of the supports along the line, ascending. */
  readonly supports: readonly number[]
  /** How far each support bears along the line, centred on it. */
  readonly bearings: readonly number[]
  /** The ends of the line. */
  readonly start: number
  readonly end: number
  readonly stocks: readonly Stock[]
  /** Each of the two ends at a joint rests on its support by at least this. */
  readonly bearingMin: number
  /** Lines side by side. */
  readonly lines: number
  /** Joints of neighbouring lines are at least this far apart, and never over the same support. */
  readonly stagger: number
  /** The shortest piece allowed, unless a line is one piece. */
  readonly pieceMin: number
  /** A line may stop this far before its end, if it still lies full on its last support. */
  readonly shortfall: number
}

export interface Piece {
  readonly from: number
  readonly to: number
  readonly stock: Stock
}

export interface Joint {
  readonly position: number
  /** The support's number, from 1. */
  readonly support: number
  /** What each end rests on. */
  readonly bearing: number
}

export interface SplicePlan {
  /** The pieces of each line; empty when there is no way to make one. */
  readonly lines: readonly (readonly Piece[])[]
  readonly joints: readonly (readonly Joint[])[]
  /** The cost of all boards, each piece from a board of its own. No plan that keeps the rules costs less. */
  readonly cost: number
  readonly unmet: readonly string[]
}

/** Supports whose places were divided miss their mark by less than this many units; a board is not short for it. */
const SLACK = 1000

/** Where a line may begin, be joined, or end. */
interface Node {
  readonly position: number
  readonly support?: number
  readonly bearing?: number
}

/** Cost first, then pieces. */
interface Price {
  readonly cost: number
  readonly pieces: number
}

interface Way {
  readonly price: Price
  readonly joints: readonly (readonly number[])[]
}

/**
 * Lays out the pieces of every line for the least cost of boards, then for the fewest pieces.
 *
 * One line is solved by dynamic programming over the places for a joint. For several lines it is enough to
 * find the best two that may lie side by side, and to lay them in turn: among all sequences of lines in which
 * neighbours may lie side by side, one that alternates two of its own neighbouring lines costs no more, because
 * the sequence's cost is a weighted mean of the costs of those alternations. So the answer is the best one.
 * Where the stagger cannot be had at all, the widest that can be had is taken, and `unmet` says so.
 */
export function splice(given: SpliceCase): SplicePlan {
  const nodes = nodesOf(given)
  const alone = bestLine(given, nodes)
  if (alone === undefined) return { lines: [], joints: [], cost: 0, unmet: [whyImpossible(given)] }
  const { way, unmet } = given.lines < 2 ? { way: alone, unmet: [] } : staggered(given, nodes, alone)
  const lines: (readonly Piece[])[] = []
  const joints: (readonly Joint[])[] = []
  for (let line = 0; line < given.lines; line++) {
    const path = way.joints[line % way.joints.length] ?? []
    lines.push(piecesOf(given, nodes, path))
    joints.push(path.map((index) => jointAt(nodes, index)))
  }
  return { lines, joints, cost: way.price.cost, unmet }
}

/** The line's start, its allowed joints in order, its end. */
function nodesOf(given: SpliceCase): readonly Node[] {
  const joints: Node[] = []
  for (let index = 1; index < given.supports.length - 1; index++) {
    const position = given.supports[index] ?? 0
    const bearing = (given.bearings[index] ?? 0) / 2
    if (bearing + SLACK >= given.bearingMin) joints.push({ position, support: index + 1, bearing })
  }
  return [{ position: given.start }, ...joints, { position: given.end }]
}

/** How far before its end a line may really stop: full on the last support, and no further. */
function shortfallOf(given: SpliceCase): number {
  const last = given.supports.at(-1) ?? given.end
  const bearing = (given.bearings.at(-1) ?? 0) / 2
  return Math.max(0, Math.min(given.shortfall, given.end - last - bearing))
}

/** The cheapest board for the piece between two nodes, or nothing when no piece may lie there. */
function boardFor(given: SpliceCase, nodes: readonly Node[], from: number, to: number): Stock | undefined {
  const last = nodes.length - 1
  const whole = positionOf(nodes, to) - positionOf(nodes, from)
  const needed = whole - (to === last ? shortfallOf(given) : 0)
  const isWholeLine = from === 0 && to === last
  if (!isWholeLine && needed + SLACK < given.pieceMin) return undefined
  let best: Stock | undefined
  for (const stock of given.stocks) {
    if (stock.length + SLACK < needed) continue
    if (
      best === undefined ||
      stock.cost < best.cost ||
      (stock.cost === best.cost && stock.length < best.length)
    ) {
      best = stock
    }
  }
  return best
}

/** The best single line. */
function bestLine(given: SpliceCase, nodes: readonly Node[]): Way | undefined {
  const last = nodes.length - 1
  const best: (Way | undefined)[] = []
  best[last] = { price: { cost: 0, pieces: 0 }, joints: [[]] }
  for (let from = last - 1; from >= 0; from--) {
    for (let to = from + 1; to <= last; to++) {
      const rest = best[to]
      const board = boardFor(given, nodes, from, to)
      if (rest === undefined || board === undefined) continue
      const price = plus(rest.price, board.cost, 1)
      if (isBetter(price, best[from]?.price)) {
        best[from] = { price, joints: [[...(to === last ? [] : [to]), ...(rest.joints[0] ?? [])]] }
      }
    }
  }
  const way = best[0]
  if (way === undefined) return undefined
  return {
    price: { cost: way.price.cost * given.lines, pieces: way.price.pieces * given.lines },
    joints: way.joints,
  }
}

/**
 * The best two lines to lay in turn, `stagger` apart. Works along both lines at once, always moving the one
 * that is behind, so that a new joint need only be held against the other line's last one: every joint of the
 * other line before that is behind this line's last joint, and was held against it already.
 */
function bestPair(given: SpliceCase, nodes: readonly Node[], stagger: number): Way | undefined {
  const last = nodes.length - 1
  const weights = [Math.ceil(given.lines / 2), Math.floor(given.lines / 2)] as const
  const known = new Map<number, Way | undefined>()

  const from = (first: number, second: number): Way | undefined => {
    if (first === last && second === last) return { price: { cost: 0, pieces: 0 }, joints: [[], []] }
    const key = first * nodes.length + second
    if (!known.has(key)) known.set(key, onward(first, second))
    return known.get(key)
  }

  const onward = (first: number, second: number): Way | undefined => {
    const firstMoves = first <= second
    const mine = firstMoves ? first : second
    const other = firstMoves ? second : first
    const weight = firstMoves ? weights[0] : weights[1]
    let best: Way | undefined
    for (let to = mine + 1; to <= last; to++) {
      if (to !== last && other > 0 && other < last && !apart(nodes, to, other, stagger)) continue
      const board = boardFor(given, nodes, mine, to)
      if (board === undefined) continue
      const rest = firstMoves ? from(to, second) : from(first, to)
      if (rest === undefined) continue
      const price = plus(rest.price, board.cost * weight, weight)
      if (!isBetter(price, best?.price)) continue
      const [ofFirst = [], ofSecond = []] = rest.joints
      const added = to === last ? [] : [to]
      best = {
        price,
        joints: firstMoves ? [[...added, ...ofFirst], ofSecond] : [ofFirst, [...added, ...ofSecond]],
      }
    }
    return best
  }

  return from(0, 0)
}

/** The best lines that keep the stagger, as wide apart as costs nothing; or the widest stagger that can be had. */
function staggered(
  given: SpliceCase,
  nodes: readonly Node[],
  alone: Way,
): { readonly way: Way; readonly unmet: readonly string[] } {
  const distances = distancesBetween(nodes)
  const wanted = bestPair(given, nodes, given.stagger)
  if (wanted !== undefined) {
    const wider = distances.filter((distance) => distance > given.stagger)
    const widest = lastThat(wider, (distance) => {
      const way = bestPair(given, nodes, distance)
      return way !== undefined && !isBetter(wanted.price, way.price) ? way : undefined
    })
    return { way: widest?.found ?? wanted, unmet: [] }
  }
  const nearer = lastThat(
    distances.filter((distance) => distance < given.stagger),
    (distance) => bestPair(given, nodes, distance),
  )
  if (nearer !== undefined) {
    const says =
      `Joints of neighbouring lines are only ${lengthInWords(nearer.at)} apart, not ${lengthInWords(given.stagger)}: ` +
      "the lengths you can buy allow no more. Add a longer length, or ask for less stagger."
    return { way: nearer.found, unmet: [says] }
  }
  const says =
    "Joints of neighbouring lines lie over the same supports: the lengths you can buy leave no other place. " +
    "Add a length that spans one more support, allow a shorter piece, or tie these joints with longer splice pieces."
  return { way: alone, unmet: [says] }
}

/** Distances between two different places for a joint, ascending, those within the slack of one another once. */
function distancesBetween(nodes: readonly Node[]): readonly number[] {
  const joints = nodes.slice(1, -1).map((node) => node.position)
  const all = joints.flatMap((one, index) => joints.slice(index + 1).map((other) => other - one))
  all.sort((one, other) => one - other)
  return all.filter((distance, index) => index === 0 || distance - (all[index - 1] ?? 0) > SLACK)
}

/** The last of `ascending` that `find` finds something for, given that it finds nothing after its first failure. */
function lastThat<Found>(
  ascending: readonly number[],
  find: (one: number) => Found | undefined,
): { readonly at: number; readonly found: Found } | undefined {
  let best: { readonly at: number; readonly found: Found } | undefined
  let low = 0
  let high = ascending.length - 1
  while (low <= high) {
    const middle = (low + high) >> 1
    const at = ascending[middle] ?? 0
    const found = find(at)
    if (found === undefined) high = middle - 1
    else {
      best = { at, found }
      low = middle + 1
    }
  }
  return best
}

function apart(nodes: readonly Node[], one: number, other: number, stagger: number): boolean {
  if (one === other) return false
  return Math.abs(positionOf(nodes, one) - positionOf(nodes, other)) + SLACK >= stagger
}

function piecesOf(given: SpliceCase, nodes: readonly Node[], path: readonly number[]): readonly Piece[] {
  const last = nodes.length - 1
  const stops = [...path, last]
  return stops.map((to, index) => {
    const from = index === 0 ? 0 : (stops[index - 1] ?? 0)
    const stock = boardFor(given, nodes, from, to)
    if (stock === undefined) throw new Error(`no board for the piece from node ${from} to node ${to}`)
    const begins = positionOf(nodes, from)
    const ends = positionOf(nodes, to)
    const reaches = to === last && ends - begins > stock.length + SLACK ? begins + stock.length : ends
    return { from: begins, to: reaches, stock }
  })
}

function jointAt(nodes: readonly Node[], index: number): Joint {
  const node = nodes[index]
  if (node?.support === undefined || node.bearing === undefined) throw new Error(`node ${index} is no joint`)
  return { position: node.position, support: node.support, bearing: node.bearing }
}

/** Which limit stops every layout of even one line, and what would free it. */
function whyImpossible(given: SpliceCase): string {
  if (given.stocks.length === 0) return "No lengths to buy are listed. List at least one."
  const longest = Math.max(...given.stocks.map((stock) => stock.length))
  if (bestLine({ ...given, pieceMin: 0 }, nodesOf({ ...given, pieceMin: 0 })) !== undefined) {
    return (
      `Every layout needs a piece shorter than ${lengthInWords(given.pieceMin)}, the shortest allowed. ` +
      `Allow a shorter piece, or add a length longer than ${lengthInWords(longest)}.`
    )
  }
  const free: SpliceCase = { ...given, pieceMin: 0, bearingMin: 0 }
  if (bestLine(free, nodesOf(free)) !== undefined) {
    const widest = Math.max(...given.bearings)
    return (
      `A joint needs ${lengthInWords(2 * given.bearingMin)} of bearing, ${lengthInWords(given.bearingMin)} for each end, ` +
      `and the supports give ${lengthInWords(widest)}. Use longer blocks, or add a length of ` +
      `${lengthInWords(given.end - given.start)} or more.`
    )
  }
  const nodes = nodesOf(free)
  const gap = nodes.findIndex(
    (_, index) => index > 0 && boardFor(free, nodes, index - 1, index) === undefined,
  )
  const from = positionOf(nodes, gap - 1)
  const to = positionOf(nodes, gap)
  return (
    `No length reaches from ${lengthInWords(from)} to ${lengthInWords(to)} along the line, the nearest two places ` +
    `for a joint: it needs ${lengthInWords(to - from)} and the longest is ${lengthInWords(longest)}. ` +
    "Put the supports closer together, or add a longer length."
  )
}

function positionOf(nodes: readonly Node[], index: number): number {
  const node = nodes[index]
  if (node === undefined) throw new RangeError(`no node ${index}; there are ${nodes.length}`)
  return node.position
}

function plus(price: Price, cost: number, pieces: number): Price {
  return { cost: price.cost + cost, pieces: price.pieces + pieces }
}

function isBetter(one: Price, than: Price | undefined): boolean {
  if (than === undefined) return true
  return one.cost < than.cost || (one.cost === than.cost && one.pieces < than.pieces)
}
