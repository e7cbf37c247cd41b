import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import fc from "fast-check"
import ICAL from "ical.js"
import { describe, expect, test } from "vitest"
import { iCalendar } from "../../src/calendar/ical.ts"
import { isDate, orderEvents, stageEvents } from "../../src/calendar/stage-events.ts"

const SEED = 20261125
const STAMP = new Date("2026-11-25T16:05:07.123Z")

/** Read by a parser that others wrote. */
function read(file: string) {
  const calendar = new ICAL.Component(ICAL.parse(file))
  return calendar.getAllSubcomponents("vevent").map((component) => new ICAL.Event(component))
}

describe("an iCalendar file, RFC 5545", () => {
  // RFC 5545, 3.1: lines are no longer than 75 octets, and end in CRLF.
  test(`says what was put in, whatever the text, seed ${SEED}`, () => {
    const text = fc.string({ unit: "grapheme", maxLength: 300 })
    fc.assert(
      fc.property(text, text, (title, says) => {
        const file = iCalendar(
          [{ uid: "a@pegbook.invalid", title, says, from: "2026-04-30", until: "2026-05-02" }],
          STAMP,
        )
        for (const line of file.split("\r\n")) {
          expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75)
          expect(line).not.toMatch(/[\r\n]/)
        }
        const [event] = read(file)
        expect(event?.summary ?? "").toBe(title)
        expect(event?.description ?? "").toBe(says)
        expect(event?.startDate.toString()).toBe("2026-04-30")
        expect(event?.endDate.toString()).toBe("2026-05-02")
      }),
      { numRuns: 300, seed: SEED },
    )
  })

  test("escapes what separates values, and keeps lines of a text", () => {
    const file = iCalendar(
      [{ uid: "b", title: "a;b,c\\d", says: "one\r\ntwo", from: "2026-01-01", until: "2026-01-02" }],
      STAMP,
    )
    expect(file).toContain("SUMMARY:a\\;b\\,c\\\\d\r\n")
    expect(file).toContain("DESCRIPTION:one\\ntwo\r\n")
    expect(file).toContain("DTSTAMP:20261125T160507Z\r\n")
    expect(read(file)[0]?.summary).toBe("a;b,c\\d")
  })
})

test("the steps follow one another, whole days, over the end of a month", () => {
  const { book } = openBook(demo())
  const stages = book.stages()
  const events = stageEvents(stages, "w1", "2026-02-26")
  expect(events).toHaveLength(stages.length)
  expect(events[0]?.from).toBe("2026-02-26")
  for (const [at, event] of events.entries()) {
    const days = (Date.parse(event.until) - Date.parse(event.from)) / 86_400_000
    expect(days, event.title).toBe(stages[at]?.days?.value)
    if (at > 0) expect(event.from).toBe(events[at - 1]?.until)
  }
  const back = read(iCalendar(events, STAMP))
  expect(back.map(({ summary }) => summary)).toEqual(stages.map(({ title }) => title))
  expect(new Set(back.map(({ uid }) => uid)).size).toBe(stages.length)
})

test("what a stage takes is ordered so many days before it begins, over the end of a month", () => {
  const { book } = openBook(demo())
  const stages = book.stages()
  const events = stageEvents(stages, "w1", "2026-03-02")
  const orders = orderEvents(stages, events, 7, (stage) => `Order: ${stage}`)
  const bought = stages.filter(({ needs }) => needs.length > 0)
  expect(orders.map(({ title }) => title)).toEqual(bought.map(({ title }) => `Order: ${title}`))
  // The seventh day before the second of March 2026 is the 23rd of February.
  expect(orders[0]?.from).toBe("2026-02-23")
  expect(orders[0]?.until).toBe("2026-02-24")
  expect(orders[0]?.says).toContain("peg: 12")
  const back = read(iCalendar([...orders, ...events], STAMP))
  expect(new Set(back.map(({ uid }) => uid)).size).toBe(orders.length + events.length)
})

test.each([
  ["2026-02-28", true],
  ["2026-13-01", false],
  ["tomorrow", false],
  ["", false],
])("%j is a date: %s", (text, is) => {
  expect(isDate(text)).toBe(is)
})
