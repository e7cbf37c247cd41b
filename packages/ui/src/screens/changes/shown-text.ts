import { shownAs } from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"
import { withoutRow } from "../../bridge/walk.ts"
import { spoken } from "../../text/spoken.ts"

/** A text that was kept under a name, as it is read. */
export function shownText(text: string, name: string, named: Pick<Sheet, "has" | "entry">): string {
  if (text === "") return spoken.row.blank
  const entry = withoutRow(name)
  if (!named.has(entry)) return text
  const { measure, shape } = named.entry(entry)
  return shownAs(text, measure, shape === "list")
}
