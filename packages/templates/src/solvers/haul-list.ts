import type { Solution, SolverGiven } from "@pegbook/engine"
import {
  type BoughtThing,
  heldOf,
  inUnit,
  namesOf,
  sameItem,
  TIMBER_READS,
  timberBought,
} from "./bought-things.ts"

/** The names that a list of what is hauled is worked from. */
export function haulListReads(things: readonly BoughtThing[]): readonly string[] {
  const names = things.flatMap(({ quantity, mass }) => [
    ...namesOf(quantity),
    ...(mass === undefined ? [] : "role" in mass ? ROLE_READS : [mass.one, mass.all]),
  ])
  return [
    ...new Set([
      ...TIMBER_READS,
      "timber_weights.as_bought",
      ...names,
      "masses.item",
      "masses.unit",
      "masses.mass",
    ]),
  ]
}

const ROLE_READS = ["member_masses.role", "member_masses.heaviest"] as const

/** The mass of one and of all of a thing that is known without the user's table. */
function known(given: SolverGiven, mass: NonNullable<BoughtThing["mass"]>, held: number) {
  if (!("role" in mass)) return { one: given.number(mass.one), mass: given.number(mass.all) }
  const [roles, heaviest] = ROLE_READS
  const one = Number(given.column(heaviest)[given.column(roles).indexOf(mass.role)] ?? 0)
  return { one, mass: one * held }
}

const YOURS = "your table"
const BY_DENSITY = "density and size"

/**
 * What has a weight, one thing a row: item, length, quantity, unit, one, mass, from. The length is that of timber, nothing for other things; `one` is the mass of a single
 * piece, and nothing for what is not counted by the piece. The user's masses come first; then what size and
 * density say. What has neither is named in the report and not weighed.
 */
export function solveHaulList(things: readonly BoughtThing[]): (given: SolverGiven) => Solution {
  return (given) => {
    const items = given.column("masses.item").map(String)
    const units = given.column("masses.unit").map((unit) => String(unit).trim())
    const masses = given.column("masses.mass").map(Number)
    const unmet: string[] = []
    const unweighed: string[] = []

    /** The first of the user's rows for an item, and the mass of one of `held` by it. */
    const byUser = (item: string, in_: (unit: string) => number | undefined): number | undefined => {
      const at = items.findIndex((one) => sameItem(one, item))
      const unit = units[at]
      if (unit === undefined) return undefined
      const number = in_(unit)
      if (number !== undefined) return number * (masses[at] ?? 0)
      unmet.push(
        `The mass of ${item} is by "${unit}", which this list does not count it by. Give it by the piece or, for timber, by the length.`,
      )
      return undefined
    }

    const weights = given.column("timber_weights.as_bought").map(Number)
    const timber = timberBought(given).map(({ size, length, count, at }) => {
      const yours = byUser(size, (unit) => inUnit(1, unit, "count") ?? inUnit(length, unit, "length"))
      const one = yours ?? weights[at] ?? 0
      const from = yours === undefined ? BY_DENSITY : YOURS
      return {
        item: size,
        length,
        quantity: count,
        unit: "each",
        one,
        mass: count * one,
        from,
      }
    })

    const others = things.flatMap(({ item, quantity, measure, unit, mass }) => {
      const held = heldOf(given, quantity)
      if (held <= 0) return []
      const counted = measure === "count"
      const row = { item, length: 0, quantity: inUnit(held, unit, measure) ?? held, unit }
      const yours = byUser(item, (typed) => inUnit(held, typed, measure))
      if (yours !== undefined) return [{ ...row, one: counted ? yours / held : 0, mass: yours, from: YOURS }]
      if (mass !== undefined) return [{ ...row, ...known(given, mass, held), from: BY_DENSITY }]
      unweighed.push(item)
      return []
    })

    const method = "quantities times the masses of your table, or of size and density"
    return {
      rows: [...timber, ...others],
      report: {
        method: unweighed.length === 0 ? method : `${method}; not weighed: ${unweighed.join(", ")}`,
        unmet: [...new Set(unmet)],
      },
    }
  }
}
