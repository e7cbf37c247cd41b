import { inWords, type UnitSystem } from "@pegbook/engine"
import { type FileRefusal, LARGEST_FILE } from "../storage/workbook-file.ts"
import { en } from "./en.ts"

/** Why a file was not opened and what to do, as sentences. */
export function fileWords(refusal: FileRefusal, system: UnitSystem): string {
  switch (refusal.why) {
    case "too_large":
      return en.files.tooLarge(refusal.bytes, LARGEST_FILE)
    case "unreachable":
      return en.files.unreachable
    case "not_json":
      return en.files.notJson
    case "problem": {
      const { says, next } = inWords(refusal.problem, system)
      return `${says} ${next}`
    }
  }
}
