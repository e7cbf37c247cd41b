import { Worker } from "node:worker_threads"
import type { Book, Solution, Unproven } from "@pegbook/engine"
import { type Answer, type Case, heuristicAnswer } from "../cutting/index.ts"
import { phrases } from "./phrases.ts"

/** What the thread is asked: to solve a case, or to prove a table of a workbook. */
export type Question =
  | { readonly case: Case; readonly seconds: number }
  | { readonly prover: string; readonly given: unknown; readonly seconds: number }

/** What it tells: plans on the way, each no worse than the one before, and then the last word. */
export type Told =
  | { readonly better: Answer }
  | { readonly answer: Answer }
  | { readonly solution: Solution }
  | { readonly failed: string }

/** The solver minds its own time, but not in every loop of it: so long after its time it is ended. */
const GRACE_SECONDS = 1

/** A thread that solves, one question after another. It is started when it is first asked something. */
export class Solving {
  #thread: Worker | undefined

  /** The last word, or `undefined` where the time was up before. */
  ask(question: Question, better: (answer: Answer) => void = () => {}): Promise<Told | undefined> {
    this.#thread ??= new Worker(new URL("./solving-thread.mjs", import.meta.url))
    const thread = this.#thread
    return new Promise((resolve) => {
      const end = (told: Told | undefined): void => {
        clearTimeout(timer)
        thread.off("message", heard).off("error", failed)
        if (told === undefined || "failed" in told) this.stop()
        resolve(told)
      }
      const timer = setTimeout(() => end(undefined), (question.seconds + GRACE_SECONDS) * 1000)
      const heard = (told: Told): void => {
        if ("better" in told) better(told.better)
        else end(told)
      }
      const failed = (error: Error): void => end({ failed: error.message })
      thread.on("message", heard).on("error", failed)
      thread.postMessage(question)
    })
  }

  stop(): void {
    void this.#thread?.terminate()
    this.#thread = undefined
  }
}

/** The best plan of each case, and the proof of it or how far from best it may be, within so many seconds a case. */
export async function solveCases(cases: readonly Case[], seconds: number): Promise<readonly Answer[]> {
  const solving = new Solving()
  const answers: Answer[] = []
  for (const one of cases) answers.push(await solveInTime(one, seconds, solving))
  solving.stop()
  return answers
}

async function solveInTime(one: Case, seconds: number, solving: Solving): Promise<Answer> {
  let best = heuristicAnswer(one)
  if (best.status === "proven" || best.status === "impossible" || seconds === 0) return best
  const told = await solving.ask({ case: one, seconds }, (answer) => {
    best = answer
  })
  if (told !== undefined && "answer" in told) return told.answer
  const why =
    told !== undefined && "failed" in told
      ? `The exact solver could not be used (${told.failed.slice(0, 120)}): this is the best plan before it failed.`
      : `The search was ended after ${seconds} s: this is the best plan that it had.`
  return { ...best, notices: [why, ...best.notices] }
}

/**
 * Puts the best solutions into a workbook's solved tables, in so many seconds for all of them. What could not be
 * searched to the end is said, a sentence each.
 */
export async function settleProofs(book: Book, seconds: number): Promise<readonly string[]> {
  const solving = new Solving()
  const end = Date.now() + seconds * 1000
  const notSettled = new Map<string, string>()
  const next = (): Unproven | undefined => book.unproven().find((one) => !notSettled.has(keyOf(one)))
  for (let one = next(); one !== undefined; one = next()) {
    const left = (end - Date.now()) / 1000
    const told =
      left > 0 ? await solving.ask({ prover: one.prover, given: one.given, seconds: left }) : undefined
    if (told !== undefined && "solution" in told) book.settle(one.table, one.given, told.solution)
    else notSettled.set(keyOf(one), `${one.table}${phrases().colon}${whyNot(told, seconds)}`)
  }
  solving.stop()
  const open = book.unproven().map(keyOf)
  return [...notSettled].filter(([key]) => open.includes(key)).map(([, says]) => says)
}

function whyNot(told: Told | undefined, seconds: number): string {
  if (told !== undefined && "failed" in told) return phrases().solverFailed(told.failed.slice(0, 120))
  return phrases().noBetterPlan(seconds)
}

function keyOf({ table, given }: Unproven): string {
  return `${table} ${JSON.stringify(given)}`
}
