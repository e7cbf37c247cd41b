import type { UnitSystem } from "../units/measure.ts"
import type { Drawing } from "./drawing.ts"
import type { Entry } from "./entry.ts"
import type { Exploration, Thrift } from "./exploration.ts"
import type { Stage } from "./stage.ts"

/** A part of the build, in the order of the work. */
export interface Section {
  readonly id: string
  readonly title: string
  /** One sentence under the title. */
  readonly says: string
  readonly entries: readonly Entry[]
}

/** A template: everything a workbook of this kind calculates. Data only. */
export interface Definition {
  readonly id: string
  readonly title: string
  /** One line on when it fits. */
  readonly says: string
  readonly unitSystem: UnitSystem
  readonly sections: readonly Section[]
  /** The order of the work, where the template has one. */
  readonly stages?: readonly Stage[]
  /** Shown with every workbook of this kind: whose word decides, and what can hurt. */
  readonly cautions: readonly string[]
  /** What can be drawn of it, in the order offered. */
  readonly drawings?: readonly Drawing[]
  /** What a newcomer may ask of other values at one press, in the order offered. */
  readonly explorations?: readonly Exploration[]
  /** Sizes that may be moved a little so that less of what is bought is left over. */
  readonly thrift?: Thrift
}
