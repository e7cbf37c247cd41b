import { type IDBPDatabase, openDB } from "idb"
import { workbooksOfFirstVersion } from "./first-version.ts"
import type { ListedStore, Stores } from "./store.ts"

const DATABASE = "pegbook"
const VERSION = 2
const RECORDS = "records"
const WORKBOOKS = "workbooks"

/** Records in the browser's own database. Opens it when first asked, and again after a refusal or a closed connection. */
export function indexedDbStores(): Stores {
  let database: IDBPDatabase | undefined

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
      },
      // A later version of the program in another tab must not be held up by this one.
      blocking: () => {
        database?.close()
        database = undefined
      },
      terminated: () => {
        database = undefined
      },
    })
    return database
  }

  async function change(name: string, act: (store: Writing) => Promise<unknown>): Promise<void> {
    // No waiting where the database is open: while a page goes away, what waits is lost.
    const transaction = (database ?? (await connect())).transaction(name, "readwrite")
    const acted = act(transaction.store)
    // A page that is gone cannot end its transaction, so it is ended now.
    transaction.commit()
    await Promise.all([acted, transaction.done])
  }

  function storeOf(name: string): ListedStore {
    return {
      get: async (key) => (database ?? (await connect())).get(name, key),
      put: (key, value) => change(name, (store) => store.put(value, key)),
      remove: (key) => change(name, (store) => store.delete(key)),
      async all() {
        const { store } = (database ?? (await connect())).transaction(name)
        const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll()])
        return new Map(keys.map((key, place) => [String(key), values[place]]))
      },
    }
  }

  return { records: storeOf(RECORDS), workbooks: storeOf(WORKBOOKS) }
}

interface Writing {
  put(value: unknown, key: string): Promise<unknown>
  delete(key: string): Promise<unknown>
}
