import { writeFileSync } from "node:fs"
import { BadInput, quoted } from "./bad-input.ts"

/** Writes a file that an option names; where it cannot be written, that is said of the option. */
export function writeFile(option: string, path: string, content: string | Uint8Array): void {
  try {
    writeFileSync(path, content)
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new BadInput(`${option}: ${quoted(path)} cannot be written (${reason}). Give a path that can.`)
  }
}
