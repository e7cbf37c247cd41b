import type { WorkbookPage } from "./workbook-page.ts"

/** Keeps the workers waiting until `letWorkersStart` is called, so that what is there before a proof can be read. */
export function holdWorkers(): void {
  const held: (() => void)[] = []
  let open = false
  const RealWorker = window.Worker
  class HeldWorker extends RealWorker {
    override postMessage(message: unknown): void {
      if (open) super.postMessage(message)
      else held.push(() => super.postMessage(message))
    }
  }
  Object.assign(window, {
    Worker: HeldWorker,
    letWorkersStart: () => {
      open = true
      for (const send of held.splice(0)) send()
    },
  })
}

export const letWorkersStart = (workbook: WorkbookPage) =>
  workbook.page.evaluate(() => (window as unknown as { letWorkersStart: () => void }).letWorkersStart())
