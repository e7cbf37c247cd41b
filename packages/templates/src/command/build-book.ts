import { type Book, type LanguageId, languageInForce } from "@pegbook/engine"
import type { Given, Paper } from "./arguments.ts"
import { BadInput, oneLine, quoted } from "./bad-input.ts"
import type { Opened } from "./open.ts"
import { phrases } from "./phrases.ts"
import { checkWritable, writeFile } from "./write-file.ts"

/** Makes books. The screens' own; whoever runs the command brings it. */
export interface BookPrinter {
  /** The build book of a workbook as one page of HTML. */
  readonly page: (
    book: Book,
    title: string,
    paper: Paper | undefined,
    language: LanguageId,
  ) => Promise<string>
  /** That page as PDF. Rejects where the browser made none. */
  readonly pdf: (page: string) => Promise<Uint8Array>
  /** Why no PDF can be made on this machine, and what to do; nothing where it can. */
  readonly noPdf: () => string | undefined
}

const isPdf = (path: string | undefined): boolean => path?.endsWith(".pdf") ?? false

/** Refuses what would only fail after the proofs have been waited for and the book has been made. */
export function checkBookPath({ out }: Given, printer: BookPrinter): void {
  if (out === undefined) return
  if (isPdf(out)) {
    const missing = printer.noPdf()
    if (missing !== undefined) throw new BadInput(`--out: ${missing}`)
  } else if (!out.endsWith(".html")) {
    throw new BadInput(
      `--out: ${quoted(out)} ends with neither .html nor .pdf. Write for example --out build-book.pdf.`,
    )
  }
  checkWritable("--out", out)
}

/** The build book, on standard output or in the file that `--out` names. */
export async function buildBook(
  { book, title = book.definition.title, notProven = [] }: Opened,
  { out, paper }: Given,
  printer: BookPrinter,
): Promise<readonly string[]> {
  const page = await printer.page(book, title, paper, languageInForce().id)
  if (out === undefined) return [page]
  if (!isPdf(out)) {
    writeFile("--out", out, `${page}\n`)
    return [phrases().wroteBook(out, title), ...notProven]
  }
  writeFile("--out", out, await pdfOf(page, printer))
  return [phrases().wrotePdf(out, title), ...notProven]
}

async function pdfOf(page: string, printer: BookPrinter): Promise<Uint8Array> {
  try {
    return await printer.pdf(page)
  } catch (error) {
    const reason = error instanceof Error ? oneLine(error.message) : String(error)
    throw new BadInput(
      `--out: ${reason}. Write --out build-book.html, and print that file from a browser at full size.`,
    )
  }
}
