import { describe, expect, test } from "vitest"
import { parseFormula } from "../../src/formula/parse.ts"
import type { ValueType } from "../../src/formula/value-type.ts"
import { inWords, typeInWords } from "../../src/problems/in-words.en.ts"
import type { Problem, ProblemCode } from "../../src/problems/problem.ts"
import { dimension, PLAIN } from "../../src/quantity/dimension.ts"
import { AREA, LENGTH, TEMPERATURE, TEMPERATURE_DIFFERENCE } from "../../src/units/dimensions.ts"
import { readValue } from "../../src/units/read-value.ts"

const number = (of: typeof LENGTH): ValueType => ({ kind: "number", dimension: of })
const at = { entry: "total", row: 3 }

/** One of each code; the compiler asks for the ones that are missing. */
const EACH: { readonly [Code in ProblemCode]: Extract<Problem, { code: Code }> } = {
  formula_empty: { code: "formula_empty", at },
  formula_too_long: { code: "formula_too_long", at, length: 9000, most: 8000 },
  formula_too_deep: { code: "formula_too_deep", at, most: 100 },
  unexpected: {
    code: "unexpected",
    at: { ...at, span: { start: 4, end: 5 } },
    found: '")"',
    expected: "a number",
  },
  unknown_name: { code: "unknown_name", at, name: "widht", near: ["width"] },
  unknown_function: { code: "unknown_function", at, name: "SUMM", near: ["SUM", "SUMIF"] },
  wrong_argument_count: { code: "wrong_argument_count", at, function: "ROUND", given: 3, least: 1, most: 2 },
  dimension_mismatch: {
    code: "dimension_mismatch",
    at,
    doing: "+",
    left: number(LENGTH),
    right: number(AREA),
  },
  wrong_argument: {
    code: "wrong_argument",
    at,
    function: "ROUNDUP",
    position: 1,
    given: number(LENGTH),
    accepted: "a plain number",
  },
  column_where_one_value: { code: "column_where_one_value", at, name: "rows.width" },
  result_mismatch: { code: "result_mismatch", at, given: number(AREA), wanted: number(LENGTH) },
  cycle: { code: "cycle", at, ring: ["first", "second", "third"] },
  leans_on_problem: { code: "leans_on_problem", at, on: ["width"] },
  needs_entry: { code: "needs_entry", at, inputs: ["width", "depth"] },
  division_by_zero: { code: "division_by_zero", at },
  not_a_number: { code: "not_a_number", at },
  not_found: { code: "not_found", at },
  text_for_number: { code: "text_for_number", at },
  too_many_rows: { code: "too_many_rows", at, wanted: 123456, most: 5000 },
  bad_row_count: { code: "bad_row_count", at, wanted: 2.5 },
  unmet: { code: "unmet", at, says: ["Nothing is long enough for 5 m."] },
  input_empty: { code: "input_empty", at, example: "3200 mm" },
  input_unreadable: { code: "input_unreadable", at, given: "3,2", example: "3200 mm" },
  input_wrong_unit: { code: "input_wrong_unit", at, given: "5 lb", unit: "lb", accepted: ["in", "ft", "m"] },
  input_unknown_unit: {
    code: "input_unknown_unit",
    at,
    given: "5 foo",
    unit: "foo",
    accepted: ["in", "ft", "m"],
  },
  input_below: { code: "input_below", at, given: "3 ft", least: "4 ft" },
  input_above: { code: "input_above", at, given: "300 ft", most: "100 ft" },
  input_not_whole: { code: "input_not_whole", at, given: "1.5" },
  input_not_a_choice: { code: "input_not_a_choice", at, given: "blue", choices: ["red", "green"] },
  input_too_long: { code: "input_too_long", at, length: 900, most: 500 },
  no_such_entry: { code: "no_such_entry", at: {}, name: "widht", near: ["width"] },
  not_an_input: { code: "not_an_input", at: {}, name: "area", kind: "formula" },
  no_such_column: { code: "no_such_column", at, table: "levels", column: "z", columns: ["x", "y"] },
  table_too_long: { code: "table_too_long", at, given: 900, most: 400 },
  csv_empty: { code: "csv_empty", at: {}, columns: ["x", "level"] },
  csv_open_quote: { code: "csv_open_quote", at: { line: 12 } },
  csv_no_column: { code: "csv_no_column", at: { line: 1 }, missing: ["level"], columns: ["x", "level"] },
  csv_column_twice: { code: "csv_column_twice", at: { line: 1 }, column: "level" },
  csv_too_many_cells: { code: "csv_too_many_cells", at: { line: 7 }, given: 5, most: 3 },
  scenario_sealed: { code: "scenario_sealed", at: {}, title: "As bought" },
  bad_name: { code: "bad_name", at: {}, name: "2 by 4" },
  name_taken: { code: "name_taken", at: {}, name: "width" },
  not_own: { code: "not_own", at: {}, name: "width" },
  no_measure: { code: "no_measure", at, given: number(dimension({ length: 4 })) },
  leaned_on: { code: "leaned_on", at: {}, name: "width", by: ["area", "edge"] },
  bad_entry: { code: "bad_entry", at, reason: "it has no label." },
  too_many_values: { code: "too_many_values", at, given: 400, most: 200 },
  too_many_entries: { code: "too_many_entries", at: {}, given: 900, most: 400 },
  file_unreadable: { code: "file_unreadable", at: {}, reason: "it is not JSON." },
  file_from_future: { code: "file_from_future", at: {}, version: 9, known: 1 },
  file_unknown_template: { code: "file_unknown_template", at: {}, template: "boat", known: ["shed", "walk"] },
}

/** What each problem carries that a reader must see: its texts and numbers. */
function valuesOf(problem: Problem): string[] {
  const { code: _code, at: _at, ...rest } = problem
  return Object.values(rest)
    .flat()
    .filter((value) => typeof value === "string" || typeof value === "number")
    .map((value) => (typeof value === "number" ? value.toLocaleString("en") : value))
}

describe("every problem", () => {
  test.each(Object.entries(EACH))("%s: says where, which values, and what to do next", (_code, problem) => {
    const { says, next } = inWords(problem, "us")
    const both = `${says} ${next}`
    const { entry, row } = problem.at
    if (entry !== undefined) expect(says.startsWith(`${entry}, row ${row}`)).toBe(true)
    expect(valuesOf(problem).filter((value) => !both.includes(value))).toEqual([])
    expect(says).toMatch(/[.]$/)
    expect(next).toMatch(/^[A-Z].*[.?]$/)
    expect(both).not.toMatch(/undefined|\[object|NaN|_(type|kind)/)
  })
})

test("the sentences, as a reader sees them", () => {
  const read = (code: ProblemCode): string => {
    const { says, next } = inWords(EACH[code], "us")
    return `${says} ${next}`
  }
  expect(read("dimension_mismatch")).toBe(
    `total, row 3: + has a length (such as 10' 6 1/2") on one side and an area (such as 192 sq ft) on the other. Both sides must be of the same kind. Check that each name is the one that you meant.`,
  )
  expect(read("cycle")).toBe(
    "total, row 3: these entries wait for each other in a ring: first → second → third → first. Change one of their formulas so that it no longer leans on the next in the ring.",
  )
  expect(read("unexpected")).toBe(
    'total, row 3, at character 5 of the formula: the formula cannot be read: it has ")" where a number should be. Put a number there, or take ")" out.',
  )
  expect(read("input_wrong_unit")).toBe(
    'total, row 3: "5 lb" has the unit "lb", which measures something else. Accepted here: a number with in, ft or m.',
  )
  expect(read("no_such_entry")).toBe(
    'There is no entry called "widht". Did you mean width? Check the spelling.',
  )
  expect(inWords(EACH.dimension_mismatch, "metric").says).toContain("a length (such as 3200 mm)")
})

test("a function that takes any number of values says so", () => {
  const { next } = inWords({ ...EACH.wrong_argument_count, least: 1, most: Number.POSITIVE_INFINITY }, "us")
  expect(next).toBe('It takes at least 1 value, with ";" between them.')
})

test("what was typed leads to the sentence", () => {
  const read = readValue("12 stone", "length", "metric")
  if (!("problem" in read)) throw new Error("it was read")
  expect(inWords(read.problem, "metric")).toEqual({
    says: '"12 stone" has "stone" where a unit should be, and no unit is spelled so.',
    next: "Accepted here: a number with in, ft, yd, mm, cm or m.",
  })
})

test.each([
  [{ kind: "zero" }, "zero"],
  [{ kind: "text" }, "a text"],
  [{ kind: "yes_no" }, "a yes or no"],
  [number(PLAIN), "a plain number"],
  [number(LENGTH), "a length"],
  [number(AREA), "an area"],
  [number(dimension({ length: 3 })), "a volume"],
  [number(dimension({ mass: 1, length: -1, time: -2 })), "a pressure or a stress"],
  [number(TEMPERATURE), "a temperature"],
  [number(TEMPERATURE_DIFFERENCE), "a temperature difference"],
  [number(dimension({ length: 4 })), "a number in m^4"],
  [number(dimension({ mass: 1, length: -2 })), "a number in kg·m^-2"],
] as const)("%j is %s", (type, words) => {
  expect(typeInWords(type)).toBe(words)
})

test("a unit in a formula says where amounts stand, and what ends too early is not to be taken out", () => {
  const next = (formula: string) => {
    const [problem] = parseFormula(formula).problems
    if (problem === undefined) throw new Error("it can be read")
    return inWords(problem, "us").next
  }
  expect(next("width * 2 + 3 ft")).toContain("A formula has no units in it")
  expect(next("2 + 3 m * width")).toContain("A formula has no units in it")
  expect(next("SUM(holes.deep")).toMatch(/ at the end\.$/)
  expect(next("1 + )")).toMatch(/there, or take \) out\.$/)
})
