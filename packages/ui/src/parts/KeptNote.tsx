import { useSession } from "../bridge/context.ts"
import type { KeptState } from "../storage/keeper.ts"
import { en } from "../text/en.ts"
import { refusalWords } from "../text/refusal-words.ts"

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
      return en.kept.nothing
    case "saving":
      return en.kept.saving
    case "saved":
      return en.kept.saved
    case "refused":
      return refusalWords(state.refusal)
  }
}
