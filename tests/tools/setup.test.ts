import { spawnSync } from "node:child_process"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import { expect, test } from "vitest"
import { read, root } from "../files.ts"

// The tools are plain JavaScript, so that they run before anything is installed.
const setup = (await import(pathToFileURL(join(root, "tools", "setup.mjs")).href)) as {
  satisfies(version: string, range: string): boolean
}

test.each([
  ["20.19.0", true],
  ["20.20.1", true],
  ["20.18.3", false],
  ["18.20.8", false],
  ["21.7.3", false],
  ["22.11.0", false],
  ["22.12.0", true],
  ["24.1.0", true],
  ["25.0.0-nightly", true],
])("Node %s is good enough: %s", (version, good) => {
  const { engines } = JSON.parse(read("package.json")) as { engines: { node: string } }
  expect(setup.satisfies(version, engines.node)).toBe(good)
})

test("the packages are pinned: the manager by its version, every package by the lockfile", () => {
  const { packageManager } = JSON.parse(read("package.json")) as { packageManager: string }
  expect(packageManager).toMatch(/^pnpm@\d+\.\d+\.\d+/)
  expect(read("pnpm-lock.yaml")).toMatch(/^lockfileVersion:/)
})

test.each([["--port", "eighty"], ["--port", "70000"], ["--colour"]])(
  "npm start refuses %s %s in one line",
  (...args) => {
    const ran = spawnSync(process.execPath, [join(root, "tools", "start.mjs"), ...args], { encoding: "utf8" })
    expect(ran.stderr).toMatch(/^pegbook: [^\n]+\n$/)
    expect(ran.status).toBe(2)
  },
)
