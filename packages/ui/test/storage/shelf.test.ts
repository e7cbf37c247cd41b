import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { createShelf } from "../../src/storage/shelf.ts"
import { refusalOf } from "../../src/storage/store.ts"
import { memoryStore, named } from "./fakes.ts"

const saved = openBook(demo()).book.document()
const document = () => structuredClone(saved)
const at = (day: number) => `2024-05-0${day}T00:00:00.000Z`

function filled() {
  const store = memoryStore(
    new Map<string, unknown>([
      ["first", { title: "First", changed: at(1), document: document() }],
      ["spoiled", { title: "Spoiled", changed: at(2), document: "spoiled", later: "kept" }],
      ["last", { title: "Last", changed: at(3), document: document() }],
    ]),
  )
  const shelf = createShelf(store, () => undefined)
  return { store, shelf, ids: () => shelf.list().map(({ id }) => id) }
}

test("the last changed stands first, also one that cannot be read", async () => {
  const { shelf, ids } = filled()
  await shelf.refresh([])
  expect(ids()).toEqual(["last", "spoiled", "first"])
  shelf.hold("first", { changed: at(4) })
  expect(ids()).toEqual(["first", "last", "spoiled"])
})

test("what another tab stored or took away is taken in, but for what is not saved here", async () => {
  const { store, shelf, ids } = filled()
  await shelf.refresh([])
  shelf.hold("first", { title: "Mine" })
  shelf.hold("new", { changed: at(5), document: document() })
  store.records.set("first", { title: "Theirs", document: document() })
  store.records.delete("last")
  await shelf.refresh(["first", "new"])
  expect(ids()).toEqual(["new", "spoiled", "first"])
  expect(shelf.find("first")?.title).toBe("Mine")
  await shelf.refresh([])
  expect(shelf.find("first")?.title).toBe("Theirs")
  expect(ids()).not.toContain("new")
})

test("what is held is stored as the next revision, and all else stays as it was", async () => {
  const { store, shelf } = filled()
  await shelf.refresh([])
  const before = store.records.get("first") as object
  shelf.hold("first", { title: "By the pond" })
  await shelf.save("first")
  expect(store.records.get("first")).toEqual({ ...before, title: "By the pond", revision: 1 })
  await Promise.all([shelf.save("first"), shelf.save("first")])
  expect(store.records.get("first")).toMatchObject({ revision: 3 })
})

test("of two that hold the same revision the second is refused, as often as it tries, and writes nothing", async () => {
  const { store, shelf } = filled()
  const other = createShelf(store, () => undefined)
  await Promise.all([shelf.refresh([]), other.refresh([])])
  shelf.hold("first", { title: "Mine" })
  other.hold("first", { title: "Theirs" })
  await other.save("first")
  for (const _ of [1, 2]) {
    const refusal = await shelf.save("first").then(() => undefined, refusalOf)
    expect(refusal).toEqual({ why: "overtaken" })
  }
  expect(store.records.get("first")).toMatchObject({ title: "Theirs", revision: 1 })
})

test("a full store costs no revision", async () => {
  const { store, shelf } = filled()
  await shelf.refresh([])
  store.refuse = named("QuotaExceededError")
  await expect(shelf.save("first")).rejects.toThrow()
  store.refuse = undefined
  await shelf.save("first")
  expect(store.records.get("first")).toMatchObject({ revision: 1 })
})

test("what is taken away is gone from the store, and comes back as it was, readable or not", async () => {
  const { store, shelf, ids } = filled()
  await shelf.refresh([])
  for (const id of ["first", "spoiled"]) {
    const before = store.records.get(id)
    const putBack = await shelf.remove(id)
    expect(ids()).not.toContain(id)
    expect(store.records.has(id)).toBe(false)
    await putBack()
    expect(ids()).toContain(id)
    expect(store.records.get(id)).toEqual({ ...(before as object), revision: 1 })
  }
})

test("what the store refuses to take away stays in the list", async () => {
  const { store, shelf, ids } = filled()
  await shelf.refresh([])
  store.refuse = named("UnknownError")
  await expect(shelf.remove("first")).rejects.toThrow()
  expect(ids()).toContain("first")
})

test("where the store refuses to be read, what is held lasts as long as the page", async () => {
  const store = { ...memoryStore(), all: () => Promise.reject(named("SecurityError")) }
  const shelf = createShelf(store, () => undefined)
  await expect(shelf.refresh([])).rejects.toThrow("SecurityError")
  shelf.hold("only", { document: document() })
  await shelf.refresh([]).catch(() => {})
  expect(shelf.find("only")).toBeDefined()
})
