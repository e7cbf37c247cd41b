import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { expect, inject, onTestFinished, test } from "vitest"
import { root } from "../files.ts"
import { openPegbook } from "./browser.ts"
import { serveFolder } from "./serve-folder.ts"
import type { WorkbookPage } from "./workbook-page.ts"

/** Waits until the page can do without a network. */
async function readyForOffline({ page }: WorkbookPage): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (navigator.serviceWorker.controller !== null) return
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener("controllerchange", resolve, { once: true }),
    )
  })
}

test("after the first visit everything works without a network, and is kept", async () => {
  const workbook = await openPegbook({ offline: true })
  const { page } = workbook
  await readyForOffline(workbook)
  await page.context().setOffline(true)
  await workbook.reload()
  await workbook.enter("platform_length", "18 ft")
  await workbook.saved()
  await workbook.reload()
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
  await workbook.screen("Start")
  await workbook.start("Shed base")
})

const NOT_HERE =
  /not in this browser yet, and could not be fetched\. Connect to the network, then save and reload/

test("without a network before the files are kept, what is missing says so, nothing is lost, and it comes later", async () => {
  const workbook = await openPegbook({ missing: true })
  const { page } = workbook
  await page.context().setOffline(true)
  await workbook.enter("platform_length", "18 ft")
  await workbook.screen("Drawings")
  await page.getByRole("alert").filter({ hasText: NOT_HERE }).waitFor()
  await workbook.screen("Start")
  await page.getByRole("button", { name: "Start this one: Shed base" }).click()
  await page.locator(".notice").filter({ hasText: NOT_HERE }).waitFor()
  expect(await page.locator(".notice").textContent()).not.toContain("Not saved")
  expect(await page.getByRole("heading", { level: 1 }).textContent(), "the screen is the same").toMatch(
    /building/,
  )
  await workbook.screen("Drawings")
  await page.getByRole("alert").filter({ hasText: NOT_HERE }).waitFor()

  // A browser may have the screen at once when the network is back, or only in a new page.
  await page.context().setOffline(false)
  const drawn = page.locator(".drawing-tab").first()
  const reload = page.locator("main").getByRole("button", { name: "Save and reload" })
  await drawn.waitFor({ timeout: 5_000 }).catch(async () => {
    await Promise.all([page.waitForEvent("load"), reload.click()])
  })
  await drawn.waitFor()
  expect(await stylesAreThere(page), "with its looks").toBe(true)
  await workbook.screen("Worksheet")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
  await workbook.start("Shed base")
})

test("what still cannot be fetched comes with save and reload, and nothing typed is lost", async () => {
  const workbook = await openPegbook({ missing: true })
  const { page } = workbook
  const files = "**/assets/Drawings-*"
  await page.route(files, (route) => route.abort())
  await workbook.enter("platform_length", "18 ft")
  await workbook.screen("Drawings")
  await page.getByRole("alert").filter({ hasText: NOT_HERE }).waitFor()
  await page.unroute(files)
  await Promise.all([
    page.waitForEvent("load"),
    page.locator("main").getByRole("button", { name: "Save and reload" }).click(),
  ])
  await page.locator(".drawing-tab").first().waitFor()
  expect(await stylesAreThere(page)).toBe(true)
  await workbook.screen("Worksheet")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
})

/** Whether every style sheet that the page asked for has come: of one that has not, the rules cannot be read. */
const stylesAreThere = (page: WorkbookPage["page"]): Promise<boolean> =>
  page.evaluate(() => {
    try {
      return [...document.styleSheets].every(({ cssRules }) => cssRules.length > 0)
    } catch {
      return false
    }
  })

test("a newer version waits, is offered, and takes over with nothing lost", async () => {
  const folder = mkdtempSync(join(tmpdir(), "pegbook-built-"))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  cpSync(join(root, "packages", "ui", "dist"), folder, { recursive: true })
  const { address, close } = await serveFolder(folder)
  onTestFinished(close)

  const workbook = await openPegbook({ address, offline: true })
  const { page } = workbook
  await readyForOffline(workbook)
  // What a later build changes: the page, and the mark of its version in the worker.
  const newer = readFileSync(join(folder, "index.html"), "utf8").replace("<html", '<html data-build="newer"')
  writeFileSync(join(folder, "index.html"), newer)
  const worker = readFileSync(join(folder, "offline.js"), "utf8")
  writeFileSync(
    join(folder, "offline.js"),
    worker.replace(/(?<=["'`} ])[0-9a-f]{16}(?=["'`])/, "0123456789abcdef"),
  )
  expect(readFileSync(join(folder, "offline.js"), "utf8")).not.toBe(worker)

  await page.evaluate(async () => (await navigator.serviceWorker.ready).update())
  await page.getByText("A newer version is here. Reload when it suits you.").waitFor()
  const build = () => page.locator("html").getAttribute("data-build")
  expect(await build(), "the old one still").toBeNull()
  await workbook.enter("platform_length", "18 ft")
  await Promise.all([page.waitForEvent("load"), workbook.button("Save and reload").click()])
  await workbook.ready()
  expect(await build(), "the new one").toBe("newer")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
})

test("it can be installed: the manifest and its icons are there, of the sizes that they say", async () => {
  const { page } = await openPegbook()
  const found = await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel="manifest"]')
    const manifest = await (await fetch(link?.href ?? "")).json()
    return Promise.all(
      manifest.icons.map(async ({ src, sizes }: { src: string; sizes: string }) => {
        const image = new Image()
        image.src = new URL(src, link?.href).href
        await image.decode()
        return { src, sizes, is: sizes === "any" ? sizes : `${image.naturalWidth}x${image.naturalHeight}` }
      }),
    )
  })
  expect(found.length).toBeGreaterThanOrEqual(3)
  for (const { src, sizes, is } of found) expect(is, src).toBe(sizes)
})

test("every screen keeps to a strict policy: no code from text, no inline code, no other address", async () => {
  const workbook = await openPegbook({
    offline: true,
    before: () => {
      const violations: string[] = []
      Object.assign(globalThis, { violations })
      document.addEventListener("securitypolicyviolation", (event) =>
        violations.push(`${event.violatedDirective} ${event.blockedURI}`),
      )
    },
  })
  const { page } = workbook
  for (const screen of await workbook.screens()) {
    await workbook.screen(screen)
    await page.waitForTimeout(300)
  }
  const violations = () =>
    page.evaluate(() => (globalThis as unknown as { violations: readonly string[] }).violations)
  expect(await violations()).toEqual([])

  // The policy is in force: it stops what it should.
  const response = await page.request.get(inject("address"))
  for (const policy of [response.headers()["content-security-policy"], await response.text()]) {
    const rules = (policy ?? "").replaceAll("&#39;", "'")
    expect(rules).toContain("default-src 'self'")
    expect(rules).not.toContain("unsafe-inline")
    expect(rules).not.toMatch(/ 'unsafe-eval'/)
  }
})
