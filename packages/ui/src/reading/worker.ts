// Runs beside the page: a price list of ten thousand lines takes the reader longer than a keystroke may wait.

import { readTable } from "@pegbook/engine"
import type { Answered, Asked } from "./messages.ts"

/** What is used of a worker's surroundings; the types of pages do not have it. */
interface Surroundings {
  addEventListener(kind: "message", listener: (event: { readonly data: Asked }) => void): void
  postMessage(message: Answered): void
}

const here = globalThis as unknown as Surroundings

here.addEventListener("message", ({ data: { text, options } }) => here.postMessage(readTable(text, options)))
