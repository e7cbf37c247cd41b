import { type Book, openBook } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

interface Point {
  readonly member: string
  readonly position: number
  readonly at_support: boolean
  readonly at_joint: boolean
  readonly moment: number
  readonly shear: number
  readonly deflection: number
}

function pointsOf(book: Book): readonly Point[] {
  const column = (name: string) => book.entry(`member_curves.${name}`).readings ?? []
  const [members, positions] = [column("member"), column("position")]
  const [supports, joints] = [column("at_support"), column("at_joint")]
  const [moments, shears, deflections] = [column("moment"), column("shear"), column("deflection")]
  return members.map((member, row) => ({
    member: String(member?.value),
    position: Number(positions[row]?.value),
    at_support: supports[row]?.value === true,
    at_joint: joints[row]?.value === true,
    moment: Number(moments[row]?.value),
    shear: Number(shears[row]?.value),
    deflection: Number(deflections[row]?.value),
  }))
}

// Facts of statics, as any textbook of structures has them (common practice, no source).
describe.each(TEMPLATES.map((template) => [template.id, template] as const))("%s", (_, template) => {
  const { book } = openBook(template)
  // Short pieces, where the workbook has pieces, so that there are joints.
  for (const name of ["skid_stock", "beam_stock", "bearer_stock", "stringer_stock"])
    if (book.has(name)) book.edit(name, "8 ft")
  const all = pointsOf(book)
  const members = [...new Set(all.map(({ member }) => member))]

  test.each(members)(
    "along the %s the moment grows by the shear, and the shear leaps at supports alone",
    (member) => {
      const points = all.filter((point) => point.member === member)
      const most = (of: (point: Point) => number) => Math.max(...points.map((point) => Math.abs(of(point))))
      const [mostMoment, mostShear] = [most(({ moment }) => moment), most(({ shear }) => shear)]
      expect(mostMoment).toBeGreaterThan(0)
      for (const [index, point] of points.entries()) {
        const next = points[index + 1]
        if (next === undefined) break
        const length = next.position - point.position
        if (length === 0) {
          expect(next.moment).toBeCloseTo(point.moment, 6)
          if (Math.abs(next.shear - point.shear) > 1e-6 * mostShear) expect(point.at_support).toBe(true)
          continue
        }
        // Under an even load the shear falls evenly, so its middle is its mean.
        const grown = ((point.shear + next.shear) / 2) * length
        expect(Math.abs(next.moment - point.moment - grown)).toBeLessThan(1e-6 * mostMoment)
      }
    },
  )

  test("nothing is bent at a free end or at a joint, and nothing sags on a support", () => {
    for (const member of members) {
      const points = all.filter((point) => point.member === member)
      const most = Math.max(...points.map(({ moment }) => Math.abs(moment)))
      const sag = Math.max(...points.map(({ deflection }) => Math.abs(deflection)))
      expect(points.some(({ at_support }) => at_support)).toBe(true)
      for (const point of [points[0], points.at(-1), ...points.filter(({ at_joint }) => at_joint)])
        expect(Math.abs(point?.moment ?? Number.NaN)).toBeLessThan(1e-6 * most)
      for (const point of points.filter(({ at_support }) => at_support))
        expect(Math.abs(point.deflection)).toBeLessThan(1e-6 * sag)
    }
  })

  test("the greatest moment is read where the shear is nothing or leaps over it", () => {
    for (const member of members) {
      const points = all.filter((point) => point.member === member)
      const mostShear = Math.max(...points.map(({ shear }) => Math.abs(shear)))
      const [first] = points
      if (first === undefined) throw new Error(member)
      const bent = points.reduce(
        (most, one) => (Math.abs(one.moment) > Math.abs(most.moment) ? one : most),
        first,
      )
      const there = points.filter(({ position }) => position === bent.position).map(({ shear }) => shear)
      expect(Math.min(...there), member).toBeLessThan(1e-6 * mostShear)
      expect(Math.max(...there), member).toBeGreaterThan(-1e-6 * mostShear)
    }
  })

  test("the greatest sag along a member is not more than the one that is checked, with people where they press hardest", () => {
    const names = book.entry("members.member").readings ?? []
    const checked = book.entry("members.sag_total").readings ?? []
    for (const member of members) {
      const sag = Math.max(
        ...all.filter((point) => point.member === member).map(({ deflection }) => deflection),
      )
      const row = names.findIndex((name) => name?.value === member)
      expect(sag).toBeGreaterThan(0)
      expect(sag).toBeLessThanOrEqual(Number(checked[row]?.value) * (1 + 1e-9))
    }
  })
})
