import { readTable } from "@pegbook/engine"
import type { Answered, Asked } from "./messages.ts"

/** Reads texts beside the page, the last one asked for; in the page where no worker can be had. */
export interface TableReader {
  read(asked: Asked, found: (answer: Answered) => void): void
  stop(): void
}

export function createTableReader(): TableReader {
  /** Kept from one text to the next, unless it is still at work when another is asked for. */
  let idle: Worker | undefined
  let busy: Worker | undefined

  function begin(asked: Asked, found: (answer: Answered) => void): void {
    const worker = idle ?? new Worker(new URL("./worker.ts", import.meta.url), { type: "module" })
    idle = undefined
    busy = worker
    worker.onmessage = ({ data }: MessageEvent<Answered>) => {
      busy = undefined
      idle = worker
      found(data)
    }
    worker.onerror = (event) => {
      event.preventDefault()
      worker.terminate()
      busy = undefined
      found(readTable(asked.text, asked.options))
    }
    worker.postMessage(asked)
  }

  return {
    read(asked, found) {
      busy?.terminate()
      busy = undefined
      try {
        begin(asked, found)
      } catch {
        found(readTable(asked.text, asked.options))
      }
    },
    stop() {
      busy?.terminate()
      idle?.terminate()
    },
  }
}
