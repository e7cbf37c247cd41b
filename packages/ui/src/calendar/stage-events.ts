import type { StageView } from "@pegbook/engine"
import type { CalendarEvent } from "./ical.ts"

const DAY = 86_400_000

/** A date some days on, both as `YYYY-MM-DD`. */
function later(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY).toISOString().slice(0, 10)
}

/** Whether a text is a day of the calendar, as `YYYY-MM-DD`, that a four-digit year can say. */
export function isDate(text: string): boolean {
  return /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(`${text}T00:00:00Z`))
}

/** The stages one after the other from a day on, each for as many days as it takes; waits and weather are not known. */
export function stageEvents(
  stages: readonly StageView[],
  workbook: string,
  start: string,
): readonly CalendarEvent[] {
  let from = start
  return stages.map(({ id, title, says, hold, waits, days }) => {
    const until = later(from, Math.max(1, Number(days?.value ?? 1)))
    const event = {
      uid: `${workbook}-${id}@pegbook.invalid`,
      title,
      says: [...says, ...(hold === undefined ? [] : [hold]), ...waits].join("\n"),
      from,
      until,
    }
    from = until
    return event
  })
}

/**
 * For each stage that things are bought for, the day to order them by: so many days before it begins. `title` names one;
 * `events` are those of the stages, in the same order.
 */
export function orderEvents(
  stages: readonly StageView[],
  events: readonly CalendarEvent[],
  daysBefore: number,
  title: (stage: string) => string,
): readonly CalendarEvent[] {
  return stages.flatMap(({ title: stage, needs }, at) => {
    const event = events[at]
    if (event === undefined || needs.length === 0) return []
    const from = later(event.from, -daysBefore)
    return [
      {
        uid: `order-${event.uid}`,
        title: title(stage),
        says: needs.map(({ thing, amounts }) => `${thing}: ${amounts.join("; ")}`).join("\n"),
        from,
        until: later(from, 1),
      },
    ]
  })
}
