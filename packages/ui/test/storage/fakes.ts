import type { Clock } from "../../src/storage/keeper.ts"
import type { Photo, Photos } from "../../src/storage/photos.ts"
import type { ListedStore, RecordStore } from "../../src/storage/store.ts"

/** Records in memory; a revision is written once. `refuse` makes every change fail with this error until it is set back. */
export function memoryStore(records = new Map<string, unknown>()) {
  const written = new Set<string>()
  const store = {
    records,
    puts: [] as unknown[],
    refuse: undefined as Error | undefined,
    get: async (key: string) => records.get(key),
    async put(key: string, value: unknown, revision?: number) {
      if (store.refuse !== undefined) throw store.refuse
      if (revision !== undefined) {
        if (written.has(`${key} ${revision}`)) throw named("ConstraintError")
        written.add(`${key} ${revision}`)
      }
      store.puts.push(value)
      records.set(key, structuredClone(value))
    },
    all: async () => structuredClone(records),
    async remove(key: string) {
      if (store.refuse !== undefined) throw store.refuse
      records.delete(key)
    },
  } satisfies ListedStore & RecordStore & Record<string, unknown>
  return store
}

/** Photos in memory, in the order they were put. `refuse` makes every change fail with this error until it is set back. */
export function memoryPhotos() {
  const kept = new Map<string, Photo>()
  const of = (workbook: string) => [...kept.values()].filter((one) => one.workbook === workbook)
  const changing = () => {
    if (photos.refuse !== undefined) throw photos.refuse
  }
  const photos = {
    refuse: undefined as Error | undefined,
    of: async (workbook: string, stage: string) => of(workbook).filter((one) => one.stage === stage),
    all: async (workbook: string) => of(workbook),
    async put(photo: Photo) {
      changing()
      kept.set(photo.id, photo)
    },
    async remove(id: string) {
      changing()
      kept.delete(id)
    },
    async copy(from: string, to: string) {
      changing()
      const copies = of(from).map((photo) => ({ ...photo, id: `${photo.id}, ${to}`, workbook: to }))
      for (const photo of copies) kept.set(photo.id, photo)
      return copies.length
    },
    async removeAll(workbook: string) {
      changing()
      const gone = of(workbook)
      for (const { id } of gone) kept.delete(id)
      return gone
    },
  } satisfies Photos & Record<string, unknown>
  return photos
}

/** Time that passes only when told. */
export function handClock() {
  let waiting: (() => void) | undefined
  const clock: Clock = {
    after(_, run) {
      waiting = run
      return () => {
        if (waiting === run) waiting = undefined
      }
    },
  }
  return {
    clock,
    pass() {
      const run = waiting
      waiting = undefined
      run?.()
    },
  }
}

export function named(name: string): Error {
  return Object.assign(new Error(`refused: ${name}`), { name })
}
