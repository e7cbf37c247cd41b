import { caseIsCasual, spellingKey } from "./spelling.ts"
import type { Unit } from "./unit.ts"

/** Finds units by what people type. */
export class UnitIndex {
  private readonly exact = new Map<string, Unit>()
  private readonly anyCase = new Map<string, Unit>()

  /** Throws a RangeError where two of the units have a spelling in common, capitals aside. */
  constructor(units: readonly Unit[]) {
    for (const unit of units) {
      for (const name of unit.names) {
        const key = spellingKey(name)
        const other = this.anyCase.get(key.toLowerCase())
        if (other !== undefined && other !== unit) {
          throw new RangeError(`the spelling "${name}" is claimed by the units ${other.id} and ${unit.id}`)
        }
        this.exact.set(key, unit)
        this.anyCase.set(key.toLowerCase(), unit)
      }
    }
  }

  find(spelling: string): Unit | undefined {
    const key = spellingKey(spelling)
    return this.exact.get(key) ?? (caseIsCasual(key) ? this.anyCase.get(key.toLowerCase()) : undefined)
  }
}
