// The set-up that `npm start` and `npm test` share: the right Node, then the pinned packages.
import { spawnSync } from "node:child_process"
import { createHash } from "node:crypto"
import { existsSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { fileURLToPath } from "node:url"

/** The project's own folder. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)))

/** Ends the process with one line that says what to do next. */
export function giveUp(message, code = 1) {
  console.error(`pegbook: ${message}`)
  process.exit(code)
}

/** @returns {{ packageManager: string, engines: { node: string } }} */
function manifest() {
  return JSON.parse(readFileSync(join(root, "package.json"), "utf8"))
}

/**
 * Whether a version satisfies a range made of `^a.b.c` and `>=a.b.c` joined by `||`.
 * @param {string} version like "20.20.0"
 * @param {string} range like "^20.19.0 || >=22.12.0"
 */
export function satisfies(version, range) {
  const numbers = (text) => text.split(/[.+-]/, 3).map(Number)
  const [major = 0, minor = 0, patch = 0] = numbers(version)
  return range.split("||").some((part) => {
    const [, sign, least = ""] = /^\s*(\^|>=)\s*([\d.]+)\s*$/.exec(part) ?? []
    const [a = 0, b = 0, c = 0] = numbers(least)
    if (sign === undefined || (sign === "^" && major !== a)) return false
    return major > a || (major === a && (minor > b || (minor === b && patch >= c)))
  })
}

export function checkNode() {
  const wanted = manifest().engines.node
  if (satisfies(process.versions.node, wanted)) return
  giveUp(
    `this is Node ${process.versions.node}, and Pegbook needs ${wanted}. Install a current long-term release of Node and run the same command again.`,
  )
}

/** What node_modules was made for: another lockfile, system or processor asks for another install. */
function wantedStamp() {
  const hash = createHash("sha256").update(readFileSync(join(root, "pnpm-lock.yaml")))
  return `${hash.digest("hex")} ${process.platform} ${process.arch}\n`
}

/**
 * Installs the packages that the lockfile names, unless node_modules is already in step with it.
 * @param {{ quiet?: boolean }} [options] quiet: says something only when it fails
 */
export function setUp({ quiet = false } = {}) {
  checkNode()
  const stamp = join(root, "node_modules", ".pegbook-setup")
  const wanted = wantedStamp()
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return

  const manager = manifest().packageManager.split("+")[0]
  if (!quiet) console.log(`Installing the packages with ${manager} …`)
  const windows = process.platform === "win32"
  const { status, error, stdout, stderr } = spawnSync(
    "npx",
    ["--yes", manager, "install", "--frozen-lockfile", "--config.confirm-modules-purge=false"],
    // On Windows npx is a command file, which only a shell can start.
    { cwd: root, shell: windows, stdio: quiet ? "pipe" : "inherit", encoding: "utf8" },
  )
  if (status !== 0) {
    if (quiet) console.error(`${stdout ?? ""}${stderr ?? ""}`)
    const reason = error ? `${error.message}. ` : ""
    giveUp(
      `the packages could not be installed. ${reason}Check that this computer reaches the npm registry (a proxy?) and that the disk has 1 GB free, then run the same command again.`,
    )
  }
  writeFileSync(stamp, wanted)
}
