import type { Outline } from "./outline.ts"

/** Names like the words given: an exact name, then names and labels that start with them, then that contain them all. */
export function searchNames(items: Outline, words: string): readonly string[] {
  const wanted = plain(words)
  if (wanted === "") return []
  const parts = wanted.split(" ")
  const ranked: { readonly name: string; readonly rank: number }[] = []
  for (const [name, item] of items) {
    const byName = plain(name)
    const byLabel = plain(item.entry.label)
    const both = `${byName} ${byLabel}`
    if (byName === wanted || byLabel === wanted) ranked.push({ name, rank: 0 })
    else if (byName.startsWith(wanted) || byLabel.startsWith(wanted)) ranked.push({ name, rank: 1 })
    else if (parts.every((part) => both.includes(part))) ranked.push({ name, rank: 2 })
  }
  // A stable sort: within a rank, the order of the work.
  return ranked.sort((a, b) => a.rank - b.rank).map(({ name }) => name)
}

/** Without capitals and accents, which people leave out when they are in a hurry. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .normalize("NFD")
    .replace(/\p{M}+/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()
}
