import type { Bounds, Point } from "@pegbook/engine"

/** What of the page is seen, and how large: held units to pixels, nothing else. */
export interface Camera {
  /** Pixels a metre. */
  readonly scale: number
  /** Where the page's origin lies, in pixels from the top left. */
  readonly left: number
  readonly top: number
}

export interface Size {
  readonly width: number
  readonly height: number
}

/** Room round the drawing for what is written there, in pixels. */
export interface Margins {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export interface Pixel {
  readonly x: number
  readonly y: number
}

export const toPixel = (camera: Camera, point: Point): Pixel => ({
  x: camera.left + point.u * camera.scale,
  y: camera.top - point.v * camera.scale,
})

export const toPage = (camera: Camera, pixel: Pixel): Point => ({
  u: (pixel.x - camera.left) / camera.scale,
  v: (camera.top - pixel.y) / camera.scale,
})

/** A hair of a metre, so that a drawing of no height has a scale. */
const LEAST_SIZE = 0.01

/** The largest scale at which a drawing fits in, and the height it then needs. */
export function fit(bounds: Bounds, margins: Margins, width: number, most: number): Camera & Size {
  const wide = Math.max(LEAST_SIZE, bounds.most.u - bounds.least.u)
  const high = Math.max(LEAST_SIZE, bounds.most.v - bounds.least.v)
  const across = Math.max(1, width - margins.left - margins.right)
  const up = Math.max(1, most - margins.top - margins.bottom)
  const scale = Math.min(across / wide, up / high)
  const spare = across - wide * scale
  return {
    scale,
    left: margins.left + spare / 2 - bounds.least.u * scale,
    top: margins.top + bounds.most.v * scale,
    width,
    height: Math.round(margins.top + margins.bottom + high * scale),
  }
}

export const FARTHEST = 0.5
export const NEAREST = 40

/** Nearer or farther, with what lies at `about` staying where it is. Held within what is useful of `fitted`. */
export function zoom(camera: Camera, factor: number, about: Pixel, fitted: Camera): Camera {
  const scale = Math.min(fitted.scale * NEAREST, Math.max(fitted.scale * FARTHEST, camera.scale * factor))
  const real = scale / camera.scale
  return {
    scale,
    left: about.x - (about.x - camera.left) * real,
    top: about.y - (about.y - camera.top) * real,
  }
}

export const pan = (camera: Camera, x: number, y: number): Camera => ({
  ...camera,
  left: camera.left + x,
  top: camera.top + y,
})
