import type { Book, Moved } from "@pegbook/engine"

/**
 * The names whose views an edit may have changed: the one edited, all that moved with their tables, and what leans on
 * them directly.
 */
export function touchedBy(
  book: Pick<Book, "leanedOnBy">,
  edited: string,
  moved: readonly Moved[],
): ReadonlySet<string> {
  const touched = new Set<string>([edited])
  for (const one of moved) touched.add(one.name)
  for (const name of [...touched]) for (const above of book.leanedOnBy(name)) touched.add(above)
  for (const name of [...touched]) {
    const dot = name.indexOf(".")
    if (dot > 0) touched.add(name.slice(0, dot))
  }
  return touched
}
