import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { MOST_CHARACTERS, MOST_LEVELS, parseFormula } from "../../src/formula/parse.ts"
import { asRead, read, refuses } from "./small-language.ts"

// OASIS OpenDocument 1.3, part 4 (OpenFormula), section 5.5, table of operators: from memory.
describe("operators bind as in OpenFormula 5.5", () => {
  test.each([
    ["-2^2", "((-2)^2)"],
    ["2^-2", "(2^(-2))"],
    ["2^3^2", "((2^3)^2)"],
    ["-5%", "((-5)%)"],
    ["5%^2", "((5%)^2)"],
    ["5%%", "((5%)%)"],
    ["2*3^2", "(2*(3^2))"],
    ["2^2*3", "((2^2)*3)"],
    ["6/3*2", "((6/3)*2)"],
    ["1+2*3", "(1+(2*3))"],
    ["1*2+3", "((1*2)+3)"],
    ["8-3-2", "((8-3)-2)"],
    ["1+-2", "(1+(-2))"],
    ["--1", "(-(-1))"],
    ["+1-+2", "((+1)-(+2))"],
    ['"a"&1+2', '("a"&(1+2))'],
    ['"a"&"b"&"c"', '(("a"&"b")&"c")'],
    ['"a"&"b"="ab"', '(("a"&"b")="ab")'],
    ["1+2<2*3", "((1+2)<(2*3))"],
    ["1<=2", "(1<=2)"],
    ["1<>2", "(1<>2)"],
    ["1>=2", "(1>=2)"],
    ["1=2<3", "((1=2)<3)"],
    ["(1+2)*3", "((1+2)*3)"],
    ["MAX(1;2)*3", "(MAX[1|2]*3)"],
  ])("%s is read as %s", (formula, shown) => expect(asRead(formula)).toBe(shown))
})

describe("what is accepted", () => {
  test.each([
    ["=1+2", "(1+2)"],
    ["  = 1 + 2  ", "(1+2)"],
    ["MAX(1,2;3)", "MAX[1|2|3]"],
    ["max ( 1 ; 2 )", "MAX[1|2]"],
    ["Pi()", "PI[]"],
    ["supports.dig", "supports.dig"],
    ["joist16", "joist16"],
    ["r1", "r1"],
    ["_x", "_x"],
    ["Länge * 2", "(Länge*2)"],
    [".5+5.", "(.5+5.)"],
    ["1e-6*2.5E+3", "(1e-6*2.5E+3)"],
    ['"say ""hi"""', '"say "hi""'],
    ['""', '""'],
    ['"a;b(,)"', '"a;b(,)"'],
    ["MAX(\n\t1;\u00a02\n)", "MAX[1|2]"],
  ])("%j is read as %s", (formula, shown) => expect(asRead(formula)).toBe(shown))

  test("names keep their capitals, functions do not", () => {
    expect(asRead("if(A;a;B)")).toBe("IF[A|a|B]")
  })
})

describe("each refusal raises exactly its problem", () => {
  test.each(["", "   ", "=", " = \n"])("%j has nothing in it", (formula) => {
    refuses(formula, "formula_empty")
  })

  test.each([
    ["1 +", "the end of the formula"],
    ["* 2", "*"],
    ["==1", "="],
    ["1 2", "2"],
    ["8 ft", "ft"],
    ["2x6", "x6"],
    ["(1 + 2", "the end of the formula"],
    ["1 + 2)", ")"],
    ["()", ")"],
    ["MAX(1;;2)", ";"],
    ["MAX(;1)", ";"],
    ["MAX(1;)", ")"],
    ["MAX(1", "the end of the formula"],
    ["1;2", ";"],
    ["1,000", ","],
    ['"open', '"open'],
    ['1 "a"', '"a"'],
    ["a.b.c", "."],
    ["a.", "."],
    ["@dig", "@"],
    ["{1}", "{"],
    ["$A$1", "$"],
    ["a:b", ":"],
    ["a!b", "!"],
    ["1 − 2", "−"],
    ["🪵", "🪵"],
    ["a\u0000b", "\u0000"],
    ["\u202e1", "\u202e"],
    ["<script>", "<"],
    ["1e999", "1e999"],
  ])("%j stops at %j", (formula, found) => {
    expect(refuses(formula, "unexpected").found).toBe(found)
  })

  test("a problem carries the place in the text as it was typed", () => {
    expect(refuses(" =1 + )", "unexpected").at.span).toEqual({ start: 6, end: 7 })
    expect(refuses("1 + SQRRT(4)", "unknown_function").at.span).toEqual({ start: 4, end: 9 })
    expect(refuses("1 + SQRT(4; 5)", "wrong_argument_count").at.span).toEqual({ start: 4, end: 14 })
  })

  test("what is quoted is kept short", () => {
    expect(refuses(`"${"x".repeat(500)}`, "unexpected").found.length).toBeLessThan(30)
  })

  test("an unknown function suggests near ones", () => {
    expect(refuses("ROUNDUPP(1; 0)", "unknown_function").near[0]).toBe("ROUNDUP")
    expect(refuses("CIELING(1; 2)", "unknown_function").near).toContain("CEILING")
    expect(refuses("wibblewobble(1)", "unknown_function").near).toEqual([])
    expect(refuses("constructor(1)", "unknown_function").near).toEqual([])
  })

  test("too few and too many arguments say how many there may be", () => {
    expect(refuses("IF(TRUE(); 1)", "wrong_argument_count")).toMatchObject({
      function: "IF",
      given: 2,
      least: 3,
      most: 3,
    })
    refuses("PI(3)", "wrong_argument_count")
    refuses("SUM()", "wrong_argument_count")
  })

  test("two mistakes in the use of functions are both told", () => {
    expect(parseFormula("FOO(1) + PI(2)").problems.map(({ code }) => code)).toEqual([
      "unknown_function",
      "wrong_argument_count",
    ])
  })
})

describe("limits", () => {
  test("10,000 characters are too long", () => {
    const formula = `1${"+1".repeat(5_000)}`.slice(0, 10_000)
    expect(refuses(formula, "formula_too_long")).toMatchObject({ length: 10_000, most: MOST_CHARACTERS })
    refuses("(".repeat(100_000), "formula_too_long")
  })

  const within: readonly (readonly [string, (levels: number) => string])[] = [
    ["parentheses", (n) => `${"(".repeat(n)}1${")".repeat(n)}`],
    ["halves of calls", (n) => `${"ABS(".repeat(Math.ceil(n / 2))}1${")".repeat(Math.ceil(n / 2))}`],
    ["signs", (n) => `${"-".repeat(n)}1`],
    ["percents", (n) => `1${"%".repeat(n)}`],
    ["additions", (n) => `1${"+1".repeat(n)}`],
    ["open parentheses", (n) => "(".repeat(n)],
  ]

  test.each(within)("500 and 2,000 %s are too deep", (_, nested) => {
    refuses(nested(500), "formula_too_deep")
    refuses(nested(1_500), "formula_too_deep")
  })

  test.each(within.slice(0, -1))(`${MOST_LEVELS} %s are accepted and one more is not`, (_, nested) => {
    read(nested(MOST_LEVELS))
    refuses(nested(MOST_LEVELS + 1), "formula_too_deep")
  })
})

describe("whatever is typed", () => {
  const pieces = [
    "(",
    ")",
    ";",
    "+",
    "-",
    "%",
    "^",
    "<",
    "=",
    '"',
    "1",
    ".",
    "e",
    "a",
    "IF(",
    "SUM(",
    " ",
    "\n",
    "𝒳",
  ]

  test("never throws, and gives a formula exactly when there is no problem", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary", maxLength: 60 }),
          fc.array(fc.constantFrom(...pieces), { maxLength: 60 }).map((some) => some.join("")),
        ),
        (text) => {
          const { ast, problems } = parseFormula(text)
          expect(ast === undefined).toBe(problems.length > 0)
          for (const { at } of problems) {
            if (at.span === undefined) continue
            expect(at.span.start).toBeGreaterThanOrEqual(0)
            expect(at.span.end).toBeGreaterThanOrEqual(at.span.start)
            expect(at.span.end).toBeLessThanOrEqual(text.length)
          }
        },
      ),
      { numRuns: 1_000 },
    )
  })
})
