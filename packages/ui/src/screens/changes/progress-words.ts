import type { Change } from "@pegbook/engine"
import { spoken } from "../../text/spoken.ts"

/** So much of a note says which it is, in characters. */
const LONGEST = 60

/** What was ticked, noted or found to be here at one step of the work. */
export function progressWords({ from, to }: Change & { readonly of: "progress" }, title: string): string {
  const words: string[] = []
  if ((from?.done ?? false) !== (to?.done ?? false))
    words.push(spoken.changes.ticked(title, to?.done ?? false))
  const [before, after] = [from?.note ?? "", to?.note ?? ""]
  if (before !== after) words.push(spoken.changes.noted(title, shortened(before), shortened(after)))
  const [had, has] = [from?.here ?? [], to?.here ?? []]
  for (const thing of has) if (!had.includes(thing)) words.push(spoken.changes.here(title, thing, true))
  for (const thing of had) if (!has.includes(thing)) words.push(spoken.changes.here(title, thing, false))
  return words.length === 0 ? title : words.join("; ")
}

function shortened(note: string): string {
  if (note === "") return spoken.row.blank
  return note.length <= LONGEST ? `“${note}”` : `“${note.slice(0, LONGEST)}…”`
}
