import { expect, test } from "vitest"
import { fit, NEAREST, pan, toPage, toPixel, zoom } from "../../../src/screens/drawings/camera.ts"

const BOUNDS = { least: { u: -1, v: 0 }, most: { u: 5, v: 2 } }
const MARGINS = { left: 20, right: 20, top: 30, bottom: 40 }

test("a drawing that fits lies between its margins, upward up", () => {
  const camera = fit(BOUNDS, MARGINS, 640, 600)
  expect(camera.scale).toBe(100)
  expect(camera.height).toBe(270)
  expect(toPixel(camera, BOUNDS.least)).toEqual({ x: 20, y: 230 })
  expect(toPixel(camera, BOUNDS.most)).toEqual({ x: 620, y: 30 })
})

test("a low window makes it smaller, and it stays in the middle", () => {
  const camera = fit(BOUNDS, MARGINS, 640, 170)
  expect(camera.scale).toBe(50)
  expect(toPixel(camera, BOUNDS.least).x - 0).toBe(640 - toPixel(camera, BOUNDS.most).x)
})

test("a place on the screen leads back to the page, and stays where it is while coming nearer", () => {
  const fitted = fit(BOUNDS, MARGINS, 640, 600)
  const about = { x: 123, y: 77 }
  const nearer = zoom(pan(fitted, 10, -5), 2.5, about, fitted)
  const [was, is] = [toPage(pan(fitted, 10, -5), about), toPage(nearer, about)]
  expect(is.u).toBeCloseTo(was.u)
  expect(is.v).toBeCloseTo(was.v)
  expect(zoom(fitted, 1e9, about, fitted).scale).toBe(fitted.scale * NEAREST)
})
