import type { Decimal } from "./decimal.ts"
import type { Dimension } from "./dimension.ts"

/**
 * A number and its dimension. `si` is in SI coherent units (m, kg, s, K), in radians for an angle and in the
 * currency's major unit for money.
 */
export interface Quantity {
  readonly si: Decimal
  readonly dimension: Dimension
}
