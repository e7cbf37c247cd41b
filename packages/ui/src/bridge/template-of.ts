import type { BookDocument, Definition, Problem } from "@pegbook/engine"
import { DEMO, fetchTemplate, OFFERED, offer } from "@pegbook/templates"

/** A part of the program that could not be fetched, where a person waits for it. */
export class Unfetched extends Error {}

/** The template with this id, or else the demonstration. @throws Unfetched */
export async function templateOf(id: string): Promise<Definition> {
  const found = await fetchTemplate(id)
    .then((one) => one ?? fetchTemplate(DEMO))
    .catch((thrown) => {
      throw new Unfetched(`the template ${id}`, { cause: thrown })
    })
  if (found === undefined) throw new Error(`there is no template ${DEMO}`)
  return found
}

/** What is wrong with a document that is of no template here. */
export function unknownTemplate(document: BookDocument): Problem | undefined {
  if (offer(document.template) !== undefined) return undefined
  return { code: "file_unknown_template", at: {}, template: document.template, known: OFFERED }
}
