import { type DrawnDimension, type LanguageId, openBook, resolveDrawing } from "@pegbook/engine"
import { speak, TEMPLATES, templates } from "@pegbook/templates"
import { afterAll, beforeAll, describe, expect, test } from "vitest"
import { fit } from "../../../src/screens/drawings/camera.ts"
import { dimensionLine, marginsFor } from "../../../src/screens/drawings/dimension-lines.ts"
import { labelsOf } from "../../../src/screens/drawings/label-wishes.ts"
import { keyOf, layerNames, layerWishes } from "../../../src/screens/drawings/layer-names.ts"
import { boxOf, overlaps, placeLabels } from "../../../src/screens/drawings/place-labels.ts"

/** What is left of 1280 and 360 pixels beside the page's edges. */
const WIDTHS = [1222, 336]

const LANGUAGES: readonly LanguageId[] = ["en", "fr"]

describe.each(LANGUAGES.flatMap((language) => TEMPLATES.map(({ id }) => [language, id] as const)))(
  "in %s, %s",
  (language, id) => {
    beforeAll(() => speak(language))
    afterAll(() => speak("en"))

    test.each(WIDTHS)("at %i pixels no two labels overlap, and the main size is written", (width) => {
      const template = templates().find((one) => one.id === id)
      if (template === undefined) throw new Error(`there is no template ${id}`)
      const { book } = openBook(template)
      for (const drawing of template.drawings ?? []) {
        const { shapes, bounds } = resolveDrawing(drawing, book, { apart: true })
        if (bounds === undefined) continue
        const camera = fit(bounds, marginsFor(shapes, width), width, 600)
        const dimensions = shapes
          .filter((shape): shape is DrawnDimension => shape.kind === "dimension")
          .map((shape) => ({ shape, line: dimensionLine(shape, bounds, camera) }))
        const window = { left: 0, top: 0, right: width, bottom: camera.height }
        const named = drawing.look === "pictorial" ? layerNames(drawing.layers, shapes, camera, window) : []
        const wishes = [
          ...labelsOf(shapes, dimensions, camera, undefined),
          ...layerWishes(named, shapes, camera),
        ]
        const placed = placeLabels(wishes, window)
        placed.forEach((label, index) => {
          for (const other of placed.slice(index + 1)) {
            expect(overlaps(boxOf(label), boxOf(other)), `${drawing.id}: ${label.text}, ${other.text}`).toBe(
              false,
            )
          }
        })
        if (drawing.look === "pictorial") {
          // Every layer that is drawn is named: by its title, or by a number of its own that the key explains.
          const layers = drawing.layers.filter(({ id }) =>
            shapes.some((shape) => shape.layer === id && shape.kind === "area"),
          )
          expect(layers.length).toBeGreaterThan(3)
          const written = placed.map(({ text }) => text)
          expect(new Set(written).size).toBe(layers.length)
          const explained = new Map(keyOf(named).map(({ text, title }) => [text, title]))
          expect(written.map((text) => explained.get(text) ?? text).sort()).toEqual(
            layers.map(({ title }) => title).sort(),
          )
        }
        if (drawing.id !== "plan") continue
        const texts = placed.map((label) => label.text)
        expect(texts).toContain(book.entry("platform_length").reading?.text)
        expect(texts).toContain(book.entry("platform_width").reading?.text)
      }
    })
  },
)
