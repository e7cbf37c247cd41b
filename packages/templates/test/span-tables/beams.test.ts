import { test } from "vitest"
import { beamSpan } from "../../src/beam-span/template.ts"
import { asked, holdTable } from "./book.ts"
import { DECK_BEAMS, INCISED_GROUP } from "./published.ts"

test("deck beams, code table R507.5", () => {
  const book = asked(beamSpan, {
    wet_service: "yes",
    grade: "No.2",
    live_load: "40 psf",
    dead_load: "10 psf",
  })
  const cells = DECK_BEAMS.map(([group, plies, size, joistSpan, span]) => {
    book.set({
      species: group,
      incised: group === INCISED_GROUP ? "yes" : "no",
      beam_size: size,
      beam_plies: String(plies),
      joist_span: `${joistSpan} ft`,
    })
    return {
      says: `${group}, ${plies}-${size}, joists ${joistSpan} ft`,
      published: span,
      worked: book.inches("beam_span_table"),
    }
  })
  for (const group of ["Southern Pine", INCISED_GROUP]) {
    holdTable(
      `IRC 2018 R507.5, ${group}`,
      "Joists overhang a quarter; ply factors, weakest species, stiffness reserve and load share found by working cells backwards. From memory.",
      cells.filter(({ says }) => says.startsWith(`${group}, `)),
    )
  }
})
