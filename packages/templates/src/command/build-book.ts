import { type Book, type LanguageId, languageInForce } from "@pegbook/engine"
import type { Given, Paper } from "./arguments.ts"
import { BadInput, quoted } from "./bad-input.ts"
import type { Opened } from "./open.ts"
import { phrases } from "./phrases.ts"
import { writeFile } from "./write-file.ts"

/** Makes the build book of a workbook as one page of HTML. The screens' own; whoever runs the command brings it. */
export type BookPrinter = (
  book: Book,
  title: string,
  paper: Paper | undefined,
  language: LanguageId,
) => Promise<string>

/** Refuses what would only fail after the proofs have been waited for. */
export function checkBookPath({ out }: Given): void {
  if (out === undefined || out.endsWith(".html")) return
  throw new BadInput(
    `--out: ${quoted(out)} does not end with .html. Write for example --out build-book.html.`,
  )
}

/** The build book, on standard output or in the file that `--out` names. */
export async function buildBook(
  { book, title = book.definition.title, notProven = [] }: Opened,
  { out, paper }: Given,
  printer: BookPrinter,
): Promise<readonly string[]> {
  const page = await printer(book, title, paper, languageInForce().id)
  if (out === undefined) return [page]
  writeFile("--out", out, `${page}\n`)
  return [phrases().wroteBook(out, title), ...notProven]
}
