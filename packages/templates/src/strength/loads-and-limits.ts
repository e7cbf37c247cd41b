import type { Entry } from "@pegbook/engine"
import { DEFLECTION, LIVE_LOADS } from "../sources-strength.ts"
import { figureTable, isRead } from "./figure-table.ts"

const LOADS = [
  ["IRC", "decks", "40 psf", "read"],
  ["IRC", "exterior balconies, 2000 edition (later: as decks)", "60 psf", "read"],
  ["IRC", "rooms other than sleeping rooms", "40 psf", "read"],
  ["IRC", "sleeping rooms", "30 psf", "read"],
  ["IRC", "stairs", "40 psf", "read"],
  ["IRC", "attics without storage", "10 psf", "read"],
  [
    "Myanmar code, with the figures of ASCE 7",
    "gymnasiums, dance halls, assembly with movable seats, lobbies",
    "100 psf",
    "read",
  ],
  ["Myanmar code, with the figures of ASCE 7", "assembly with fixed seats", "60 psf", "read"],
  ["Myanmar code, with the figures of ASCE 7", "stages and platforms", "125 psf", "read"],
  ["ASCE 7-16", "gymnasiums, dance halls, assembly platforms", "100 psf", "from memory"],
  ["ASCE 7-16", "stage floors", "150 psf", "from memory"],
  ["ASCE 7-16", "one- and two-family dwellings", "40 psf", "from memory"],
  ["NBC Canada", "deck or platform of one dwelling (or snow, if greater)", "1.9 kPa", "read"],
  ["NBC Canada", "stairs and ramps, one dwelling", "1.9 kPa", "read"],
  ["NBC Canada", "stairs and ramps, other; exits", "4.8 kPa", "read"],
  ["NBC Canada", "most that Part 9 floor framing is for; offices", "2.4 kPa", "read"],
  ["NBC Canada", "assembly areas, gymnasia, dance floors", "4.8 kPa", "from memory"],
  ["NBC Canada", "residential floors", "1.9 kPa", "from memory"],
] as const

const LIMITS = [
  ["NBC Part 9", "floor beams, joists, decking", "360", "live load", "read"],
  ["NBC Part 9", "exterior deck of one dwelling", "240", "live load", "read"],
  ["NBC Part 9", "exterior deck, other", "360", "live load", "read"],
  ["IRC, DCA 6", "floors", "360", "live load", "from memory"],
  ["IRC, DCA 6", "deck joists and beams", "360", "live load", "read"],
  ["IRC, DCA 6", "deck overhang", "180", "220 lb at the end, of the overhang", "read"],
] as const

/** What codes ask a floor to carry, and how far they let it sag. */
export const loadsAndLimits: readonly Entry[] = [
  figureTable({
    name: "design_live_loads",
    label: "Live loads that codes ask for",
    why: "A home deck is not a sports floor: where a crowd may gather, the load is two and a half times as much.",
    sources: [LIVE_LOADS],
    columns: {
      code: { label: "Whose", measure: "text", why: "The code that says so." },
      use: { label: "What for", measure: "text", why: "The use of the floor." },
      load: { label: "Even load", measure: "pressure", why: "On every part of the floor." },
      origin: isRead,
    },
    rows: LOADS.map(([code, use, load, origin]) => ({ code, use, load, origin })),
  }),
  figureTable({
    name: "deflection_limits",
    label: "How far a floor may sag",
    why: "The span over this number. A larger number is stiffer.",
    sources: [DEFLECTION],
    columns: {
      code: { label: "Whose", measure: "text", why: "The code that says so." },
      member: { label: "What for", measure: "text", why: "The member it is about." },
      divisor: { label: "Span over", measure: "ratio", why: "Span over this number." },
      load: { label: "Under", measure: "text", why: "Which load is counted." },
      origin: isRead,
    },
    rows: LIMITS.map(([code, member, divisor, load, origin]) => ({ code, member, divisor, load, origin })),
  }),
]
