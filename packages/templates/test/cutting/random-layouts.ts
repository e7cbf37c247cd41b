import fc from "fast-check"

/** Cases of sheets on joists in millimetres, up to `longest` across the joists, with one to three courses. */
export const sheetLayouts = ({
  longest,
  gap,
}: {
  readonly longest: number
  readonly gap: fc.Arbitrary<number>
}) =>
  fc
    .record({
      acrossJoists: fc.integer({ min: 1000, max: longest }),
      joistSpacing: fc.constantFrom(400, 600),
      gap,
      heights: fc.array(fc.constantFrom(1220, 1220, 600, 401), { minLength: 1, maxLength: 3 }),
      stagger: fc.constantFrom(0, 600, 1200),
      minBaysForPiece: fc.integer({ min: 1, max: 2 }),
    })
    .map(({ acrossJoists, gap, heights, ...rest }) => ({
      id: "sheets",
      kind: "sheet",
      platform: {
        acrossJoists,
        alongJoists: heights.reduce((sum, height) => sum + height, gap * (heights.length - 1)),
      },
      sheet: { length: 2440, width: 1220 },
      gap,
      kerf: 3,
      courses: heights,
      ...rest,
    }))
