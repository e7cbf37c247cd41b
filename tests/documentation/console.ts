import { spawnSync } from "node:child_process"
import { join } from "node:path"
import { root } from "../files.ts"

/** A command shown in a page, and the lines that the page says it prints. */
export interface Shown {
  readonly command: string
  readonly says: readonly string[]
}

/** The commands in a page's ```console blocks: lines after `$ `, and under each what it prints. */
export function shownCommands(page: string): Shown[] {
  const shown: { command: string; says: string[] }[] = []
  for (const [, block = ""] of page.matchAll(/^```console\n([\s\S]*?)^```$/gm)) {
    for (const line of block.trimEnd().split("\n")) {
      if (line.startsWith("$ ")) shown.push({ command: line.slice(2), says: [] })
      else shown.at(-1)?.says.push(line)
    }
  }
  return shown
}

/** A command's words, with double quotes keeping spaces together. */
export function words(command: string): string[] {
  return (command.match(/(?:"[^"]*"|[^\s"])+/g) ?? []).map((word) => word.replaceAll('"', ""))
}

const PREFIX = ["npm", "run", "--silent", "pegbook", "--"]

/** Runs `npm run --silent pegbook -- …` as npm would, without starting npm. */
export function runShown(command: string): { readonly status: number | null; readonly lines: string[] } {
  const all = words(command)
  if (all.slice(0, PREFIX.length).join(" ") !== PREFIX.join(" ")) {
    throw new Error(`a shown command starts with "${PREFIX.join(" ")}", not: ${command}`)
  }
  const ran = spawnSync(process.execPath, [join(root, "tools", "pegbook.mjs"), ...all.slice(PREFIX.length)], {
    cwd: root,
    encoding: "utf8",
  })
  return { status: ran.status, lines: `${ran.stdout}${ran.stderr}`.trimEnd().split("\n") }
}

/**
 * Whether the lines are what was printed. A line of only `…` stands for any number of lines, and `…` at a line's end
 * for its rest. How far columns stand apart does not count: it follows the longest word in them.
 */
export function matches(says: readonly string[], printed: readonly string[]): boolean {
  const [first, ...rest] = says
  if (first === undefined) return printed.length === 0
  if (first.trim() !== "…") {
    return printed[0] !== undefined && sameLine(first, printed[0]) && matches(rest, printed.slice(1))
  }
  return Array.from({ length: printed.length + 1 }, (_, skipped) => skipped).some((skipped) =>
    matches(rest, printed.slice(skipped)),
  )
}

function sameLine(said: string, printed: string): boolean {
  const shown = said.trim().split(/\s+/).join(" ")
  const line = printed.trim().split(/\s+/).join(" ")
  return shown.endsWith(" …") ? line.startsWith(shown.slice(0, -1)) : line === shown
}
