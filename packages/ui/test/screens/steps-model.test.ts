import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { mirror } from "../../src/bridge/sheet.ts"
import { doneCount, nextStage, wantedFor, withHere } from "../../src/screens/steps/steps-model.ts"

const sheet = mirror(openBook(demo()).book)

test("the next step is the first that is not ticked, even when a later one is", () => {
  const stages = sheet.stages()
  expect(nextStage(stages, {})?.id).toBe("mark-out")
  expect(nextStage(stages, { survey: { done: true } })?.id).toBe("mark-out")
  expect(nextStage(stages, { "mark-out": { done: true }, survey: { done: true } })?.id).toBe("dig")
  const all = Object.fromEntries(stages.map(({ id }) => [id, { done: true }]))
  expect(nextStage(stages, all)).toBeUndefined()
  // What is kept of a stage that the template no longer has does not count.
  expect(doneCount(stages, { ...all, gone: { done: true } })).toBe(stages.length)
})

test("what is wanted for a step: its things with their amounts, then its tools", () => {
  const [stage] = sheet.stages()
  if (stage === undefined) throw new Error("the demonstration has no stages")
  sheet.note(stage.id, { here: [...withHere(sheet.progress(), stage.id, "peg", true)] })
  const wanted = wantedFor(stage, sheet.progress())
  expect(wanted.map(({ thing, here }) => [thing, here])).toEqual([
    ["peg", true],
    ["roll of string", false],
    ["can of marking paint", false],
    ["two long tapes", false],
    ["hammer", false],
    ["the set-out sheet", false],
  ])
  expect(wanted[0]?.need?.amounts).toEqual(["12"])
  expect(withHere(sheet.progress(), stage.id, "peg", false)).toEqual([])
})
