import { DocumentSchema } from "../book/document.ts"
import { z } from "../book/zod.ts"

/** The schema of a saved workbook as JSON Schema (draft 2020-12), for programs that write or check such files. */
export function documentJsonSchema(): Readonly<Record<string, unknown>> {
  return { ...z.toJSONSchema(DocumentSchema), title: "A saved workbook" }
}
