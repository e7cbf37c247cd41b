import type { Definition, Entry } from "@pegbook/engine"
import { describe, test } from "vitest"
import { joistSpan } from "../../src/joist-span/template.ts"
import { asked, holdTable } from "./book.ts"
import {
  CANTILEVERS,
  DECK_JOISTS_CODE,
  DECK_JOISTS_GUIDE,
  FLOOR_JOISTS,
  FLOOR_JOISTS_CANADA,
  INCISED_GROUP,
} from "./published.ts"

const DECK = { wet_service: "yes", live_load: "40 psf", dead_load: "10 psf", grade: "No.2" }

const deckCell = (group: string, size: string, spacing: number) => ({
  species: group,
  incised: group === INCISED_GROUP ? "yes" : "no",
  joist_size: size,
  joist_spacing: `${spacing} in`,
})

/**
 * The template with the strengths that were in force before June 2013: Southern Pine No.2 Fb 1200, 1050 and 975 psi for
 * 2x8, 2x10 and 2x12 with E 1.6 million psi; Douglas Fir-Larch No.2 Fb 875 psi. Found by working the read chart backwards.
 */
const OLDER: Readonly<Record<string, { readonly fb: string; readonly e: string }>> = {
  "Southern Pine | No.2 | 8 in wide": { fb: "1200 psi", e: "1600000 psi" },
  "Southern Pine | No.2 | 10 in wide": { fb: "1050 psi", e: "1600000 psi" },
  "Southern Pine | No.2 | 12 in wide": { fb: "975 psi", e: "1600000 psi" },
  "Douglas Fir-Larch | No.2 | any width": { fb: "875 psi", e: "1600000 psi" },
}

function before2013(definition: Definition): Definition {
  const older = (entry: Entry): Entry => {
    if (entry.kind !== "table" || entry.name !== "design_values") return entry
    const keys = entry.columns.find(({ name }) => name === "key")?.values ?? []
    return {
      ...entry,
      columns: entry.columns.map((column) => {
        const { name, values } = column
        if ((name !== "fb" && name !== "e") || values === undefined) return column
        return { ...column, values: values.map((value, row) => OLDER[keys[row] ?? ""]?.[name] ?? value) }
      }),
    }
  }
  return {
    ...definition,
    sections: definition.sections.map((section) => ({ ...section, entries: section.entries.map(older) })),
  }
}

describe("published joist spans", () => {
  test("deck guide DCA 6, table 2: spans and overhangs", () => {
    const book = asked(joistSpan, DECK)
    const spans = []
    const overhangs = []
    for (const [group, size, spacing, span, overhang] of DECK_JOISTS_GUIDE) {
      book.set(deckCell(group, size, spacing))
      const says = `${group}, ${size} at ${spacing} in`
      spans.push({ says, published: span, worked: book.inches("joist_span_table") })
      overhangs.push({ says, published: overhang, worked: book.inches("joist_overhang_table") })
    }
    holdTable(
      "DCA 6 table 2, spans",
      "Wet, incised in the first group only, least species of the group, end at 18 ft, nearest inch; no bearing.",
      spans,
    )
    holdTable(
      "DCA 6 table 2, overhangs",
      "220 lb at the tip sags overhang/180, less 3 in (found, not printed), at most a quarter of the species' own span.",
      overhangs,
    )
  })

  test("code table R507.6, 40 psf", () => {
    const book = asked(joistSpan, DECK)
    holdTable(
      "IRC 2021 R507.6, spans",
      "As the deck guide. All cells from memory.",
      DECK_JOISTS_CODE.map(([group, size, spacing, span]) => {
        book.set(deckCell(group, size, spacing))
        return {
          says: `${group}, ${size} at ${spacing} in`,
          published: span,
          worked: book.inches("joist_span_table"),
        }
      }),
    )
  })

  test("code table R507.6, cantilevers by the span behind them", () => {
    const book = asked(joistSpan, DECK)
    holdTable(
      "IRC 2021 R507.6, cantilevers",
      "A quarter of the span behind, or 220 lb at the tip sags cantilever/180; nothing taken off. All cells from memory.",
      CANTILEVERS.map(([group, size, backSpan, cantilever]) => {
        book.set({ ...deckCell(group, size, 12), back_span: `${backSpan} ft` })
        return {
          says: `${group}, ${size}, ${backSpan} ft`,
          published: cantilever,
          worked: Math.round(book.inches("joist_cantilever_max")),
        }
      }),
    )
  })

  test("floor joists, code table R502.3.1", () => {
    const dry = { wet_service: "no", incised: "no", dead_load: "10 psf", grade: "No.2" }
    const books = {
      "2013": asked(joistSpan, dry),
      "before 2013": asked(before2013(joistSpan), dry),
    }
    const cells = FLOOR_JOISTS.map(([species, size, spacing, liveLoad, span, values, origin]) => {
      const book = books[values]
      book.set({
        species,
        joist_size: size,
        joist_spacing: `${spacing} in`,
        live_load: `${liveLoad} psf`,
      })
      return {
        says: `${species}, ${size} at ${spacing} in, ${liveLoad} psf, ${values}, ${origin}`,
        published: span,
        worked: book.inches("joist_span_table"),
      }
    })
    holdTable(
      "IRC R502.3.1, 30 and 40 psf",
      "Dry, 10 psf dead, span/360; the read chart needs the strengths before 2013.",
      cells,
      {
        "Douglas Fir-Larch, 2x10 at 16 in, 30 psf, before 2013, read":
          "Printed 17 ft 11 in; the same page's neighbours come out exactly, and this one gives 17 ft 2 in: a misprint of the page that was read.",
      },
    )
  })

  test("floor joists, Canada", () => {
    const canada = {
      design_method: "limit states",
      species: "S-P-F",
      grade: "No.1/No.2",
      wet_service: "no",
      incised: "no",
      live_load: "1.9 kPa",
      dead_load: "0.5 kPa",
    }
    const book = asked(joistSpan, canada)
    const of = (decides: "sag" | "vibration") =>
      FLOOR_JOISTS_CANADA.filter((cell) => cell[4] === decides).map(([size, restraint, spacing, span]) => {
        book.set({ joist_size: size, joist_restraint: restraint, joist_spacing: `${spacing} mm` })
        return {
          says: `${size} at ${spacing} mm, ${restraint}`,
          published: Math.round(span * 100),
          worked: Math.round(book.number("joist_span_table") * 100),
        }
      })
    holdTable(
      "NBC 9.23.4.2.-A, cells by sag (in centimetres)",
      "Limit states, span/360 under 1.9 kPa. All cells from memory.",
      of("sag"),
    )
    holdTable(
      "NBC 9.23.4.2.-A, cells by vibration (in centimetres)",
      "The rule was not found: these cells are figures of the template, so this only shows that they are found again.",
      of("vibration"),
    )
  })
})
