import { defineConfig } from "vitest/config"

const JOURNEYS = "tests/journeys/**/*.test.ts"

export default defineConfig({
  test: {
    // All cores: the laws of the templates are long, and there is one file of them for each.
    maxWorkers: "100%",
    projects: [
      {
        test: {
          name: "unit",
          environment: "node",
          include: ["packages/*/test/**/*.test.ts", "tests/**/*.test.ts"],
          exclude: ["**/node_modules/**", JOURNEYS],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: "journeys",
          environment: "node",
          include: [JOURNEYS],
          globalSetup: ["tests/journeys/serve.mjs"],
          // One browser at a time: two would fight over two cores and make each other late.
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
