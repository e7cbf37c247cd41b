import type { Refusal } from "../storage/store.ts"
import { spoken } from "./spoken.ts"

/** Why something is not saved, as a sentence. */
export function refusalWords(refusal: Refusal): string {
  switch (refusal.why) {
    case "denied":
      return spoken.kept.denied
    case "full":
      return spoken.kept.full
    case "overtaken":
      return spoken.kept.overtaken
    case "cleared":
      return spoken.kept.cleared
    case "other":
      return spoken.kept.failed(refusal.reason)
  }
}
