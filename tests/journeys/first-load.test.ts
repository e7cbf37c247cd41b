import { readFileSync } from "node:fs"
import { join } from "node:path"
import { gzipSync } from "node:zlib"
import { expect, test } from "vitest"
import { root } from "../files.ts"
import { openPegbook } from "./browser.ts"

/** The most that a first visit fetches before its numbers stand, in bytes as a server sends them (gzip). */
const MOST = { program: 300_000, withWorkbook: 440_000 }

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
    ["navigation", "resource"].flatMap((type) =>
      performance.getEntriesByType(type).map(({ name }) => new URL(name).pathname),
    ),
  )
  const sizes = [...new Set(fetched)].map((path) => {
    const file = join(root, "packages/ui/dist", path === "/" ? "index.html" : path)
    return { path, size: gzipSync(readFileSync(file)).length }
  })
  const sum = (some: typeof sizes): number => some.reduce((total, { size }) => total + size, 0)
  const program = sum(sizes.filter(({ path }) => !path.includes("/trade-")))
  const all = sum(sizes)
  console.log(
    `a first visit: program with evaluator ${kilobytes(program)}, workbook ${kilobytes(all - program)}, ${sizes.length} files`,
  )

  // The evaluator and the workbook are among what was counted, and the solver is not.
  expect(program).toBeGreaterThan(100_000)
  expect(all - program).toBeGreaterThan(50_000)
  expect(fetched.filter((path) => /highs|worker/.test(path))).toEqual([])
  expect(program, "the program").toBeLessThan(MOST.program)
  expect(all, "the program with the demonstration workbook").toBeLessThan(MOST.withWorkbook)
})

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`
