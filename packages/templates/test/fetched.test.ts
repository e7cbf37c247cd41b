import { afterEach, expect, test } from "vitest"
import {
  DEMO,
  demo,
  fetchTemplate,
  OFFERED,
  offer,
  offers,
  QUICK_TEMPLATES,
  speak,
  TEMPLATES,
  template,
} from "../src/index.ts"

afterEach(() => speak("en"))

test("what is fetched is what there is, under the name by which it is offered", async () => {
  expect(OFFERED).toEqual(TEMPLATES.map(({ id }) => id))
  expect(DEMO).toBe(demo().id)
  for (const one of [...TEMPLATES, ...QUICK_TEMPLATES]) {
    expect(await fetchTemplate(one.id)).toBe(one)
    expect(offer(one.id)).toEqual({ id: one.id, title: one.title, says: one.says })
  }
})

test("what is not known is neither offered nor fetched", async () => {
  for (const id of ["moon-base", "", "toString"]) {
    expect(offer(id)).toBeUndefined()
    expect(await fetchTemplate(id)).toBeUndefined()
  }
})

test("both are in the language in force", async () => {
  await speak("fr")
  for (const { id, title } of offers()) {
    expect((await fetchTemplate(id))?.title).toBe(title)
    expect(template(id)?.title).toBe(title)
    expect(title).not.toBe(TEMPLATES.find((one) => one.id === id)?.title)
  }
})
