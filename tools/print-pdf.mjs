// Prints a page of HTML as PDF with the Chromium of this machine: the same that the journeys use.
import { spawn } from "node:child_process"
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import { CHROMIUM_TO_INSTALL, findChromium } from "./chromium.mjs"

/** Milliseconds. A book takes seconds; a browser that hangs would never come back. */
const PATIENCE = 180_000

const ARGS = [
  "--headless",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // The page numbers its own sheets, and their size is the page's own.
  "--no-pdf-header-footer",
]

/**
 * Why no PDF can be made here, and what to do; nothing where it can.
 * @returns {string | undefined}
 */
export function noPdf() {
  if (findChromium()) return undefined
  return `no Chromium was found to make a PDF with. ${CHROMIUM_TO_INSTALL} Or write --out build-book.html, and print that file from any browser at full size.`
}

/**
 * @param {string} html A page that asks for no other file.
 * @returns {Promise<Uint8Array>} Its PDF, on sheets of the size that the page says. Rejects with what the browser said where it made none.
 */
export async function printPdf(html) {
  const folder = mkdtempSync(join(tmpdir(), "pegbook-pdf-"))
  try {
    const [page, pdf] = [join(folder, "book.html"), join(folder, "book.pdf")]
    writeFileSync(page, html)
    const args = [
      ...ARGS,
      // Chromium refuses to run in its sandbox as root; the page runs no code and asks for nothing.
      ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
      `--user-data-dir=${join(folder, "profile")}`,
      `--print-to-pdf=${pdf}`,
      pathToFileURL(page).href,
    ]
    const said = await run(findChromium() ?? "", args)
    try {
      return readFileSync(pdf)
    } catch {
      throw new Error(`the browser made no PDF${said === "" ? "" : `: ${said}`}`)
    }
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 3 })
  }
}

/** Runs a program to its end; gives the last line of its complaints. */
function run(program, args) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: ["ignore", "ignore", "pipe"], timeout: PATIENCE })
    let complaints = ""
    child.stderr.on("data", (part) => {
      complaints += part
    })
    child.on("error", reject)
    child.on("close", () => resolve(complaints.trim().split("\n").at(-1) ?? ""))
  })
}
