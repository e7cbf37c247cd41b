import { languageInForce } from "@pegbook/engine"
import type { Sheet } from "../bridge/sheet.ts"
import { spoken } from "../text/spoken.ts"
import type { Answer, AskedIn, Question } from "./asked.ts"

/**
 * Asks about the workbook as it stands now, beside the page. Each part of the answer is handed on as it comes; returns
 * what stops it.
 */
export function ask(sheet: Sheet, question: Question, onAnswer: (answer: Answer) => void): () => void {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" })
  const end = (last: Answer) => {
    worker.terminate()
    onAnswer(last)
  }
  worker.addEventListener("message", ({ data }: MessageEvent<Answer>) => {
    if (data.kind === "done" || data.kind === "refused") end(data)
    else onAnswer(data)
  })
  worker.addEventListener("error", (event) => {
    event.preventDefault()
    end({ kind: "refused", says: spoken.explore.broke, next: spoken.explore.brokeNext })
  })
  // What was done before has no part in it, and may be long.
  const document = { ...sheet.document(), history: { past: [], future: [] } }
  const asked: AskedIn = { language: languageInForce().id, template: sheet.definition.id, document, question }
  worker.postMessage(asked)
  return () => worker.terminate()
}
