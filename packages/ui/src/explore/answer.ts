import {
  type Book,
  type Definition,
  inWords,
  openBook,
  ownName,
  type Problem,
  type SweptInput,
  seek,
  seekNear,
  sweepRows,
  sweptValues,
} from "@pegbook/engine"
import type { Answer, Asked, Question, Stand, SweptRange } from "./asked.ts"
import { sinceBought } from "./since-bought.ts"

/** Works out a question part by part, each when it is asked for; the last part is "done". Never throws for what a person typed. */
export function* answer(definition: Definition, asked: Asked): Generator<Answer, void> {
  const { document, question } = asked
  const refused = (problem: Problem): Answer => ({
    kind: "refused",
    ...inWords({ ...problem, at: {} }, document.unitSystem),
  })
  switch (question.kind) {
    case "remedies": {
      const { book } = openBook(definition, { document })
      yield { kind: "remedies", remedies: book.remediesFor(question.check) }
      break
    }
    case "draft": {
      const { book } = openBook(definition, { document })
      const { draft, replacing } = question
      const { problems } = replacing === undefined ? book.addEntry(draft) : book.changeEntry(replacing, draft)
      const [problem] = problems
      if (problem !== undefined) {
        yield refused(problem)
        return
      }
      const { measure, reading, readings, check } = book.entry(ownName(draft))
      const text = check === undefined ? (reading ?? readings?.[0])?.text : check.demand?.text
      yield { kind: "draft", measure, text: text ?? "" }
      break
    }
    case "sweep": {
      const inputs: SweptInput[] = []
      for (const range of question.inputs) {
        const read = valuesOf(definition, asked, range)
        if ("problem" in read) {
          yield refused(read.problem)
          return
        }
        inputs.push(read)
      }
      const [first, second] = inputs
      if (first === undefined) break
      const of = inputs.reduce((product, { values }) => product * values.length, 1)
      const { part, of: parts } = asked.share ?? { part: 0, of: 1 }
      let index = part
      const wanted = second === undefined ? ([first] as const) : ([first, second] as const)
      const sweep = { inputs: wanted, results: question.results, share: { part, of: parts } }
      for (const row of sweepRows(definition, document, sweep)) {
        yield { kind: "sweep", row, index, of }
        index += parts
      }
      break
    }
    case "seek":
      yield sought(definition, asked, question, refused)
      break
    case "near": {
      const found = seekNear(definition, document, question)
      yield "problem" in found ? refused(found.problem) : { kind: "near", values: found }
      break
    }
    case "since":
      yield { kind: "since", since: sinceBought(openBook(definition, { document }).book, question.scenario) }
      break
    case "compare":
      for (const stand of stands(openBook(definition, { document }).book, question.scenarios))
        yield { kind: "compare", stand, of: question.scenarios.length }
      break
  }
  yield { kind: "done" }
}

function valuesOf(
  definition: Definition,
  { document }: Asked,
  range: SweptRange,
): SweptInput | { readonly problem: Problem } {
  if ("values" in range) return range
  const read = sweptValues(definition, document, range.name, range)
  return "problem" in read ? read : { name: range.name, values: read.values }
}

function sought(
  definition: Definition,
  { document }: Asked,
  { input, toward, least, most, step }: Question & { readonly kind: "seek" },
  refused: (problem: Problem) => Answer,
): Answer {
  const found = seek(definition, document, {
    input,
    toward,
    step,
    ...(least === "" ? {} : { least }),
    ...(most === "" ? {} : { most }),
  })
  if ("problem" in found) return refused(found.problem)
  const { typed, reading, binds, tried } = found
  return {
    kind: "seek",
    binds,
    tried,
    ...(typed === undefined ? {} : { typed }),
    ...(reading === undefined ? {} : { text: reading.text }),
  }
}

/** How each scenario stands, and against the first. */
function* stands(book: Book, ids: readonly string[]): Generator<Stand, void> {
  const [base] = ids
  const known = new Set(book.scenarios().map(({ id }) => id))
  for (const id of ids.filter((one) => known.has(one))) {
    if (base !== undefined) book.switchTo(base)
    const against = base === undefined || id === base ? undefined : book.compare(base, id)
    book.switchTo(id)
    yield {
      id,
      title: book.scenario.title,
      ...readStand(book),
      ...(against === undefined ? {} : { against }),
    }
  }
}

function readStand(book: Book): Pick<Stand, "tables" | "checks" | "numbers"> {
  const tables: Record<string, readonly (readonly string[])[]> = {}
  const checks: Record<string, Stand["checks"][string]> = {}
  const numbers: Record<string, Stand["numbers"][string]> = {}
  for (const name of book.names()) {
    const { shape, check, reading } = book.entry(name)
    if (shape === "table") tables[name] = rowsOf(book, name)
    if (check !== undefined) checks[name] = check
    else if (shape === "one" && typeof reading?.value === "number")
      numbers[name] = { text: reading.text, value: reading.value }
  }
  return { tables, checks, numbers }
}

function rowsOf(book: Book, name: string): readonly (readonly string[])[] {
  const { columns, rowCount } = book.table(name)
  return Array.from({ length: rowCount }, (_, row) =>
    columns.map((column) => column.readings?.[row]?.text ?? ""),
  )
}
