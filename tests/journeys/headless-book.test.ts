import { spawnSync } from "node:child_process"
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import type { Page } from "playwright-core"
import { expect, onTestFinished, test } from "vitest"
import { root } from "../files.ts"
import { openPegbook } from "./browser.ts"
import { holdWorkers } from "./held-workers.ts"
import { isDrawn, pageContents, pageSizes, paintedBoxes } from "./pdf-paths.ts"

function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "pegbook-book-"))
  onTestFinished(() => rmSync(made, { recursive: true, force: true }))
  return made
}

const pegbookWith = (env: NodeJS.ProcessEnv, ...args: readonly string[]) =>
  spawnSync(process.execPath, [join(root, "tools", "pegbook.mjs"), ...args], {
    encoding: "utf8",
    maxBuffer: 100_000_000,
    env,
  })
const pegbook = (...args: readonly string[]) => pegbookWith(process.env, ...args)

/** What a book says, part by part, and every line that is drawn in it. Plans may be proven on one side and not yet on the other. */
function contents(page: Page) {
  return page.evaluate(() => {
    const text = (element: Element) => (element.textContent ?? "").replace(/\s+/g, " ").trim()
    const parts = [...document.querySelectorAll(".book .book-part")].map((part) => {
      const isPlan = part.querySelector("[data-plain-table]") !== null
      return isPlan ? [...part.querySelectorAll("h2, h3, th")].map(text) : [text(part)]
    })
    const drawn = [...document.querySelectorAll(".book [data-printed] path")].map((path) =>
      path.getAttribute("d"),
    )
    return { parts, drawn }
  })
}

test("the book of the command is that of the screen, in one file that asks for nothing and runs nothing", async () => {
  const workbook = await openPegbook({ before: holdWorkers, proofs: true })
  const { page } = workbook
  await workbook.enter("platform_length", "18 ft")
  await workbook.screen("Build book")
  await page.locator(".book-sources").waitFor()
  const shown = await contents(page)
  expect(shown.parts.length).toBeGreaterThan(6)
  expect(shown.drawn.length).toBeGreaterThan(200)

  const out = join(folder(), "book.html")
  const set = ["--set", "platform_length=18 ft", "--seconds", "0", "--out", out]
  const ran = pegbook("book", "game-table-platform", ...set)
  expect(ran.stderr).toBe("")
  expect(ran.stdout).toContain("the build book of Game table platform")
  expect(readFileSync(out, "utf8")).not.toMatch(
    /<script|<link|<img|<iframe|<a |<button|javascript:|https?:\/\/(?!www\.w3\.org)/,
  )

  // Another page of the same browser, whose every request and complaint fails the test.
  const printed = await page.context().newPage()
  const asked: string[] = []
  printed.on("request", (request) => asked.push(request.url()))
  await printed.setContent(readFileSync(out, "utf8"))
  const written = await contents(printed)
  expect(written.parts).toEqual(shown.parts)
  expect(written.drawn).toEqual(shown.drawn)
  expect(asked).toEqual([])
  expect(await printed.locator(".book-step .tick-box").count()).toBeGreaterThan(5)
  await printed.setViewportSize({ width: 360, height: 740 })
  expect(await printed.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360)
})

test("a saved workbook keeps its name in its book; what cannot be done is said in one line", () => {
  const place = folder()
  const saved = openBook(demo()).book.document()
  const path = join(place, "saved.json")
  writeFileSync(path, JSON.stringify({ ...saved, title: "Behind <the> house" }))
  const out = join(place, "book.html")
  const ran = pegbook("book", path, "--seconds", "0", "--paper", "a4", "--out", out)
  expect(ran.stderr).toBe("")
  const html = readFileSync(out, "utf8")
  expect(html).toContain("<title>Build book: Behind &lt;the&gt; house</title>")
  expect(html).toContain('data-paper="a4"')

  for (const [args, says] of [
    [["--paper", "a3"], /^pegbook: --paper: "a3" is not accepted\. Write --paper a4 or --paper letter\.\n$/],
    [["--out", "book.txt"], /^pegbook: --out: "book\.txt" ends with neither \.html nor \.pdf\./],
    [["--seconds", "0", "--out", join(place, "none", "b.html")], /^pegbook: --out: .* cannot be written/],
  ] as const) {
    const refused = pegbook("book", "game-table-platform", ...args)
    expect(refused.stderr).toMatch(says)
    expect([refused.stdout, refused.status]).toEqual(["", 2])
  }
  expect(existsSync(join(place, "none"))).toBe(false)
})

const FOOT = 304.8

test("the command's PDF has its paper's size and measures what its drawings say, at 1:50 and at 1:20", () => {
  const place = folder()
  const pdfOf = (name: string, ...args: readonly string[]) => {
    const out = join(place, name)
    const ran = pegbook("book", "game-table-platform", "--seconds", "0", "--out", out, ...args)
    expect(ran.stderr).toBe("")
    expect(ran.stdout).toContain("the build book of Game table platform, to be printed at full size")
    return readFileSync(out)
  }
  // ISO 216: 210 mm x 297 mm. Letter is 8 1/2 in x 11 in. The platform is 20 ft by 12 ft.
  const first = pdfOf("first.pdf", "--paper", "a4")
  expect(pageSizes(first)).toEqual(["210 x 297"])
  expect(pageContents(first).length).toBeGreaterThan(10)
  expect(isDrawn(paintedBoxes(first), (20 * FOOT) / 50, (12 * FOOT) / 50)).toBe(true)
  expect(isDrawn(paintedBoxes(first), (6 * FOOT) / 20, (5 * FOOT) / 20)).toBe(false)

  const small = ["--set", "platform_length=6 ft", "--set", "platform_width=5 ft"]
  const second = pdfOf("second.pdf", "--paper", "letter", ...small)
  expect(pageSizes(second)).toEqual(["216 x 279"])
  expect(isDrawn(paintedBoxes(second), (6 * FOOT) / 20, (5 * FOOT) / 20)).toBe(true)
  expect(isDrawn(paintedBoxes(second), (20 * FOOT) / 50, (12 * FOOT) / 50)).toBe(false)
})

test("without a browser a PDF is refused at once, with what to do; what a broken one says is handed on", () => {
  const out = join(folder(), "book.pdf")
  const refused = (chromium: string) => {
    const env = { ...process.env, PEGBOOK_CHROMIUM: chromium }
    const ran = pegbookWith(env, "book", "game-table-platform", "--seconds", "0", "--out", out)
    expect([ran.stdout, ran.status, existsSync(out)]).toEqual(["", 2, false])
    return ran.stderr
  }
  expect(refused("/nowhere/chromium")).toMatch(
    /^pegbook: --out: no Chromium was found to make a PDF with\. Install one .*PEGBOOK_CHROMIUM.*--out build-book\.html.*\n$/,
  )
  // A program that is there, and makes nothing.
  expect(refused(process.execPath)).toMatch(
    /^pegbook: --out: the browser made no PDF.*--out build-book\.html.*\n$/,
  )
})
