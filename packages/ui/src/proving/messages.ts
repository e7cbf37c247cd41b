import type { Solution } from "@pegbook/engine"

/** What a worker is asked to prove. */
export interface Asked {
  readonly prover: string
  readonly given: unknown
  /** That it may take, about. */
  readonly seconds: number
}

export type Answered = { readonly solution: Solution } | { readonly failed: string }
