/** What a tab tells the others: which workbook it saved or took away. */
export type Word = { readonly saved: string } | { readonly removed: string }

export interface OtherTabs {
  tell(word: Word): void
}

/** Word between the tabs of this browser. It may come late or not at all: what guards a workbook is its revision. */
export function otherTabs(onWord: (word: Word) => void): OtherTabs {
  const channel = new BroadcastChannel("pegbook workbooks")
  channel.addEventListener("message", ({ data }: MessageEvent<Word>) => onWord(data))
  return { tell: (word) => channel.postMessage(word) }
}
