import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { chromium } from "playwright-core"
import { preview } from "vite"
import { root } from "../files.ts"
import { LAUNCH_ARGS } from "../journeys/launch.ts"

const LENGTHS = ["18 ft", "20 ft", "19 ft 4 in", "16 ft"]
const TIMES = 40

/**
 * From the Enter key in the length's field to the second frame after it, when the first with the new numbers has
 * been painted: the middle and the worst, in milliseconds.
 */
export async function timePainted(executablePath: string): Promise<{ middle: number; worst: number }> {
  const ui = join(root, "packages", "ui")
  const server = await preview({ root: ui, logLevel: "warn", preview: { port: 4373, host: "127.0.0.1" } })
  const profile = mkdtempSync(join(tmpdir(), "pegbook-profile-"))
  const context = await chromium.launchPersistentContext(profile, { executablePath, args: [...LAUNCH_ARGS] })
  try {
    const page = await context.newPage()
    await page.goto(server.resolvedUrls?.local[0] ?? "")
    await page.locator('[data-entry="platform_length"] input').waitFor()
    const taken = await page.evaluate(
      async ({ lengths, times }) => {
        const field = document.querySelector<HTMLInputElement>('[data-entry="platform_length"] input')
        const area = document.querySelector('[data-entry="platform_area"] [data-value]')
        if (field === null || area === null) throw new Error("the worksheet has no length or no area")
        const all: number[] = []
        for (let time = 0; time < times; time++) {
          await new Promise(requestAnimationFrame)
          const before = area.textContent
          field.value = lengths[time % lengths.length] ?? ""
          const start = performance.now()
          field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }))
          await new Promise(requestAnimationFrame)
          await new Promise(requestAnimationFrame)
          all.push(performance.now() - start)
          const now = document.querySelector('[data-entry="platform_area"] [data-value]')?.textContent
          if (time > 0 && now === before) throw new Error("the area did not follow the length")
        }
        return all
      },
      { lengths: LENGTHS, times: TIMES },
    )
    // The first few also compile the page's code.
    const settled = taken.slice(10).sort((a, b) => a - b)
    return {
      middle: settled[Math.floor(settled.length / 2)] ?? Number.NaN,
      worst: settled.at(-1) ?? Number.NaN,
    }
  } finally {
    await context.close()
    await server.close()
    rmSync(profile, { recursive: true, force: true, maxRetries: 3 })
  }
}
