import type { Refusal } from "../storage/store.ts"
import { en } from "./en.ts"

/** Why something is not saved, as a sentence. */
export function refusalWords(refusal: Refusal): string {
  switch (refusal.why) {
    case "denied":
      return en.kept.denied
    case "full":
      return en.kept.full
    case "overtaken":
      return en.kept.overtaken
    case "cleared":
      return en.kept.cleared
    case "other":
      return en.kept.failed(refusal.reason)
  }
}
