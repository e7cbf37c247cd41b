import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { WorkbookPage } from "./workbook-page.ts"

/** Another tab of the same browser, on the same address. */
async function anotherTab(workbook: WorkbookPage): Promise<WorkbookPage> {
  const page = await workbook.page.context().newPage()
  await page.goto(workbook.page.url())
  const other = new WorkbookPage(page)
  await other.ready()
  return other
}

const IN_ANOTHER_TAB = /^This workbook was changed in another tab\./

test("two tabs on one workbook: the second takes what the first saved", async () => {
  const first = await openPegbook()
  await first.enter("platform_length", "18 ft")
  await first.saved()
  const second = await anotherTab(first)
  expect(await second.value("platform_length")).toBe("18' 0\"")
  await first.enter("platform_length", "19 ft")
  await second.page.getByText(IN_ANOTHER_TAB).waitFor()
  await second.button("Take the other’s").click()
  await second.page.locator('[data-entry="platform_length"] [data-value="19\' 0\\""]').waitFor()
})

test("two tabs on one workbook: neither writes over the other, and the second keeps its own as a copy", async () => {
  const first = await openPegbook()
  await first.enter("platform_length", "18 ft")
  await first.saved()
  const second = await anotherTab(first)
  await first.enter("platform_length", "19 ft")
  await second.page.getByText(IN_ANOTHER_TAB).waitFor()
  await second.enter("platform_length", "17 ft")
  await second.page.getByText("Not saved: this workbook was changed in another tab.").first().waitFor()
  await second.button("Keep mine as a copy").click()
  await second.page.getByText(/^Yours goes on here as “Game table platform, copy”/).waitFor()
  await second.saved()
  expect(await second.value("platform_length")).toBe("17' 0\"")

  await second.screen("Start")
  await second
    .listed("Game table platform")
    .getByRole("button", { name: /^Open / })
    .click()
  await second.page.getByRole("heading", { level: 1, name: "Game table platform", exact: true }).waitFor()
  expect(await second.value("platform_length")).toBe("19' 0\"")
})

test("two tabs with a workbook each come back to their own when they are loaded anew", async () => {
  const first = await openPegbook()
  await first.enter("platform_length", "18 ft")
  await first.saved()
  const second = await anotherTab(first)
  await second.start("Shed base")
  await second.saved()
  for (const [tab, title] of [
    [first, "Game table platform"],
    [second, "Shed base"],
  ] as const) {
    await tab.page.reload()
    await tab.page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor()
  }
})

test("a step that is undone in one tab is no more written over another's work than one that is done", async () => {
  const first = await openPegbook()
  await first.enter("platform_length", "18 ft")
  await first.saved()
  const second = await anotherTab(first)
  await second.enter("platform_width", "14 ft")
  await second.saved()
  await first.page.getByText(IN_ANOTHER_TAB).waitFor()
  await first.page.keyboard.press("Control+z")
  await first.page.getByText("Not saved: this workbook was changed in another tab.").first().waitFor()
  // Left without an answer: both are there.
  await first.page.close()
  await second.reload()
  expect(await second.values(["platform_length", "platform_width"])).toEqual({
    platform_length: "18' 0\"",
    platform_width: "14' 0\"",
  })
  await second.screen("Start")
  await second.listed("Game table platform, copy").waitFor()
})

test("two tabs that saw nothing of each other: who saves second is refused, not who saved first", async () => {
  const first = await openPegbook({
    // As where a tab was asleep when the other one told it.
    before: () => {
      BroadcastChannel.prototype.postMessage = () => {}
    },
  })
  await first.enter("platform_length", "18 ft")
  await first.saved()
  const second = await anotherTab(first)
  await first.enter("platform_length", "19 ft")
  await first.page.waitForTimeout(1_000)
  await second.enter("platform_length", "17 ft")
  await second.page.getByText(IN_ANOTHER_TAB).waitFor()
  // Leaving without an answer loses neither.
  await second.page.close()
  await first.reload()
  // A tab comes back to its own workbook.
  expect(await first.value("platform_length")).toBe("19' 0\"")
  await first.screen("Start")
  await first
    .listed("Game table platform, copy")
    .getByRole("button", { name: /^(Open|Go on) / })
    .click()
  await first.page
    .getByRole("heading", { level: 1, name: "Game table platform, copy", exact: true })
    .waitFor()
  expect(await first.value("platform_length")).toBe("17' 0\"")
})

test("where the browser's storage is full, the page says so and what to do, and saves as soon as there is room", async () => {
  const workbook = await openPegbook({
    before: () => {
      const { put } = IDBObjectStore.prototype
      IDBObjectStore.prototype.put = function (...given) {
        if (!Object.hasOwn(globalThis, "room")) throw new DOMException("full", "QuotaExceededError")
        return put.apply(this, given)
      }
    },
  })
  await workbook.enter("platform_length", "18 ft")
  await workbook.page
    .getByText(/^Not saved: the browser’s storage is full\. Free some space, or save to a file/)
    .first()
    .waitFor()
  await workbook.page.evaluate(() => Object.assign(globalThis, { room: true }))
  await workbook.enter("platform_width", "9 ft")
  await workbook.saved()
  await workbook.reload()
  await workbook.page.evaluate(() => Object.assign(globalThis, { room: true }))
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
})

test("storage that is cleared while the page is open is filled again with what the page holds", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.enter("platform_length", "18 ft")
  await workbook.saved()
  const browser = await page.context().newCDPSession(page)
  const { origin } = new URL(page.url())
  await browser.send("Storage.clearDataForOrigin", { origin, storageTypes: "indexeddb" })
  await page.getByText(/^The browser’s storage was cleared while this page was open/).waitFor()
  await workbook.saved()
  await workbook.reload()
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
})

test("a page that is left in the middle of saving has kept what was typed last", async () => {
  const workbook = await openPegbook()
  await workbook.enter("platform_length", "18 ft")
  await workbook.reload()
  expect(await workbook.value("platform_length")).toBe("18' 0\"")

  await workbook.enter("platform_length", "19 ft")
  const { page } = workbook
  const address = page.url()
  await page.goto("about:blank")
  await page.goto(address)
  await workbook.ready()
  expect(await workbook.value("platform_length")).toBe("19' 0\"")
})

test.each([
  ["is killed at work", async ({ page }: WorkbookPage) => void (await page.clock.runFor(130_000))],
  ["is not to be had", async () => {}],
] as const)("a worker that %s: the page says so, loses nothing, and asks another one", async (how, endIt) => {
  const workbook = await openPegbook({ missing: true })
  const { page } = workbook
  await workbook.enter("platform_length", "18 ft")
  await workbook.screen("Explore")
  // From here a worker is either never there, or hears nothing and says nothing, as one that the system has ended.
  await page.clock.install()
  await page.evaluate((dead) => {
    const Real = window.Worker
    Object.assign(window, {
      Worker: class extends Real {
        constructor(url: string | URL, options?: WorkerOptions) {
          super(dead ? url : `${url}-gone`, options)
        }
        override postMessage(): void {}
      },
      mend: () => Object.assign(window, { Worker: Real }),
    })
  }, how === "is killed at work")
  const span = page.getByRole("region", { name: "Try a span of values" })
  await span.getByRole("combobox", { name: "Input" }).first().selectOption("joist_spacing")
  await span.getByRole("textbox", { name: "From" }).fill("12 in")
  await span.getByRole("textbox", { name: "To" }).fill("24 in")
  await span.getByRole("textbox", { name: "In steps of" }).fill("4 in")
  await span.getByRole("combobox", { name: "Show" }).selectOption("joist_count")
  await span.getByRole("button", { name: "Try them" }).click()
  await endIt(workbook)
  await span.getByText(/It could not be worked out\..*try again/i).waitFor()
  await page.evaluate(() => (window as unknown as { mend: () => void }).mend())
  await span.getByRole("button", { name: "Try them" }).click()
  await span.locator("tr[data-tried]").nth(1).waitFor({ timeout: 60_000 })
  await workbook.screen("Worksheet")
  expect(await workbook.value("platform_length")).toBe(`18' 0"`)
})
