import { describe, expect, test } from "vitest"
import { isOf, misfits, TYPES, type TypeName } from "./small-language.ts"

describe("a formula that fits has a type", () => {
  test.each<[string, TypeName]>([
    ["1", "plain"],
    ["0", "zero"],
    ["-0.0", "zero"],
    ['"a"', "text"],
    ["l + w", "length"],
    ["l - w", "length"],
    ["l + 0", "length"],
    ["0 - l", "length"],
    ["-l", "length"],
    ["+l", "length"],
    ["(l)", "length"],
    ["l * w", "area"],
    ["l * w * l", "volume"],
    ["a / l", "length"],
    ["l / w", "plain"],
    ["1 / l", "per_length"],
    ["0 * l", "length"],
    ["n%", "plain"],
    ["l * 10%", "length"],
    ["l^2", "area"],
    ["l^-1", "per_length"],
    ["a^0.5", "length"],
    ["l^0", "plain"],
    ["n^k", "plain"],
    ["POWER(l; 3)", "volume"],
    ["POWER(n; k)", "plain"],
    ["SQRT(a)", "length"],
    ["SQRT(l)", "root_of_length"],
    ["SQRT(n)", "plain"],
    ["l = w", "yes_no"],
    ["l > 0", "yes_no"],
    ["0 <= m", "yes_no"],
    ["l / w >= 1", "yes_no"],
    ['word = "a"', "yes_no"],
    ["ready <> TRUE()", "yes_no"],
    ["warm > cold", "yes_no"],
    ["warm - cold", "rise"],
    ["warm + rise", "temperature"],
    ["rise + warm", "temperature"],
    ["warm - rise", "temperature"],
    ["warm + 0", "temperature"],
    ["MAX(warm; cold)", "temperature"],
    ["(warm - cold) * n", "rise"],
    ["ROUND(n; 2)", "plain"],
    ["ROUNDUP(l / w; 0)", "plain"],
    ["ROUNDDOWN(n)", "plain"],
    ["TRUNC(n; k)", "plain"],
    ["INT(l / w)", "plain"],
    ["CEILING(l; w)", "length"],
    ["FLOOR(n; 2)", "plain"],
    ["MOD(l; w)", "length"],
    ["ABS(l)", "length"],
    ["MIN(l; w; 0)", "length"],
    ["MAX(t.l; l)", "length"],
    ["SUM(t.l)", "length"],
    ["SUM(t.m; m)", "mass"],
    ["AVERAGE(t.l)", "length"],
    ["COUNT(t.l)", "plain"],
    ["SIN(n)", "plain"],
    ["ATAN2(n; k)", "plain"],
    ["DEGREES(ATAN(l / w))", "plain"],
    ["EXP(n) + LN(n) + PI()", "plain"],
    ['word & "x" & n', "text"],
    ['CONCATENATE(word; n; "x")', "text"],
    ["IF(ready; l; w)", "length"],
    ["IF(ready; 0; w)", "length"],
    ['IF(l > w; "long"; word)', "text"],
    ["IF(ready; l; NA())", "length"],
    ['IF(ready; NA(); "a")', "text"],
    ["IFERROR(l / n; 0)", "length"],
    ["NA()", "zero"],
    ["AND(ready; l > w; NOT(ready))", "yes_no"],
    ["OR(ready)", "yes_no"],
    ["COUNTIF(t.l; l)", "plain"],
    ['COUNTIF(t.l; ">0")', "plain"],
    ['COUNTIF(t.l; "<> 0")', "plain"],
    ["COUNTIF(t.l; 0)", "plain"],
    ['COUNTIF(t.n; ">=2.5")', "plain"],
    ["COUNTIF(t.word; word)", "plain"],
    ['COUNTIF(t.word; "<>2x6")', "plain"],
    ["COUNTIF(t.ready; FALSE())", "plain"],
    ['SUMIF(t.word; "2x6"; t.l)', "length"],
    ['SUMIF(t.l; ">0")', "length"],
    ["SUMPRODUCT(t.l; t.l)", "area"],
    ["SUMPRODUCT(t.n; t.m)", "mass"],
    ["SUMPRODUCT(t.m)", "mass"],
    ["INDEX(t.l; 1)", "length"],
    ["INDEX(t.word; n)", "text"],
    ["MATCH(l; t.l; 0)", "plain"],
    ["MATCH(word; t.word; 0)", "plain"],
    ["MATCH(l; t.l; -1)", "plain"],
    ["MATCH(n; t.n)", "plain"],
    ["LOOKUP(l; t.l; t.word)", "text"],
    ["LOOKUP(n; t.n; t.m)", "mass"],
  ])("%s is %s", (formula, type) => isOf(formula, type))

  test("ROW() is a number where there is a row", () => isOf("ROW() + 1", "plain", true))
})

describe("dimensions that differ are named", () => {
  test.each<[string, string, TypeName, TypeName]>([
    ["l + a", "+", "length", "area"],
    ["l - m", "-", "length", "mass"],
    ["l + 1", "+", "length", "plain"],
    ["n + l", "+", "plain", "length"],
    ["l < a", "<", "length", "area"],
    ["l = 5", "=", "length", "plain"],
    ['n + "a"', "+", "plain", "text"],
    ["word = 0", "=", "text", "zero"],
    ["ready = 1", "=", "yes_no", "plain"],
    ["ready + 1", "+", "yes_no", "plain"],
    ["warm + cold", "+", "temperature", "temperature"],
    ["rise - warm", "-", "rise", "temperature"],
    ["warm + l", "+", "temperature", "length"],
    ["warm > rise", ">", "temperature", "rise"],
    ["warm > 0", ">", "temperature", "zero"],
    ["MIN(l; m)", "MIN", "length", "mass"],
    ["MAX(0; l; n)", "MAX", "length", "plain"],
    ["SUM(t.l; m)", "SUM", "length", "mass"],
    ["CEILING(l; 2)", "CEILING", "length", "plain"],
    ["MOD(l; m)", "MOD", "length", "mass"],
    ["IF(ready; l; m)", "IF", "length", "mass"],
    ['IF(ready; 0; "a")', "IF", "zero", "text"],
    ["IFERROR(l; 1)", "IFERROR", "length", "plain"],
    ["COUNTIF(t.l; m)", "COUNTIF", "length", "mass"],
    ["COUNTIF(t.l; 3)", "COUNTIF", "length", "plain"],
    ["COUNTIF(t.word; 3)", "COUNTIF", "text", "plain"],
    ["SUMIF(t.m; l; t.l)", "SUMIF", "mass", "length"],
    ["MATCH(m; t.l; 0)", "MATCH", "mass", "length"],
    ["LOOKUP(n; t.l; t.m)", "LOOKUP", "plain", "length"],
  ])("%s", (formula, doing, left, right) => {
    expect(misfits(formula, "dimension_mismatch")).toMatchObject({
      doing,
      left: TYPES[left],
      right: TYPES[right],
    })
  })
})

describe("an argument of the wrong kind is named", () => {
  test.each<[string, string, number]>([
    ["ROUND(l; 0)", "ROUND", 1],
    ["ROUNDUP(l; 0)", "ROUNDUP", 1],
    ["INT(m)", "INT", 1],
    ["ROUND(n; 0.5)", "ROUND", 2],
    ["ROUND(n; l)", "ROUND", 2],
    ["SIN(l)", "SIN", 1],
    ["ATAN2(n; l)", "ATAN2", 2],
    ["EXP(a)", "EXP", 1],
    ["l^n", "^", 2],
    ["l^0.3", "^", 2],
    ["n^l", "^", 2],
    ["warm^2", "^", 1],
    ["POWER(l; n)", "POWER", 2],
    ["SQRT(word)", "SQRT", 1],
    ["l%", "%", 1],
    ["-word", "-", 1],
    ["-warm", "-", 1],
    ["warm * 2", "*", 1],
    ["n / word", "/", 2],
    ["ABS(warm)", "ABS", 1],
    ["SUM(t.warm)", "SUM", 1],
    ["SUM(t.word)", "SUM", 1],
    ["COUNT(t.word)", "COUNT", 1],
    ["word < word", "<", 1],
    ["ready < ready", "<", 1],
    ["l & word", "&", 1],
    ["word & ready", "&", 2],
    ["CONCATENATE(word; m)", "CONCATENATE", 2],
    ["IF(n; 1; 2)", "IF", 1],
    ["AND(ready; n)", "AND", 2],
    ["NOT(n)", "NOT", 1],
    ["COUNTIF(l; l)", "COUNTIF", 1],
    ['COUNTIF(t.l; ">5")', "COUNTIF", 2],
    ['COUNTIF(t.n; "many")', "COUNTIF", 2],
    ["COUNTIF(t.n; word)", "COUNTIF", 2],
    ['COUNTIF(t.warm; ">0")', "COUNTIF", 2],
    ["SUMIF(t.l; l; other.l)", "SUMIF", 3],
    ["SUMPRODUCT(t.l; other.l)", "SUMPRODUCT", 2],
    ["SUMPRODUCT(t.l; l)", "SUMPRODUCT", 2],
    ["INDEX(l; 1)", "INDEX", 1],
    ["INDEX(t.l; l)", "INDEX", 2],
    ["MATCH(l; l; 0)", "MATCH", 2],
    ["MATCH(l; t.l; 2)", "MATCH", 3],
    ["MATCH(l; t.l; n)", "MATCH", 3],
    ["MATCH(word; t.word)", "MATCH", 2],
    ["LOOKUP(word; t.word; t.l)", "LOOKUP", 2],
    ["LOOKUP(l; t.l; other.l)", "LOOKUP", 3],
    ["LOOKUP(l; t.l; w)", "LOOKUP", 3],
  ])("%s", (formula, called, position) => {
    expect(misfits(formula, "wrong_argument")).toMatchObject({ function: called, position })
  })
})

describe("a whole column is no single value", () => {
  test.each([
    "t.l",
    "(t.l)",
    "t.l + l",
    "-t.l",
    "t.l * 2",
    "IF(ready; t.l; l)",
    "ROUND(t.n; 0)",
    "IFERROR(t.l; 0)",
  ])("%s", (formula) => {
    const { name } = misfits(formula, "column_where_one_value")
    expect(["t.l", "t.n"]).toContain(name)
  })
})

describe("names", () => {
  test("an unknown one suggests near ones, and carries its place", () => {
    expect(misfits("l + raise", "unknown_name")).toEqual({
      code: "unknown_name",
      at: { span: { start: 4, end: 9 } },
      name: "raise",
      near: ["rise"],
    })
    expect(misfits("L + w", "unknown_name").near).toContain("l")
  })

  test("TRUE without parentheses is pointed out", () => {
    expect(misfits("IF(TRUE; 1; 2)", "unknown_name").near[0]).toBe("TRUE()")
  })

  test("ROW() without a row is refused", () => {
    expect(misfits("ROW()", "unexpected").found).toBe("ROW()")
  })
})

test("a problem within is told once, and nothing around it adds to it", () => {
  misfits("ROUNDUP((l + m) * 2; 0) + n", "dimension_mismatch")
  misfits("IF(ready; unheard; l) + 1 * l", "unknown_name")
})

test("a problem carries the place of the part that it is about", () => {
  expect(misfits("1 + ROUND(l; 0)", "wrong_argument").at.span).toEqual({ start: 10, end: 11 })
  expect(misfits("n * (l + m)", "dimension_mismatch").at.span).toEqual({ start: 5, end: 10 })
  expect(misfits("MAX(l; w; m)", "dimension_mismatch").at.span).toEqual({ start: 10, end: 11 })
})
