import type { Photo } from "./photos.ts"

/** A photo as a file holds it. */
export interface FilePhoto {
  readonly stage: string
  /** As ISO 8601. */
  readonly added: string
  /** A JPEG in base64 (RFC 4648), in parts that are put together: a workbook's reader refuses a longer text. */
  readonly picture: readonly string[]
}

/** A photo out of a file that keeps to all rules that can be seen without painting it. */
export interface UnpackedPhoto {
  readonly stage: string
  readonly added: string
  readonly picture: Blob
}

/** Of base64; a multiple of four, so that each part can be read alone. */
const PART = 60_000
/** Of one photo, in bytes: several times what one is made down to. */
const LARGEST_PHOTO = 4_000_000
/** Of each side, in pixels: a small file can hold a picture that fills a phone's memory. */
const LONGEST_SIDE = 4_096
export const MOST_PHOTOS = 500
const LONGEST_STAGE = 200

/** Photos as a file holds them, in the order given, for as long as they fit into this many bytes; and how many do not. */
export async function packPhotos(
  photos: readonly Photo[],
  room: number,
): Promise<{ readonly packed: readonly FilePhoto[]; readonly leftOut: number }> {
  const packed: FilePhoto[] = []
  let free = room
  for (const { stage, added, picture } of photos.slice(0, MOST_PHOTOS)) {
    const text = base64(new Uint8Array(await picture.arrayBuffer()))
    const parts: string[] = []
    for (let start = 0; start < text.length; start += PART) parts.push(text.slice(start, start + PART))
    const one = { stage, added, picture: parts }
    // As it will be written, and the marks round it.
    free -= JSON.stringify({ photos: [one] }, null, 2).length
    if (free < 0) break
    packed.push(one)
  }
  return { packed, leftOut: photos.length - packed.length }
}

/** The photos of a file, whatever stands there instead of them, and how many of them are none. Never throws. */
export function unpackPhotos(held: unknown): {
  readonly photos: readonly UnpackedPhoto[]
  readonly refused: number
} {
  if (held === undefined) return { photos: [], refused: 0 }
  if (!Array.isArray(held)) return { photos: [], refused: 1 }
  const photos = held.slice(0, MOST_PHOTOS).flatMap((one) => unpackPhoto(one) ?? [])
  return { photos, refused: held.length - photos.length }
}

function unpackPhoto(held: unknown): UnpackedPhoto | undefined {
  if (typeof held !== "object" || held === null) return undefined
  const { stage, added, picture } = held as Readonly<Record<string, unknown>>
  if (typeof stage !== "string" || stage === "" || stage.length > LONGEST_STAGE) return undefined
  if (typeof added !== "string" || Number.isNaN(Date.parse(added))) return undefined
  if (!Array.isArray(picture) || !picture.every((part) => typeof part === "string")) return undefined
  const text = picture.join("")
  if (text.length * 0.75 > LARGEST_PHOTO) return undefined
  const bytes = bytesOf(text)
  const size = bytes === undefined ? undefined : jpegSize(bytes)
  if (bytes === undefined || size === undefined) return undefined
  if (Math.max(size.width, size.height) > LONGEST_SIDE) return undefined
  return { stage, added, picture: new Blob([bytes], { type: "image/jpeg" }) }
}

function base64(bytes: Uint8Array): string {
  const parts: string[] = []
  // A multiple of three, so that only the last part is padded.
  const step = 24_000
  for (let start = 0; start < bytes.length; start += step) {
    parts.push(btoa(String.fromCharCode(...bytes.subarray(start, start + step))))
  }
  return parts.join("")
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))
  } catch {
    return undefined
  }
}

/**
 * A JPEG's size in pixels, out of its frame header, where nothing is decoded yet (ITU-T T.81, B.2.2, from memory);
 * nothing where the bytes are no JPEG.
 */
export function jpegSize(bytes: Uint8Array): { readonly width: number; readonly height: number } | undefined {
  const two = (at: number) => (bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0)
  if (two(0) !== 0xffd8) return undefined
  let at = 2
  while (at + 9 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0
    // Frame headers are C0 to CF, but for tables (C4, CC) and an extension (C8).
    if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) {
      const [height, width] = [two(at + 5), two(at + 7)]
      return width > 0 && height > 0 ? { width, height } : undefined
    }
    const length = two(at + 2)
    if (length < 2) return undefined
    at += 2 + length
  }
  return undefined
}
