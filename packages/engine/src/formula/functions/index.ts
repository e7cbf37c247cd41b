import { ARITHMETIC } from "./arithmetic.ts"
import type { FunctionRule } from "./function-rule.ts"
import { LOGIC } from "./logic.ts"
import { LOOK_UP } from "./look-up.ts"
import { ROUNDING } from "./rounding.ts"
import { STATISTICS } from "./statistics.ts"
import { TEXTS } from "./text.ts"
import { TRIGONOMETRY } from "./trigonometry.ts"

/** Every function that a formula may use, by its name in capitals. */
export const FUNCTIONS: ReadonlyMap<string, FunctionRule> = new Map(
  [LOGIC, ROUNDING, ARITHMETIC, TRIGONOMETRY, STATISTICS, LOOK_UP, TEXTS]
    .flat()
    .map((rule) => [rule.name, rule]),
)
