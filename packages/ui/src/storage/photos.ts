import { type IDBPDatabase, openDB } from "idb"

/** A picture kept with a step of a workbook. */
export interface Photo {
  readonly id: string
  readonly workbook: string
  readonly stage: string
  /** When it was added, as ISO 8601. */
  readonly added: string
  readonly picture: Blob
}

/** Photos, in a database of their own: they are large, and no workbook needs them to open. */
export interface Photos {
  /** Oldest first. */
  of(workbook: string, stage: string): Promise<readonly Photo[]>
  /** All of a workbook, oldest first. */
  all(workbook: string): Promise<readonly Photo[]>
  put(photo: Photo): Promise<void>
  remove(id: string): Promise<void>
  /** All photos of one workbook for another too, or none; how many there are. */
  copy(from: string, to: string): Promise<number>
  /** Takes away all photos of a workbook, or none, and returns them. */
  removeAll(workbook: string): Promise<readonly Photo[]>
}

const byAge = (photos: readonly Photo[]) => photos.toSorted((a, b) => (a.added < b.added ? -1 : 1))

/** For an id that no other photo has. */
export const newPhotoId = (): string => crypto.getRandomValues(new Uint32Array(3)).join("-")

const DATABASE = "pegbook-photos"
const PHOTOS = "photos"
const PLACE = "place"

/** A list is sorted after every text: `[]` stands behind the last stage. */
const everyStage = (workbook: string) => IDBKeyRange.bound([workbook], [workbook, []])

/** Opens the database when first asked. Whatever the browser refuses, rejects. */
export function indexedDbPhotos(): Photos {
  let database: Promise<IDBPDatabase> | undefined
  async function connect(): Promise<IDBPDatabase> {
    if (globalThis.indexedDB === undefined) throw new DOMException("no database", "SecurityError")
    database ??= openDB(DATABASE, 1, {
      upgrade(made) {
        made.createObjectStore(PHOTOS, { keyPath: "id" }).createIndex(PLACE, ["workbook", "stage"])
      },
      blocking: (_version, _wanted, event) => {
        database = undefined
        ;(event.target as IDBDatabase).close()
      },
      terminated: () => {
        database = undefined
      },
    })
    try {
      return await database
    } catch (refused) {
      database = undefined
      throw refused
    }
  }
  return {
    async of(workbook, stage) {
      return byAge(await (await connect()).getAllFromIndex(PHOTOS, PLACE, [workbook, stage]))
    },
    async all(workbook) {
      return byAge(await (await connect()).getAllFromIndex(PHOTOS, PLACE, everyStage(workbook)))
    },
    async put(photo) {
      await (await connect()).put(PHOTOS, photo)
    },
    async remove(id) {
      await (await connect()).delete(PHOTOS, id)
    },
    async copy(from, to) {
      const transaction = (await connect()).transaction(PHOTOS, "readwrite")
      const found: Photo[] = await transaction.store.index(PLACE).getAll(everyStage(from))
      const copies = found.map((photo) => ({ ...photo, id: newPhotoId(), workbook: to }))
      await Promise.all([...copies.map((photo) => transaction.store.put(photo)), transaction.done])
      return copies.length
    },
    async removeAll(workbook) {
      const transaction = (await connect()).transaction(PHOTOS, "readwrite")
      const found: Photo[] = await transaction.store.index(PLACE).getAll(everyStage(workbook))
      await Promise.all([...found.map(({ id }) => transaction.store.delete(id)), transaction.done])
      return found
    },
  }
}
