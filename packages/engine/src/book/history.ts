import { applyChanges } from "./changes.ts"
import type { BookDocument, Change, Step } from "./document.ts"
import type { State } from "./state.ts"

/** One step of the history, for a reader: data without words. */
export interface HistoryStep {
  /** Counts up; what a step is called in `copyAt`. */
  readonly number: number
  /** When it was done: milliseconds since 1970, UTC. */
  readonly at: number
  /** It was undone, and can be done again. */
  readonly undone: boolean
  readonly changes: readonly Change[]
}

const MOST_STEPS = 500
/** In characters of JSON. Long tables typed over and over must not make the saved workbook ever larger. */
const MOST_CHARACTERS = 2_000_000

/** What was done and undone, as what was typed before and after; never values. Bounded: the oldest steps go first. */
export class History {
  readonly #past: Step[]
  readonly #future: Step[]
  readonly #lengths = new WeakMap<Step, number>()
  /** Members of a saved history that this version does not know. */
  readonly #unknown: Readonly<Record<string, unknown>>
  #next: number

  constructor(saved: BookDocument["history"] | undefined) {
    const { past, future, ...unknown } = saved ?? { past: [], future: [] }
    this.#past = [...past]
    this.#future = [...future]
    this.#unknown = unknown
    this.#next = [...past, ...future].reduce((most, { number }) => Math.max(most, number), 0) + 1
    this.#trim()
  }

  record(changes: readonly Change[], at: number): void {
    this.#past.push({ number: this.#next++, at, changes: [...changes] })
    this.#future.length = 0
    this.#trim()
  }

  /** The state before the last step; nothing where there is none. */
  undo(state: State): State | undefined {
    const step = this.#past.pop()
    if (step === undefined) return undefined
    this.#future.push(step)
    return applyChanges(state, step.changes, "backwards")
  }

  /** The state after the step that was last undone; nothing where there is none. */
  redo(state: State): State | undefined {
    const step = this.#future.pop()
    if (step === undefined) return undefined
    this.#past.push(step)
    return applyChanges(state, step.changes, "forwards")
  }

  /** The oldest first; those undone come last, the next to be done again before the rest. */
  steps(): readonly HistoryStep[] {
    const view = (undone: boolean) => (step: Step) => ({
      number: step.number,
      at: step.at,
      undone,
      changes: step.changes,
    })
    return [...this.#past.map(view(false)), ...[...this.#future].reverse().map(view(true))]
  }

  /** How things stood right after a step. @throws RangeError where there is no such step */
  stateAfter(number: number, now: State): State {
    const place = this.#past.findIndex((step) => step.number === number)
    if (place >= 0) {
      return this.#past
        .slice(place + 1)
        .reduceRight((state, step) => applyChanges(state, step.changes, "backwards"), now)
    }
    const undone = this.#future.findIndex((step) => step.number === number)
    if (undone < 0) throw new RangeError(`there is no step ${number}`)
    return this.#future
      .slice(undone)
      .reduceRight((state, step) => applyChanges(state, step.changes, "forwards"), now)
  }

  toDocument(): BookDocument["history"] {
    return { ...this.#unknown, past: [...this.#past], future: [...this.#future] }
  }

  /** The last step stays however long it is. */
  #trim(): void {
    let characters = this.#past.reduce((sum, step) => sum + this.#length(step), 0)
    let gone = Math.max(0, this.#past.length - MOST_STEPS)
    for (const step of this.#past.slice(0, gone)) characters -= this.#length(step)
    while (characters > MOST_CHARACTERS && gone < this.#past.length - 1) {
      const step = this.#past[gone]
      characters -= step === undefined ? 0 : this.#length(step)
      gone++
    }
    this.#past.splice(0, gone)
  }

  #length(step: Step): number {
    let length = this.#lengths.get(step)
    if (length === undefined) {
      length = JSON.stringify(step.changes).length
      this.#lengths.set(step, length)
    }
    return length
  }
}
