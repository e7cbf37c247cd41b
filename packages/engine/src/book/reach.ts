import type { TableEntry } from "../definition/entry.ts"

/** Which nodes follow a node, and which tables have to be settled before a node can be read. Never altered. */
export interface Reach {
  /** These nodes and all that lean on them, however far away. */
  from(ids: Iterable<string>): ReadonlySet<string>
  /** The tables on which a node leans, however far away: a bit for each, by its place in the order of settling. */
  tablesBehind(id: string): bigint
  /** The bit of the table whose rows a node counts, or for whose solver it stands; none for any other node. */
  bitOf(id: string): bigint
  /** The tables of these bits, in the order in which they must be settled; those of one level together. */
  levelsOf(bits: bigint): readonly (readonly TableEntry[])[]
  readonly allTables: bigint
}

/**
 * Kahn's algorithm over the nodes. A table's level is one more than that of any table it leans on, so the tables of one
 * level can be settled together. Nodes of a ring, and what leans on them, are never calculated and stay out.
 *
 * @param dependsOn direct dependencies by node id; only nodes that lean on something are keys
 * @param countedBy the table whose rows a node counts, or for whose solver it stands
 */
export function reachOf(
  dependsOn: ReadonlyMap<string, readonly string[]>,
  countedBy: (id: string) => TableEntry | undefined,
): Reach {
  const users = invert(dependsOn)
  const { order, levels } = inOrder(dependsOn, users, countedBy)
  const bits = new Map(levels.flat().map((table, place) => [table, 1n << BigInt(place)]))
  const bitOfTable = (table: TableEntry | undefined): bigint =>
    (table === undefined ? undefined : bits.get(table)) ?? 0n
  const behind = new Map<string, bigint>()
  for (const id of order) {
    let mask = bitOfTable(countedBy(id))
    for (const need of dependsOn.get(id) ?? []) mask |= behind.get(need) ?? 0n
    behind.set(id, mask)
  }
  return {
    from(ids) {
      const reached = new Set(ids)
      for (const id of reached) for (const user of users.get(id) ?? []) reached.add(user)
      return reached
    },
    tablesBehind: (id) => behind.get(id) ?? 0n,
    bitOf: (id) => bitOfTable(countedBy(id)),
    levelsOf: (wanted) =>
      levels
        .map((level) => level.filter((table) => (bitOfTable(table) & wanted) !== 0n))
        .filter((level) => level.length > 0),
    allTables: (1n << BigInt(bits.size)) - 1n,
  }
}

/** What leans directly on each node. */
export function invert(
  needs: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, readonly string[]> {
  const users = new Map<string, string[]>()
  for (const [id, all] of needs) {
    for (const need of all) {
      const list = users.get(need)
      if (list === undefined) users.set(need, [id])
      else list.push(id)
    }
  }
  return users
}

function inOrder(
  dependsOn: ReadonlyMap<string, readonly string[]>,
  users: ReadonlyMap<string, readonly string[]>,
  countedBy: (id: string) => TableEntry | undefined,
): { readonly order: readonly string[]; readonly levels: readonly (readonly TableEntry[])[] } {
  const waiting = new Map<string, number>()
  for (const [id, needs] of dependsOn) waiting.set(id, needs.filter((need) => dependsOn.has(need)).length)
  const order = [...waiting].filter(([, count]) => count === 0).map(([id]) => id)
  const reached = new Map<string, number>()
  const levels: TableEntry[][] = []
  for (const id of order) {
    const level = reached.get(id) ?? 0
    const table = countedBy(id)
    if (table !== undefined) {
      const peers = levels[level] ?? []
      levels[level] = peers
      peers.push(table)
    }
    for (const user of users.get(id) ?? []) {
      reached.set(user, Math.max(reached.get(user) ?? 0, level + (table === undefined ? 0 : 1)))
      const left = (waiting.get(user) ?? 0) - 1
      waiting.set(user, left)
      if (left === 0) order.push(user)
    }
  }
  return { order, levels }
}
