/**
 * Finds every ring: names that lean on one another, or one that leans on itself. A name that is leant on but
 * is not a key is passed over.
 *
 * @param dependsOn what each name leans on, in the order in which the names are defined
 * @returns for each ring its members, beginning with the one defined first and each next to one that it leans
 *   on where there is a choice of ways; rings in the order of their first members
 */
export function findRings(dependsOn: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const definedAt = new Map([...dependsOn.keys()].map((name, position) => [name, position]))
  const position = (name: string): number => definedAt.get(name) ?? -1
  return components(dependsOn)
    .filter(([first = "", ...others]) => others.length > 0 || dependsOn.get(first)?.includes(first))
    .map((members) => {
      const first = members.reduce((a, b) => (position(a) <= position(b) ? a : b))
      return inOrderOfLeaning(first, new Set(members), dependsOn)
    })
    .sort(([a = ""], [b = ""]) => position(a) - position(b))
}

/** Where a walk through the graph has got to: a name, and how many of what it leans on have been seen. */
interface Step {
  readonly name: string
  seen: number
}

/** Strongly connected components, by Tarjan's algorithm with a stack of its own: chains may be long. */
function components(dependsOn: ReadonlyMap<string, readonly string[]>): string[][] {
  const found: string[][] = []
  const order = new Map<string, number>()
  const lowest = new Map<string, number>()
  const open: string[] = []
  const isOpen = new Set<string>()

  const lower = (name: string, to: number | undefined): void => {
    lowest.set(name, Math.min(lowest.get(name) ?? Number.POSITIVE_INFINITY, to ?? Number.POSITIVE_INFINITY))
  }
  const enter = (name: string, steps: Step[]): void => {
    order.set(name, order.size)
    lower(name, order.get(name))
    open.push(name)
    isOpen.add(name)
    steps.push({ name, seen: 0 })
  }
  const close = (root: string): void => {
    const members = open.splice(open.lastIndexOf(root))
    for (const member of members) isOpen.delete(member)
    found.push(members)
  }

  for (const root of dependsOn.keys()) {
    if (order.has(root)) continue
    const steps: Step[] = []
    enter(root, steps)
    for (let step = steps.at(-1); step !== undefined; step = steps.at(-1)) {
      const { name } = step
      const next = dependsOn.get(name)?.[step.seen++]
      if (next === undefined) {
        steps.pop()
        const above = steps.at(-1)
        if (above !== undefined) lower(above.name, lowest.get(name))
        if (lowest.get(name) === order.get(name)) close(name)
      } else if (!order.has(next)) {
        if (dependsOn.has(next)) enter(next, steps)
      } else if (isOpen.has(next)) lower(name, order.get(next))
    }
  }
  return found
}

function inOrderOfLeaning(
  first: string,
  members: ReadonlySet<string>,
  dependsOn: ReadonlyMap<string, readonly string[]>,
): readonly string[] {
  const ordered = new Set<string>([first])
  const steps: Step[] = [{ name: first, seen: 0 }]
  for (let step = steps.at(-1); step !== undefined; step = steps.at(-1)) {
    const next = dependsOn.get(step.name)?.[step.seen++]
    if (next === undefined) steps.pop()
    else if (members.has(next) && !ordered.has(next)) {
      ordered.add(next)
      steps.push({ name: next, seen: 0 })
    }
  }
  return [...ordered]
}
