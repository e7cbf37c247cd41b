import { createMemo, onCleanup } from "solid-js"
import { useSession, useSheet } from "../bridge/context.ts"
import { stepWords } from "../screens/changes/step-words.ts"
import { spoken } from "../text/spoken.ts"

/** Takes back the last step, and does it again; also by Ctrl+Z and Ctrl+Shift+Z. */
export function UndoButtons() {
  const sheet = useSheet()
  const session = useSession()
  const last = createMemo(() => sheet.history().findLast((step) => !step.undone))
  const next = createMemo(() => sheet.history().find((step) => step.undone))

  function undo(): void {
    const step = last()
    if (step === undefined) return
    // Told of as things were called while it was done.
    const words = stepWords(step, sheet)
    sheet.undo()
    session.say(spoken.changes.tookBack(words))
  }

  function redo(): void {
    const step = next()
    if (step === undefined) return
    sheet.redo()
    session.say(spoken.changes.didAgain(stepWords(step, sheet)))
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || hasOwnUndo(event.target)) return
    const key = event.key.toLowerCase()
    if (key !== "z" && key !== "y") return
    event.preventDefault()
    if (key === "y" || event.shiftKey) redo()
    else undo()
  }
  document.addEventListener("keydown", onKeyDown)
  onCleanup(() => document.removeEventListener("keydown", onKeyDown))

  return (
    <div class="undo-buttons">
      <button
        type="button"
        class="small undo-button"
        aria-label={spoken.changes.undo}
        title={spoken.changes.undo}
        aria-disabled={last() === undefined}
        onClick={undo}
      >
        <svg viewBox="0 0 20 20" class="mark" aria-hidden="true">
          <path d="M7 3 3 7l4 4M3 7h8a5 5 0 0 1 0 10H6" />
        </svg>
      </button>
      <button
        type="button"
        class="small undo-button"
        aria-label={spoken.changes.redo}
        title={spoken.changes.redo}
        aria-disabled={next() === undefined}
        onClick={redo}
      >
        <svg viewBox="0 0 20 20" class="mark" aria-hidden="true">
          <path d="m13 3 4 4-4 4M17 7H9a5 5 0 0 0 0 10h5" />
        </svg>
      </button>
    </div>
  )
}

/** A field in which something is typed that is not in force yet: its own undo comes first. */
function hasOwnUndo(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true
  if (!(target instanceof HTMLInputElement) || target.type !== "text") return false
  return target.value !== target.dataset.value
}
