import { expect } from "vitest"
import type { Ast } from "../../src/formula/ast.ts"
import { checkTypes } from "../../src/formula/check-types.ts"
import { fold } from "../../src/formula/fold.ts"
import { parseFormula } from "../../src/formula/parse.ts"
import {
  numberType,
  PLAIN_NUMBER,
  type Shape,
  TEXT,
  type ValueType,
  YES_NO,
} from "../../src/formula/value-type.ts"
import type { Problem, ProblemCode } from "../../src/problems/problem.ts"
import { dimension } from "../../src/quantity/dimension.ts"

/** The formula read, or the test fails. */
export function read(text: string): Ast {
  const { ast, problems } = parseFormula(text)
  if (ast === undefined) throw new Error(`${text} was refused: ${JSON.stringify(problems)}`)
  return ast
}

/** Every node in parentheses of its own, so that one string shows how a formula was read. */
export function asRead(text: string): string {
  return fold<string>(read(text), (node, parts) => {
    switch (node.type) {
      case "number":
        return node.text
      case "text":
        return `"${node.text}"`
      case "name":
        return node.name
      case "group":
        return parts[0] ?? ""
      case "call":
        return `${node.function}[${parts.join("|")}]`
      case "prefix":
        return `(${node.operator}${parts[0]})`
      case "percent":
        return `(${parts[0]}%)`
      case "infix":
        return `(${parts[0]}${node.operator}${parts[1]})`
    }
  })
}

/** The one problem that reading the formula raises, which must have this code. */
export function refuses<Code extends ProblemCode>(
  text: string,
  code: Code,
): Extract<Problem, { readonly code: Code }> {
  return onlyProblem(parseFormula(text).problems, code)
}

export const TYPES = {
  plain: PLAIN_NUMBER,
  length: numberType(dimension({ length: 1 })),
  area: numberType(dimension({ length: 2 })),
  volume: numberType(dimension({ length: 3 })),
  per_length: numberType(dimension({ length: -1 })),
  root_of_length: numberType(dimension({ length: 0.5 })),
  mass: numberType(dimension({ mass: 1 })),
  money: numberType(dimension({ money: 1 })),
  rise: numberType(dimension({ temperature: 1 })),
  temperature: numberType({ exponents: { temperature: 1 }, point: true }),
  text: TEXT,
  yes_no: YES_NO,
  zero: { kind: "zero" },
} as const satisfies Record<string, ValueType>

export type TypeName = keyof typeof TYPES

/** What the formulas of these tests may name: `n` is plain, `m` a mass, `t.l` a column of lengths, and so on. */
const NAMES: Readonly<Record<string, Shape>> = {
  n: { type: TYPES.plain, column: false },
  k: { type: TYPES.plain, column: false },
  l: { type: TYPES.length, column: false },
  w: { type: TYPES.length, column: false },
  a: { type: TYPES.area, column: false },
  m: { type: TYPES.mass, column: false },
  warm: { type: TYPES.temperature, column: false },
  cold: { type: TYPES.temperature, column: false },
  rise: { type: TYPES.rise, column: false },
  word: { type: TYPES.text, column: false },
  ready: { type: TYPES.yes_no, column: false },
  "t.n": { type: TYPES.plain, column: true },
  "t.l": { type: TYPES.length, column: true },
  "t.m": { type: TYPES.mass, column: true },
  "t.word": { type: TYPES.text, column: true },
  "t.ready": { type: TYPES.yes_no, column: true },
  "t.warm": { type: TYPES.temperature, column: true },
  "other.l": { type: TYPES.length, column: true },
}

function judge(text: string, inRow: boolean) {
  return checkTypes(read(text), (name) => NAMES[name], inRow, Object.keys(NAMES))
}

/** Checks that the formula's result has a type. */
export function isOf(text: string, type: TypeName, inRow = false): void {
  expect(judge(text, inRow)).toEqual({ shape: { type: TYPES[type], column: false }, problems: [] })
}

/** The one problem of names or types that a formula has, which must have this code. */
export function misfits<Code extends ProblemCode>(
  text: string,
  code: Code,
  inRow = false,
): Extract<Problem, { readonly code: Code }> {
  const { shape, problems } = judge(text, inRow)
  expect(shape).toBeUndefined()
  return onlyProblem(problems, code)
}

function onlyProblem<Code extends ProblemCode>(
  problems: readonly Problem[],
  code: Code,
): Extract<Problem, { readonly code: Code }> {
  expect(problems.map((problem) => problem.code)).toEqual([code])
  return problems[0] as Extract<Problem, { readonly code: Code }>
}
