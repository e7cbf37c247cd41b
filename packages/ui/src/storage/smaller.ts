/** The longer side of a kept picture, in pixels: enough to read a tag by. */
const LONGER_SIDE = 1_600
const QUALITY = 0.8

/** A picture made smaller and written anew, which leaves out what the camera noted in it. Rejects what is no picture. */
export async function smaller(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file)
  const share = Math.min(1, LONGER_SIDE / Math.max(picture.width, picture.height))
  const canvas = document.createElement("canvas")
  canvas.width = Math.max(1, Math.round(picture.width * share))
  canvas.height = Math.max(1, Math.round(picture.height * share))
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height)
  picture.close()
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob === null ? reject(new Error("the picture could not be written")) : resolve(blob)),
      "image/jpeg",
      QUALITY,
    ),
  )
}
