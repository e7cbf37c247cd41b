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
    ["junk.json", "x".repeat(50_000_000), /It is 50 MB large, and a workbook is never more than 20 MB/],
    ["cut-off.json", whole.slice(0, whole.length / 2), /or not all of one/],
    ["later.json", whole.replace(/"version": *\d+/, '"version": 7'), /saved in version 7 of the format/],
    ["letter.json", "Dear reader,", /It is not a workbook that was saved here/],
    ["deep.json", "[".repeat(1_000_000), /It is not a workbook that was saved here/],
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
