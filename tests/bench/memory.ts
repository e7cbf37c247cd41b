import { setFlagsFromString } from "node:v8"
import { runInNewContext } from "node:vm"
import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"

const EDITS = 2_000
const EVERY = 250

/** Nothing outside calls for it but a flag. */
function collector(): () => void {
  setFlagsFromString("--expose-gc")
  return runInNewContext("gc") as () => void
}

/**
 * What is held, in megabytes, after each few hundred edits of the length, of which every entry is read. The history of a
 * workbook is kept, so that it grows by its lines.
 */
export function watchMemory(): {
  readonly edits: number
  readonly every: number
  readonly held: readonly number[]
} {
  const collect = collector()
  const { book } = openBook(demo())
  const held = (): number => {
    collect()
    return process.memoryUsage().heapUsed / 1e6
  }
  const edit = (index: number): void => {
    // A length comes back after hundreds of others, so that what is remembered for the next time would show.
    const eighths = 1_536 + ((index * 7) % 769)
    if (!book.edit("platform_length", `${eighths / 8} in`).accepted)
      throw new Error("the workbook refused a length")
    for (const name of book.names()) book.entry(name)
  }
  for (let warm = 0; warm < 100; warm++) edit(warm)
  const all = [held()]
  for (let index = 1; index <= EDITS; index++) {
    edit(index)
    if (index % EVERY === 0) all.push(held())
  }
  return { edits: EDITS, every: EVERY, held: all }
}
