import { openBook, type Problem } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { loadWorkbook } from "../../src/storage/load.ts"
import { memoryStore, named } from "./fakes.ts"

const NOW = () => new Date("2024-05-06T07:08:09.000Z")
const ASIDE = "workbook 2024-05-06T07:08:09.000Z"
const known = () => undefined

function savedDocument(): unknown {
  const { book } = openBook(demo())
  book.edit("platform_length", "14 ft 6 in")
  return structuredClone(book.document())
}

const load = (kept: unknown, knows: Parameters<typeof loadWorkbook>[2] = known) => {
  const store = memoryStore(kept === undefined ? new Map() : new Map([["workbook", kept]]))
  return { store, loaded: loadWorkbook(store, NOW, knows) }
}

test("nothing kept is nothing", async () => {
  expect(await load(undefined).loaded).toEqual({ kind: "none" })
})

test("a workbook comes back with what was typed", async () => {
  const loaded = await load(savedDocument()).loaded
  if (loaded.kind !== "opened") throw new Error(loaded.kind)
  const { book } = openBook(demo(), { document: loaded.document })
  expect(book.entry("platform_length").typed).toBe("14 ft 6 in")
})

test.each([["text"], [42], [{ format: "something-else" }], [{ format: "pegbook-workbook", version: 999 }]])(
  "%j cannot be read: it is kept as it was under a key of its own, and the first is left alone",
  async (kept) => {
    const { store, loaded } = load(kept)
    expect(await loaded).toMatchObject({ kind: "set_aside", keptUnder: ASIDE })
    expect(store.records.get(ASIDE)).toEqual(kept)
    expect(store.records.get("workbook")).toEqual(kept)
  },
)

test("a workbook of a kind that is not known is set aside as well", async () => {
  const problem: Problem = { code: "file_unknown_template", at: {}, template: "barn", known: [] }
  const { store, loaded } = load(savedDocument(), () => problem)
  expect(await loaded).toEqual({ kind: "set_aside", problem, keptUnder: ASIDE })
  expect(store.records.has(ASIDE)).toBe(true)
})

test("one that can neither be read nor set aside is never written over", async () => {
  const { store, loaded } = load("spoiled")
  store.refuse = named("QuotaExceededError")
  expect(await loaded).toMatchObject({ kind: "stuck" })
  expect(store.records).toEqual(new Map([["workbook", "spoiled"]]))
})

test("a store that refuses to be read is told as refused", async () => {
  const store = { ...memoryStore(), get: () => Promise.reject(named("SecurityError")) }
  expect(await loadWorkbook(store, NOW, known)).toEqual({ kind: "refused", refusal: { why: "denied" } })
})
