import { inflateSync } from "node:zlib"

/** A painted path's box on its page, in millimetres. */
export interface PaintedBox {
  readonly page: number
  readonly wide: number
  readonly high: number
}

type Matrix = readonly [number, number, number, number, number, number]

const POINT = 25.4 / 72
const SAME: Matrix = [1, 0, 0, 1, 0, 0]

/** `inner` first, then `outer` (ISO 32000-1, 8.3.4). */
function after(inner: Matrix, outer: Matrix): Matrix {
  const [a, b, c, d, e, f] = inner
  const [A, B, C, D, E, F] = outer
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F]
}

/** The content stream of every page, in order, as text. */
export function pageContents(pdf: Buffer): readonly string[] {
  const text = pdf.toString("latin1")
  const objects = new Map<string, string>()
  for (const [, id = "", body = ""] of text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g))
    objects.set(id, body)
  return [...objects.values()]
    .filter((body) => /\/Type\s*\/Page\b(?!s)/.test(body))
    .map((body) => {
      const stream = objects.get(/\/Contents\s+(\d+) 0 R/.exec(body)?.[1] ?? "") ?? ""
      const data = /stream\r?\n([\s\S]*)\r?\nendstream/.exec(stream)?.[1]
      if (data === undefined) throw new Error("a page of the PDF has no content stream")
      const bytes = Buffer.from(data, "latin1")
      return (/\/FlateDecode/.test(stream) ? inflateSync(bytes) : bytes).toString("latin1")
    })
}

/** The box of every path painted on the pages, by the operators of ISO 32000-1, 8.5. Texts and pictures are passed over. */
export function paintedBoxes(pdf: Buffer): readonly PaintedBox[] {
  return pageContents(pdf).flatMap((content, index) => boxesOf(content, index + 1))
}

function boxesOf(content: string, page: number): readonly PaintedBox[] {
  const boxes: PaintedBox[] = []
  const kept: Matrix[] = []
  let matrix = SAME
  let points: (readonly [number, number])[] = []
  let numbers: number[] = []
  const add = (x: number, y: number): void => {
    const [a, b, c, d, e, f] = matrix
    points.push([a * x + c * y + e, b * x + d * y + f])
  }
  for (const [token] of content.matchAll(/\((?:\\.|[^\\)])*\)|<[0-9A-Fa-f\s]*>|[^\s()<>]+/g)) {
    const number = Number(token)
    if (!Number.isNaN(number)) {
      numbers.push(number)
      continue
    }
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers
    if (token === "q") kept.push(matrix)
    else if (token === "Q") matrix = kept.pop() ?? SAME
    else if (token === "cm") matrix = after([a, b, c, d, e, f], matrix)
    else if (token === "m" || token === "l") add(a, b)
    else if (token === "re") for (const [x, y] of [[a, b] as const, [a + c, b + d] as const]) add(x, y)
    else if (token === "c") add(e, f)
    else if (["S", "s", "f", "F", "f*", "B", "B*", "b", "b*"].includes(token)) {
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
      const size = (of: readonly number[]) => (Math.max(...of) - Math.min(...of)) * POINT
      if (points.length > 1) boxes.push({ page, wide: size(xs), high: size(ys) })
      points = []
    } else if (token === "n") points = []
    numbers = []
  }
  return boxes
}

/** Whether something of this size is drawn, in millimetres, to 0.5 %; lying or, where the drawing is turned, standing. */
export function isDrawn(boxes: readonly PaintedBox[], wide: number, high: number): boolean {
  const near = (is: number, wanted: number) => Math.abs(is - wanted) <= 0.005 * wanted
  return boxes.some(
    (box) => (near(box.wide, wide) && near(box.high, high)) || (near(box.wide, high) && near(box.high, wide)),
  )
}

/** Widths and heights of a PDF's pages, in millimetres, each once. */
export function pageSizes(pdf: Buffer): readonly string[] {
  const boxes = [...pdf.toString("latin1").matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)]
  return [
    ...new Set(
      boxes.map((box) => [box[1], box[2]].map((one) => Math.round((Number(one) / 72) * 25.4)).join(" x ")),
    ),
  ]
}
