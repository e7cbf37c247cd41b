import type { Book, EntryView } from "@pegbook/engine"
import { createSignal } from "solid-js"
import { watched } from "./watched.ts"

/** Whether what is read of a name may read differently now. */
export type Touched = (name: string) => boolean

/** A view of the workbook that is told of changes at its own time. */
export class Reader {
  readonly entries
  readonly tables
  readonly movedNames
  readonly #book: Book
  readonly #version = createSignal(0)
  /** What the last change touched: what is marked as moved by it is no longer with the next. */
  #before: Touched = () => false

  constructor(book: Book) {
    this.#book = book
    this.entries = watched((name) => book.entry(name))
    this.tables = watched((name) => book.table(name))
    this.movedNames = watched((name) => book.movedAt(name))
  }

  /** Follows every change. */
  tracked<T>(read: () => T): T {
    this.#version[0]()
    return read()
  }

  refresh(touched: Touched): void {
    const before = this.#before
    this.#before = touched
    const has = (name: string) => this.#book.has(name)
    // A check's advice has values of any entry in it; what is wrong may be wrong for another reason now.
    const isTouched = (name: string, view: EntryView) =>
      touched(name) || view.kind === "check" || view.state !== "ok"
    this.entries.refresh(isTouched, has)
    this.tables.refresh(touched, has)
    this.movedNames.refresh((name) => touched(name) || before(name), has)
    this.#version[1]((number) => number + 1)
  }
}
