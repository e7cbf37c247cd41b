import { inWords, type UnitSystem } from "@pegbook/engine"
import { type FileRefusal, LARGEST_FILE } from "../storage/workbook-file.ts"
import { spoken } from "./spoken.ts"

/** Why a file was not opened and what to do, as sentences. */
export function fileWords(refusal: FileRefusal, system: UnitSystem): string {
  switch (refusal.why) {
    case "too_large":
      return spoken.files.tooLarge(refusal.bytes, LARGEST_FILE)
    case "unreachable":
      return spoken.files.unreachable
    case "not_json":
      return spoken.files.notJson
    case "is_table":
      return spoken.files.isTable
    case "problem": {
      const { says, next } = inWords(refusal.problem, system)
      return `${says} ${next}`
    }
  }
}
