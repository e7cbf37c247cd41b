import { readFileSync, statSync } from "node:fs"
import { BadInput, quoted } from "./bad-input.ts"

const MOST_BYTES = 20_000_000

/** The text of a file. `what` names the argument it came from, for the message. */
export function readText(path: string, what: string): string {
  try {
    const { size } = statSync(path)
    if (size > MOST_BYTES) {
      throw new BadInput(
        `${what}: ${quoted(path)} holds ${size} bytes, and at most ${MOST_BYTES} are read. Give a smaller file.`,
      )
    }
    return readFileSync(path, "utf8")
  } catch (error) {
    if (error instanceof BadInput) throw error
    const reason = error instanceof Error ? error.message : String(error)
    throw new BadInput(
      `${what}: ${quoted(path)} cannot be read (${reason}). Give the path of a file that can be.`,
    )
  }
}

/** The JSON in a file. `what` names the argument it came from, for the message. */
export function readJson(path: string, what: string): unknown {
  const text = readText(path, what)
  try {
    return JSON.parse(text) as unknown
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new BadInput(
      `${what}: ${quoted(path)} is not JSON (${reason}). Give a file that holds one JSON object.`,
    )
  }
}
