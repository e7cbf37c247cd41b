import type { Clock } from "../storage/keeper.ts"
import type { WhenPainted } from "./painted.ts"

/** What tells when to follow with what may wait. */
export interface Later {
  readonly clock: Clock
  readonly whenPainted: WhenPainted
}

const runNow = (work: () => void): (() => void) => {
  work()
  return () => {}
}
/** Nothing waits, where nothing is painted. */
export const AT_ONCE: Later = { clock: { after: (_, work) => runNow(work) }, whenPainted: runNow }
