import type { Entry, Section } from "@pegbook/engine"

/** How a template's variant of a part differs, by entry name (`table.column` for a column's label or why). */
export interface Adaptation {
  readonly labels?: Readonly<Record<string, string>>
  /** Of inputs: the text that the template starts with; `null`: blank until the user enters it. */
  readonly defaults?: Readonly<Record<string, string | null>>
  readonly whys?: Readonly<Record<string, string>>
  /** Of inputs: the smallest and the greatest value accepted here, with their units. */
  readonly least?: Readonly<Record<string, string>>
  readonly most?: Readonly<Record<string, string>>
  /** Of inputs with choices: the texts accepted here. */
  readonly choices?: Readonly<Record<string, readonly string[]>>
  /** Of checks: what to do when it does not pass. */
  readonly advice?: Readonly<Record<string, readonly string[]>>
  /** Entries that the template gives itself, or does not have. */
  readonly without?: readonly string[]
}

/**
 * A template's variant of a part, from data alone.
 * Throws when the adaptation names an entry that the part does not have, or says of an entry what only another kind has
 * (a default of what is no input, choices of an input without any, advice of what is no check): a template that is wrong is found when it is loaded, not when somebody opens it.
 */
export function adapt(section: Section, adaptation: Adaptation): Section {
  const { labels = {}, defaults = {}, whys = {}, least = {}, most = {} } = adaptation
  const { choices = {}, advice = {}, without = [] } = adaptation
  const described = new Set(section.entries.flatMap(namesOf))
  const inputs = new Set(section.entries.filter((entry) => entry.kind === "input").map((entry) => entry.name))
  const choosable = new Set(
    section.entries.filter((entry) => entry.kind === "input" && entry.choices).map((entry) => entry.name),
  )
  const checks = new Set(section.entries.filter((entry) => entry.kind === "check").map((entry) => entry.name))
  const whole = new Set(section.entries.map((entry) => entry.name))
  refuseUnknown(section, "label", Object.keys(labels), described)
  refuseUnknown(section, "why", Object.keys(whys), described)
  refuseUnknown(section, "default", Object.keys(defaults), inputs)
  refuseUnknown(section, "least value", Object.keys(least), inputs)
  refuseUnknown(section, "greatest value", Object.keys(most), inputs)
  refuseUnknown(section, "list of choices", Object.keys(choices), choosable)
  refuseUnknown(section, "piece of advice", Object.keys(advice), checks)
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
    if (worded.kind === "input") {
      return {
        ...worded,
        ...given("default", defaults[entry.name]),
        ...given("least", least[entry.name]),
        ...given("most", most[entry.name]),
        ...given("choices", choices[entry.name]),
      }
    }
    return worded.kind === "check" ? { ...worded, ...given("advice", advice[entry.name]) } : worded
  }
  return {
    ...section,
    entries: section.entries.filter((entry) => !without.includes(entry.name)).map(adapted),
  }
}

/** A member to take over, where there is one. */
function given<K extends string, V>(member: K, value: V | undefined): Partial<Record<K, V>> {
  return value === undefined ? {} : ({ [member]: value } as Record<K, V>)
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
