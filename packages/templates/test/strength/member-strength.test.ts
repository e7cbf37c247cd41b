import { type Definition, type Entry, type InputEntry, openBook } from "@pegbook/engine"
import { expect, test } from "vitest"
import { dressedSizes } from "../../src/figures/dressed-sizes.ts"
import { USER } from "../../src/sources.ts"
import { memberStrength, strengthFigures } from "../../src/strength/member-strength.ts"
import { nearLimit } from "../../src/strength/near-limit.ts"
import { timberKind } from "../../src/strength/timber-kind.ts"

const input = (name: string, measure: InputEntry["measure"], value: string): Entry => ({
  kind: "input",
  name,
  label: "Of the test",
  why: "Of the test.",
  sources: [USER],
  measure,
  default: value,
})

/** A platform's workbook in little: a skid and a joist, each with what it has to bear. */
const platform: Definition = {
  id: "of-the-test",
  title: "Of the test",
  says: "Of the test.",
  unitSystem: "us",
  sections: [
    timberKind,
    {
      id: "given",
      title: "Given",
      says: "Of the test.",
      entries: [
        input("skid_size", "text", "6x6"),
        input("skid_thickness", "length", "5.5 in"),
        input("skid_depth", "length", "5.5 in"),
        input("joist_size", "text", "2x6"),
        input("joist_thickness", "length", "1.5 in"),
        input("joist_depth", "length", "5.5 in"),
        input("alone", "ratio", "1"),
        input("moment", "moment", "400 lb·ft"),
        input("shear", "force", "300 lb"),
        input("reaction", "force", "300 lb"),
        input("sag", "length", "0.1 in"),
        input("sag_allowed", "length", "0.2 in"),
        input("seat", "length", "3 in"),
      ],
    },
    ...(["skid", "joist"] as const).map((prefix) =>
      memberStrength(
        {
          prefix,
          label: prefix,
          size: `${prefix}_size`,
          thickness: `${prefix}_thickness`,
          depth: `${prefix}_depth`,
          sharing: "alone",
        },
        {
          moment: "moment",
          shear: "shear",
          reaction: "reaction",
          deflection: "sag",
          deflectionLimit: "sag_allowed",
          seat: "seat",
        },
      ),
    ),
    { ...strengthFigures, entries: [...strengthFigures.entries, nearLimit, dressedSizes] },
  ],
  cautions: [],
}

const PSI = 6894.757293168361

/** NDS Supplement table 4D: Hem-Fir No.2 posts and timbers, Fb 575, Fv 140, Fc across 405 psi, E 1.1 million psi; CM 0.67 across the grain, 1 else. */
test("two members of one workbook are each checked with the factors of their own size", () => {
  const { book, problems } = openBook(platform)
  expect(problems).toEqual([])
  expect(
    book.editAll({ species: "Hem-Fir", grade: "No.2", wet_service: "yes", incised: "no" }).problems,
  ).toEqual([])
  const psi = (name: string): number => Number(book.entry(name).reading?.value) / PSI
  expect(psi("skid_fb_adjusted")).toBeCloseTo(575, 6)
  expect(psi("skid_fv_adjusted")).toBeCloseTo(140, 6)
  expect(psi("skid_fc_perp_adjusted")).toBeCloseTo(405 * 0.67, 6)
  expect(psi("skid_e_adjusted")).toBeCloseTo(1_100_000, 3)
  // Dimension lumber: 850 × 1.3 = 1105 psi is not over 1150 psi, so damp takes nothing off bending.
  expect(psi("joist_fb_adjusted")).toBeCloseTo(850 * 1.3, 6)
  expect(psi("joist_fv_adjusted")).toBeCloseTo(150 * 0.97, 6)
  expect(psi("joist_e_adjusted")).toBeCloseTo(1_300_000 * 0.9, 3)
  for (const prefix of ["skid", "joist"]) {
    for (const check of ["bending", "shear", "bearing", "deflection"]) {
      expect(book.entry(`${prefix}_${check}_check`).check?.verdict, `${prefix} ${check}`).toBe("passes")
    }
  }
})

test("a timber that no table has is outside the table, and the other member is still checked", () => {
  const { book } = openBook(platform)
  book.editAll({ species: "Redwood", grade: "No.2" })
  expect(book.entry("skid_bending_check").check?.verdict).toBe("outside_table")
  expect(book.entry("joist_bending_check").check?.verdict).toBe("passes")
})
