import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"

/** The most that a first visit fetches before its numbers stand, in bytes as they come from the server. */
const MOST = 300_000

/** What proves a plan is fetched once the numbers stand, and is not counted. */
function makeNoWorkers(): void {
  class Idle extends EventTarget {
    postMessage(): void {}
    terminate(): void {}
  }
  Object.assign(window, { Worker: Idle })
}

test("a first visit fetches little before its numbers stand", async () => {
  const workbook = await openPegbook({ before: makeNoWorkers })
  expect(await workbook.value("platform_area")).not.toBe("")
  await workbook.page.waitForLoadState("networkidle")
  const fetched = await workbook.page.evaluate(() =>
    [...performance.getEntriesByType("navigation"), ...performance.getEntriesByType("resource")].map(
      (entry) => {
        const { name, encodedBodySize, decodedBodySize } = entry as PerformanceResourceTiming
        return { path: new URL(name).pathname, size: encodedBodySize, whole: decodedBodySize }
      },
    ),
  )
  const once = [...new Map(fetched.map((one) => [one.path, one])).values()]
  const sum = (some: typeof once): number => some.reduce((total, { size }) => total + size, 0)
  const trade = sum(once.filter(({ path }) => path.includes("/trade-")))
  const all = sum(once)
  console.log(
    `a first visit: program with evaluator ${kilobytes(all - trade)}, workbook ${kilobytes(trade)}, together ${kilobytes(all)}, ${once.length} files`,
  )

  // The evaluator and the workbook are among what was counted, compressed, and the solver is not.
  expect(all - trade).toBeGreaterThan(100_000)
  expect(trade).toBeGreaterThan(50_000)
  const texts = once.filter(({ path }) => /\.(?:js|css)$/.test(path))
  expect(sum(texts)).toBeLessThan(0.5 * texts.reduce((total, { whole }) => total + whole, 0))
  expect(fetched.filter(({ path }) => /highs|worker/.test(path))).toEqual([])
  expect(all, "all that a first visit fetches").toBeLessThan(MOST)
})

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`
