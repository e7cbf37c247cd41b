/** Numbers of lines that begin nearer to one another are written as one text. */
const APART = 11

/** The numbers of lines beside where they begin, by their heights in the drawing; lines that begin together share one text. */
export function numbersOfLines(
  heights: readonly number[],
): readonly { readonly at: number; readonly says: string }[] {
  const groups: { at: number; last: number; numbers: number[] }[] = []
  for (const [place, at] of [...heights.entries()].sort(([, a], [, b]) => a - b)) {
    const group = groups.at(-1)
    if (group !== undefined && at - group.last < APART) {
      group.numbers.push(place + 1)
      group.last = at
    } else groups.push({ at, last: at, numbers: [place + 1] })
  }
  return groups.map(({ at, last, numbers }) => ({
    at: (at + last) / 2,
    says: shortened(runs(numbers.toSorted((a, b) => a - b))),
  }))
}

/** The longest text beside a chart, in characters. */
const LONGEST = 9

function shortened(says: string): string {
  return says.length <= LONGEST ? says : `${says.slice(0, LONGEST - 1)}…`
}

/** Numbers that follow one another are written as "1–4". */
function runs(numbers: readonly number[]): string {
  const found: { readonly first: number; last: number }[] = []
  for (const number of numbers) {
    const run = found.at(-1)
    if (run !== undefined && number === run.last + 1) run.last = number
    else found.push({ first: number, last: number })
  }
  return found.map(({ first, last }) => (first === last ? `${first}` : `${first}–${last}`)).join(" ")
}
