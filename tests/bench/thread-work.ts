import type { BrowserContext, Page } from "playwright-core"

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  /** Microseconds. */
  readonly ts: number
  readonly dur?: number
}

/** What the page calls around what is to be timed. */
export const BEGINS = "timed work begins"
export const ENDS = "timed work ends"

/**
 * How long the page's one thread works for something: its own code between the marks, and then the browser's for styles,
 * layout and painting in the frame after it. What waits in between for a frame to come is not work. Milliseconds, one
 * for each pair of marks.
 *
 * @param run makes the marks {@link BEGINS} and {@link ENDS} in the page, some time apart
 */
export async function traceWork(
  context: BrowserContext,
  page: Page,
  run: () => Promise<void>,
): Promise<readonly number[]> {
  const devtools = await context.newCDPSession(page)
  const events: TraceEvent[] = []
  devtools.on("Tracing.dataCollected", ({ value }) => events.push(...(value as unknown as TraceEvent[])))
  await devtools.send("Tracing.start", { traceConfig: { includedCategories: ["blink.user_timing", "cc"] } })
  await run()
  const complete = new Promise<void>((resolve) => devtools.once("Tracing.tracingComplete", () => resolve()))
  await devtools.send("Tracing.end")
  await complete
  await devtools.detach()
  const inOrder = events.toSorted((a, b) => a.ts - b.ts)
  return inOrder
    .filter(({ name }) => name === BEGINS)
    .map((begin) => {
      const isLater = ({ pid, tid, ts }: TraceEvent) =>
        pid === begin.pid && tid === begin.tid && ts >= begin.ts
      const end = inOrder.find((event) => event.name === ENDS && isLater(event))
      const frame = inOrder.find(
        (event) => event.name === "ProxyMain::BeginMainFrame" && isLater(event) && event.ts >= (end?.ts ?? 0),
      )
      if (end === undefined || frame?.dur === undefined) throw new Error("no frame was traced after an edit")
      return (end.ts - begin.ts + frame.dur) / 1_000
    })
}
