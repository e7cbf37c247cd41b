import { type Clock, windowClock } from "../storage/keeper.ts"
import { type OtherTabs, otherTabs, type Word } from "../storage/other-tabs.ts"
import { smaller } from "../storage/smaller.ts"
import { type ThisTab, thisTab } from "../storage/this-tab.ts"
import { type WhenPainted, whenPainted } from "./painted.ts"

/** What a session needs from around it, besides the stores. */
export interface Around {
  readonly now: () => Date
  readonly clock: Clock
  readonly whenPainted: WhenPainted
  /** The languages the person reads, most wanted first. */
  readonly languages: readonly string[]
  /** An id that no workbook has. */
  readonly newId: () => string
  /** A picture painted anew, not larger than is kept; rejects what is no picture. */
  readonly smaller: (picture: Blob) => Promise<Blob>
  /** Loads the page anew, with everything that was kept. */
  readonly reload: () => void
  readonly tabs: (onWord: (word: Word) => void) => OtherTabs
  /** Which workbook is open in this tab, for when it is loaded anew: another tab may have another one open. */
  readonly thisTab: ThisTab
}

export function aroundPage(): Around {
  return {
    now: () => new Date(),
    clock: windowClock,
    whenPainted,
    languages: navigator.languages,
    // Also where the page came without encryption, which takes away the browser's own maker of ids.
    newId: () =>
      [...crypto.getRandomValues(new Uint8Array(10))]
        .map((byte) => byte.toString(16).padStart(2, "0"))
        .join(""),
    smaller,
    reload: () => location.reload(),
    tabs: otherTabs,
    thisTab: thisTab(),
  }
}
