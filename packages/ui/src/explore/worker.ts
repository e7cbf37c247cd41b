// Runs beside the page, so that typing never waits for a question that takes hundreds of recalculations. It opens a
// workbook of its own from what is saved; whoever asked ends it when they have had enough.
import { fetchTemplate, speak } from "@pegbook/templates"
import { answer } from "./answer.ts"
import type { AskedIn } from "./asked.ts"

addEventListener("message", async ({ data }: MessageEvent<AskedIn>) => {
  await speak(data.language)
  const definition = await fetchTemplate(data.template)
  if (definition === undefined) return
  for (const part of answer(definition, data)) postMessage(part)
})
