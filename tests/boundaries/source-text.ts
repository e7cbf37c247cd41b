/** A source split by what it is read for: code (strings in it kept) and comments, each with line ends kept. */
export interface SourceText {
  readonly code: string
  readonly comments: string
}

/**
 * Parts code from comments. Knows strings, templates and comments; a regular expression that holds a quote or
 * `//` could mislead it, which the tests would show as a false alarm, never as silence about an import.
 */
export function split(source: string): SourceText {
  const pattern = /\/\/[^\n]*|\/\*[\s\S]*?\*\/|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`/g
  const comments: string[] = []
  const code = source.replace(pattern, (part) => {
    if (!part.startsWith("/")) return part
    comments.push(part)
    return part.replace(/[^\n]/g, " ")
  })
  return { code, comments: comments.join("\n") }
}

/** What a source imports, loads or re-exports. `typeOnly`: leaves no trace when it runs. */
export function imports(code: string): { readonly from: string; readonly typeOnly: boolean }[] {
  const found: { from: string; typeOnly: boolean }[] = []
  const statement = /\b(?:import|export)\s+(type\s+)?(?:[\w*{}\s,$]+?\s+from\s+)?["']([^"']+)["']/g
  for (const [, type, from = ""] of code.matchAll(statement))
    found.push({ from, typeOnly: type !== undefined })
  const call = /\b(?:import|require)\s*\(\s*["'`]([^"'`]+)["'`]/g
  for (const [, from = ""] of code.matchAll(call)) found.push({ from, typeOnly: false })
  return found
}
