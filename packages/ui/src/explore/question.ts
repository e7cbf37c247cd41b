import { type Accessor, createSignal, onCleanup } from "solid-js"
import { useSheet } from "../bridge/context.ts"
import { ask } from "./ask.ts"
import type { Answer, Question } from "./asked.ts"

export interface OneQuestion {
  readonly isWorking: Accessor<boolean>
  /** Why there is no answer, in words. */
  readonly refusal: Accessor<string | undefined>
  /** In place of the question that is asked, if one is. A refusal is not handed on. */
  put(question: Question, onAnswer: (answer: Answer) => void): void
  refuse(says: string): void
  stop(): void
}

/** One question at a time, for as long as what asks it is there. */
export function createQuestion(): OneQuestion {
  const sheet = useSheet()
  const [isWorking, setWorking] = createSignal(false)
  const [refusal, setRefusal] = createSignal<string>()
  let end = () => {}
  onCleanup(() => end())
  const stop = () => {
    end()
    setWorking(false)
    setRefusal(undefined)
  }
  return {
    isWorking,
    refusal,
    stop,
    refuse(says) {
      stop()
      setRefusal(says)
    },
    put(question, onAnswer) {
      end()
      setRefusal(undefined)
      setWorking(true)
      end = ask(sheet, question, (answer) => {
        if (answer.kind === "refused" || answer.kind === "done") setWorking(false)
        if (answer.kind === "refused") setRefusal(`${answer.says} ${answer.next}`)
        else onAnswer(answer)
      })
    },
  }
}
