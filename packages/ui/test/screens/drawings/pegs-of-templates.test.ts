import { type Book, type DrawnShape, type LanguageId, openBook, resolveDrawing } from "@pegbook/engine"
import { speak, TEMPLATES, templates } from "@pegbook/templates"
import { afterAll, beforeAll, describe, expect, test } from "vitest"
import { MM, PAPERS, toScale } from "../../../src/screens/build-book/to-scale.ts"
import { type Camera, fit, toPixel } from "../../../src/screens/drawings/camera.ts"
import { dimensionsIn, marginsFor } from "../../../src/screens/drawings/dimension-lines.ts"
import { labelsOf } from "../../../src/screens/drawings/label-wishes.ts"
import { namePegs } from "../../../src/screens/drawings/peg-names.ts"
import { boxOf, placeLabels } from "../../../src/screens/drawings/place-labels.ts"
import { obstaclesOf } from "../../../src/screens/drawings/segments.ts"

const LANGUAGES: readonly LanguageId[] = ["en", "fr"]
/** Pixels from one point of a line that is looked at to the next. */
const STEP = 0.25

/** Points along a line, close together: no clipping that could be wrong in the same way as what is tested. */
function along(shape: DrawnShape, camera: Camera): readonly { readonly x: number; readonly y: number }[] {
  if (shape.kind !== "line") return []
  const points = shape.points.map((point) => toPixel(camera, point))
  return points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? to
    const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / STEP)
    return Array.from({ length: count + 1 }, (_, at) => ({
      x: from.x + ((to.x - from.x) * at) / count,
      y: from.y + ((to.y - from.y) * at) / count,
    }))
  })
}

const readingsOf = (book: Book, name: string) =>
  (book.entry(name).readings ?? []).map((reading) => reading?.text)

describe.each(LANGUAGES.flatMap((language) => TEMPLATES.map(({ id }) => [language, id] as const)))(
  "in %s, the set-out of %s",
  (language, id) => {
    beforeAll(() => speak(language))
    afterAll(() => speak("en"))

    // What is left of 1280 and 360 pixels beside the page's edges, and both papers.
    test.each(["1222", "336", "a4", "letter"] as const)(
      "at %s every peg has its name, across no line and no other peg",
      (where) => {
        const template = templates().find((one) => one.id === id) ?? expect.fail(`there is no template ${id}`)
        const { book } = openBook(template)
        const drawing = template.drawings?.find((one) => one.id === "set-out") ?? expect.fail("no set-out")
        const { shapes, bounds } = resolveDrawing(drawing, book)
        if (bounds === undefined) throw new Error("nothing is drawn")
        const paper = where === "a4" || where === "letter" ? PAPERS[where] : undefined
        const wide = paper === undefined ? Number(where) : paper.wide * MM
        const margins = marginsFor(shapes, wide)
        const onPaper =
          paper === undefined ? undefined : toScale(bounds, margins, { width: wide, height: paper.high * MM })
        const fitted = fit(bounds, margins, wide, 600)
        const camera = onPaper?.camera ?? fitted
        const { width, height } = onPaper ?? fitted
        const window = { left: 0, top: 0, right: width, bottom: height }
        const dimensions = dimensionsIn(shapes, bounds, camera)
        const named = namePegs(shapes, bounds, camera, window)
        const placed = placeLabels(
          labelsOf(named.shapes, dimensions, camera, undefined),
          window,
          obstaclesOf(shapes, dimensions, camera),
        )
        // By its name, or by the number of its row, which the key explains.
        const numbers = new Map(named.key.map(({ text, title }) => [title, text]))
        for (const [title, number] of numbers)
          expect(readingsOf(book, "set_out_points.point")[Number(number) - 1]).toBe(title)
        // The walk is long and narrow: there is little room between its strings however wide the window.
        if (Number(where) > 1_000 && id !== "boardwalk") expect(numbers.size).toBe(0)
        const pegs = shapes.flatMap((shape) => (shape.kind === "mark" ? [shape] : []))
        expect(pegs).toHaveLength(12)
        const lines = shapes.flatMap((shape) => along(shape, camera))
        expect(lines.length).toBeGreaterThan(1_000)
        const signs = pegs.map(({ at }) => toPixel(camera, at))
        for (const peg of pegs) {
          const label =
            placed.find(({ text }) => text === (numbers.get(peg.label ?? "") ?? peg.label)) ??
            expect.fail(`${peg.label} is left out`)
          const box = boxOf(label)
          const inside = ({ x, y }: { readonly x: number; readonly y: number }, more = 0) =>
            x > box.left - more && x < box.right + more && y > box.top - more && y < box.bottom + more
          expect(
            lines.filter((point) => inside(point)),
            `${peg.label}: a line crosses it`,
          ).toEqual([])
          // A sign is a cross of 4 pixels each way.
          expect(
            signs.filter((sign) => inside(sign, 4)),
            `${peg.label}: on a peg`,
          ).toEqual([])
        }
      },
    )
  },
)
