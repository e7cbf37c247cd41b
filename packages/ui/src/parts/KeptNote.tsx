import { useSession } from "../bridge/context.ts"
import type { KeptState } from "../storage/keeper.ts"
import { en } from "../text/en.ts"

/** Whether the work is kept, in words. */
export function KeptNote() {
  const session = useSession()
  const refused = () => session.stuck() !== undefined || session.kept().kind === "refused"
  return (
    <span
      class="kept"
      classList={{ "kept-refused": refused() }}
      role="status"
      data-kept={session.kept().kind}
    >
      {session.stuck() ?? keptWords(session.kept())}
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
      if (state.refusal.why === "denied") return en.kept.denied
      if (state.refusal.why === "full") return en.kept.full
      return en.kept.failed(state.refusal.reason)
  }
}
