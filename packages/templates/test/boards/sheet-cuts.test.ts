import fc from "fast-check"
import { expect, test } from "vitest"
import { planSheetCuts, type SheetPiece } from "../../src/solvers/sheet-cuts.ts"

const SHEET = { length: 96, width: 48 }

test("two halves come out of one sheet only if the saw cut leaves room", () => {
  const halves: readonly SheetPiece[] = [
    { length: 47.875, width: 48 },
    { length: 47.875, width: 48 },
  ]
  expect(planSheetCuts(halves, SHEET, 1 / 8).sheets).toHaveLength(1)
  expect(planSheetCuts(halves, SHEET, 1 / 2).sheets).toHaveLength(2)
})

test("strips of a narrow row are ripped side by side", () => {
  const strips = Array.from({ length: 6 }, (): SheetPiece => ({ length: 96, width: 15 }))
  expect(planSheetCuts(strips, SHEET, 1 / 8).sheets).toHaveLength(2)
})

test("a piece larger than a sheet is named and cut from none", () => {
  const plan = planSheetCuts(
    [
      { length: 97, width: 48 },
      { length: 10, width: 10 },
    ],
    SHEET,
    0,
  )
  expect(plan.misfits).toEqual([0])
  expect(plan.sheets).toEqual([[1]])
})

const someSheets = fc.array(
  fc.record({ length: fc.integer({ min: 1, max: 100 }), width: fc.constantFrom(48, 40, 24, 12) }),
  { maxLength: 20 },
)

test("each piece that fits is cut once; crosscuts and saw cuts fit along every sheet; the bound holds", () => {
  fc.assert(
    fc.property(someSheets, fc.constantFrom(0, 1), (pieces, kerf) => {
      const { sheets, misfits, bound } = planSheetCuts(pieces, SHEET, kerf)
      expect([...sheets.flat(), ...misfits].sort((a, b) => a - b)).toEqual([...pieces.keys()])
      expect(bound).toBeLessThanOrEqual(sheets.length)
      for (const sheet of sheets) {
        const held = sheet.map((index) => pieces[index] ?? { length: 0, width: 0 })
        const area = held.reduce((sum, { length, width }) => sum + length * width, 0)
        expect(area).toBeLessThanOrEqual(SHEET.length * SHEET.width)
        const endToEnd = held
          .filter(({ width }) => 2 * width + kerf > SHEET.width)
          .reduce((sum, { length }) => sum + length + kerf, 0)
        expect(endToEnd).toBeLessThanOrEqual(SHEET.length + kerf)
      }
    }),
  )
})
