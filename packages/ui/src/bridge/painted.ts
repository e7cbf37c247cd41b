/** How long to wait where nothing is painted, as in a tab behind another. */
const UNSEEN = 250

/** Runs after the next frame has been painted. Returns what keeps it from running. */
export type WhenPainted = (work: () => void) => () => void

export const whenPainted: WhenPainted = (work) => {
  let after: ReturnType<typeof setTimeout> | undefined
  const frame = requestAnimationFrame(() => {
    clearTimeout(after)
    after = setTimeout(work)
  })
  after = setTimeout(() => {
    cancelAnimationFrame(frame)
    work()
  }, UNSEEN)
  return () => {
    cancelAnimationFrame(frame)
    clearTimeout(after)
  }
}
