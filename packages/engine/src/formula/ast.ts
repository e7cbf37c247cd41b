/** Where in the formula's text a part stands: from `start`, up to but without `end`, in UTF-16 units. */
export interface Span {
  readonly start: number
  readonly end: number
}

export type InfixOperator = "+" | "-" | "*" | "/" | "^" | "&" | "=" | "<>" | "<" | "<=" | ">" | ">="

/**
 * A formula that has been read. Names are as the author wrote them: an entry (`joist_count`), a column as a
 * whole (`supports.dig`), or, inside a row's formula, a bare column of the same table (`dig`: this row's).
 */
export type Ast =
  /** `text` is the number as written, so that the decimal evaluator need not go through a double. */
  | { readonly type: "number"; readonly text: string; readonly span: Span }
  | { readonly type: "text"; readonly text: string; readonly span: Span }
  | { readonly type: "name"; readonly name: string; readonly span: Span }
  | { readonly type: "call"; readonly function: string; readonly args: readonly Ast[]; readonly span: Span }
  | { readonly type: "prefix"; readonly operator: "-" | "+"; readonly operand: Ast; readonly span: Span }
  | { readonly type: "percent"; readonly operand: Ast; readonly span: Span }
  | {
      readonly type: "infix"
      readonly operator: InfixOperator
      readonly left: Ast
      readonly right: Ast
      readonly span: Span
    }
  /** Kept so that a formula prints as it was written. */
  | { readonly type: "group"; readonly inner: Ast; readonly span: Span }
