import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { expect, onTestFinished, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { WorkbookPage } from "./workbook-page.ts"

const STEP = "Mark out, and have services found"

const photoOf = (workbook: WorkbookPage) => workbook.page.getByRole("img", { name: `Photo 1 of: ${STEP}` })

async function addPhoto(workbook: WorkbookPage): Promise<void> {
  await workbook.screen("Steps")
  const data = await workbook.page.evaluate(() => {
    const canvas = document.createElement("canvas")
    canvas.width = 800
    canvas.height = 400
    const paint = canvas.getContext("2d")
    if (paint === null) throw new Error("nothing can be painted")
    paint.fillStyle = "#00ff00"
    paint.fillRect(0, 0, 800, 400)
    return canvas.toDataURL("image/png").split(",")[1] ?? ""
  })
  await workbook.page.getByLabel(`Add photos to: ${STEP}`).setInputFiles({
    name: "pegs.png",
    mimeType: "image/png",
    buffer: Buffer.from(data, "base64"),
  })
  await photoOf(workbook).waitFor()
}

/** The colour in the middle of a picture, as red, green and blue. */
function colour(workbook: WorkbookPage): Promise<readonly number[]> {
  return photoOf(workbook).evaluate(async (image: HTMLImageElement) => {
    await image.decode()
    const canvas = document.createElement("canvas")
    canvas.width = image.naturalWidth
    canvas.height = image.naturalHeight
    const paint = canvas.getContext("2d")
    paint?.drawImage(image, 0, 0)
    const middle = paint?.getImageData(image.naturalWidth / 2, image.naturalHeight / 2, 1, 1)
    return [...(middle?.data ?? [])].slice(0, 3)
  })
}

/** How many photos the browser keeps, of all workbooks. */
function photosKept(workbook: WorkbookPage): Promise<number> {
  return workbook.page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("pegbook-photos")
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const counting = opening.result.transaction("photos").objectStore("photos").count()
          counting.onsuccess = () => {
            opening.result.close()
            resolve(counting.result)
          }
        }
      }),
  )
}

async function openFile(workbook: WorkbookPage, path: string): Promise<void> {
  const [chooser] = await Promise.all([
    workbook.page.waitForEvent("filechooser"),
    workbook.button("Open a file").first().click(),
  ])
  await chooser.setFiles(path)
}

test("photos go with the file to another browser; hostile ones are left out in words; deleting deletes them", async () => {
  const place = mkdtempSync(join(tmpdir(), "pegbook-photos-"))
  onTestFinished(() => rmSync(place, { recursive: true, force: true }))
  const first = await openPegbook()
  await addPhoto(first)
  await first.screen("Worksheet")
  const [download] = await Promise.all([
    first.page.waitForEvent("download"),
    first.button("Save to a file").click(),
  ])
  const path = join(place, "shared.json")
  await download.saveAs(path)

  const second = await openPegbook({ width: 360, height: 740 })
  await second.screen("Start")
  await openFile(second, path)
  await second.page.getByText("Opened the file as a workbook of its own").waitFor()
  await second.page.locator('[data-kept="saved"]').waitFor({ state: "attached" })
  await second.reload()
  await second.screen("Steps")
  await photoOf(second).waitFor()
  const [red = 255, green = 0, blue = 255] = await colour(second)
  expect(green).toBeGreaterThan(240)
  expect(Math.max(red, blue)).toBeLessThan(15)
  expect(await photosKept(second)).toBe(1)

  // The header says a small picture, and nothing follows it: only painting it shows that it is none.
  const header = [0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0, 9, 0, 16, 1, 1, 0x11, 0]
  const shared = JSON.parse(readFileSync(path, "utf8"))
  const [photo] = shared.photos
  const hostile = join(place, "hostile.json")
  const script = Buffer.from("<svg xmlns='http://www.w3.org/2000/svg' onload='document.title=1'/>")
  const photos = [script, Buffer.from(header)].map((bytes) => ({
    ...photo,
    picture: [bytes.toString("base64")],
  }))
  writeFileSync(hostile, JSON.stringify({ ...shared, title: "Hostile", photos }))
  await second.screen("Start")
  await openFile(second, hostile)
  await second.page
    .getByText("2 photos in the file could not be read as a picture of a bearable size, and were left out.")
    .waitFor()
  expect(await photosKept(second)).toBe(1)

  await second.screen("Start")
  await second
    .listed("Game table platform")
    .getByRole("button", { name: /^Delete/ })
    .click()
  await expect.poll(() => photosKept(second)).toBe(0)
  await second.button("Undo").click()
  await expect.poll(() => photosKept(second)).toBe(1)
})

test("kept as a copy after a clash of two tabs, a workbook has its photos at once", async () => {
  const first = await openPegbook()
  await addPhoto(first)
  await first.page.locator('[data-kept="saved"]').waitFor({ state: "attached" })
  const second = new WorkbookPage(await first.page.context().newPage())
  await second.page.goto(first.page.url())
  await photoOf(second).waitFor()

  await first.screen("Worksheet")
  await first.enter("platform_length", "19 ft")
  await first.saved()
  await second.button("Keep mine as a copy").click()
  await second.page.getByText("Yours goes on here as").waitFor()
  await photoOf(second).waitFor()
  await expect.poll(() => photosKept(second)).toBe(2)
})
