import fc from "fast-check"
import { describe, expect, test } from "vitest"
import type { Ast, InfixOperator } from "../../src/formula/ast.ts"
import { namesIn, renameIn } from "../../src/formula/names.ts"
import { printFormula, printWithValues } from "../../src/formula/print.ts"
import { asRead, read } from "./small-language.ts"

describe("normal form", () => {
  test.each([
    ["=roundup((a-b)/c,0)+1", "ROUNDUP((a - b) / c; 0) + 1"],
    ["-a^2", "-a^2"],
    ["5 %", "5%"],
    ['if(a>=b;"x""y";z&"")', 'IF(a >= b; "x""y"; z & "")'],
    ["PI( )*t.x", "PI() * t.x"],
    ["((1))", "((1))"],
  ])("%s is printed as %s", (formula, printed) => expect(printFormula(read(formula))).toBe(printed))
})

describe("a working", () => {
  const values: Readonly<Record<string, string>> = {
    length: "20' 0\"",
    size: '1 1/2"',
    spacing: '16"',
    low: '-3"',
    many: "12",
  }
  const working = (formula: string) => printWithValues(read(formula), (name) => values[name])

  test.each([
    ["ROUNDUP((length - size) / spacing; 0) + 1", 'ROUNDUP((20\' 0" − 1 1/2") ÷ 16"; 0) + 1'],
    ["many * 2", "12 × 2"],
    ["length + unheard", "20' 0\" + unheard"],
    ["length - low", '20\' 0" − (-3")'],
    ["-low", '−(-3")'],
    ["low", '-3"'],
    ["MAX(low; size)", 'MAX(-3"; 1 1/2")'],
    ["length^2", "(20' 0\")^2"],
    ["many^2", "12^2"],
    ["many%", "12%"],
    ["length <= size", '20\' 0" ≤ 1 1/2"'],
    ["length >= size", '20\' 0" ≥ 1 1/2"'],
    ["length <> size", '20\' 0" ≠ 1 1/2"'],
  ])("%s reads %s", (formula, shown) => expect(working(formula)).toBe(shown))
})

const SPAN = { start: 0, end: 0 }
const OPERATORS: readonly InfixOperator[] = ["+", "-", "*", "/", "^", "&", "=", "<>", "<", "<=", ">", ">="]

/** Formulas that were made, not read: parentheses only where printing must put them. */
const formulas = fc.letrec<{ ast: Ast }>((tie) => ({
  ast: fc.oneof(
    { depthSize: "small" },
    fc.constantFrom("0", "1", "2.5", "1e-6").map((text): Ast => ({ type: "number", text, span: SPAN })),
    fc.string({ maxLength: 5 }).map((text): Ast => ({ type: "text", text, span: SPAN })),
    fc.constantFrom("a", "joist16", "t.x").map((name): Ast => ({ type: "name", name, span: SPAN })),
    fc
      .tuple(tie("ast"), tie("ast"))
      .map(([a, b]): Ast => ({ type: "call", function: "MAX", args: [a, b], span: SPAN })),
    fc
      .tuple(fc.constantFrom("-", "+"), tie("ast"))
      .map(([operator, operand]): Ast => ({ type: "prefix", operator, operand, span: SPAN })),
    tie("ast").map((operand): Ast => ({ type: "percent", operand, span: SPAN })),
    fc
      .tuple(fc.constantFrom(...OPERATORS), tie("ast"), tie("ast"))
      .map(([operator, left, right]): Ast => ({ type: "infix", operator, left, right, span: SPAN })),
  ),
})).ast

function bare(ast: Ast): unknown {
  if (ast.type === "group") return bare(ast.inner)
  const { span: _, ...rest } = ast
  return Object.fromEntries(
    Object.entries(rest).map(([key, value]) => [
      key,
      Array.isArray(value) ? value.map(bare) : typeof value === "object" ? bare(value) : value,
    ]),
  )
}

describe("printing and reading back", () => {
  test("gives the same formula, whatever the formula", () => {
    fc.assert(
      fc.property(formulas, (ast) => {
        const printed = printFormula(ast)
        expect(bare(read(printed))).toEqual(bare(ast))
        expect(printFormula(read(printed))).toBe(printed)
      }),
      { numRuns: 1_000 },
    )
  })
})

describe("names", () => {
  test("are found in the order of the text, with their places", () => {
    expect(namesIn(read("b + MAX(a; -t.x%) & (b)"))).toEqual([
      { name: "b", span: { start: 0, end: 1 } },
      { name: "a", span: { start: 8, end: 9 } },
      { name: "t.x", span: { start: 12, end: 15 } },
      { name: "b", span: { start: 21, end: 22 } },
    ])
  })

  test("may be replaced everywhere at once, and nothing else is", () => {
    const renamed = renameIn(read('-a + MAX((b); a%) & "a"'), (name) => (name === "a" ? "c" : name))
    expect(printFormula(renamed)).toBe('-c + MAX((b); c%) & "a"')
    expect(asRead(printFormula(renamed))).toBe('(((-c)+MAX[b|(c%)])&"a")')
  })
})
