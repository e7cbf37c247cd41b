import { timeDragged } from "./dragged.ts"
import { timeDrawing } from "./drawing.ts"
import { timeEngine } from "./engine.ts"
import { timeLibrary } from "./library.ts"
import { watchMemory } from "./memory.ts"
import { timePainted } from "./painted.ts"

/** Prints how fast an edit is followed. `chromium`: a browser's path; without one, only the engine is timed. */
export async function main(chromium: string | undefined): Promise<void> {
  const { ours, hyperFormula, decimal, straight } = timeEngine()
  const ms = (time: number): string => `${time.toFixed(time < 1 ? 4 : 1)} ms`
  const ratio = (time: number): string => `${Math.round(time / straight).toLocaleString("en")} ×`
  console.log("An edit of the length, until all values are new (the demonstration workbook)")
  console.log(`  straight-line code, main numbers only   ${ms(straight)}`)
  console.log(`  with our graph, in doubles              ${ms(ours.edit)}   ${ratio(ours.edit)}`)
  console.log(
    `  with HyperFormula                       ${ms(hyperFormula.edit)}   ${ratio(hyperFormula.edit)}`,
  )
  console.log(`  with the decimal graph                  ${ms(decimal.edit)}   ${ratio(decimal.edit)}`)
  console.log(`  values that the last edit moved         ${ours.moved}`)
  console.log(
    `  opening the workbook, all from scratch  ${ms(ours.open)}, ${(ours.open / ours.edit).toFixed(0)} × an edit; with HyperFormula ${ms(hyperFormula.open)}`,
  )
  const library = timeLibrary()
  console.log(
    `  the ${library.formulas.toLocaleString("en")} formulas of its file, by libraries of general use   ${ms(library.all)}, ${(library.all / ours.edit).toFixed(0)} × an edit`,
  )
  const memory = watchMemory()
  const held = memory.held.map((megabytes) => megabytes.toFixed(1)).join(" ")
  console.log(
    `  held after each ${memory.every} of ${memory.edits.toLocaleString("en")} edits, all read   ${held} MB`,
  )
  const drawing = timeDrawing()
  console.log(`  the plan's ${drawing.shapes} shapes after an edit       ${ms(drawing.middle)}`)
  if (chromium === undefined) {
    console.log("No Chromium was found, so painting was not timed.")
    return
  }
  const painted = await timePainted(chromium)
  const against = (time: number): string =>
    `${ms(time)}, ${(time / painted.empty).toFixed(2)} × an empty frame`
  console.log("The same edit in the browser")
  console.log(`  until the rows in sight are painted     ${against(painted.inSight)}`)
  console.log(`  of that, the page's own work            ${against(painted.working)}`)
  console.log(`  that, and the browser's for the frame   ${against(painted.untilPainted)}`)
  console.log(`  until what is out of sight has followed ${against(painted.everything)}`)
  const { title, values, empty, redrawn, moved, released } = await timeDragged(chromium)
  const frames = (time: number): string => `${ms(time)}, ${(time / empty).toFixed(2)} × an empty frame`
  console.log(
    `The handle of the length, dragged in the plan, until that is painted: ${title}, ${values} values`,
  )
  console.log(`  the plan alone, drawn anew              ${frames(redrawn)}`)
  console.log(`  a move, and the plan anew               ${frames(moved)}`)
  console.log(`  letting go                              ${frames(released)}`)
}
