import type { Answer } from "./asked.ts"

/** Hands on what several workers answer, rows of a sweep in their order, however fast each of them is. */
export function createInOrder(workers: number, onAnswer: (answer: Answer) => void) {
  const early = new Map<number, Answer>()
  let next = 0
  let done = 0
  return {
    come(answer: Answer): void {
      if (answer.kind !== "sweep") {
        onAnswer(answer)
        return
      }
      early.set(answer.index, answer)
      for (let ready = early.get(next); ready !== undefined; ready = early.get(next)) {
        early.delete(next++)
        onAnswer(ready)
      }
    },
    /** One worker is done: whether it was the last. */
    isLast: (): boolean => ++done === workers,
  }
}
