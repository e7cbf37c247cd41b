// Finds a Chromium, for the browser journeys and for books as PDF. None is downloaded: the system's own is used.
import { spawnSync } from "node:child_process"
import { accessSync, constants } from "node:fs"
import { delimiter, join } from "node:path"

const COMMANDS = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
  "microsoft-edge",
]

const ELSEWHERE = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
]

export const CHROMIUM_TO_INSTALL =
  "Install one (Debian and its like: sudo apt-get install chromium; macOS: brew install --cask chromium; or any Chrome " +
  "or Edge), or set PEGBOOK_CHROMIUM to the path of its program, and run this again."

export const HOW_TO_GET_ONE = `no Chromium was found for the browser journeys. ${CHROMIUM_TO_INSTALL}`

function runnable(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/**
 * The path of a Chromium, or undefined.
 * @returns {string | undefined}
 */
export function findChromium() {
  const named = process.env.PEGBOOK_CHROMIUM
  if (named) return runnable(named) ? named : undefined
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => COMMANDS.map((command) => join(folder, command)))
  return [...onPath, ...ELSEWHERE].find(runnable)
}

/**
 * The same; where none is found, and this is root on a Debian-like system, asks apt-get for one first.
 * @returns {string | undefined}
 */
export function findOrInstallChromium() {
  const found = findChromium()
  if (found || process.env.PEGBOOK_CHROMIUM || process.getuid?.() !== 0 || !runnable("/usr/bin/apt-get"))
    return found
  console.log("No Chromium found: installing it with apt-get …")
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" }
  for (const args of [["update"], ["install", "-y", "--no-install-recommends", "chromium"]]) {
    if (spawnSync("apt-get", args, { stdio: "inherit", env }).status !== 0) break
  }
  return findChromium()
}
