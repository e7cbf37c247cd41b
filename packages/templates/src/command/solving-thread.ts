// Runs in a thread of its own: whatever it is at, it can be ended when its time is up.

import { parentPort } from "node:worker_threads"
import { type Answer, prove, solveCase } from "../cutting/index.ts"
import type { Question, Told } from "./solving.ts"

const tell = (told: Told): void => parentPort?.postMessage(told)

parentPort?.on("message", (question: Question) => {
  answer(question).then(tell, (reason: unknown) =>
    tell({ failed: reason instanceof Error ? reason.message : String(reason) }),
  )
})

async function answer(question: Question): Promise<Told> {
  const deadline = question.seconds
  if ("prover" in question) return { solution: await prove(question.prover, question.given, { deadline }) }
  const better = (answer: Answer): void => tell({ better: answer })
  return { answer: await solveCase(question.case, { deadline, better }) }
}
