import type { Problem } from "../problems/problem.ts"
import type { Ast, Span } from "./ast.ts"
import { FUNCTIONS } from "./functions/index.ts"
import { nearNames } from "./near-names.ts"
import { infixRule } from "./operators.ts"
import { readTokens, shorten, type Token } from "./tokens.ts"

/** In UTF-16 units, the leading = included. */
export const MOST_CHARACTERS = 8_000

/**
 * How many levels of parts within parts a formula may have. Each parenthesis, sign, % and operator is a level
 * above its parts, and a call is two, the function and its parentheses; so a long chain of additions is too
 * deep as well. Whatever walks a formula, ours or a library's, may then recurse.
 */
export const MOST_LEVELS = 64

/** A part that was read, and how many levels it has. */
interface Part {
  readonly ast: Ast
  readonly levels: number
}

/** Thrown within this file only, at the first thing that cannot be read past. */
class Refusal {
  constructor(readonly problem: Problem) {}
}

/**
 * Reads a formula: OpenFormula's grammar without references, arrays and units. A leading = is dropped.
 * Never throws. There is an `ast` exactly when there are no problems.
 */
export function parseFormula(text: string): { readonly ast?: Ast; readonly problems: readonly Problem[] } {
  if (text.length > MOST_CHARACTERS) {
    return {
      problems: [{ code: "formula_too_long", at: {}, length: text.length, most: MOST_CHARACTERS }],
    }
  }
  const start = /^\s*=?/.exec(text)?.[0].length ?? 0
  if (text.slice(start).trim() === "") return { problems: [{ code: "formula_empty", at: {} }] }

  // Blanks stand in for what is dropped, so that spans are those of the text as given.
  const { tokens, problem } = readTokens(" ".repeat(start) + text.slice(start))
  if (problem !== undefined) return { problems: [problem] }
  try {
    const reader = new Reader(tokens)
    const ast = reader.formula()
    return reader.problems.length > 0 ? { problems: reader.problems } : { ast, problems: [] }
  } catch (refusal) {
    if (refusal instanceof Refusal) return { problems: [refusal.problem] }
    throw refusal
  }
}

class Reader {
  readonly problems: Problem[] = []
  private position = 0
  private depth = 0

  constructor(private readonly tokens: readonly Token[]) {}

  formula(): Ast {
    const { ast } = this.infix(0)
    if (this.next.kind !== "end") this.unexpected("an operator or the end of the formula")
    return ast
  }

  /** Reads operators that bind tighter than `above`, from the left. */
  private infix(above: number): Part {
    let left = this.percent()
    for (;;) {
      const rule = this.next.kind === "mark" ? infixRule(this.next.text) : undefined
      if (rule === undefined || rule.precedence <= above) return left
      this.position++
      const right = this.infix(rule.precedence)
      const span = { start: left.ast.span.start, end: right.ast.span.end }
      left = this.over({ type: "infix", operator: rule.symbol, left: left.ast, right: right.ast, span }, [
        left,
        right,
      ])
    }
  }

  private percent(): Part {
    let part = this.prefix()
    while (this.isNext("%")) {
      const { end } = this.take().span
      const span = { start: part.ast.span.start, end }
      part = this.over({ type: "percent", operand: part.ast, span }, [part])
    }
    return part
  }

  private prefix(): Part {
    if (!this.isNext("-") && !this.isNext("+")) return this.whole()
    const sign = this.take()
    const operand = this.within(sign.span, () => this.prefix())
    const span = { start: sign.span.start, end: operand.ast.span.end }
    const operator = sign.text === "-" ? "-" : "+"
    return this.over({ type: "prefix", operator, operand: operand.ast, span }, [operand])
  }

  private whole(): Part {
    const token = this.next
    switch (token.kind) {
      case "number":
      case "text":
        this.position++
        return { ast: { type: token.kind, text: token.text, span: token.span }, levels: 0 }
      case "name":
        this.position++
        if (this.isNext("(")) return this.call(token)
        return { ast: { type: "name", name: token.text, span: token.span }, levels: 0 }
      case "mark":
        if (token.text === "(") return this.group()
    }
    return this.unexpected("a name, a number, a function or a parenthesis")
  }

  private group(): Part {
    const { start } = this.take().span
    const inner = this.within({ start, end: start + 1 }, () => this.infix(0))
    if (!this.isNext(")")) this.unexpected("an operator or )")
    const { end } = this.take().span
    return this.over({ type: "group", inner: inner.ast, span: { start, end } }, [inner])
  }

  private call(name: Token): Part {
    this.position++
    const args: Part[] = []
    if (!this.isNext(")")) {
      do {
        args.push(this.within(name.span, () => this.infix(0)))
      } while (this.takeSeparator())
    }
    if (!this.isNext(")")) this.unexpected("an operator, ; or )")
    const span = { start: name.span.start, end: this.take().span.end }
    const called = name.text.toUpperCase()
    this.checkCall(called, name, args.length, span)
    return this.over({ type: "call", function: called, args: args.map(({ ast }) => ast), span }, args)
  }

  private checkCall(called: string, name: Token, given: number, span: Span): void {
    const rule = FUNCTIONS.get(called)
    if (rule === undefined) {
      this.problems.push({
        code: "unknown_function",
        at: { span: name.span },
        name: shorten(name.text),
        near: nearNames(called, FUNCTIONS.keys()),
      })
    } else if (given < rule.least || given > rule.most) {
      const { least, most } = rule
      this.problems.push({ code: "wrong_argument_count", at: { span }, function: called, given, least, most })
    }
  }

  /** Reads what lies within something, which stops at {@link MOST_LEVELS} before the stack does. */
  private within(span: Span, read: () => Part): Part {
    if (this.depth >= MOST_LEVELS) throw tooDeep(span)
    this.depth++
    const part = read()
    this.depth--
    return part
  }

  /** Puts a node over its parts. */
  private over(ast: Ast, parts: readonly Part[]): Part {
    const own = ast.type === "call" ? 2 : 1
    const levels = parts.reduce((most, part) => Math.max(most, part.levels), 0) + own
    if (levels > MOST_LEVELS) throw tooDeep(ast.span)
    return { ast, levels }
  }

  private get next(): Token {
    const token = this.tokens[Math.min(this.position, this.tokens.length - 1)]
    if (token === undefined) throw new Error("a list of tokens ends with an end")
    return token
  }

  private isNext(mark: string): boolean {
    return this.next.kind === "mark" && this.next.text === mark
  }

  private take(): Token {
    const token = this.next
    this.position++
    return token
  }

  private takeSeparator(): boolean {
    if (!this.isNext(";") && !this.isNext(",")) return false
    this.position++
    return true
  }

  private unexpected(expected: string): never {
    const { kind, text, span } = this.next
    const found = kind === "end" ? text : shorten(kind === "text" ? `"${text}"` : text)
    throw new Refusal({ code: "unexpected", at: { span }, found, expected })
  }
}

function tooDeep(span: Span): Refusal {
  return new Refusal({ code: "formula_too_deep", at: { span }, most: MOST_LEVELS })
}
