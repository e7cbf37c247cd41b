import { type BookDocument, type Problem, readDocument } from "@pegbook/engine"
import type { Knows } from "./kept-workbook.ts"
import type { FilePhoto } from "./photo-file.ts"

/** In bytes. Only many scenarios with long tables come near it; photos have what is left. */
export const LARGEST_FILE = 20_000_000

/** What is needed of a file that a person chose; the web's own `File` is one. */
export interface ChosenFile {
  readonly name: string
  readonly size: number
  text(): Promise<string>
}

export type FileRefusal =
  | { readonly why: "too_large"; readonly bytes: number }
  | { readonly why: "unreachable" }
  | { readonly why: "not_json" }
  /** By its name: one that belongs to a spreadsheet. */
  | { readonly why: "is_table" }
  | { readonly why: "problem"; readonly problem: Problem }

/** A workbook as a file: its document, with its title and photos beside it. The name has only what every system allows. */
export function workbookFile(
  title: string,
  document: BookDocument,
  photos: readonly FilePhoto[] = [],
): { readonly name: string; readonly text: string } {
  const name = title
    .normalize("NFKC")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .slice(0, 80)
    .replace(/^-+|-+$/g, "")
  return {
    name: `${name === "" ? "workbook" : name}.json`,
    text: `${JSON.stringify({ ...document, title, ...(photos.length === 0 ? {} : { photos }) }, null, 2)}\n`,
  }
}

/** What a file holds: its photos as they stand there, whatever that is. */
export interface ReadFile {
  readonly title?: string
  readonly document: BookDocument
  readonly photos: unknown
}

/** Reads a chosen file, whatever it is; never rejects. */
export async function readWorkbookFile(
  file: ChosenFile,
  knows: Knows,
): Promise<ReadFile | { readonly refusal: FileRefusal }> {
  if (file.size > LARGEST_FILE) return { refusal: { why: "too_large", bytes: file.size } }
  const text = await file.text().catch(() => undefined)
  if (text === undefined) return { refusal: { why: "unreachable" } }
  let json: unknown
  try {
    json = JSON.parse(text)
  } catch {
    return { refusal: { why: /\.(?:csv|tsv|ods|xlsx?)$/i.test(file.name) ? "is_table" : "not_json" } }
  }
  const { document: read, problems } = readDocument(json)
  const problem = read === undefined ? problems[0] : knows(read)
  if (read === undefined || problem !== undefined) {
    return {
      refusal: {
        why: "problem",
        problem: problem ?? { code: "file_unreadable", at: {}, reason: "It is not a workbook." },
      },
    }
  }
  const { title, photos, ...document } = read
  return typeof title === "string" && title.trim() !== "" && title.length <= 200
    ? { title: title.trim(), document, photos }
    : { document, photos }
}
