import { type FilePhoto, MOST_PHOTOS, packPhotos, unpackPhotos } from "../storage/photo-file.ts"
import { newPhotoId, type Photos } from "../storage/photos.ts"
import { refusalOf } from "../storage/store.ts"
import { LARGEST_FILE } from "../storage/workbook-file.ts"
import { refusalWords } from "../text/refusal-words.ts"
import { spoken } from "../text/spoken.ts"

/** Photos on their way into a workbook's file, and out of one; what does not come along is told. */
export function carriedPhotos(
  photos: Photos,
  smaller: (picture: Blob) => Promise<Blob>,
  tell: (text: string) => void,
) {
  return {
    /** Those of a workbook, as many as there is room for, in bytes; nothing where they cannot be had. */
    async pack(workbook: string, room: number): Promise<readonly FilePhoto[] | undefined> {
      try {
        const { packed, leftOut } = await packPhotos(await photos.all(workbook), room)
        if (leftOut > 0) {
          const isFull = packed.length < MOST_PHOTOS
          tell(
            isFull
              ? spoken.files.photosLeftOut(leftOut, LARGEST_FILE)
              : spoken.files.photosTooMany(leftOut, MOST_PHOTOS),
          )
        }
        return packed
      } catch (thrown) {
        tell(spoken.files.withoutPhotos(refusalWords(refusalOf(thrown))))
        return undefined
      }
    },
    /** Keeps a file's photos with a workbook. */
    async take(workbook: string, held: unknown): Promise<void> {
      const { photos: read, refused } = unpackPhotos(held)
      let notRead = refused
      try {
        for (const { stage, added, picture } of read) {
          // Painted anew, so that what is kept is a picture and nothing else.
          const painted = await smaller(picture).catch(() => undefined)
          if (painted === undefined) notRead += 1
          else await photos.put({ id: newPhotoId(), workbook, stage, added, picture: painted })
        }
      } catch (thrown) {
        tell(spoken.files.photosNotKept(refusalWords(refusalOf(thrown))))
        return
      }
      if (notRead > 0) tell(spoken.files.photosNotRead(notRead))
    },
  }
}
