import type { Book } from "@pegbook/engine"
import type { Given, Paper } from "./arguments.ts"
import { BadInput, quoted } from "./bad-input.ts"
import type { Opened } from "./open.ts"
import { writeFile } from "./write-file.ts"

/** Makes the build book of a workbook as one page of HTML. The screens' own; whoever runs the command brings it. */
export type BookPrinter = (book: Book, title: string, paper: Paper | undefined) => Promise<string>

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
  const page = await printer(book, title, paper)
  if (out === undefined) return [page]
  writeFile("--out", out, `${page}\n`)
  return [
    `Wrote ${out}: the build book of ${title}, to be opened in a browser and printed from there at full size.`,
    ...notProven,
  ]
}
