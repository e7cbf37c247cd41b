import { type IDBPDatabase, openDB } from "idb"
import type { RecordStore } from "./store.ts"

const DATABASE = "pegbook"
const RECORDS = "records"

/** Records in the browser's own database. Opens it when first asked, and again after a refusal or a closed connection. */
export function indexedDbStore(): RecordStore {
  let database: IDBPDatabase | undefined

  async function connect(): Promise<IDBPDatabase> {
    // Some browsers leave it out altogether where pages may keep nothing.
    if (globalThis.indexedDB === undefined) throw new DOMException("no database", "SecurityError")
    database = await openDB(DATABASE, 1, {
      upgrade: (made) => {
        made.createObjectStore(RECORDS)
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

  return {
    get: async (key) => (database ?? (await connect())).get(RECORDS, key),
    async put(key, value) {
      // No waiting where the database is open: while a page goes away, what waits is lost.
      const transaction = (database ?? (await connect())).transaction(RECORDS, "readwrite")
      const put = transaction.store.put(value, key)
      // A page that is gone cannot end its transaction, so it is ended now.
      transaction.commit()
      await Promise.all([put, transaction.done])
    },
  }
}
