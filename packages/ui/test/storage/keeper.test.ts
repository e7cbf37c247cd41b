import { expect, test } from "vitest"
import { createKeeper, type KeptState } from "../../src/storage/keeper.ts"
import { refusalOf } from "../../src/storage/store.ts"
import { handClock, memoryStore, named } from "./fakes.ts"

function keeping() {
  const store = memoryStore()
  const time = handClock()
  const told: KeptState[] = []
  let value = 0
  const keeper = createKeeper(
    () => store.put("workbook", value),
    (state) => told.push(state),
    time.clock,
  )
  const change = (to: number): void => {
    value = to
    keeper.changed()
  }
  return { store, time, told, keeper, change }
}

test("several changes in a row are one write, of the last", async () => {
  const { store, time, told, keeper, change } = keeping()
  change(1)
  change(2)
  change(3)
  expect(store.puts).toEqual([])
  time.pass()
  await keeper.flush()
  expect(store.puts).toEqual([3])
  expect(told.at(-1)).toEqual({ kind: "saved" })
})

test("a flush writes at once, and only what is not written yet", async () => {
  const { store, keeper, change } = keeping()
  change(1)
  await keeper.flush()
  await keeper.flush()
  expect(store.puts).toEqual([1])
})

test("a change while a write is under way is written after it", async () => {
  const { store, keeper, change } = keeping()
  change(1)
  const first = keeper.flush()
  change(2)
  await keeper.flush()
  await first
  expect(store.records.get("workbook")).toBe(2)
})

test("a full store is told, and the next change tries again", async () => {
  const { store, told, keeper, change } = keeping()
  store.refuse = named("QuotaExceededError")
  change(1)
  await keeper.flush()
  expect(told.at(-1)).toEqual({ kind: "refused", refusal: { why: "full" } })
  store.refuse = undefined
  change(2)
  await keeper.flush()
  expect(store.records.get("workbook")).toBe(2)
  expect(told.at(-1)).toEqual({ kind: "saved" })
})

test("after a refusal a flush alone tries again", async () => {
  const { store, keeper, change } = keeping()
  store.refuse = named("UnknownError")
  change(7)
  await keeper.flush()
  store.refuse = undefined
  await keeper.flush()
  expect(store.records.get("workbook")).toBe(7)
})

test("what was dropped is not written any more, and nothing more is told", async () => {
  const { store, time, told, keeper, change } = keeping()
  change(1)
  keeper.drop()
  time.pass()
  await keeper.flush()
  expect(store.puts).toEqual([])
  expect(told).toEqual([{ kind: "saving" }])
})

// The names of exceptions are those of the Web IDL standard's table of DOMException names (from memory).
test.each([
  ["QuotaExceededError", { why: "full" }],
  ["ConstraintError", { why: "overtaken" }],
  ["SecurityError", { why: "denied" }],
  ["InvalidStateError", { why: "denied" }],
  ["DataCloneError", { why: "other", reason: "refused: DataCloneError" }],
])("%s is understood", (name, refusal) => {
  expect(refusalOf(named(name))).toEqual(refusal)
})
