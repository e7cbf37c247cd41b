import { type KeptWorkbook, type Knows, readKept, type Shelved } from "./kept-workbook.ts"
import type { ListedStore } from "./store.ts"

/** All workbooks of this browser. Where the store refuses, they last as long as the page. */
export interface Shelf {
  /** Takes in what is stored, but for these ids, which stay as they are held here. Rejects when the store refuses. */
  refresh(unsaved: readonly string[]): Promise<void>
  /** Last changed first. */
  list(): readonly Shelved[]
  find(id: string): Shelved | undefined
  /** The record as it is held here. */
  record(id: string): unknown
  /** Changes members of a record, or makes one; whoever calls sees to it that it is stored. */
  hold(id: string, change: Partial<KeptWorkbook>): void
  /** Gives a title and stores it; all else in the record stays as it is. Rejects when the store refuses. */
  rename(id: string, title: string): Promise<void>
  /** Takes a workbook away; what it returns puts it back as it was. Both reject when the store refuses. */
  remove(id: string): Promise<() => Promise<void>>
}

export function createShelf(store: ListedStore, knows: Knows): Shelf {
  const held = new Map<string, unknown>()
  const shelved = new Map<string, Shelved>()

  function put(id: string, record: unknown): void {
    held.set(id, record)
    shelved.set(id, readKept(id, record, knows))
  }

  function drop(id: string): void {
    held.delete(id)
    shelved.delete(id)
  }

  function hold(id: string, change: Partial<KeptWorkbook>): void {
    put(id, { ...(held.get(id) as object | undefined), ...change })
  }

  return {
    async refresh(unsaved) {
      const stored = await store.all()
      for (const id of [...held.keys()]) if (!unsaved.includes(id)) drop(id)
      for (const [id, record] of stored) if (!unsaved.includes(id)) put(id, record)
    },
    list: () => [...shelved.values()].sort((a, b) => moment(b) - moment(a)),
    find: (id) => shelved.get(id),
    record: (id) => held.get(id),
    hold,
    async rename(id, title) {
      hold(id, { title })
      await store.put(id, held.get(id))
    },
    async remove(id) {
      const record = held.get(id)
      await store.remove(id)
      drop(id)
      return async () => {
        put(id, record)
        await store.put(id, record)
      }
    },
  }
}

function moment({ changed }: Shelved): number {
  return changed === undefined ? 0 : Date.parse(changed)
}
