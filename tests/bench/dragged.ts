import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { chromium } from "playwright-core"
import { preview } from "vite"
import { root } from "../files.ts"
import { LAUNCH_ARGS } from "../journeys/launch.ts"

const TIMES = 60
/** The first few also compile the page's code. */
const WARM = 15
/** Pixels from one move to the next: more than a step of the length, so that each one changes what is drawn. */
const MOVE = 9

/** In milliseconds, the middle of many times: a frame in which nothing happens, and those after a move and a release. */
export interface Dragged {
  readonly empty: number
  readonly moved: number
  readonly released: number
}

/**
 * Drags the length's handle in the plan. From the pointer's event to the second frame after it, when the first with the
 * plan as it then is has been painted; as long for a frame in which nothing happens.
 */
export async function timeDragged(executablePath: string): Promise<Dragged> {
  const ui = join(root, "packages", "ui")
  const server = await preview({ root: ui, logLevel: "warn", preview: { port: 4374, host: "127.0.0.1" } })
  const profile = mkdtempSync(join(tmpdir(), "pegbook-profile-"))
  const context = await chromium.launchPersistentContext(profile, { executablePath, args: [...LAUNCH_ARGS] })
  try {
    const page = await context.newPage()
    await page.goto(`${server.resolvedUrls?.local[0] ?? ""}#/drawings`)
    await page.locator('[data-handle="platform_length"]').waitFor()
    // What runs this file wraps named functions in a call of its own, which a page does not have.
    await page.evaluate("globalThis.__name = (named) => named")
    return await page.evaluate(
      async ({ times, warm, move }) => {
        const handle = () => {
          const found = document.querySelector<HTMLElement>('[data-handle="platform_length"]')
          if (found === null) throw new Error("the plan has no handle of the length")
          return found
        }
        const drawn = () =>
          document.querySelector("svg[data-drawn] [data-of='platform_area']")?.getAttribute("d")
        // The pointer is made up, and cannot be caught.
        Element.prototype.setPointerCapture = () => {}
        const frame = () => new Promise(requestAnimationFrame)
        const timed = async (act: () => void) => {
          await frame()
          const start = performance.now()
          act()
          await frame()
          await frame()
          return performance.now() - start
        }
        const middle = (all: readonly number[]) =>
          all.slice(warm).sort((a, b) => a - b)[Math.floor((times - warm) / 2)] ?? Number.NaN
        const send = (kind: string, x: number) =>
          handle().dispatchEvent(
            new PointerEvent(kind, { pointerId: 1, bubbles: true, cancelable: true, clientX: x, clientY: 0 }),
          )
        const empty: number[] = []
        for (let time = 0; time < times; time++) empty.push(await timed(() => {}))

        const moved: number[] = []
        const released: number[] = []
        for (let time = 0; time < times; time++) {
          // There and back, so that the length stays about what it is.
          const by = time % 2 === 0 ? -move : move
          const before = drawn()
          send("pointerdown", 500)
          moved.push(await timed(() => send("pointermove", 500 + by)))
          released.push(await timed(() => send("pointerup", 500 + by)))
          if (drawn() === before) throw new Error("the plan did not follow the handle")
        }
        return { empty: middle(empty), moved: middle(moved), released: middle(released) }
      },
      { times: TIMES, warm: WARM, move: MOVE },
    )
  } finally {
    await context.close()
    await server.close()
    rmSync(profile, { recursive: true, force: true, maxRetries: 3 })
  }
}
