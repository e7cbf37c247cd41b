import { createSignal, getListener, onCleanup, untrack } from "solid-js"

interface One<T> {
  readonly get: () => T
  readonly set: (now: () => T) => void
  watchers: number
}

/** What is read of each name, told anew to whoever watches it; what nobody watches is not read. */
export interface Watched<T> {
  readonly get: (name: string) => T
  /**
   * Reads anew what is watched and touched. One that is no longer there keeps what it was: whatever shows it is about to
   * go.
   */
  refresh(touched: (name: string, shown: T) => boolean, has: (name: string) => boolean): void
}

/** One signal a name, for as long as something tracks it. */
export function watched<T>(read: (name: string) => T): Watched<T> {
  const known = new Map<string, One<T>>()

  function one(name: string): One<T> {
    let found = known.get(name)
    if (found === undefined) {
      const [get, set] = createSignal(read(name))
      found = { get, set, watchers: 0 }
      known.set(name, found)
    }
    return found
  }

  return {
    get(name) {
      if (getListener() === null) return read(name)
      const here = one(name)
      here.watchers += 1
      onCleanup(() => {
        here.watchers -= 1
      })
      return here.get()
    },
    refresh(touched, has) {
      for (const [name, here] of known) {
        if (here.watchers === 0) known.delete(name)
        else if (has(name) && touched(name, untrack(here.get))) here.set(() => read(name))
      }
    },
  }
}
