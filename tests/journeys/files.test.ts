import { spawnSync } from "node:child_process"
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { expect, onTestFinished, test } from "vitest"
import { root } from "../files.ts"
import { openPegbook } from "./browser.ts"
import type { WorkbookPage } from "./workbook-page.ts"

function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "pegbook-files-"))
  onTestFinished(() => rmSync(made, { recursive: true, force: true }))
  return made
}

async function saveToFile(workbook: WorkbookPage): Promise<{ readonly name: string; readonly path: string }> {
  const [download] = await Promise.all([
    workbook.page.waitForEvent("download"),
    workbook.button("Save to a file").click(),
  ])
  const path = join(folder(), download.suggestedFilename())
  await download.saveAs(path)
  return { name: download.suggestedFilename(), path }
}

async function openFile(workbook: WorkbookPage, path: string): Promise<void> {
  const [chooser] = await Promise.all([
    workbook.page.waitForEvent("filechooser"),
    workbook.button("Open a file").first().click(),
  ])
  await chooser.setFiles(path)
}

test("a workbook goes to a file, opens from it in another browser, and is read by the command line", async () => {
  const first = await openPegbook()
  await first.enter("platform_length", "18 ft")
  const area = await first.value("platform_area")
  const { name, path } = await saveToFile(first)
  expect(name).toBe("Game-table-platform.json")

  const second = await openPegbook()
  await second.screen("Start")
  await openFile(second, path)
  await second.page.getByText("Opened the file as a workbook of its own, “Game table platform”.").waitFor()
  expect(await second.value("platform_length")).toBe("18' 0\"")
  expect(await second.value("platform_area")).toBe(area)
  await second.saved()
  await second.reload()
  expect(await second.value("platform_length")).toBe("18' 0\"")

  const told = spawnSync(process.execPath, [join(root, "tools", "pegbook.mjs"), "calc", path], {
    encoding: "utf8",
    cwd: root,
  })
  expect(told.stderr).toBe("")
  expect(told.stdout).toContain("18' 0\"")
})

test("whatever else is chosen is refused in words, and the open workbook is untouched", async () => {
  const workbook = await openPegbook()
  await workbook.enter("platform_length", "18 ft")
  const whole = readFileSync((await saveToFile(workbook)).path, "utf8")
  const place = folder()
  const cases: readonly [name: string, contents: string, says: RegExp][] = [
    ["junk.json", "x".repeat(50_000_000), /It is 50 MB large, and a file of more than 20 MB is not opened/],
    ["cut-off.json", whole.slice(0, whole.length / 2), /or not all of one/],
    ["later.json", whole.replace(/"version": *\d+/, '"version": 7'), /saved in version 7 of the format/],
    ["letter.json", "Dear reader,", /It is not a workbook that was saved here/],
    ["deep.json", "[".repeat(1_000_000), /It is not a workbook that was saved here/],
    ["prices.csv", "item,unit,price\n2x6,each,12\n", /It is a table or a sheet.*press “Bring in from CSV…”/],
    ["nothing.json", "", /It is not a workbook that was saved here/],
    ["other.json", '{"name": "something else"}', /format is not/],
    ["numbers.json", whole.replace('"18 ft"', "18"), /cannot be read/],
  ]
  for (const [name, contents, says] of cases) {
    const path = join(place, name)
    writeFileSync(path, contents)
    await openFile(workbook, path)
    const notice = workbook.page.getByText(`“${name}” was not opened.`)
    await notice.waitFor()
    expect(await notice.textContent()).toMatch(says)
    expect(await notice.textContent()).toContain("The open workbook is as it was.")
    expect(await workbook.value("platform_length"), name).toBe("18' 0\"")
  }
  await workbook.screen("Start")
  expect(
    await workbook.page.getByRole("list", { name: "Your workbooks" }).getByRole("listitem").count(),
  ).toBe(1)
})

test("a file that is let go over the page is opened, and does not take the place of the page", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.enter("platform_length", "18 ft")
  const text = readFileSync((await saveToFile(workbook)).path, "utf8")
  const drag = (kind: string, text: string) =>
    page.evaluate(
      ([kind, text]) => {
        const dataTransfer = new DataTransfer()
        dataTransfer.items.add(new File([text ?? ""], "shared.json", { type: "application/json" }))
        const event = new DragEvent(kind ?? "", { dataTransfer, bubbles: true, cancelable: true })
        document.querySelector("main")?.dispatchEvent(event)
        return event.defaultPrevented
      },
      [kind, text],
    )
  expect(await drag("dragover", text)).toBe(true)
  await page.getByText("Let go to open the file.").waitFor()
  expect(await drag("drop", text)).toBe(true)
  await page.getByText("Opened the file as a workbook of its own, “Game table platform 2”.").waitFor()
  expect(await page.getByText("Let go to open the file.").count()).toBe(0)

  expect(await drag("drop", "Dear reader,")).toBe(true)
  await page.getByText("“shared.json” was not opened.").waitFor()
  // Text that is dragged from one field to another is none of this.
  const ofText = await page.evaluate(() => {
    const dataTransfer = new DataTransfer()
    dataTransfer.setData("text/plain", "4 ft")
    const event = new DragEvent("dragover", { dataTransfer, bubbles: true, cancelable: true })
    document.querySelector("main")?.dispatchEvent(event)
    return event.defaultPrevented
  })
  expect(ofText).toBe(false)
})

test("a workbook of an earlier version whose own entries do not fit any more opens, says which, and keeps them", async () => {
  const workbook = await openPegbook()
  const { page } = workbook
  await workbook.enter("platform_length", "18 ft")
  const saved = JSON.parse(readFileSync((await saveToFile(workbook)).path, "utf8"))
  const formula = { kind: "formula", measure: "length" }
  const own = [
    { ...formula, name: "twice_length", label: "Twice the length", formula: "2 * platform_length" },
    // The template came to have this name.
    { ...formula, name: "platform_width", label: "My width", formula: "platform_length" },
    { kind: "column", table: "gone", name: "more", label: "More", measure: "length", formula: "1" },
    { kind: "formula", name: "ring_one", label: "One", formula: "ring_two" },
    { kind: "formula", name: "ring_two", label: "Two", formula: "ring_one" },
  ]
  const [scenario] = saved.scenarios
  const scenarios = [
    {
      ...scenario,
      typed: { ...scenario.typed, gone_input: "4 ft", platform_width: "900000 ft", "gone.more.1": "3" },
    },
  ]
  const path = join(folder(), "a-year-old.json")
  writeFileSync(path, JSON.stringify({ ...saved, own, scenarios }))
  await openFile(workbook, path)
  const notice = page.locator(".notice")
  await notice.filter({ hasText: "not all of it could be used" }).waitFor()
  expect(await notice.textContent()).toContain("What was saved stays in it")
  expect(await workbook.value("platform_length")).toBe("18' 0\"")
  expect(await workbook.value("twice_length")).toBe("36' 0\"")
  const unfit = page.getByRole("region", { name: "Kept, but not in use: 4" })
  expect(await unfit.getByRole("listitem").count()).toBe(4)
  expect(await unfit.textContent()).toContain("it does not say what it measures")

  // Nothing of it is lost, and what is not wanted can go.
  await unfit.getByRole("button", { name: "Remove Two" }).click()
  await page.getByRole("region", { name: "Kept, but not in use: 3" }).waitFor()
  const again = JSON.parse(readFileSync((await saveToFile(workbook)).path, "utf8"))
  expect(again.own.map(({ name }: { name: string }) => name)).toEqual([
    "twice_length",
    "platform_width",
    "more",
    "ring_one",
  ])
  expect(again.scenarios[0].typed).toMatchObject({ gone_input: "4 ft", platform_width: "900000 ft" })
  await workbook.saved()
  await workbook.reload()
  await page.getByRole("region", { name: "Kept, but not in use: 3" }).waitFor()
})
