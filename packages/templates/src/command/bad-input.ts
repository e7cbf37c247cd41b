import { languageInForce } from "@pegbook/engine"

/** What a person gave the command and the command cannot use. Its message is the one line they read. */
export class BadInput extends Error {
  constructor(message: string) {
    super(oneLine(message))
    this.name = "BadInput"
  }
}

/** Text of any origin as one line: what was typed may hold line ends and codes that move a terminal's cursor. */
export function oneLine(text: string): string {
  return text.replace(/[\s\p{Cc}\p{Zl}\p{Zp}]+/gu, " ").trim()
}

/** A given text, quoted as the language in force does, and shortened where nobody would read it all. */
export function quoted(given: string): string {
  const line = oneLine(given)
  const short = line.length > 80 ? `${line.slice(0, 80)}…` : line
  return languageInForce().id === "fr" ? `«\u00a0${short}\u00a0»` : `"${short}"`
}
