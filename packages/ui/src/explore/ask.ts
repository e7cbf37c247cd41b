import { languageInForce } from "@pegbook/engine"
import type { Sheet } from "../bridge/sheet.ts"
import { windowClock } from "../storage/keeper.ts"
import { spoken } from "../text/spoken.ts"
import type { Answer, AskedIn, Question } from "./asked.ts"
import { createInOrder } from "./in-order.ts"

/** Each worker holds a workbook of its own. */
const MOST_WORKERS = 4
/** In milliseconds, longer than any part of an answer takes on a slow phone. A worker that was ended from outside tells nobody. */
const SILENCE = 120_000

/**
 * Asks about the workbook as it stands now, beside the page: a sweep by as many workers as there are cores, up to four, any
 * other question by one. Each part of the answer is handed on as it comes, rows of a sweep in their order; returns what stops it.
 */
export function ask(sheet: Sheet, question: Question, onAnswer: (answer: Answer) => void): () => void {
  const of =
    question.kind === "sweep" ? Math.min(MOST_WORKERS, Math.max(1, navigator.hardwareConcurrency)) : 1
  const workers = Array.from(
    { length: of },
    () => new Worker(new URL("./worker.ts", import.meta.url), { type: "module" }),
  )
  let over = false
  let cancel = () => {}
  const stop = () => {
    over = true
    cancel()
    for (const worker of workers) worker.terminate()
  }
  const end = (last: Answer) => {
    if (over) return
    stop()
    onAnswer(last)
  }
  const broke = () => end({ kind: "refused", says: spoken.explore.broke, next: spoken.explore.brokeNext })
  const listen = () => {
    cancel()
    cancel = windowClock.after(SILENCE, broke)
  }
  listen()
  const inOrder = createInOrder(of, onAnswer)
  // What was done before has no part in it, and may be long.
  const document = { ...sheet.document(), history: { past: [], future: [] } }
  for (const [part, worker] of workers.entries()) {
    worker.addEventListener("message", ({ data }: MessageEvent<Answer>) => {
      if (over) return
      listen()
      if (data.kind === "refused") end(data)
      else if (data.kind !== "done") inOrder.come(data)
      else if (inOrder.isLast()) end(data)
      else worker.terminate()
    })
    worker.addEventListener("error", (event) => {
      event.preventDefault()
      broke()
    })
    const asked: AskedIn = {
      language: languageInForce().id,
      template: sheet.definition.id,
      document,
      question,
      share: { part, of },
    }
    worker.postMessage(asked)
  }
  return stop
}
