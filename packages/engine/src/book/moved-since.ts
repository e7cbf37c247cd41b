import type { Snapshot, SnapshotValue } from "./snapshot.ts"
import type { Moved } from "./views.ts"

/** Puts what differs into words, in the units of its moment. */
type Tell = (before: Snapshot, after: Snapshot) => readonly Moved[]

/**
 * What one change moved. The values after it are read, and put into words, when somebody first asks: an edit in a row of
 * edits is not asked. It has to be told when other values are about to come.
 */
export class MovedSince {
  readonly #before: Snapshot
  readonly #tell: Tell
  #now: (() => Snapshot) | undefined
  #after: Snapshot | undefined
  #told: readonly Moved[] | undefined

  /** @param now all values as they are */
  constructor(before: Snapshot, now: () => Snapshot, tell: Tell) {
    this.#before = before
    this.#now = now
    this.#tell = tell
  }

  /** Those were the values after it. Without them, what nobody has asked yet can no longer be told. */
  end(after: Snapshot | undefined): void {
    if (this.#now !== undefined) this.#after ??= after
    this.#now = undefined
  }

  all(): readonly Moved[] {
    if (this.#now !== undefined) this.#after ??= this.#now()
    if (this.#after === undefined) return []
    this.#told ??= this.#tell(this.#before, this.#after)
    return this.#told
  }

  /** What it moved under these names, by their values as they are; nothing else is worked out for that. */
  at(names: readonly string[], valueAt: (name: string) => SnapshotValue): readonly Moved[] {
    const before = new Map<string, SnapshotValue>()
    const after = new Map<string, SnapshotValue>()
    for (const name of names) {
      const was = this.#before.get(name)
      if (was !== undefined) before.set(name, was)
      after.set(name, valueAt(name))
    }
    return this.#tell(before, after)
  }
}
