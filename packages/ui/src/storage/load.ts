import { type BookDocument, type Problem, readDocument } from "@pegbook/engine"
import { KEYS, type RecordStore, type Refusal, refusalOf } from "./store.ts"

export type Loaded =
  | { readonly kind: "none" }
  | { readonly kind: "opened"; readonly document: BookDocument }
  /** There was one that could not be read; it is now under `keptUnder`, untouched. */
  | { readonly kind: "set_aside"; readonly problem: Problem; readonly keptUnder: string }
  /** The same, but it could not be moved: nothing may be written over it. */
  | { readonly kind: "stuck"; readonly problem: Problem }
  | { readonly kind: "refused"; readonly refusal: Refusal }

/**
 * Reads the kept workbook. One that cannot be read is copied to a key of its own before anything may be saved
 * in its place. `knows` says whether a document's template is one of ours; it returns a problem if not.
 */
export async function loadWorkbook(
  store: RecordStore,
  now: () => Date,
  knows: (document: BookDocument) => Problem | undefined,
): Promise<Loaded> {
  let kept: unknown
  try {
    kept = await store.get(KEYS.workbook)
  } catch (thrown) {
    return { kind: "refused", refusal: refusalOf(thrown) }
  }
  if (kept === undefined) return { kind: "none" }

  const { document, problems } = readDocument(kept)
  const problem = document === undefined ? problems[0] : knows(document)
  if (document !== undefined && problem === undefined) return { kind: "opened", document }

  const said: Problem = problem ?? { code: "file_unreadable", at: {}, reason: "not a workbook" }
  const keptUnder = `${KEYS.workbook} ${now().toISOString()}`
  try {
    await store.put(keptUnder, kept)
    return { kind: "set_aside", problem: said, keptUnder }
  } catch {
    return { kind: "stuck", problem: said }
  }
}
