import type { EntryView, Reading } from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"

/** The table of points, and its columns that are drawn as lines over the others. */
export const CURVES_TABLE = "member_curves"
export const QUANTITIES = ["moment", "shear", "deflection"] as const
export type Quantity = (typeof QUANTITIES)[number]

export interface CurvePoint {
  /** The row of the table, from 1. */
  readonly row: number
  /** Along the member, in the held unit. */
  readonly at: number
  readonly value: number
}

/** One quantity along one member. */
export interface Curve {
  readonly quantity: Quantity
  readonly label: string
  readonly points: readonly CurvePoint[]
  /** Where it is greatest, up or down: its reading and its place, as a person reads them. */
  readonly greatest: CurvePoint & { readonly text: string; readonly place: string }
}

/** One member with what is drawn of it. Places are in the held unit. */
export interface MemberCurves {
  readonly member: string
  readonly from: number
  readonly to: number
  /** Texts of the two ends. */
  readonly ends: readonly [string, string]
  readonly supports: readonly number[]
  readonly joints: readonly number[]
  /** Those that are known: a member that no table holds has no sag. */
  readonly curves: readonly Curve[]
}

type Readings = NonNullable<EntryView["readings"]>

/** Every member of a workbook with the lines along it; none where a workbook has no such table. */
export function memberCurves(sheet: Pick<Sheet, "has" | "later">): readonly MemberCurves[] {
  if (!sheet.has(CURVES_TABLE)) return []
  const column = (name: string): Readings => sheet.later.entry(`${CURVES_TABLE}.${name}`).readings ?? []
  const names = column("member")
  const places = column("position")
  const supported = column("at_support")
  const jointed = column("at_joint")
  const members = [...new Set(names.map((name) => name?.text))].filter((name) => name !== undefined)
  return members.map((member) => {
    const rows = names.flatMap((name, row) => (name?.text === member ? [row] : []))
    const placeOf = (row: number) => numberIn(places[row])
    const where = (marks: Readings) => [
      ...new Set(rows.filter((row) => marks[row]?.value === true).map(placeOf)),
    ]
    const [first = 0, last = 0] = [rows[0], rows.at(-1)]
    return {
      member,
      from: placeOf(first),
      to: placeOf(last),
      ends: [places[first]?.text ?? "", places[last]?.text ?? ""],
      supports: where(supported),
      joints: where(jointed),
      curves: QUANTITIES.flatMap((quantity) => {
        const { label } = sheet.later.entry(`${CURVES_TABLE}.${quantity}`)
        return curveOf(quantity, label, rows, places, column(quantity)) ?? []
      }),
    }
  })
}

function curveOf(
  quantity: Quantity,
  label: string,
  rows: readonly number[],
  places: Readings,
  values: Readings,
): Curve | undefined {
  const points = rows.flatMap((row) =>
    values[row] === undefined
      ? []
      : [{ row: row + 1, at: numberIn(places[row]), value: numberIn(values[row]) }],
  )
  const [first] = points
  if (first === undefined || points.length < rows.length) return undefined
  const greatest = points.reduce(
    (most, one) => (Math.abs(one.value) > Math.abs(most.value) ? one : most),
    first,
  )
  return {
    quantity,
    label,
    points,
    greatest: {
      ...greatest,
      text: values[greatest.row - 1]?.text ?? "",
      place: places[greatest.row - 1]?.text ?? "",
    },
  }
}

const numberIn = (reading: Reading | undefined | null): number => Number(reading?.value ?? 0)
