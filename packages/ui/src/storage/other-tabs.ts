/** What a tab tells the others: which workbook it saved, or that the list of them is another one. */
export interface Word {
  readonly saved?: string
}

export interface OtherTabs {
  tell(word: Word): void
}

/** Word between the tabs of this browser: of a workbook open in two, the last to save is the one that is kept. */
export function otherTabs(onWord: (word: Word) => void): OtherTabs {
  const channel = new BroadcastChannel("pegbook workbooks")
  channel.addEventListener("message", ({ data }: MessageEvent<Word>) => onWord(data))
  return { tell: (word) => channel.postMessage(word) }
}
