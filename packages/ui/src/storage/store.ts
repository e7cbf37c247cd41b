import type { Photos } from "./photos.ts"

/** Where records are kept. Everything may be refused by the browser: the promises then reject. */
export interface RecordStore {
  get(key: string): Promise<unknown>
  put(key: string, value: unknown): Promise<void>
}

/** Records that are listed and taken away as well: the workbooks, by their ids. */
export interface ListedStore {
  all(): Promise<ReadonlyMap<string, unknown>>
  /** Rejects as overtaken, and writes nothing, where another tab has written this revision of the record before. */
  put(key: string, value: unknown, revision: number): Promise<void>
  remove(key: string): Promise<void>
}

export interface Stores {
  readonly photos: Photos
  /** What belongs to no workbook, by the names in `KEYS`. */
  readonly records: RecordStore
  readonly workbooks: ListedStore
  /** Called when the browser has thrown everything away while the page was open. */
  onCleared(listener: () => void): void
}

export const KEYS = { preferences: "preferences" } as const

export type Refusal =
  | { readonly why: "denied" }
  | { readonly why: "full" }
  | { readonly why: "overtaken" }
  | { readonly why: "cleared" }
  | { readonly why: "other"; readonly reason: string }

/** Why a store refused, from what it threw. The names are those of the web's own DOMException. */
export function refusalOf(thrown: unknown): Refusal {
  const name = thrown instanceof Error ? thrown.name : ""
  if (name === "QuotaExceededError") return { why: "full" }
  // A revision is added once; who comes second is refused.
  if (name === "ConstraintError") return { why: "overtaken" }
  if (name === "SecurityError" || name === "InvalidStateError" || name === "NotAllowedError")
    return { why: "denied" }
  return {
    why: "other",
    reason: thrown instanceof Error && thrown.message !== "" ? thrown.message : String(thrown),
  }
}
