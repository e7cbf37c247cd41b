import type { Ast, Span } from "./ast.ts"
import { partsOf } from "./fold.ts"

/** Every mention of a name, in the order of the text. */
export function namesIn(ast: Ast): readonly { readonly name: string; readonly span: Span }[] {
  return ast.type === "name" ? [{ name: ast.name, span: ast.span }] : partsOf(ast).flatMap(namesIn)
}

/** The same formula with other names. Spans stay those of the text that was read. */
export function renameIn(ast: Ast, rename: (name: string) => string): Ast {
  switch (ast.type) {
    case "number":
    case "text":
      return ast
    case "name":
      return { ...ast, name: rename(ast.name) }
    case "call":
      return { ...ast, args: ast.args.map((arg) => renameIn(arg, rename)) }
    case "prefix":
    case "percent":
      return { ...ast, operand: renameIn(ast.operand, rename) }
    case "infix":
      return { ...ast, left: renameIn(ast.left, rename), right: renameIn(ast.right, rename) }
    case "group":
      return { ...ast, inner: renameIn(ast.inner, rename) }
  }
}
