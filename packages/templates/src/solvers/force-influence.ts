import {
  type Beam,
  beginning,
  endMoments,
  momentsByStiffness,
  NO_LOAD,
  NOTHING_HELD,
  nodesOf,
  notABeam,
  notHeld,
  pieceLoads,
  piecesOf,
  stiffnessMatrix,
  workedPieces,
} from "./beam.ts"
import { solveEquations } from "./beam-equations.ts"

/** What one force does where it stands, and at every support. */
export interface ForcePlace {
  readonly at: number
  /** Under the force; positive where the beam sags. */
  readonly moment: number
  /** Just left of it; positive where the left part pushes the right part up. */
  readonly shear: number
  /** Under it, positive down. */
  readonly fall: number
  /** Over a support, by its number, ascending. */
  readonly momentOver: (support: number) => number
  readonly reactionOf: (support: number) => number
}

/** A piece between neighbouring supports, joints and ends, and what a force does at some places on it. */
export interface ForcePiece {
  readonly from: number
  readonly to: number
  readonly places: readonly ForcePlace[]
}

/**
 * One force at each of `shares` of every piece of a beam without other load. All places share one solution of the
 * equations; beyond where the force stands, what happens at a support is worked out when it is asked for.
 */
export function forceInfluence(
  beam: Beam,
  force: number,
  shares: readonly number[],
): { readonly pieces: readonly ForcePiece[] } | { readonly unmet: string; readonly at: number } {
  const wrong = notABeam(beam, [{ spread: [], points: [{ at: beam.start, load: force }] }])
  if (wrong !== undefined) return wrong
  const nodes = nodesOf(beam)
  const { pieces, size, places } = piecesOf(nodes)
  const unit = Math.max(...pieces.map(({ length }) => length))
  const worked = workedPieces(pieces, unit)
  const standing = pieces.flatMap((piece, index) =>
    shares.map((share) => {
      const load = { spread: [], points: [{ at: share * piece.length, load: force }] }
      return { index, load, held: pieceLoads(piece, unit, load) }
    }),
  )
  const outcome = solveEquations(
    stiffnessMatrix(pieces, size, unit),
    standing.map(({ index, held }) => {
      const vector = new Array<number>(size).fill(0)
      worked[index]?.unknowns.forEach((row, at) => {
        if (row !== undefined) vector[row] = held[at] ?? 0
      })
      return vector
    }),
  )
  if ("loose" in outcome) return notHeld(places[outcome.loose] ?? beam.start)

  const ofSupports = nodes.flatMap(({ isSupport }, index) => (isSupport ? [index] : []))
  const found = standing.map(({ index: loaded, load, held }, which): ForcePlace => {
    const solution = outcome.solutions[which] ?? []
    const bent = (index: number): { readonly left: number; readonly right: number } | undefined => {
      const own = worked[index]
      if (own === undefined) return undefined
      const { piece, stiffness, unknowns } = own
      return endMoments(nodes, piece, index, index === loaded ? load : NO_LOAD, () =>
        momentsByStiffness(
          stiffness,
          unknowns.map((row) => (row === undefined ? 0 : (solution[row] ?? 0))),
          index === loaded ? held : NOTHING_HELD,
          unit,
        ),
      )
    }
    const [piece, moments] = [pieces[loaded], bent(loaded)]
    if (piece === undefined || moments === undefined) throw new Error("a force stands on a piece")
    const fallOf = (unknown: number | undefined): number =>
      unknown === undefined ? 0 : ((solution[unknown] ?? 0) * unit ** 3) / beam.stiffness
    const begin = beginning(beam, piece, load, moments, fallOf(piece.fallLeft), fallOf(piece.fallRight))
    const along = load.points[0]?.at ?? 0
    /** The shear at both ends of a piece without the force; none beyond the ends of the beam. */
    const shear = (index: number): number => {
      const of = bent(index)
      return of === undefined ? 0 : (of.right - of.left) / (pieces[index]?.length ?? 1)
    }
    return {
      at: piece.from + along,
      moment: moments.left + begin.shear * along,
      shear: begin.shear,
      fall:
        begin.fall +
        begin.turn * along -
        ((begin.moment * along ** 2) / 2 + (begin.shear * along ** 3) / 6) / beam.stiffness,
      momentOver: (support) => {
        const node = ofSupports[support] ?? nodes.length
        return (node === loaded ? moments : bent(node))?.left ?? bent(node - 1)?.right ?? 0
      },
      reactionOf: (support) => {
        const node = ofSupports[support] ?? nodes.length
        const right = node === loaded ? begin.shear : shear(node)
        return right - (node - 1 === loaded ? begin.shear - force : shear(node - 1))
      },
    }
  })
  return {
    pieces: pieces.map(({ from, length }, index) => ({
      from,
      to: from + length,
      places: found.slice(index * shares.length, (index + 1) * shares.length),
    })),
  }
}
