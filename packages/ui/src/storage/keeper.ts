import { type Refusal, refusalOf } from "./store.ts"

export type KeptState =
  | { readonly kind: "nothing" }
  | { readonly kind: "saving" }
  | { readonly kind: "saved" }
  | { readonly kind: "refused"; readonly refusal: Refusal }

export interface Clock {
  after(milliseconds: number, run: () => void): () => void
}

export interface Keeper {
  /** Something changed: save soon. */
  changed(): void
  /** Save now whatever is not saved; resolves when the store has answered. */
  flush(): Promise<void>
  /** Forgets what is not saved: it is kept elsewhere, or not wanted. */
  drop(): void
}

const WAIT = 300

/**
 * Saves some time after the last change, at most one write at a time. A refusal is told and kept in mind:
 * the next change, or flush, tries again.
 */
export function createKeeper(
  save: () => Promise<void>,
  tell: (state: KeptState) => void,
  clock: Clock,
): Keeper {
  let unsaved = false
  let dropped = false
  let cancel: (() => void) | undefined
  let writing: Promise<void> | undefined

  async function write(): Promise<void> {
    while (unsaved) {
      unsaved = false
      try {
        await save()
      } catch (thrown) {
        if (dropped) return
        unsaved = true
        tell({ kind: "refused", refusal: refusalOf(thrown) })
        return
      }
    }
    if (!dropped) tell({ kind: "saved" })
  }

  function flush(): Promise<void> {
    cancel?.()
    cancel = undefined
    if (writing !== undefined) return writing
    if (!unsaved) return Promise.resolve()
    writing = write().finally(() => {
      writing = undefined
    })
    return writing
  }

  return {
    changed() {
      unsaved = true
      tell({ kind: "saving" })
      cancel?.()
      cancel = clock.after(WAIT, () => void flush())
    },
    flush,
    drop() {
      cancel?.()
      unsaved = false
      dropped = true
    },
  }
}

export const windowClock: Clock = {
  after(milliseconds, run) {
    const timer = setTimeout(run, milliseconds)
    return () => clearTimeout(timer)
  },
}
