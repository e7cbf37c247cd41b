/** A thing to cut: what it takes of the room, its kerf counted in, and the most that are of use. */
export interface PatternItem {
  readonly size: number
  readonly most: number
}

/** How many of each item, in the order of the items. */
export type Pattern = readonly number[]

/** What each item is worth, none less than 0, and the least that a pattern has to be worth. */
export interface Worth {
  readonly values: readonly number[]
  readonly least: number
}

const MOST_STEPS = 4_000_000

/**
 * All ways to fill the room to which nothing of use can be added, or `undefined` when there are more than `limit`.
 * Items are best given largest first. A pattern that can be added to is left out: cutting more than is needed is allowed.
 * So is one that is worth less than is asked.
 */
export function maximalPatterns(
  items: readonly PatternItem[],
  room: number,
  limit: number,
  worth: Worth = { values: [], least: Number.NEGATIVE_INFINITY },
): Pattern[] | undefined {
  const { values, least: leastWorth } = worth
  // The best worth for room among this item and those after it.
  const ratios = items.map((_, from) =>
    items.reduce(
      (best, { size }, index) => (index < from ? best : Math.max(best, (values[index] ?? 0) / size)),
      0,
    ),
  )
  const found: Pattern[] = []
  const counts = items.map(() => 0)
  let steps = 0
  const visit = (at: number, left: number, value: number): boolean => {
    steps += 1
    if (steps > MOST_STEPS) return false
    if (value + left * (ratios[at] ?? 0) < leastWorth) return true
    const item = items[at]
    if (item === undefined) {
      if (items.some(({ size, most }, index) => size <= left && (counts[index] ?? 0) < most)) return true
      if (counts.every((count) => count === 0)) return true
      found.push([...counts])
      return found.length <= limit
    }
    const fits = Math.min(item.most, Math.floor(left / item.size))
    // Of the last item as many as fit: with fewer, one could be added.
    const least = at === items.length - 1 ? fits : 0
    for (let count = fits; count >= least; count -= 1) {
      counts[at] = count
      if (!visit(at + 1, left - count * item.size, value + count * (values[at] ?? 0))) return false
    }
    counts[at] = 0
    return true
  }
  return visit(0, room, 0) ? found : undefined
}

/** All ways to fill the room, the empty one and those that can be added to as well; `undefined` past the limit. */
export function allPatterns(
  items: readonly PatternItem[],
  room: number,
  limit: number,
): Pattern[] | undefined {
  let found: { counts: number[]; left: number }[] = [{ counts: [], left: room }]
  for (const { size, most } of items) {
    const longer: { counts: number[]; left: number }[] = []
    for (const { counts, left } of found) {
      const fits = Math.min(most, Math.floor(left / size))
      for (let count = 0; count <= fits; count += 1)
        longer.push({ counts: [...counts, count], left: left - count * size })
      if (longer.length > limit) return undefined
    }
    found = longer
  }
  return found.map(({ counts }) => counts)
}

/**
 * The pattern that is worth most, and its worth: the knapsack with a most for each item. Values may be any numbers; those
 * that are not above 0 are never taken. By depth first with the fractional bound; `isBest` is false where that took too
 * many steps, and something may be worth more.
 */
export function bestPattern(
  items: readonly PatternItem[],
  room: number,
  values: readonly number[],
): { readonly pattern: Pattern; readonly value: number; readonly isBest: boolean } {
  const order = items
    .map(({ size, most }, index) => ({ index, size, most, value: values[index] ?? 0 }))
    .filter(({ value, size }) => value > 0 && size <= room)
    .sort((a, b) => b.value / b.size - a.value / a.size)
  const counts = items.map(() => 0)
  let best = { pattern: [...counts], value: 0 }
  let steps = 0
  const visit = (at: number, left: number, value: number): void => {
    steps += 1
    if (value > best.value) best = { pattern: [...counts], value }
    const item = order[at]
    if (item === undefined || steps > MOST_STEPS) return
    if (value + (left / item.size) * item.value <= best.value + 1e-9) return
    for (let count = Math.min(item.most, Math.floor(left / item.size)); count >= 0; count -= 1) {
      counts[item.index] = count
      visit(at + 1, left - count * item.size, value + count * item.value)
    }
  }
  visit(0, room, 0)
  return { pattern: best.pattern, value: best.value, isBest: steps <= MOST_STEPS }
}
