import { type Beam, type BeamLoad, solveBeam } from "../../src/solvers/beam.ts"
import { type ActionsOutcome, actionsOf, liveBySpan } from "../../src/solvers/beam-loads.ts"
import { movingForce } from "../../src/solvers/moving-force.ts"

/** The beam under one load that lies as it lies. */
export function fullLoad(beam: Beam, load: BeamLoad): ActionsOutcome {
  return worst(beam, 1, [load])
}

/** The beam under any of the loads, each of which acts or not. */
export function anyOf(beam: Beam, loads: readonly BeamLoad[]): ActionsOutcome {
  return worst(beam, 0, loads)
}

/** The beam under `dead`, and `live` on any of its spans, each span loaded or not. */
export function patternLoad(beam: Beam, dead: BeamLoad, live: BeamLoad): ActionsOutcome {
  return worst(beam, 1, [dead, ...liveBySpan(beam, live)])
}

/** The first `permanent` loads always act, each of the others or not. */
function worst(beam: Beam, permanent: number, loads: readonly BeamLoad[]): ActionsOutcome {
  const answer = solveBeam(beam, loads)
  return "unmet" in answer ? answer : actionsOf(beam, answer, permanent)
}

/** The beam under `dead`, and one force anywhere on it. */
export function forceAnywhere(beam: Beam, force: number, dead: BeamLoad): ActionsOutcome {
  return movingForce(beam, force, solveBeam(beam, [dead]))
}
