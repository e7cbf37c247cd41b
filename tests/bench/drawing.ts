import { openBook, resolveDrawing } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { middleOf } from "./median.ts"

const LENGTHS = ["18 ft", "20 ft", "19 ft 4 in", "16 ft"]
const TIMES = 40

/** From the numbers of an edit to all shapes of the first drawing: the middle of many times, in milliseconds. */
export function timeDrawing(): { middle: number; shapes: number } {
  const { book } = openBook(demo())
  const [drawing] = demo().drawings ?? []
  if (drawing === undefined) throw new Error("the demonstration has no drawing")
  const all: number[] = []
  let shapes = 0
  for (let time = 0; time < TIMES; time++) {
    book.edit("platform_length", LENGTHS[time % LENGTHS.length] ?? "")
    const start = performance.now()
    shapes = resolveDrawing(drawing, book).shapes.length
    all.push(performance.now() - start)
  }
  return { middle: middleOf(all), shapes }
}
