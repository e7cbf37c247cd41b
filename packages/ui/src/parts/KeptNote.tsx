import { useSession } from "../bridge/context.ts"
import type { KeptState } from "../storage/keeper.ts"
import { refusalWords } from "../text/refusal-words.ts"
import { spoken } from "../text/spoken.ts"

/** Whether the work is kept, in words. */
export function KeptNote() {
  const session = useSession()
  return (
    <span
      class="kept"
      classList={{ "kept-refused": session.kept().kind === "refused" }}
      role="status"
      data-kept={session.kept().kind}
    >
      {keptWords(session.kept())}
    </span>
  )
}

function keptWords(state: KeptState): string {
  switch (state.kind) {
    case "nothing":
      return spoken.kept.nothing
    case "saving":
      return spoken.kept.saving
    case "saved":
      return spoken.kept.saved
    case "refused":
      return refusalWords(state.refusal)
  }
}
