import { expect, test } from "vitest"
import { jpegSize, packPhotos, unpackPhotos } from "../../src/storage/photo-file.ts"
import { workbookFile } from "../../src/storage/workbook-file.ts"

/** A JPEG as far as its header: start, one comment, and a frame of this size (ITU-T T.81, B.2.2, from memory). */
function jpeg(width: number, height: number, rest = 0): Uint8Array<ArrayBuffer> {
  const frame = [0xff, 0xc0, 0, 11, 8, height >> 8, height & 255, width >> 8, width & 255, 1, 1, 0x11, 0]
  return Uint8Array.from([0xff, 0xd8, 0xff, 0xfe, 0, 4, 1, 2, ...frame, ...new Array(rest).fill(7)])
}

const photo = (bytes: Uint8Array<ArrayBuffer>, id = "1") => ({
  id,
  workbook: "w",
  stage: "mark-out",
  added: "2024-05-06T07:00:00.000Z",
  picture: new Blob([bytes], { type: "image/jpeg" }),
})

const entry = (bytes: Uint8Array) => ({
  stage: "mark-out",
  added: "2024-05-06T07:00:00.000Z",
  picture: [Buffer.from(bytes).toString("base64")],
})

test("photos come out of a file byte for byte, also where they are longer than one text may be", async () => {
  const pictures = [jpeg(1_600, 900), jpeg(900, 1_600, 200_000)]
  const { packed, leftOut } = await packPhotos(
    pictures.map((bytes) => photo(bytes)),
    1e6,
  )
  expect(leftOut).toBe(0)
  // What an older reader of workbooks, which keeps what it does not know, would refuse.
  for (const part of packed.flatMap(({ picture }) => picture)) expect(part.length).toBeLessThan(100_000)
  const { photos, refused } = unpackPhotos(JSON.parse(JSON.stringify(packed)))
  expect(refused).toBe(0)
  for (const [at, { stage, added, picture }] of photos.entries()) {
    expect({ stage, added }).toEqual({ stage: "mark-out", added: "2024-05-06T07:00:00.000Z" })
    expect(new Uint8Array(await picture.arrayBuffer())).toEqual(pictures[at])
  }
  expect(photos.length).toBe(2)
})

test("a file has only as many photos as it has room for, the first before the rest", async () => {
  const many = Array.from({ length: 8 }, (_, at) => photo(jpeg(1_600, 900, 60_000), String(at)))
  const document = { format: "pegbook-workbook" } as never
  const bare = workbookFile("x", document).text.length
  const most = bare + 300_000
  const { packed, leftOut } = await packPhotos(many, most - bare)
  // 60,021 bytes are 80,028 signs of base64: three fit into 300,000.
  expect([packed.length, leftOut]).toEqual([3, 5])
  expect(workbookFile("x", document, packed).text.length).toBeLessThanOrEqual(most)
})

test("what is no photo, or too large to be looked at, is left out and counted", () => {
  const good = entry(jpeg(1_600, 900))
  const bad: readonly unknown[] = [
    null,
    "photo",
    [],
    {},
    { ...good, stage: 7 },
    { ...good, stage: "x".repeat(201) },
    { ...good, added: "yesterday" },
    { ...good, picture: good.picture[0] },
    { ...good, picture: [7] },
    { ...good, picture: ["not base64 ~"] },
    { ...good, picture: [] },
    entry(new TextEncoder().encode("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>")),
    entry(Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10])),
    entry(jpeg(1_600, 900).subarray(0, 12)),
    entry(jpeg(0, 900)),
    entry(jpeg(60_000, 60_000)),
    entry(jpeg(1_600, 900, 4_000_000)),
  ]
  const { photos, refused } = unpackPhotos([good, ...bad, good])
  expect([photos.length, refused]).toEqual([2, bad.length])
  expect(unpackPhotos({ length: 3 })).toEqual({ photos: [], refused: 1 })
  expect(unpackPhotos(undefined)).toEqual({ photos: [], refused: 0 })
  expect(unpackPhotos(new Array(600).fill(good)).refused).toBe(100)
})

test("a header that never ends is no endless loop", () => {
  expect(jpegSize(Uint8Array.from([0xff, 0xd8, 0xff, 0xfe, 0, 0, 1, 2, 3, 4, 5, 6]))).toBeUndefined()
  expect(jpegSize(new Uint8Array(0))).toBeUndefined()
})
