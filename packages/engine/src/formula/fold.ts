import type { Ast } from "./ast.ts"

/** The parts that a node is directly made of, in the order of the text. */
export function partsOf(ast: Ast): readonly Ast[] {
  switch (ast.type) {
    case "number":
    case "text":
    case "name":
      return []
    case "call":
      return ast.args
    case "prefix":
    case "percent":
      return [ast.operand]
    case "infix":
      return [ast.left, ast.right]
    case "group":
      return [ast.inner]
  }
}

/** Works a formula out from the leaves up. The reader's limit on depth keeps the recursion shallow. */
export function fold<T>(ast: Ast, combine: (node: Ast, parts: readonly T[]) => T): T {
  return combine(
    ast,
    partsOf(ast).map((part) => fold(part, combine)),
  )
}

/** The node within any parentheses around it. */
export function ungroup(ast: Ast): Ast {
  let inner = ast
  while (inner.type === "group") inner = inner.inner
  return inner
}
