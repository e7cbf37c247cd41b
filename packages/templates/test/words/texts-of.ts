import { type Definition, openBook } from "@pegbook/engine"
import { translateDefinition } from "../../src/words/translate-definition.ts"

const found = new Map<Definition, ReadonlyMap<string, readonly string[]>>()

/** The texts of a definition and of its default workbook, each under the part of the template that it is first met in. */
export function textsOf(definition: Definition): ReadonlyMap<string, readonly string[]> {
  const texts = found.get(definition) ?? collect(definition)
  found.set(definition, texts)
  return texts
}

function collect(definition: Definition): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, Set<string>>()
  const into = (part: string) => (text: string | undefined) => {
    if (text === undefined || text === "") return text ?? ""
    const texts = found.get(part) ?? new Set<string>()
    found.set(part, texts)
    texts.add(text)
    return text
  }
  const { sections, stages, drawings, ...head } = definition
  translateDefinition({ ...head, sections: [] }, into("the template itself"))
  for (const section of sections)
    translateDefinition({ ...bare(head), sections: [section] }, into(section.id))
  translateDefinition(
    { ...bare(head), sections: [], ...(stages === undefined ? {} : { stages }) },
    into("stages"),
  )
  translateDefinition(
    { ...bare(head), sections: [], ...(drawings === undefined ? {} : { drawings }) },
    into("drawings"),
  )
  for (const text of valueTexts(definition)) into("values and solvers")(text)
  return new Map([...found].map(([part, texts]) => [part, [...texts]]))
}

function bare(head: Omit<Definition, "sections" | "stages" | "drawings">) {
  return { ...head, title: "", says: "", cautions: [] }
}

/** Values in words, choices, and what solvers say, with the template's own inputs in either system of units. */
function valueTexts(definition: Definition): ReadonlySet<string> {
  const texts = new Set<string>()
  for (const unitSystem of ["us", "metric"] as const) {
    const { book } = openBook(definition, { unitSystem })
    for (const name of book.names()) {
      const { reading, readings = [], shape, report, choices = [] } = book.entry(name)
      for (const choice of choices) texts.add(choice)
      if (shape !== "list")
        for (const one of [reading, ...readings])
          if (typeof one?.value === "string" && one.value !== "") texts.add(one.value)
      if (report === undefined) continue
      for (const said of [report.method, ...report.unmet, ...(report.advice ?? [])]) texts.add(said)
      if (report.objective !== undefined) texts.add(report.objective.says)
    }
  }
  return texts
}
