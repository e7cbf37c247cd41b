import type { Problem } from "../problems/problem.ts"
import type { Span } from "./ast.ts"
import { FORMULA_END } from "./formula-end.ts"

export interface Token {
  readonly kind: "number" | "text" | "name" | "mark" | "end"
  /** For a text, what is between the quotes, with "" as ". For the end, what a message calls it. */
  readonly text: string
  readonly span: Span
}

const SPACE = /\s+/y
const NUMBER = /(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/y
const NAME = /[\p{L}_][\p{L}\p{N}_]*(?:\.[\p{L}_][\p{L}\p{N}_]*)?/uy
const TEXT = /"((?:[^"]|"")*)"/y
const MARK = /<=|>=|<>|[-+*/^&=<>%();,]/y

const SHOWN_AT_MOST = 20

/** Cuts a formula into tokens, an `end` last. Stops at the first thing that belongs to no formula. */
export function readTokens(text: string): {
  readonly tokens: readonly Token[]
  readonly problem?: Problem
} {
  const tokens: Token[] = []
  let position = 0
  const take = (pattern: RegExp): RegExpExecArray | undefined => {
    pattern.lastIndex = position
    return pattern.exec(text) ?? undefined
  }
  const stopAt = (found: string, expected: string) => ({
    tokens,
    problem: {
      code: "unexpected",
      at: { span: { start: position, end: position + found.length } },
      found: shorten(found),
      expected,
    } satisfies Problem,
  })

  while (position < text.length) {
    const space = take(SPACE)
    if (space !== undefined) {
      position += space[0].length
      continue
    }
    const number = take(NUMBER)
    if (number !== undefined && !Number.isFinite(Number(number[0]))) {
      return stopAt(number[0], "a number below 1e308")
    }
    const name = number ?? take(NAME)
    const quoted = name ?? take(TEXT)
    const found = quoted ?? take(MARK)
    if (found === undefined) {
      return text[position] === '"'
        ? stopAt(text.slice(position), 'a text that ends with "')
        : stopAt(
            String.fromCodePoint(text.codePointAt(position) ?? 0),
            "a name, a number, an operator or a text in quotes",
          )
    }
    const kind = found === number ? "number" : found === name ? "name" : found === quoted ? "text" : "mark"
    const span = { start: position, end: position + found[0].length }
    tokens.push({ kind, text: kind === "text" ? (found[1] ?? "").replaceAll('""', '"') : found[0], span })
    position = span.end
  }
  tokens.push({ kind: "end", text: FORMULA_END, span: { start: text.length, end: text.length } })
  return { tokens }
}

/** Keeps what a message quotes short. */
export function shorten(found: string): string {
  const letters = Array.from(found.slice(0, SHOWN_AT_MOST * 2))
  return found.length > SHOWN_AT_MOST ? `${letters.slice(0, SHOWN_AT_MOST).join("")}…` : found
}
