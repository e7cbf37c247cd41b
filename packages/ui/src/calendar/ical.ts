/** A stretch of whole days in a calendar. Dates are `YYYY-MM-DD`; `until` is the day after the last. */
export interface CalendarEvent {
  readonly uid: string
  readonly title: string
  readonly says: string
  readonly from: string
  readonly until: string
}

/** Octets in a line before it is folded (RFC 5545, 3.1). */
const LINE = 75

/**
 * Events as an iCalendar file (RFC 5545): lines end in CRLF, are folded at 75 octets, and texts are escaped.
 * `stamp` is when it was made.
 */
export function iCalendar(events: readonly CalendarEvent[], stamp: Date): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Pegbook//Steps of the work//EN",
    ...events.flatMap(({ uid, title, says, from, until }) => [
      "BEGIN:VEVENT",
      `UID:${escaped(uid)}`,
      `DTSTAMP:${stamp.toISOString().replace(/[-:]|\.\d+/g, "")}`,
      `DTSTART;VALUE=DATE:${from.replaceAll("-", "")}`,
      `DTEND;VALUE=DATE:${until.replaceAll("-", "")}`,
      `SUMMARY:${escaped(title)}`,
      `DESCRIPTION:${escaped(says)}`,
      "END:VEVENT",
    ]),
    "END:VCALENDAR",
  ]
  return lines.map((line) => `${folded(line)}\r\n`).join("")
}

/** A text value (3.3.11). Other control characters have no place in one. */
function escaped(text: string): string {
  return text
    .replace(/\r\n?/g, "\n")
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replaceAll("\n", "\\n")
    .replace(/[^\P{Cc}\t]/gu, "")
}

/** Never inside a character; the space that begins each further line counts. */
function folded(line: string): string {
  const octets = new TextEncoder()
  let out = ""
  let used = 0
  for (const character of line) {
    const size = octets.encode(character).length
    if (used + size > LINE) {
      out += "\r\n "
      used = 1
    }
    out += character
    used += size
  }
  return out
}
