import type { Entry, Section } from "@pegbook/engine"

/** How a template's variant of a part differs, by entry name (`table.column` for a column's label or why). */
export interface Adaptation {
  readonly labels?: Readonly<Record<string, string>>
  /** Of inputs: the text that the template starts with; `null`: blank until the user enters it. */
  readonly defaults?: Readonly<Record<string, string | null>>
  readonly whys?: Readonly<Record<string, string>>
  /** Entries that the template gives itself, or does not have. */
  readonly without?: readonly string[]
}

/**
 * A template's variant of a part, from data alone.
 * Throws when the adaptation names an entry that the part does not have, or a default of what is no input:
 * a template that is wrong is found when it is loaded, not when somebody opens it.
 */
export function adapt(section: Section, adaptation: Adaptation): Section {
  const { labels = {}, defaults = {}, whys = {}, without = [] } = adaptation
  const described = new Set(section.entries.flatMap(namesOf))
  const inputs = new Set(section.entries.filter((entry) => entry.kind === "input").map((entry) => entry.name))
  const whole = new Set(section.entries.map((entry) => entry.name))
  refuseUnknown(section, "label", Object.keys(labels), described)
  refuseUnknown(section, "why", Object.keys(whys), described)
  refuseUnknown(section, "default", Object.keys(defaults), inputs)
  refuseUnknown(section, "left-out entry", without, whole)

  const reworded = <T extends { readonly label: string; readonly why: string }>(
    name: string,
    described: T,
  ): T => ({
    ...described,
    label: labels[name] ?? described.label,
    why: whys[name] ?? described.why,
  })
  const adapted = (entry: Entry): Entry => {
    const worded = reworded(entry.name, entry)
    if (worded.kind === "table") {
      return {
        ...worded,
        columns: worded.columns.map((column) => reworded(`${entry.name}.${column.name}`, column)),
      }
    }
    const startsWith = defaults[entry.name]
    return worded.kind === "input" && startsWith !== undefined ? { ...worded, default: startsWith } : worded
  }
  return {
    ...section,
    entries: section.entries.filter((entry) => !without.includes(entry.name)).map(adapted),
  }
}

function namesOf(entry: Entry): readonly string[] {
  return entry.kind === "table"
    ? [entry.name, ...entry.columns.map((column) => `${entry.name}.${column.name}`)]
    : [entry.name]
}

function refuseUnknown(
  section: Section,
  what: string,
  given: readonly string[],
  known: ReadonlySet<string>,
): void {
  const unknown = given.filter((name) => !known.has(name))
  if (unknown.length > 0) {
    throw new RangeError(
      `The part "${section.id}" cannot take a ${what} for ${unknown.join(", ")}; it has ${[...known].join(", ")}`,
    )
  }
}
