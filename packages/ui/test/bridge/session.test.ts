import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { AT_ONCE } from "../../src/bridge/later.ts"
import { openSession } from "../../src/bridge/session.ts"
import type { Word } from "../../src/storage/other-tabs.ts"
import { en } from "../../src/text/en.ts"
import { handClock, memoryPhotos, memoryStore, named } from "../storage/fakes.ts"

/** What one browser keeps, and the sessions opened on it one after the other. */
function browser(workbooks = new Map<string, unknown>()) {
  let cleared = () => {}
  const stores = {
    records: memoryStore(),
    workbooks: memoryStore(workbooks),
    photos: memoryPhotos(),
    onCleared: (listener: () => void) => {
      cleared = listener
    },
  }
  let minute = 0
  let ids = 0
  const told: Word[] = []
  const reloads: unknown[] = []
  const hear: ((word: Word) => void)[] = []
  const open = async () => {
    const time = handClock()
    const { session, opened } = await openSession(stores, {
      now: () => new Date(Date.UTC(2024, 4, 6, 7, minute++)),
      clock: time.clock,
      whenPainted: AT_ONCE.whenPainted,
      languages: ["de-AT"],
      smaller: async (picture) => picture,
      reload: () => reloads.push(session.preferences().language),
      newId: () => `id-${++ids}`,
      thisTab: { current: () => undefined, opened: () => {} },
      tabs: (onWord) => {
        hear.push(onWord)
        return { tell: (word) => told.push(word) }
      },
    })
    await opened
    const sheet = () => session.sheet() ?? expect.fail("no workbook is open")
    const length = (typed?: string) => {
      if (typed !== undefined) expect(sheet().edit("platform_length", typed).accepted).toBe(true)
      return sheet().entry("platform_length").typed
    }
    const close = async () => {
      session.flush()
      await new Promise((resolve) => setTimeout(resolve))
    }
    const choose = async (text: string) => {
      const choice = session.notice()?.choices?.find((one) => one.text === text)
      expect(choice, text).toBeDefined()
      session.dismiss()
      choice?.act()
      // What is asked for later waits its turn.
      await session.open("none")
      await close()
    }
    return { session, sheet, length, close, choose, time }
  }
  return {
    stores,
    open,
    reloads,
    told,
    /** To the session opened last. */
    hear: (word: Word) => hear.at(-1)?.(word),
    clear: () => {
      workbooks.clear()
      cleared()
    },
  }
}

test("first comes the demonstration, in the units that the language proposes, and it is kept once changed", async () => {
  const { stores, open } = browser()
  const first = await open()
  expect(first.sheet().definition).toBe(demo())
  expect(first.sheet().unitSystem()).toBe("metric")
  await first.close()
  expect(stores.workbooks.records.size).toBe(0)

  first.length("18 ft")
  await first.close()
  expect(first.session.kept()).toEqual({ kind: "saved" })
  expect((await open()).length()).toBe("18 ft")
})

test("a workbook of one's own is stored at once under a title of its own, and each keeps what was typed in it", async () => {
  const { stores, open } = browser()
  const { session, length, close, sheet } = await open()
  length("18 ft")
  session.prefer({ unitSystem: "us" })
  await session.start(demo().id)
  expect(session.title()).toBe(`${demo().title} 2`)
  expect(sheet().unitSystem()).toBe("us")
  expect(stores.workbooks.records.size).toBe(2)
  length("19 ft")

  const [, other] = session.workbooks()
  await session.open(other?.id ?? "")
  expect(length()).toBe("18 ft")
  const here = session.workbooks().find((one) => one.id !== session.current())
  await session.open(here?.id ?? "")
  expect(length()).toBe("19 ft")
  await close()

  const again = await open()
  expect(again.session.title()).toBe(`${demo().title} 2`)
  expect(again.length()).toBe("19 ft")
})

test("what was typed a moment before another workbook opened is not lost", async () => {
  const { open } = browser()
  const { session, length, close } = await open()
  length("18 ft")
  const first = session.current()
  const starting = session.start(demo().id)
  length("17 ft")
  await starting
  await close()
  await session.open(first)
  expect(length()).toBe("17 ft")
})

test("the open one is deleted: another is opened; the undo brings it back and opens it", async () => {
  const { stores, open } = browser()
  const { session, length } = await open()
  length("18 ft")
  await session.start(demo().id)
  length("19 ft")
  const second = session.current()
  await session.remove(second)
  expect(length()).toBe("18 ft")
  expect(stores.workbooks.records.has(second)).toBe(false)

  session.notice()?.undo?.()
  // What is asked for later waits its turn.
  await session.open("none")
  expect(session.current()).toBe(second)
  expect(length()).toBe("19 ft")
  expect(stores.workbooks.records.has(second)).toBe(true)
})

test("the only one is deleted: the demonstration is there, and nothing is stored", async () => {
  const { stores, open } = browser()
  const { session, length, close } = await open()
  length("18 ft")
  await session.remove(session.current())
  expect(length()).not.toBe("18 ft")
  expect(session.workbooks()).toEqual([])
  await close()
  expect(stores.workbooks.records.size).toBe(0)
})

test("a workbook that cannot be read is never written over, and the page says that it is there", async () => {
  const spoiled = { title: "Spoiled", document: { format: "pegbook-workbook", version: 999 } }
  const { stores, open } = browser(new Map([["old", spoiled]]))
  const { session, length, close } = await open()
  expect(session.notice()?.text).toContain("“Spoiled” could not be opened")
  length("18 ft")
  await close()
  await session.open("old")
  expect(session.current()).not.toBe("old")
  expect(stores.workbooks.records.get("old")).toEqual(spoiled)
  expect(stores.workbooks.records.size).toBe(2)
})

test("word of another tab's workbook: the list is read again; of the open one: it is said", async () => {
  const { stores, open, hear, told } = browser()
  const { session, length, close } = await open()
  length("18 ft")
  await close()
  expect(told).toEqual([{ saved: session.current() }])
  hear({ saved: session.current() })
  expect(session.notice()?.stays).toBe(true)

  session.dismiss()
  const { book } = openBook(demo())
  stores.workbooks.records.set("theirs", { title: "Theirs", document: book.document() })
  hear({ saved: "theirs" })
  await new Promise((resolve) => setTimeout(resolve))
  expect(session.notice()).toBeUndefined()
  expect(session.workbooks().map(({ title }) => title)).toContain("Theirs")
})

test("where nothing may be kept, several workbooks last as long as the page", async () => {
  const { stores, open } = browser()
  stores.workbooks.all = () => Promise.reject(named("SecurityError"))
  stores.workbooks.refuse = named("SecurityError")
  const { session, length } = await open()
  expect(session.kept()).toEqual({ kind: "refused", refusal: { why: "denied" } })
  length("18 ft")
  const first = session.current()
  await session.start(demo().id)
  expect(length()).not.toBe("18 ft")
  await session.open(first)
  expect(length()).toBe("18 ft")
})

/** Two tabs on one workbook, of 18 ft. */
async function twoTabs() {
  const both = browser()
  const { stores, open } = both
  const first = await open()
  first.length("18 ft")
  await first.close()
  const second = await open()
  expect(second.session.current()).toBe(first.session.current())
  const id = first.session.current()
  const stored = (which = id) =>
    (stores.workbooks.records.get(which) as { document: { scenarios: { typed: object }[] } } | undefined)
      ?.document.scenarios[0]?.typed
  return { ...both, first, second, id, stored }
}

test("the second tab to save writes nothing over the first, and keeps its own as a copy", async () => {
  const { stores, first, second, id, stored } = await twoTabs()
  first.length("19 ft")
  await first.close()
  second.length("17 ft")
  await second.close()
  expect(stored()).toEqual({ platform_length: "19 ft" })
  expect(second.session.kept()).toEqual({ kind: "refused", refusal: { why: "overtaken" } })

  await second.choose(en.kept.keepCopy)
  expect(second.length()).toBe("17 ft")
  expect(second.session.kept()).toEqual({ kind: "saved" })
  expect(second.session.current()).not.toBe(id)
  expect(stored(second.session.current())).toEqual({ platform_length: "17 ft" })
  expect(stored()).toEqual({ platform_length: "19 ft" })
  expect(second.session.workbooks()).toHaveLength(2)
  expect(stores.workbooks.records.size).toBe(2)

  // Each goes on with its own.
  first.length("20 ft")
  await first.close()
  expect(first.session.kept()).toEqual({ kind: "saved" })
})

test("the second tab takes what the first saved; its own comes back as a copy when that is undone", async () => {
  const { first, second, id, stored } = await twoTabs()
  first.length("19 ft")
  await first.close()
  second.length("17 ft")
  await second.close()
  await second.choose(en.kept.takeOther)
  expect(second.length()).toBe("19 ft")
  expect(second.session.current()).toBe(id)

  second.session.notice()?.undo?.()
  await second.session.open("none")
  expect(second.length()).toBe("17 ft")
  expect(stored()).toEqual({ platform_length: "19 ft" })

  await second.session.open(id)
  second.length("21 ft")
  await second.close()
  expect(stored()).toEqual({ platform_length: "21 ft" })
})

const ADDED = "2024-05-06T07:00:00.000Z"
const photoOf = (workbook: string, id = "a") => ({
  id,
  workbook,
  stage: "mark-out",
  added: ADDED,
  picture: new Blob(["x"], { type: "image/jpeg" }),
})

test("the copy that goes on beside the other tab's has its photos too, however it came to be", async () => {
  for (const way of ["chosen", "undone", "left"] as const) {
    const { first, second, id, stores } = await twoTabs()
    await stores.photos.put(photoOf(id))
    first.length("19 ft")
    await first.close()
    second.length("17 ft")
    await second.close()
    if (way === "chosen") await second.choose(en.kept.keepCopy)
    if (way === "left") await second.session.saveAll()
    if (way === "undone") {
      await second.choose(en.kept.takeOther)
      second.session.notice()?.undo?.()
      await second.session.open("none")
    }
    const copy = second.session.current()
    expect(copy, way).not.toBe(id)
    expect((await second.session.photos.of(copy, "mark-out")).length, way).toBe(1)
    expect((await second.session.photos.all(id)).length, way).toBe(1)
    expect(second.session.photosCame(), way).toBe(1)
  }
})

test("a copy whose photos the browser will not copy says so", async () => {
  const { first, second, id, stores } = await twoTabs()
  await stores.photos.put(photoOf(id))
  first.length("19 ft")
  await first.close()
  second.length("17 ft")
  await second.close()
  stores.photos.refuse = named("QuotaExceededError")
  await second.choose(en.kept.keepCopy)
  expect(second.session.notice()?.text).toBe(en.kept.copyWithoutPhotos(second.session.title(), en.kept.full))
})

test("a workbook whose photos cannot be deleted stays, and says so, until that goes or it is deleted alone", async () => {
  for (const way of [en.workbooks.tryAgain, en.workbooks.removeAlone]) {
    const { stores, open } = browser()
    const { session, length, close, choose } = await open()
    length("18 ft")
    await close()
    const id = session.current()
    const title = session.title()
    await stores.photos.put(photoOf(id))
    stores.photos.refuse = named("UnknownError")
    await session.remove(id)
    expect(session.notice()?.text).toBe(en.workbooks.photosStay(title))
    expect(stores.workbooks.records.has(id)).toBe(true)
    expect(length()).toBe("18 ft")

    if (way === en.workbooks.tryAgain) stores.photos.refuse = undefined
    await choose(way)
    expect(stores.workbooks.records.has(id)).toBe(false)
    expect(session.notice()?.text).toBe(en.workbooks.removed(title))
    expect((await stores.photos.all(id)).length).toBe(way === en.workbooks.tryAgain ? 0 : 1)
    session.notice()?.undo?.()
    await session.open("none")
    stores.photos.refuse = undefined
    expect(length()).toBe("18 ft")
    expect((await stores.photos.all(id)).length).toBe(1)
  }
})

test("a file of more photos than one holds says which limit it met", async () => {
  const { stores, open } = browser()
  const { session } = await open()
  for (let number = 1; number <= 502; number++) {
    await stores.photos.put(photoOf(session.current(), String(number)))
  }
  await session.file()
  expect(session.notice()?.text).toBe(en.files.photosTooMany(2, 500))
})

test("a workbook that is larger than what is opened is told of when it goes to a file", async () => {
  const { open } = browser()
  const { session, sheet } = await open()
  const text = "x".repeat(490)
  const price = { item: text, unit: "each", price: "1", supplier: text }
  expect(sheet().editTable("prices", new Array(900).fill(price)).problems).toEqual([])
  expect(await session.file()).toBeDefined()
  expect(session.notice()).toBeUndefined()
  for (let copy = 1; copy <= 15; copy++) sheet().saveCopy(`Copy ${copy}`)

  const file = (await session.file()) ?? expect.fail("no file")
  const bytes = new Blob([file.text]).size
  expect(session.notice()).toEqual({ text: en.files.tooLargeToOpen(bytes, 20_000_000), stays: true })
  session.dismiss()
  expect(await session.openFile(chosen(file.text, file.name, bytes))).toBe(false)
  expect(session.notice()?.text).toContain(en.files.tooLarge(bytes, 20_000_000))
})

test("a page that goes away before the choice was made, or for another workbook, keeps its own as a copy", async () => {
  for (const leave of ["close", "start"] as const) {
    const { first, second, id, stored, hear, stores } = await twoTabs()
    first.length("19 ft")
    await first.close()
    hear({ saved: id })
    second.length("17 ft")
    await (leave === "close" ? second.close() : second.session.start(demo().id))
    expect(stored()).toEqual({ platform_length: "19 ft" })
    const others = [...stores.workbooks.records.keys()].filter((one) => one !== id)
    expect(others.map((one) => stored(one))).toContainEqual({ platform_length: "17 ft" })
  }
})

test("a tab in which nothing was typed since makes no copy of its own", async () => {
  const { first, second, id, hear, stores } = await twoTabs()
  first.length("19 ft")
  await first.close()
  hear({ saved: id })
  await second.close()
  expect(stores.workbooks.records.size).toBe(1)
})

test("deleted in another tab, it is still whole here, and the next change keeps it again", async () => {
  const { first, second, id, hear, stored } = await twoTabs()
  await first.session.remove(id)
  hear({ removed: id })
  expect(second.session.notice()?.text).toBe(en.kept.removedElsewhere)
  expect(stored()).toBeUndefined()
  second.length("17 ft")
  await second.close()
  expect(stored()).toEqual({ platform_length: "17 ft" })
})

test("what the page holds is saved again after the browser threw everything away", async () => {
  const { stores, open, clear } = browser()
  const { session, length, close } = await open()
  length("18 ft")
  await session.start(demo().id)
  length("19 ft")
  await close()
  clear()
  await session.open("none")
  expect(session.notice()?.text).toBe(en.kept.savedAgain(2))
  await close()
  expect(session.kept()).toEqual({ kind: "saved" })
  expect(stores.workbooks.records.size).toBe(2)
  expect((await open()).length()).toBe("19 ft")
})

/** A file as the browser hands it over. */
function chosen(text: string, name = "chosen.json", size = text.length) {
  return { name, size, text: async () => text }
}

test("a workbook saved to a file opens as one of its own, under its title", async () => {
  const { stores, open } = browser()
  const { session, length } = await open()
  length("18 ft")
  await session.rename(session.current(), "Behind the house / north")
  const file = (await session.file()) ?? expect.fail("no file")
  expect(file.name).toBe("Behind-the-house-north.json")

  length("12 ft")
  expect(await session.openFile(chosen(file.text))).toBe(true)
  expect(length()).toBe("18 ft")
  expect(session.title()).toBe("Behind the house / north 2")
  expect(stores.workbooks.records.size).toBe(2)
  expect(JSON.parse((await session.file())?.text ?? "")).toEqual({
    ...JSON.parse(file.text),
    title: "Behind the house / north 2",
  })
})

test.each([
  ["not JSON", chosen("junk"), en.files.notJson],
  ["cut off", chosen('{"format":"pegbook-workbook","version":1,"scen'), en.files.notJson],
  ["too large", chosen("", "big.json", 50_000_000), "It is 50 MB large"],
  ["of a later version", chosen('{"format":"pegbook-workbook","version":99}'), "version 99"],
  ["of something else", chosen("[1,2,3]"), "does not hold one object"],
  [
    "of a template that is not here",
    chosen(JSON.stringify({ ...openBook(demo()).book.document(), template: "moon-base" })),
    "moon-base",
  ],
  ["gone", { ...chosen(""), text: () => Promise.reject(named("NotReadableError")) }, en.files.unreachable],
])("a file that is %s is refused in words, and the open workbook is untouched", async (_, file, words) => {
  const { stores, open } = browser()
  const { session, length, close } = await open()
  length("18 ft")
  const id = session.current()
  expect(await session.openFile(file)).toBe(false)
  expect(session.notice()?.text).toContain(words)
  expect(session.notice()?.text).toContain(file.name)
  expect(session.current()).toBe(id)
  expect(length()).toBe("18 ft")
  await close()
  expect(stores.workbooks.records.size).toBe(1)
})

test("another language is kept, everything is saved, and only then is the page loaded anew", async () => {
  const { open, reloads } = browser()
  const first = await open()
  first.length("19 ft")
  await first.session.speakIn("fr")
  expect(reloads).toEqual(["fr"])
  const second = await open()
  expect(second.session.preferences().language).toBe("fr")
  expect(second.length()).toBe("19 ft")
})

test("photos go with a workbook: into its file, out of it again, and away with it until that is undone", async () => {
  const here = browser()
  const { session, length } = await here.open()
  length("18 ft")
  const frame = [0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0, 9, 0, 16, 1, 1, 0x11, 0]
  const picture = new Blob([Uint8Array.from(frame)], { type: "image/jpeg" })
  await here.stores.photos.put({ ...photoOf(session.current()), picture })
  const { text } = (await session.file()) ?? expect.fail("no file")
  const original = session.current()

  await session.openFile({ name: "x.json", size: text.length, text: async () => text })
  const copy = session.current()
  expect(copy).not.toBe(original)
  const [taken] = await session.photos.of(copy, "mark-out")
  expect(taken?.added).toBe(ADDED)
  expect(session.sheet()?.document()).not.toHaveProperty("photos")

  await session.remove(copy)
  expect(await session.photos.all(copy)).toEqual([])
  expect((await session.photos.all(original)).length).toBe(1)
  session.notice()?.undo?.()
  await session.open("none")
  expect((await session.photos.all(copy)).length).toBe(1)

  const harmed = JSON.stringify({ ...JSON.parse(text), photos: [{ stage: "mark-out", picture: "x" }] })
  expect(await session.openFile({ name: "y.json", size: harmed.length, text: async () => harmed })).toBe(true)
  expect(session.notice()?.text).toBe(en.files.photosNotRead(1))
})
