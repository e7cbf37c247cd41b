import { readdirSync, readFileSync } from "node:fs"
import { join, relative, sep } from "node:path"
import { fileURLToPath } from "node:url"

/** The project's own folder. */
export const root = fileURLToPath(new URL("..", import.meta.url))

const SKIPPED = new Set(["node_modules", "dist", "coverage", "shots", ".git", ".tools"])

/** The project's files whose name ends in one of these, relative to its folder, with `/` between names. */
export function files(under: string, endings: readonly string[]): string[] {
  const found: string[] = []
  const walk = (folder: string): void => {
    for (const item of readdirSync(folder, { withFileTypes: true })) {
      const path = join(folder, item.name)
      if (item.isDirectory() && !SKIPPED.has(item.name)) walk(path)
      else if (item.isFile() && endings.some((ending) => item.name.endsWith(ending))) {
        found.push(relative(root, path).split(sep).join("/"))
      }
    }
  }
  walk(join(root, under))
  return found.sort()
}

export function read(file: string): string {
  return readFileSync(join(root, file), "utf8")
}
