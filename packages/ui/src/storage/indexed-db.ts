import { type IDBPDatabase, openDB } from "idb"
import { workbooksOfFirstVersion } from "./first-version.ts"
import { indexedDbPhotos } from "./photos.ts"
import type { ListedStore, RecordStore, Stores } from "./store.ts"

const DATABASE = "pegbook"
const VERSION = 3
const RECORDS = "records"
const WORKBOOKS = "workbooks"
/** One key, `[id, revision]`, for each revision written: who adds the same one second has been overtaken. */
const REVISIONS = "revisions"
/** How many of them are remembered for each workbook. */
const REMEMBERED = 1_000

/** Records in the browser's own database. Opens it when first asked, and again after a refusal or a closed connection. */
export function indexedDbStores(): Stores {
  let database: IDBPDatabase | undefined
  let cleared = () => {}

  /** A database that was just thrown away cannot be opened for a moment. */
  function tellCleared(tries = 10): void {
    setTimeout(async () => {
      try {
        database ??= await connect()
        cleared()
      } catch {
        if (tries > 1) tellCleared(tries - 1)
      }
    }, 300)
  }

  async function connect(): Promise<IDBPDatabase> {
    // Some browsers leave it out altogether where pages may keep nothing.
    if (globalThis.indexedDB === undefined) throw new DOMException("no database", "SecurityError")
    database = await openDB(DATABASE, VERSION, {
      async upgrade(made, from, _to, transaction) {
        if (from < 1) made.createObjectStore(RECORDS)
        if (from < 2) {
          const workbooks = made.createObjectStore(WORKBOOKS)
          const records = transaction.objectStore(RECORDS)
          // The first version's records stay where they are as well: a move that goes wrong then costs nothing.
          const [keys, values] = await Promise.all([records.getAllKeys(), records.getAll()])
          const before = new Map(keys.map((key, place) => [String(key), values[place]]))
          for (const [id, kept] of workbooksOfFirstVersion(before)) await workbooks.put(kept, id)
        }
        if (from < 3) made.createObjectStore(REVISIONS)
      },
      // A later version of the program in another tab must not be held up by this one.
      blocking: (_version, wanted) => {
        database?.close()
        database = undefined
        if (wanted === null) tellCleared()
      },
      terminated: () => {
        database = undefined
        tellCleared()
      },
    })
    return database
  }

  async function change(names: readonly string[], act: (stores: Writing) => unknown): Promise<void> {
    // No waiting where the database is open: while a page goes away, what waits is lost.
    const transaction = (database ?? (await connect())).transaction(names, "readwrite")
    const acted = act((name) => transaction.objectStore(name))
    // A page that is gone cannot end its transaction, so it is ended now.
    transaction.commit()
    await Promise.all([acted, transaction.done])
  }

  const records: RecordStore = {
    get: async (key) => (database ?? (await connect())).get(RECORDS, key),
    put: (key, value) => change([RECORDS], (store) => store(RECORDS).put(value, key)),
  }

  const workbooks: ListedStore = {
    put: (id, value, revision) =>
      change([WORKBOOKS, REVISIONS], (store) =>
        // All or nothing, and without reading first, which a page that goes away could not wait for.
        Promise.all([
          store(WORKBOOKS).put(value, id),
          store(REVISIONS).add(0, [id, revision]),
          store(REVISIONS).delete(IDBKeyRange.bound([id], [id, revision - REMEMBERED])),
        ]),
      ),
    remove: (id) => change([WORKBOOKS], (store) => store(WORKBOOKS).delete(id)),
    async all() {
      const { store } = (database ?? (await connect())).transaction(WORKBOOKS)
      const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll()])
      return new Map(keys.map((key, place) => [String(key), values[place]]))
    },
  }

  return {
    records,
    workbooks,
    photos: indexedDbPhotos(),
    onCleared: (listener) => {
      cleared = listener
    },
  }
}

type Writing = (name: string) => {
  put(value: unknown, key: IDBValidKey): Promise<unknown>
  add(value: unknown, key: IDBValidKey): Promise<unknown>
  delete(key: IDBValidKey | IDBKeyRange): Promise<unknown>
}
