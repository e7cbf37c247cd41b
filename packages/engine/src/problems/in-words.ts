import { languageInForce } from "../language/in-force.ts"
import type { Words } from "../language/language.ts"
import type { UnitSystem } from "../units/measure.ts"
import type { Problem } from "./problem.ts"

/** The sentences for a problem, in the language in force. `system`: the units shown, for examples. */
export function inWords(problem: Problem, system: UnitSystem): Words {
  return languageInForce().inWords(problem, system)
}
