import type { Unproven } from "@pegbook/engine"
import { type Accessor, createEffect, createSignal, on, onCleanup } from "solid-js"
import type { Answered, Asked } from "../proving/messages.ts"
import type { Clock } from "../storage/keeper.ts"
import type { Sheet } from "./sheet.ts"

/** How the search for a better plan goes: nothing to look for, at work, stopped by the clock, or not to be had here. */
export type ProvingState = "done" | "working" | "out of time" | "failed"

export interface Proving {
  readonly state: Accessor<ProvingState>
}

/** Something that answers one question after another, until it is stopped. */
export interface Prover {
  ask(asked: Asked): void
  stop(): void
}

export type StartProver = (answered: (answer: Answered) => void) => Prover

/** What a prover is at work on. */
interface Asking {
  readonly open: Sheet
  readonly one: Unproven
  readonly key: string
  /** Stops the clock. */
  readonly cancel: () => void
}

/** After the last edit, so that nobody who is typing is raced. */
const SETTLES = 700
const SECONDS = 30
/** The solver minds its own time; this is for one that does not. */
const LAST_SECONDS = 45

/** The prover in a worker of its own, fetched when it is first needed. */
export const startProver: StartProver = (answered) => {
  const worker = new Worker(new URL("../proving/worker.ts", import.meta.url), {
    type: "module",
    name: "prover",
  })
  worker.addEventListener("message", ({ data }: MessageEvent<Answered>) => answered(data))
  worker.addEventListener("error", (event) => {
    event.preventDefault()
    answered({ failed: "the worker could not be started" })
  })
  return {
    ask: (asked) => worker.postMessage(asked),
    stop: () => worker.terminate(),
  }
}

/**
 * Looks for better solutions of the open workbook's solved tables, one at a time, whenever its edits have settled. What
 * an edit has overtaken is stopped; what failed, or ran out of time, is not asked again until something else is asked.
 */
export function createProving(sheet: Accessor<Sheet | undefined>, start: StartProver, clock: Clock): Proving {
  const [state, setState] = createSignal<ProvingState>("done")
  let prover: Prover | undefined
  let asking: Asking | undefined
  const givenUp = new Map<string, ProvingState>()

  function stop(): void {
    asking?.cancel()
    asking = undefined
    prover?.stop()
    prover = undefined
  }

  function giveUp(key: string, why: ProvingState): void {
    stop()
    givenUp.clear()
    givenUp.set(key, why)
    setState(why)
  }

  function ask(open: Sheet, one: Unproven): void {
    const key = keyOf(one)
    try {
      prover ??= start(answered)
    } catch {
      giveUp(key, "failed")
      return
    }
    const cancel = clock.after(LAST_SECONDS * 1000, () => giveUp(key, "out of time"))
    asking = { open, one, key, cancel }
    prover.ask({ prover: one.prover, given: one.given, seconds: SECONDS })
  }

  function answered(answer: Answered): void {
    if (asking === undefined) return
    const { open, one, key, cancel } = asking
    cancel()
    asking = undefined
    if ("failed" in answer) giveUp(key, "failed")
    else open.settle(one.table, one.given, answer.solution)
  }

  createEffect(
    on(
      () => [sheet(), sheet()?.unproven() ?? []] as const,
      ([open, waiting]) => {
        if (asking !== undefined && !waiting.some((one) => keyOf(one) === asking?.key)) stop()
        const next = waiting.find((one) => !givenUp.has(keyOf(one)))
        if (open === undefined || next === undefined) {
          setState(waiting.map((one) => givenUp.get(keyOf(one))).find((why) => why !== undefined) ?? "done")
          return
        }
        setState("working")
        if (asking !== undefined) return
        onCleanup(clock.after(SETTLES, () => ask(open, next)))
      },
    ),
  )
  onCleanup(stop)
  return { state }
}

function keyOf({ table, given }: Unproven): string {
  return `${table} ${JSON.stringify(given)}`
}
