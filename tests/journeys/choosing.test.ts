import { type Definition, openBook } from "@pegbook/engine"
import { TEMPLATES } from "@pegbook/templates"
import { expect, inject, test } from "vitest"
import { openPegbook } from "./browser.ts"

/** The first length that is the user's to choose and has one: its name, and a tenth less than it is. */
function aLengthToMove(definition: Definition): { readonly name: string; readonly shorter: string } {
  const { book } = openBook(definition)
  for (const name of book.names()) {
    const { kind, shape, measure, reading } = book.entry(name)
    if (kind !== "input" || shape !== "one" || measure !== "length" || !name.endsWith("_length")) continue
    if (typeof reading?.value === "number" && reading.value > 1)
      return { name, shorter: `${(reading.value * 0.9).toFixed(3)} m` }
  }
  throw new Error(`${definition.id} asks for no length`)
}

test.each(TEMPLATES.map((definition) => [definition.title, definition] as const))(
  "%s is chosen, and follows when a length is changed",
  async (title, definition) => {
    const workbook = await openPegbook()
    await workbook.screen("Start")
    const offer = workbook.page
      .getByRole("list", { name: "Kinds of workbook" })
      .getByRole("listitem")
      .filter({
        has: workbook.page.getByRole("heading", { name: title, exact: true }),
      })
    expect(await offer.getByText(definition.says).count(), "the line on when it fits").toBe(1)
    expect(await offer.getByRole("img").getAttribute("aria-label"), "what its drawing shows").toMatch(
      /^Drawing/,
    )

    await workbook.start(title)
    const { name, shorter } = aLengthToMove(definition)
    const before = await workbook.value(name)
    await workbook.enter(name, shorter)
    expect(await workbook.value(name)).not.toBe(before)
    // Common practice, no source: the length of a platform decides its supports, timbers, boards, fixings and weights.
    expect(await workbook.movedAloud()).toBeGreaterThanOrEqual(30)
    await workbook.saved()
    await workbook.page.reload()
    await workbook.row(name).waitFor()
    expect(await workbook.value(name)).not.toBe(before)
  },
)

test("several workbooks stand side by side: each keeps its own, and is opened, renamed, deleted and brought back", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  // The example, then one of one's own, from the guide.
  await workbook.enter("platform_length", "18 ft")
  await page
    .getByRole("complementary", { name: "First time here?" })
    .getByRole("button", { name: "Start your own" })
    .click()
  await workbook.page.getByRole("group", { name: "Lengths in" }).getByText("Metric", { exact: true }).click()
  await workbook.button("Start this one: Game table platform").click()
  await page.getByRole("heading", { level: 1, name: "Game table platform 2" }).waitFor()
  await workbook.enter("platform_length", "5 m")
  expect(await workbook.value("platform_length")).toBe("5,000 mm")
  await workbook.saved()

  await workbook.screen("Start")
  const mine = workbook.listed("Game table platform 2")
  await mine.getByText("Open now").waitFor()
  await mine.getByRole("button", { name: "Rename Game table platform 2" }).click()
  await page.getByRole("textbox", { name: "New name" }).fill("Behind the house")
  await page.getByRole("button", { name: "Save", exact: true }).click()
  await workbook.listed("Behind the house").getByText("Kind: Game table platform").waitFor()

  await workbook
    .listed("Game table platform")
    .getByRole("button", { name: /^Open / })
    .click()
  await page.getByRole("heading", { level: 1, name: "Game table platform", exact: true }).waitFor()
  expect(await workbook.value("platform_length")).toBe("18' 0\"")

  await workbook.screen("Start")
  await workbook.listed("Behind the house").getByRole("button", { name: "Delete Behind the house" }).click()
  await workbook.listed("Behind the house").waitFor({ state: "detached" })
  await workbook.button("Undo").click()
  await workbook
    .listed("Behind the house")
    .getByRole("button", { name: /^Open / })
    .click()
  await page.getByRole("heading", { level: 1, name: "Behind the house" }).waitFor()
  await page.waitForTimeout(1_000)
  await workbook.reload()
  await page.getByRole("heading", { level: 1, name: "Behind the house" }).waitFor()
  expect(await workbook.value("platform_length")).toBe("5,000 mm")
})

test("an address leads to its entry, in whichever workbook is open, and the choice fits a narrow window", async () => {
  const workbook = await openPegbook({ width: 360, height: 740 })
  const { page } = workbook
  await workbook.screen("Start")
  await page.waitForURL((url) => url.hash === "#/start")
  expect(await workbook.overflow()).toBeLessThanOrEqual(0)
  await workbook.start("Game table platform")
  await page.goto(`${inject("address")}#/worksheet/joist_count`)
  await page.reload()
  await workbook.row("joist_count").getByText("Leans on", { exact: true }).waitFor()
})

test("the one workbook of the first version is still there, with what was typed", async () => {
  const workbook = await openPegbook({
    // The database as the first version left it. The program's own opening of it waits for this one to end.
    before: () => {
      const opening = indexedDB.open("pegbook", 1)
      opening.onupgradeneeded = () => {
        const records = opening.result.createObjectStore("records")
        records.put("spoiled", "workbook 2024-05-06T07:08:09.000Z")
        records.put(
          {
            format: "pegbook-workbook",
            version: 1,
            template: "game-table-platform",
            unitSystem: "us",
            current: "copy-1",
            scenarios: [
              { id: "copy-1", title: "First plan", typed: { platform_length: "14 ft 6 in" }, tables: {} },
            ],
          },
          "workbook",
        )
      }
      opening.onsuccess = () => opening.result.close()
    },
  })
  expect(await workbook.value("platform_length")).toBe("14' 6\"")
  await workbook.screen("Start")
  await workbook.listed("Game table platform").getByText("Open now").waitFor()
  // What could not be read is listed, is not opened, and nothing has been written over it.
  const spoiled = workbook.listed("A workbook without a name")
  await spoiled.getByText(/^It cannot be opened, and is kept untouched/).waitFor()
  expect(await spoiled.getByRole("button", { name: /^Open/ }).count()).toBe(0)
})
