import { languageInForce } from "@pegbook/engine"

/** A day as a person writes it: "25 November 2026". */
export function printDay(day: Date): string {
  return day.toLocaleDateString(languageInForce().tag, { dateStyle: "long" })
}

/** A day and the time of it. */
export function printMoment(moment: Date): string {
  return moment.toLocaleString(languageInForce().tag, { dateStyle: "medium", timeStyle: "short" })
}
