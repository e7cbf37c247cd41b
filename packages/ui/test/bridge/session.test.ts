import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { openSession } from "../../src/bridge/session.ts"
import type { Word } from "../../src/storage/other-tabs.ts"
import { handClock, memoryStore, named } from "../storage/fakes.ts"

/** What one browser keeps, and the sessions opened on it one after the other. */
function browser(workbooks = new Map<string, unknown>()) {
  const stores = { records: memoryStore(), workbooks: memoryStore(workbooks) }
  let minute = 0
  let ids = 0
  const told: Word[] = []
  let hear: (word: Word) => void = () => {}
  const open = async () => {
    const time = handClock()
    const { session, opened } = await openSession(stores, {
      now: () => new Date(Date.UTC(2024, 4, 6, 7, minute++)),
      clock: time.clock,
      languages: ["de-AT"],
      newId: () => `id-${++ids}`,
      tabs: (onWord) => {
        hear = onWord
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
    return { session, sheet, length, close, time }
  }
  return { stores, open, told, hear: (word: Word) => hear(word) }
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
  await session.start(demo())
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
  const starting = session.start(demo())
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
  await session.start(demo())
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

test("word that the open workbook was saved in another tab is passed on; of another one, the list is read again", async () => {
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
  await session.start(demo())
  expect(length()).not.toBe("18 ft")
  await session.open(first)
  expect(length()).toBe("18 ft")
})
