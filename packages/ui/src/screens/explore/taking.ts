import { useSession, useSheet, useWalk } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"

/** Types into a copy of the open scenario, under a title, and shows it. */
export function useTaking(): (title: string, typed: Readonly<Record<string, string>>) => void {
  const [sheet, session, walk] = [useSheet(), useSession(), useWalk()]
  return (title, typed) => {
    if (!sheet.tryChange(title, typed).accepted) return
    session.say(spoken.verdict.tried(sheet.scenario().title))
    walk.show("worksheet")
  }
}
