import type { Column } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import { USER } from "../sources.ts"
import { BOLT_STEEL } from "../sources-actions.ts"
import { BEARING_LENGTH } from "../sources-strength.ts"

/** Figures of the bolts that hold a post: washer and steel. */
export const POST_BOLT_FIGURES: readonly Column[] = [
  figureColumn(
    "washer",
    "Side of a square washer",
    "length",
    "3 in",
    "Thick plates, one at either end of a bolt. A small round washer sinks into the wood.",
    USER,
  ),
  figureColumn(
    "steel",
    "A bolt may be pulled with",
    "stress",
    "22500 psi",
    "On the area of its shank.",
    BOLT_STEEL,
  ),
]

/** A bolt that a post pulls at: formulas of the pull, of figures of {@link POST_BOLT_FIGURES}, and of the post's row of `members`. */
export interface PulledBolt {
  readonly pull: string
  readonly figure: (name: string) => string
  /** Its thickness. */
  readonly bolt: string
  readonly member: (name: string) => string
  /** When nothing pulls. */
  readonly idle: string
}

/** Columns washer_stress, washer_ratio and bolt_ratio. Source: bearing across the grain, and steel on the shank's area. */
export function pulledBoltColumns({ pull, figure, bolt, member, idle }: PulledBolt): readonly Column[] {
  return [
    column(
      "washer_stress",
      "Wood under the washer",
      "stress",
      `${member("live_factor")} * ${pull} / (${figure("washer")} ^ 2 - ${bolt} ^ 2)`,
      "Pull over the washer's area, less the hole; with the load factor of limit states.",
      BEARING_LENGTH,
    ),
    column(
      "washer_ratio",
      "Of what that wood may bear",
      "share",
      `IF(${idle}; 0; washer_stress / ${member("fc_perp_allowed")})`,
      "Across the grain, by your method of design.",
      BEARING_LENGTH,
    ),
    column(
      "bolt_ratio",
      "Of what the bolt's steel may bear",
      "share",
      `${pull} / (${figure("steel")} * PI() * ${bolt} ^ 2 / 4)`,
      "Pull over the shank's area; without a load factor, by either method.",
      BOLT_STEEL,
    ),
  ]
}
