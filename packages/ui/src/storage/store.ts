/** Where records are kept. Everything may be refused by the browser: the promises then reject. */
export interface RecordStore {
  get(key: string): Promise<unknown>
  put(key: string, value: unknown): Promise<void>
}

/** The keys in use. What cannot be read is set aside under a key of its own. */
export const KEYS = { workbook: "workbook", preferences: "preferences" } as const

export type Refusal =
  | { readonly why: "denied" }
  | { readonly why: "full" }
  | { readonly why: "other"; readonly reason: string }

/** Why a store refused, from what it threw. The names are those of the web's own DOMException. */
export function refusalOf(thrown: unknown): Refusal {
  const name = thrown instanceof Error ? thrown.name : ""
  if (name === "QuotaExceededError") return { why: "full" }
  if (name === "SecurityError" || name === "InvalidStateError" || name === "NotAllowedError")
    return { why: "denied" }
  return {
    why: "other",
    reason: thrown instanceof Error && thrown.message !== "" ? thrown.message : String(thrown),
  }
}
