import { type Accessor, createSignal, onCleanup } from "solid-js"
import { useSession, useSheet, useWalk } from "../../bridge/context.ts"
import { ask } from "../../explore/ask.ts"
import type { Answer, Question } from "../../explore/asked.ts"
import { spoken } from "../../text/spoken.ts"

export interface OneQuestion {
  readonly isWorking: Accessor<boolean>
  /** Why there is no answer, in words. */
  readonly refusal: Accessor<string | undefined>
  /** In place of the question that is asked, if one is. */
  put(question: Question, onAnswer: (answer: Answer) => void): void
  refuse(says: string): void
  stop(): void
}

/** One question at a time, for as long as the form is there. */
export function createQuestion(): OneQuestion {
  const sheet = useSheet()
  const [isWorking, setWorking] = createSignal(false)
  const [refusal, setRefusal] = createSignal<string>()
  let end = () => {}
  onCleanup(() => end())
  const stop = () => {
    end()
    setWorking(false)
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
        if (answer.kind === "refused") setRefusal(`${answer.says} ${answer.next}`)
        if (answer.kind === "refused" || answer.kind === "done") setWorking(false)
        else onAnswer(answer)
      })
    },
  }
}

/** Types into a copy of the open scenario, under a title, and shows it. */
export function useTaking(): (title: string, typed: Readonly<Record<string, string>>) => void {
  const [sheet, session, walk] = [useSheet(), useSession(), useWalk()]
  return (title, typed) => {
    if (!sheet.tryChange(title, typed).accepted) return
    session.say(spoken.verdict.tried(sheet.scenario().title))
    walk.show("worksheet")
  }
}
