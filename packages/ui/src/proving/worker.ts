// Runs beside the page: a search may take all the time it is given, and the page is never held up by it.

import { prove } from "@pegbook/templates/cutting"
import type { Answered, Asked } from "./messages.ts"

/** What is used of a worker's surroundings; the types of pages do not have it. */
interface Surroundings {
  addEventListener(kind: "message", listener: (event: { readonly data: Asked }) => void): void
  postMessage(message: Answered): void
}

const here = globalThis as unknown as Surroundings

here.addEventListener("message", ({ data: { prover, given, seconds } }) => {
  prove(prover, given, { deadline: seconds }).then(
    (solution) => here.postMessage({ solution }),
    (reason: unknown) =>
      here.postMessage({ failed: reason instanceof Error ? reason.message : String(reason) }),
  )
})
