import type { Stage, StageNeed } from "@pegbook/engine"

/** A machine or tool that needs power, or that is hired. */
export interface PoweredTool {
  readonly tool: string
  readonly power: "battery" | "mains" | "fuel" | "none"
  readonly hired: boolean
}

/** A stage of the work with the rate that it goes by. */
export interface Work {
  readonly stage: Omit<Stage, "people" | "hours" | "days">
  readonly rate: {
    /** What is counted, one of them: "a barrow dug". */
    readonly of: string
    /** Formula: how many. */
    readonly number: string
    /** The time that one takes with that many people, typed with its unit. */
    readonly each: string
    readonly people: number
  }
  readonly tools: readonly PoweredTool[]
}

/** Timber of these parts, as the cutting plan calls them. */
export function timberFor(thing: string, ...parts: readonly string[]): StageNeed {
  return {
    thing,
    table: "timber_pieces",
    where: "part",
    is: parts,
    columns: ["count", "size", "length", "part"],
  }
}

/** Screws of one kind into these joints, as the table of fixings calls them. */
export function screwsInto(thing: "screws" | "frame screws", ...joints: readonly string[]): StageNeed {
  return { thing, table: "fixings", where: "joint", is: joints, columns: ["number", "joint"] }
}

/** One of the things that wear out or are used up. */
export function consumable(item: string): StageNeed {
  return { thing: item, amount: { column: "consumables.to_buy", where: "consumables.item", is: item } }
}

export const SAW: PoweredTool = { tool: "circular or mitre saw", power: "mains", hired: false }
export const DRIVER: PoweredTool = { tool: "drill-driver", power: "battery", hired: false }
export const TAMPER: PoweredTool = { tool: "plate tamper", power: "fuel", hired: true }

export const CAUTION = {
  lift: "Lift with your knees and with a second person: one piece weighs up to {heaviest_piece}.",
  eyes: "Eyes and ears: wear goggles and ear defenders at the saw and the driver, and keep others away from the blade.",
  treated:
    "Dust of treated wood: saw outdoors, wear gloves and a mask, wash before you eat. Never burn the off-cuts, not in a stove either.",
  silica:
    "Dust of concrete and stone harms the lungs for good: split blocks rather than saw them, or saw wet and with a mask made for it.",
  power:
    "Power outdoors: a socket with a safety switch that trips on a fault to earth, a cable made for outdoors, joints kept off wet ground.",
} as const
