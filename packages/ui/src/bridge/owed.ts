import type { Book, EditResult, Moved } from "@pegbook/engine"
import { touchedBy } from "./touched.ts"

interface Change {
  readonly name: string
  readonly result: EditResult
  readonly isPreview: boolean
}

const NONE: readonly Moved[] = []

/** Changes of which is still to be told what they moved. */
export class Owed {
  readonly #book: Pick<Book, "leanedOnBy">
  #changes: Change[] = []
  #everything = false
  /** What the preview that was told last moved, and the next change may put back. */
  #previewed = NONE

  constructor(book: Pick<Book, "leanedOnBy">) {
    this.#book = book
  }

  add(change: Change): void {
    this.#changes.push(change)
  }

  /** A change after which anything may read differently. */
  addEverything(): void {
    this.#everything = true
  }

  /** Whether a view may read differently for it; nothing is owed any more. */
  pay(): (name: string) => boolean {
    const [changes, everything] = [this.#changes, this.#everything]
    this.#changes = []
    this.#everything = false
    const touched = new Set<string>()
    if (!everything)
      for (const { name, result } of changes)
        for (const one of touchedBy(this.#book, name, [...this.#previewed, ...result.moved])) touched.add(one)
    const last = everything ? undefined : changes.at(-1)
    this.#previewed = last?.isPreview ? last.result.moved : NONE
    return everything ? () => true : (name) => touched.has(name)
  }
}
