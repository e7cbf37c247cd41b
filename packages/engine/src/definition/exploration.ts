import type { UnitSystem } from "../units/measure.ts"

/** A question that many readers have, ready to be asked: what comes of other values of an input, about the present one? */
export interface Exploration {
  /** An input of one value that can be stepped through. */
  readonly input: string
  /** From one value to the next, with its unit, for readers of either system. */
  readonly step: Readonly<Record<UnitSystem, string>>
  /** How many steps are tried either side of the present value, where the input's limits leave room. */
  readonly each: number
  /** Names of entries to show, the first first. */
  readonly results: readonly string[]
}

/** Which sizes near the present ones leave least over is sought among values of these inputs. */
export interface Thrift {
  /** Inputs that can be stepped through, the first first. */
  readonly inputs: readonly string[]
  /** From one value to the next, and how far they go either way, with their units, for readers of either system. */
  readonly step: Readonly<Record<UnitSystem, string>>
  readonly reach: Readonly<Record<UnitSystem, string>>
  /** Names of entries that say how much is left over, the first first. */
  readonly wastes: readonly string[]
}

/** @throws Error naming what is not in the template */
export function checkExploration(
  template: string,
  { input, results }: Exploration,
  has: (name: string) => boolean,
): void {
  for (const name of [input, ...results]) {
    if (!has(name)) throw new Error(`template ${template}, what to explore by ${input}: there is no ${name}`)
  }
}

/** @throws Error naming what is not in the template */
export function checkThrift(
  template: string,
  { inputs, wastes }: Thrift,
  has: (name: string) => boolean,
): void {
  for (const name of [...inputs, ...wastes])
    if (!has(name)) throw new Error(`template ${template}, sizes that leave less over: there is no ${name}`)
}
