import { mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import lighthouse from "lighthouse"
import { chromium } from "playwright-core"
import { expect, inject, onTestFinished, test } from "vitest"
import { LAUNCH_ARGS } from "./launch.ts"

/** What Lighthouse looks at; speed is not among them, which differs from one machine to the next. */
const CATEGORIES = ["accessibility", "best-practices", "seo"]

/** Some of what it must have looked at for its points to mean anything: a page that stayed empty would get them too. */
const LOOKED_AT = [
  "color-contrast",
  "target-size",
  "html-has-lang",
  "errors-in-console",
  "inspector-issues",
  "third-party-cookies",
  "deprecations",
  "meta-description",
  "document-title",
]

test("Lighthouse gives all points for a narrow touched screen, and the page asks nobody else", async () => {
  const profile = mkdtempSync(join(tmpdir(), "pegbook-profile-"))
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: inject("chromium"),
    args: [...LAUNCH_ARGS, "--remote-debugging-port=0"],
  })
  onTestFinished(async () => {
    await context.close()
    rmSync(profile, { recursive: true, force: true, maxRetries: 3 })
  })
  const [port] = readFileSync(join(profile, "DevToolsActivePort"), "utf8").split("\n")
  const address = inject("address")
  const run = await lighthouse(address, {
    port: Number(port),
    logLevel: "error",
    onlyCategories: CATEGORIES,
    throttlingMethod: "provided",
    disableFullPageScreenshot: true,
    formFactor: "mobile",
    screenEmulation: { mobile: true, width: 360, height: 740, deviceScaleFactor: 2, disabled: false },
  })
  if (run === undefined) throw new Error("Lighthouse gave no report")
  const { lhr, artifacts } = run
  expect(lhr.runtimeError?.message, "it ran").toBeUndefined()

  const lost = Object.values(lhr.categories).flatMap(({ auditRefs }) =>
    auditRefs.flatMap(({ id, weight }) => {
      const { score, title, details } = lhr.audits[id] ?? {}
      return weight > 0 && score !== null && score !== 1
        ? [`${id}: ${title} ${JSON.stringify(details)?.slice(0, 600)}`]
        : []
    }),
  )
  expect(lost).toEqual([])
  const points = Object.values(lhr.categories).map(({ id, score }) => [id, score])
  expect(points).toEqual(CATEGORIES.map((id) => [id, 1]))
  for (const id of LOOKED_AT) expect(lhr.audits[id]?.score, `${id} was looked at`).toBe(1)

  const { origin } = new URL(address)
  const asked = Object.values(artifacts.DevtoolsLog ?? {}).flatMap((entry) =>
    entry.method === "Network.requestWillBeSent" ? [entry.params.request.url] : [],
  )
  expect(asked.length).toBeGreaterThan(20)
  expect(asked.filter((url) => !/^(data|blob|about):/.test(url) && new URL(url).origin !== origin)).toEqual(
    [],
  )
})
