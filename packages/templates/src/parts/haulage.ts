import type { Section } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY, USER } from "../sources.ts"

/** Runs with a vehicle. Needs: haul_mass, heaviest_piece, stock_to_buy, rounding_tolerance. */
export const haulage: Section = {
  id: "haulage",
  title: "Haulage",
  says: "How often you drive.",
  entries: [
    {
      kind: "input",
      name: "payload",
      label: "Your vehicle may carry",
      measure: "mass",
      default: "1000 lb",
      least: "50 lb",
      most: "40000 lb",
      why: "It is on the plate in the door frame; people and trailer count against it.",
      sources: [USER],
      cautions: [
        "An overloaded vehicle brakes late and steers badly. Tie the load down, and mark what sticks out behind.",
      ],
    },
    {
      kind: "formula",
      name: "haul_trips",
      label: "Runs",
      measure: "count",
      formula: "MAX(0; ROUNDUP(haul_mass / payload - rounding_tolerance; 0))",
      why: "By weight alone. Long or bulky things may need one more.",
      sources: [ARITHMETIC],
    },
    {
      kind: "formula",
      name: "haul_spare",
      label: "To spare on the last run",
      measure: "mass",
      formula: "haul_trips * payload - haul_mass",
      why: "A few pounds to spare is a near thing: wet timber differs from board to board.",
      sources: [ARITHMETIC],
    },
    {
      kind: "formula",
      name: "longest_piece",
      label: "Longest single piece",
      measure: "length",
      formula: "MAX(stock_to_buy.length)",
      why: "Does it go into or onto your vehicle, and round the corner of the house?",
      sources: [GEOMETRY],
    },
  ],
}
