import { accessSync, constants, existsSync, writeFileSync } from "node:fs"
import { dirname } from "node:path"
import { BadInput, quoted } from "./bad-input.ts"

/** Writes a file that an option names; where it cannot be written, that is said of the option. */
export function writeFile(option: string, path: string, content: string | Uint8Array): void {
  attempt(option, path, () => writeFileSync(path, content))
}

/** Says the same before the work that the file is for, where it is seen that the file cannot be written. */
export function checkWritable(option: string, path: string): void {
  attempt(option, path, () => accessSync(existsSync(path) ? path : dirname(path), constants.W_OK))
}

function attempt(option: string, path: string, write: () => void): void {
  try {
    write()
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new BadInput(`${option}: ${quoted(path)} cannot be written (${reason}). Give a path that can.`)
  }
}
