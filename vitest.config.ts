import { join } from "node:path"
import { defineConfig } from "vitest/config"
import { BaseSequencer, type TestSpecification } from "vitest/node"

/** The laws of the templates first: a file of minutes that starts last leaves the other cores idle. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isLong = (file: TestSpecification) => file.moduleId.includes("/test/laws/")
    const sorted = await super.sort(files)
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))]
  }
}

const JOURNEYS = "tests/journeys/**/*.test.ts"
/** What follows changes as in a page. In Node the library of signals has none otherwise: there it makes pages as text. */
const SIGNALS = "packages/ui/test/signals/**/*.test.ts"

const SOLID_OF_PAGES = join(import.meta.dirname, "packages/ui/node_modules/solid-js/dist/solid.js")

export default defineConfig({
  test: {
    maxWorkers: "100%",
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          name: "unit",
          environment: "node",
          // The files share their modules: a third of the time went into loading the same ones again for each file.
          isolate: false,
          include: ["packages/*/test/**/*.test.ts", "tests/**/*.test.ts"],
          exclude: ["**/node_modules/**", JOURNEYS, SIGNALS],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        resolve: { alias: [{ find: /^solid-js$/, replacement: SOLID_OF_PAGES }] },
        test: { name: "signals", environment: "node", include: [SIGNALS], testTimeout: 60_000 },
      },
      {
        test: {
          name: "journeys",
          environment: "node",
          include: [JOURNEYS],
          globalSetup: ["tests/journeys/serve.mjs"],
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
