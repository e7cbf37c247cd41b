import { type KeptWorkbook, type Knows, readKept, revisionOf, type Shelved } from "./kept-workbook.ts"
import type { ListedStore } from "./store.ts"

/** All workbooks of this browser. Where the store refuses, they last as long as the page. */
export interface Shelf {
  /** Takes in what is stored, but for these ids, which stay as they are held here. Rejects when the store refuses. */
  refresh(unsaved: readonly string[]): Promise<void>
  /** Last changed first. */
  list(): readonly Shelved[]
  find(id: string): Shelved | undefined
  /**
   * Stores the record as it is held here, as its next revision. Rejects when the store refuses, and as overtaken when
   * another tab stored that revision first.
   */
  save(id: string): Promise<void>
  /** Changes members of a record, or makes one; whoever calls sees to it that it is stored. */
  hold(id: string, change: Partial<KeptWorkbook>): void
  /** Takes a workbook away; what it returns puts it back as it was. Both reject when the store refuses. */
  remove(id: string): Promise<() => Promise<void>>
}

export function createShelf(store: ListedStore, knows: Knows): Shelf {
  const held = new Map<string, unknown>()
  const shelved = new Map<string, Shelved>()
  const saving = new Map<string, Promise<void>>()

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

  async function write(id: string): Promise<void> {
    const record = held.get(id)
    const revision = revisionOf(record) + 1
    // A record that is no object is not ours to change.
    const ours = typeof record === "object" && record !== null
    await store.put(id, ours ? { ...record, revision } : record, revision)
    if (ours && held.has(id)) hold(id, { revision })
  }

  /** One write of a record at a time; the first at once, for a page that is going away. */
  function save(id: string): Promise<void> {
    const before = saving.get(id)
    const writing = (before === undefined ? write(id) : before.catch(() => {}).then(() => write(id))).finally(
      () => {
        if (saving.get(id) === writing) saving.delete(id)
      },
    )
    saving.set(id, writing)
    return writing
  }

  return {
    async refresh(unsaved) {
      const stored = await store.all()
      for (const id of [...held.keys()]) if (!unsaved.includes(id)) drop(id)
      for (const [id, record] of stored) if (!unsaved.includes(id)) put(id, record)
    },
    list: () => [...shelved.values()].sort((a, b) => moment(b) - moment(a)),
    find: (id) => shelved.get(id),
    save,
    hold,
    async remove(id) {
      const record = held.get(id)
      await store.remove(id)
      drop(id)
      return async () => {
        put(id, record)
        await save(id)
      }
    },
  }
}

function moment({ changed }: Shelved): number {
  return changed === undefined ? 0 : Date.parse(changed)
}
