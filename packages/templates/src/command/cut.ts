import { type Answer, type Case, readCase } from "../cutting/index.ts"
import type { Given } from "./arguments.ts"
import { BadInput, quoted } from "./bad-input.ts"
import { cutText } from "./cut-text.ts"
import { readJson } from "./read-file.ts"
import { said } from "./said.ts"
import { solveCases } from "./solving.ts"

/** Solves the cutting, splicing, sheet and buying cases of a file, in so many seconds each; the answers in the order of the cases. */
export async function cut(
  path: string,
  { json, seconds }: Pick<Given, "json" | "seconds">,
): Promise<readonly string[]> {
  const cases = casesIn(path)
  const answers = (await solveCases(cases, seconds)).map(spoken)
  if (json) return [JSON.stringify({ cases: answers.map(shown) }, null, 2)]
  return cases.flatMap((one, index) => {
    const answer = answers[index]
    return answer === undefined ? [] : [...(index === 0 ? [] : [""]), ...cutText(one, answer)]
  })
}

/** An answer with its sentences in the language in force. */
function spoken(answer: Answer): Answer {
  const { impossible } = answer
  return {
    ...answer,
    method: said(answer.method),
    notices: answer.notices.map(said),
    ...(impossible === undefined
      ? {}
      : {
          impossible: {
            ...impossible,
            says: said(impossible.says),
            changes: impossible.changes.map((change) => ({ ...change, says: said(change.says) })),
          },
        }),
  }
}

/** A plan's kind is the case's: it is said once. */
function shown({ plan, ...answer }: Answer) {
  if (plan === null) return { ...answer, plan }
  const { kind: _, ...rest } = plan
  return { ...answer, plan: rest }
}

function casesIn(path: string): Case[] {
  const given = readJson(path, "cut")
  const list = typeof given === "object" && given !== null ? Reflect.get(given, "cases") : undefined
  if (!Array.isArray(list)) {
    const was =
      list === undefined ? "has no list cases" : `has cases that are ${quoted(JSON.stringify(list))}`
    throw new BadInput(
      `cut: ${quoted(path)} ${was}. Accepted: { "cases": [ … ] } with a list of cases. Next: write the cases so.`,
    )
  }
  const seen = new Set<string>()
  return list.map((one: unknown, index) => {
    const read = readCase(one, `cases[${index}]`)
    if ("problem" in read) throw new BadInput(`cut: ${read.problem.says}`)
    const { id } = read.case
    if (seen.has(id)) {
      throw new BadInput(
        `cut: case ${id}: id was given ${quoted(id)} twice. Accepted: an id that no other case has. Next: correct id and try again.`,
      )
    }
    seen.add(id)
    return read.case
  })
}
