// `npm test`: set up, then lint, types, every test in Node and every journey in a browser.
// The last line counts them all; lint and types count as one test each.
import { spawnSync } from "node:child_process"
import { mkdtempSync, readFileSync, rmSync } from "node:fs"
import { createRequire } from "node:module"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { findOrInstallChromium, HOW_TO_GET_ONE } from "./chromium.mjs"
import { root, setUp } from "./setup.mjs"

setUp()

const require = createRequire(import.meta.url)

/** The script of a package's command, so that it runs on this Node and needs no shell. */
function script(name, command) {
  const manifest = require.resolve(`${name}/package.json`)
  return join(dirname(manifest), JSON.parse(readFileSync(manifest, "utf8")).bin[command])
}

function run(title, path, args, env = {}) {
  console.log(`\n── ${title}`)
  const { status } = spawnSync(process.execPath, [path, ...args], {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, ...env },
  })
  return status === 0
}

/**
 * Counts what vitest's JSON report tells of. A file that could not be loaded has no tests and is one failure.
 * @returns {{ passed: number, failed: number }}
 */
function count(file, succeeded) {
  let report
  try {
    report = JSON.parse(readFileSync(file, "utf8"))
  } catch {
    return { passed: 0, failed: 1 }
  }
  const unloaded = report.testResults.filter(
    (result) =>
      result.status === "failed" && !result.assertionResults.some((test) => test.status === "failed"),
  ).length
  const failed = report.numFailedTests + unloaded
  // An error outside any test fails the run without failing a test.
  return { passed: report.numPassedTests, failed: failed === 0 && !succeeded ? 1 : failed }
}

const total = { passed: 0, failed: 0 }
const tally = (ok) => {
  if (ok) total.passed += 1
  else total.failed += 1
}

tally(run("lint", script("@biomejs/biome", "biome"), ["check", "."]))
tally(run("types", script("typescript", "tsc"), ["--noEmit"]))

const chromium = findOrInstallChromium()
if (!chromium) console.error(`pegbook: ${HOW_TO_GET_ONE}`)
const built = run("build", script("vite", "vite"), ["build", "packages/ui", "--logLevel", "error"])
// Journeys that cannot start are a failure, never left out in silence.
const journeys = built && chromium !== undefined
if (!journeys) total.failed += 1

const folder = mkdtempSync(join(tmpdir(), "pegbook-test-"))
const report = join(folder, "report.json")
const projects = journeys ? ["unit", "signals", "journeys"] : ["unit", "signals"]
const succeeded = run(
  "tests",
  script("vitest", "vitest"),
  [
    "run",
    ...projects.flatMap((project) => ["--project", project]),
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
  ],
  { PEGBOOK_CHROMIUM: chromium ?? "" },
)
const tests = count(report, succeeded)
rmSync(folder, { recursive: true, force: true })

total.passed += tests.passed
total.failed += tests.failed
console.log(`\n${total.passed} passed, ${total.failed} failed`)
process.exitCode = total.failed > 0 || tests.passed === 0 ? 1 : 0
