import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { chromium } from "playwright-core"
import { preview } from "vite"
import { root } from "../files.ts"
import { LAUNCH_ARGS } from "../journeys/launch.ts"
import { middleOf } from "./median.ts"
import { BEGINS, ENDS, traceWork } from "./thread-work.ts"

const LENGTHS = ["18 ft", "20 ft", "19 ft 4 in", "16 ft"]
const TIMES = 40
/** Long enough for the plans that are looked for after opening. */
const SETTLED = 8_000

/** In milliseconds, the middle of many times. */
export interface Painted {
  /** A frame in which nothing happens, from an event to after its painting. */
  readonly empty: number
  /** As long for an edit: until the rows in sight have been painted with their new numbers. */
  readonly inSight: number
  /** What of that the page itself works, before the browser lays out and paints. */
  readonly working: number
  /** That, and what its thread then works for layout and painting: what has to fit in a frame. */
  readonly untilPainted: number
  /** Until what is out of sight has followed. */
  readonly everything: number
}

/** Types a length and presses Enter, in the worksheet of the demonstration workbook. */
export async function timePainted(executablePath: string): Promise<Painted> {
  const ui = join(root, "packages", "ui")
  const server = await preview({ root: ui, logLevel: "warn", preview: { port: 4373, host: "127.0.0.1" } })
  const profile = mkdtempSync(join(tmpdir(), "pegbook-profile-"))
  const context = await chromium.launchPersistentContext(profile, { executablePath, args: [...LAUNCH_ARGS] })
  try {
    const page = await context.newPage()
    await page.goto(server.resolvedUrls?.local[0] ?? "")
    await page.locator('[data-entry="platform_length"] input').waitFor()
    // As under a person's eyes: the length and the area in sight, and the plans that are looked for meanwhile found.
    await page.locator('[data-entry="platform_length"]').scrollIntoViewIfNeeded()
    await page.waitForTimeout(SETTLED)
    // What runs this file wraps named functions in a call of its own, which a page does not have.
    await page.evaluate("globalThis.__name = (named) => named")
    const taken = await page.evaluate(
      async ({ lengths, times }) => {
        const field = document.querySelector<HTMLInputElement>('[data-entry="platform_length"] input')
        const area = document.querySelector('[data-entry="platform_area"]')
        if (field === null || area === null) throw new Error("the worksheet has no length or no area")
        const shown = () => area.querySelector("[data-value]")?.textContent
        /** After the next frame has been painted: a message is taken up when the frame is done. */
        const painted = () =>
          new Promise<void>((resolve) => {
            requestAnimationFrame(() => {
              const { port1, port2 } = new MessageChannel()
              port1.onmessage = () => resolve()
              port2.postMessage(undefined)
            })
          })
        const followed = async () => {
          while (document.querySelector("main[aria-busy]") !== null) await new Promise(requestAnimationFrame)
        }
        const all: { empty: number; inSight: number; working: number; everything: number }[] = []
        for (let time = 0; time < times; time++) {
          await painted()
          const before = performance.now()
          await painted()
          const empty = performance.now() - before
          const old = shown()
          field.value = lengths[time % lengths.length] ?? ""
          await painted()
          // Asked for first, so that it is told before what waits for the painting begins.
          const inSightPainted = painted()
          const start = performance.now()
          field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }))
          const working = performance.now() - start
          const now = shown()
          await inSightPainted
          const inSight = performance.now() - start
          await followed()
          all.push({ empty, inSight, working, everything: performance.now() - start })
          if (time > 0 && now === old) throw new Error("the area did not follow the length")
        }
        return all
      },
      { lengths: LENGTHS, times: TIMES },
    )
    const traced = await traceWork(context, page, () =>
      page.evaluate(
        async ({ lengths, times, begins, ends }) => {
          const field = document.querySelector<HTMLInputElement>('[data-entry="platform_length"] input')
          for (let time = 0; field !== null && time < times; time++) {
            field.value = lengths[time % lengths.length] ?? ""
            await new Promise((resolve) => setTimeout(resolve, 250))
            performance.mark(begins)
            field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }))
            performance.mark(ends)
            await new Promise((resolve) => setTimeout(resolve, 250))
          }
        },
        { lengths: LENGTHS, times: TIMES, begins: BEGINS, ends: ENDS },
      ),
    )
    // The first few also compile the page's code.
    const middle = (part: keyof (typeof taken)[number]) => middleOf(taken.slice(10).map((one) => one[part]))
    return {
      empty: middle("empty"),
      inSight: middle("inSight"),
      working: middle("working"),
      untilPainted: middleOf(traced),
      everything: middle("everything"),
    }
  } finally {
    await context.close()
    await server.close()
    rmSync(profile, { recursive: true, force: true, maxRetries: 3 })
  }
}
