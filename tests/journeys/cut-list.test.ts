import { expect, test } from "vitest"
import { openPegbook } from "./browser.ts"
import { holdWorkers, letWorkersStart } from "./held-workers.ts"
import type { WorkbookPage } from "./workbook-page.ts"

const good = (workbook: WorkbookPage) => workbook.page.locator(".how-good")
const PROVEN = "Proven: no plan needs less."

test("a plan is there at once, its proof arrives by itself, and an edit starts another", async () => {
  const workbook = await openPegbook({ width: 360, height: 740, before: holdWorkers, proofs: true })
  await workbook.screen("Cut list")
  await good(workbook).getByText("A better plan is being looked for.").waitFor()
  await good(workbook)
    .getByText(/At most .* from the best/)
    .waitFor()
  const boards = workbook.page.locator("[data-board]")
  expect(await boards.count()).toBeGreaterThan(10)
  const first = boards.first()
  await first.getByRole("img", { name: /^Board \d+, .* long, cut into skid, line 1, piece 2, / }).waitFor()
  const bought = await workbook.value("timber_length_bought")

  await letWorkersStart(workbook)
  await good(workbook).getByText(PROVEN).waitFor()
  const better = await workbook.value("timber_length_bought")
  expect(Number.parseFloat(better)).toBeLessThan(Number.parseFloat(bought))
  // Nothing was typed: there is nothing to save, and nothing to take back.
  expect(await workbook.page.locator("[data-kept]").first().getAttribute("data-kept")).toBe("nothing")

  await workbook.screen("Worksheet")
  await workbook.enter("platform_length", "17 ft")
  await workbook.screen("Cut list")
  await good(workbook).getByText("A better plan is being looked for.").waitFor()
  await good(workbook).getByText(PROVEN).waitFor()
  expect(await workbook.overflow()).toBe(0)
})

test("the page answers while a proof is at work, and the last of several edits is the one that is proven", async () => {
  const workbook = await openPegbook({ proofs: true })
  for (const length of ["15 ft", "16 ft", "21 ft"]) await workbook.enter("platform_length", length)
  expect(await workbook.value("platform_length")).toContain("21")
  await workbook.screen("Cut list")
  await good(workbook).getByText(PROVEN).waitFor()
  // Longer than any board: skids of several pieces, with a place for each joint.
  expect(await workbook.page.locator("[data-joints=skid_joints] > li").count()).toBeGreaterThan(0)
})

// Common practice, no source: a saw cut of 1/8 in is lost between two pieces, so that two of 6 ft are longer than 12 ft.
test("a length sold that the saw makes too short is named, with the one that gives the pieces", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  // Two rims of 1 1/2 in lie outside the joists, which are 6 ft long then.
  await workbook.enter("platform_width", "6 ft 3 in")
  await workbook.enter("joist_stock", "12 ft, 14 ft")
  await workbook.screen("Cut list")
  const { page } = workbook
  await page
    .getByText(/^2 × 6 ft \(1\.829 m\) of 2x6 does not come out of 12 ft .* 14 ft \(4\.267 m\) gives them\.$/)
    .waitFor()
  await workbook.screen("Worksheet")
  await workbook.enter("joist_stock", "12 ft")
  await workbook.screen("Cut list")
  await page
    .getByText(/^2 × 6 ft .* does not come out of 12 ft .* It takes a board of at least 12 ft 0\.13 in .*\.$/)
    .waitFor()
  await workbook.screen("Worksheet")
  await workbook.enter("joist_stock", "5 ft")
  await workbook.screen("Cut list")
  await page
    .getByText(
      /^A joist of 6 ft .* does not come out of the longest 2x6 to be had, 5 ft .* at least 6 ft \(1\.829 m\), /,
    )
    .waitFor()
  await workbook.screen("Worksheet")
  await workbook.enter("joist_stock", "14 ft")
  await workbook.screen("Cut list")
  await good(workbook).waitFor()
  expect(await page.getByText("does not come out of").count()).toBe(0)
})

test("with prices the plan costs as little as can be, and says what it costs", async () => {
  const workbook = await openPegbook({ proofs: true })
  const { page } = workbook
  await workbook.screen("Cut list")
  await good(workbook)
    .getByText(/^timber bought, end to end: .* needs less\.$/)
    .waitFor()
  await workbook.screen("Buy list")
  const prices = page.getByRole("region", { name: "Prices" })
  await prices.getByRole("button", { name: "Bring in from CSV…" }).click()
  await prices
    .getByRole("textbox", { name: "Or paste it here" })
    .fill("item;unit;price\n2x6;ft;0.90\n6x6;ft;3.10")
  await prices.getByRole("button", { name: "Put 2 rows in" }).click()
  await workbook.screen("Cut list")
  await good(workbook)
    .getByText(/^timber bought, by your prices.*: \$?[\d,]+\.\d\d.* needs less\.$/)
    .waitFor()
})

test("where WebAssembly is refused, the plan made at once stays, with a plain notice", async () => {
  const workbook = await openPegbook({ proofs: true })
  await workbook.page.route(/\/worker-[^/]*\.js$/, async (route) => {
    const answer = await route.fetch()
    await route.fulfill({ response: answer, body: `delete globalThis.WebAssembly;${await answer.text()}` })
  })
  await workbook.reload()
  await stays(workbook)
  await workbook.screen("Worksheet")
  await workbook.enter("platform_length", "17 ft")
  await stays(workbook)
})

test("where no worker can be started, too", async () => {
  const workbook = await openPegbook({
    proofs: true,
    before: () => {
      Object.assign(window, {
        Worker: class {
          constructor() {
            throw new Error("not here")
          }
        },
      })
    },
  })
  await stays(workbook)
})

async function stays(workbook: WorkbookPage): Promise<void> {
  await workbook.screen("Cut list")
  await good(workbook).getByText("The exact search could not run in this browser.").waitFor()
  await good(workbook)
    .getByText(/At most .* from the best/)
    .waitFor()
  expect(await workbook.page.locator("[data-board]").count()).toBeGreaterThan(10)
}
