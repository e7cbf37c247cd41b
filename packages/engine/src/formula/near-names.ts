/** A slip in one letter of three is still the same word. */
const LETTERS_PER_SLIP = 3
const MOST_SLIPS = 4

/**
 * The names that a misspelt one may have meant, nearest first, at most `most`. A slip is a letter left out, put
 * in, changed, or swapped with its neighbour; case does not count. A name that begins with the whole of what
 * was written, or ends with it, is near as well.
 */
export function nearNames(written: string, among: Iterable<string>, most = 3): readonly string[] {
  const given = written.toLowerCase()
  const allowed = Math.min(MOST_SLIPS, Math.max(1, Math.floor(given.length / LETTERS_PER_SLIP)))
  const near: { readonly name: string; readonly slips: number }[] = []
  for (const name of among) {
    const candidate = name.toLowerCase()
    const slips = slipsBetween(given, candidate, allowed)
    if (slips <= allowed) near.push({ name, slips })
    else if (given.length >= LETTERS_PER_SLIP && (candidate.startsWith(given) || candidate.endsWith(given))) {
      near.push({ name, slips: allowed + 1 })
    }
  }
  return near
    .sort((a, b) => a.slips - b.slips)
    .slice(0, most)
    .map(({ name }) => name)
}

/** Edit distance with swaps of neighbours; anything over `most` is only known to be over. */
function slipsBetween(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1
  let beforeLast: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const changed = a[i - 1] === b[j - 1] ? 0 : 1
      let slips = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + changed)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        slips = Math.min(slips, at(beforeLast, j - 2) + 1)
      }
      row.push(slips)
    }
    beforeLast = last
    last = row
  }
  return at(last, b.length)
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Number.POSITIVE_INFINITY
}
