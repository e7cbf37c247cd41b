import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { openBook } from "@pegbook/engine"
import { TEMPLATES } from "@pegbook/templates"
import { chromium } from "playwright-core"
import { preview } from "vite"
import { root } from "../files.ts"
import { LAUNCH_ARGS } from "../journeys/launch.ts"

const TIMES = 40
/** The first few also compile the page's code. */
const WARM = 10
/** Pixels from one move to the next: more than a step of the length, so that each one changes what is drawn. */
const MOVE = 9

/**
 * In milliseconds, the middle of many times: a frame in which nothing happens, one after which the plan stands there anew while no
 * number moves, and those after a move and a release.
 */
export interface Dragged {
  /** The workbook with the most values. */
  readonly title: string
  readonly values: number
  readonly empty: number
  readonly redrawn: number
  readonly moved: number
  readonly released: number
}

function largest(): { readonly title: string; readonly values: number } {
  const sizes = TEMPLATES.map((definition) => {
    const { book } = openBook(definition)
    const valuesOf = (name: string) => book.entry(name).readings?.length ?? 1
    return { title: definition.title, values: book.names().reduce((sum, name) => sum + valuesOf(name), 0) }
  })
  const [most] = sizes.sort((a, b) => b.values - a.values)
  if (most === undefined) throw new Error("there are no templates")
  return most
}

/**
 * Drags the length's handle in the plan of the largest workbook. From the pointer's event to the second frame after it, when
 * the first with the plan as it then is has been painted; as long for a frame in which nothing happens.
 */
export async function timeDragged(executablePath: string): Promise<Dragged> {
  const { title, values } = largest()
  const ui = join(root, "packages", "ui")
  const server = await preview({ root: ui, logLevel: "warn", preview: { port: 4374, host: "127.0.0.1" } })
  const profile = mkdtempSync(join(tmpdir(), "pegbook-profile-"))
  const context = await chromium.launchPersistentContext(profile, { executablePath, args: [...LAUNCH_ARGS] })
  try {
    const page = await context.newPage()
    await page.goto(`${server.resolvedUrls?.local[0] ?? ""}#/start`)
    await page.getByRole("button", { name: `Start this one: ${title}`, exact: true }).click()
    await page.getByRole("heading", { level: 1, name: title }).waitFor()
    await page.evaluate(() => {
      location.hash = "#/drawings"
    })
    await page.locator('[data-handle="platform_length"]').waitFor()
    // What runs this file wraps named functions in a call of its own, which a page does not have.
    await page.evaluate("globalThis.__name = (named) => named")
    const times = await page.evaluate(
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

        // The plan alone: all its shapes are worked out and made anew, as after a move, from values that are known.
        const show = (id: string) => () =>
          document.querySelector<HTMLElement>(`[data-drawing="${id}"]`)?.click()
        const redrawn: number[] = []
        for (let time = 0; time < times; time++) {
          await timed(show("section-along"))
          if (document.querySelector('[data-drawn="plan"]') !== null) throw new Error("the plan did not go")
          redrawn.push(await timed(show("plan")))
          if (document.querySelector('[data-drawn="plan"] [data-of="platform_area"]') === null)
            throw new Error("the plan is not drawn")
        }

        const moved: number[] = []
        const released: number[] = []
        for (let time = 0; time < times; time++) {
          // There and back, so that the length stays about what it is.
          const by = time % 2 === 0 ? -move : move
          const before = drawn()
          send("pointerdown", 500)
          moved.push(await timed(() => send("pointermove", 500 + by)))
          if (drawn() === before) throw new Error("the plan did not follow the handle")
          released.push(await timed(() => send("pointerup", 500 + by)))
        }
        return {
          empty: middle(empty),
          redrawn: middle(redrawn),
          moved: middle(moved),
          released: middle(released),
        }
      },
      { times: TIMES, warm: WARM, move: MOVE },
    )
    return { title, values, ...times }
  } finally {
    await context.close()
    await server.close()
    rmSync(profile, { recursive: true, force: true, maxRetries: 3 })
  }
}
