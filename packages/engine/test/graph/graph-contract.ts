import { describe, expect, test } from "vitest"
import { EXAMPLE_TABLE } from "../../src/formula/functions/function-rule.ts"
import { FUNCTIONS } from "../../src/formula/functions/index.ts"
import { MOST_LEVELS } from "../../src/formula/parse.ts"
import type { GraphBuilder, GraphError, GraphValue } from "../../src/graph/graph.ts"
import { contentOf, f, graphOf, type Scalar, type Table } from "./small-graph.ts"

/** What every graph does, whatever it calculates with. */
export function graphContract(name: string, build: GraphBuilder): void {
  /** The value of one formula, with a few scalars and tables around it. */
  const valueFrom = (
    formula: string,
    scalars: Readonly<Record<string, Scalar>> = {},
    tables: Readonly<Record<string, Table>> = { parts: EXAMPLE_TABLE, none: NO_ROWS },
  ): GraphValue => graphOf(build, { ...scalars, answer: f(formula) }, tables).scalar("answer")

  describe(name, () => {
    describe("every function's example", () => {
      test.each([...FUNCTIONS.values()])("$example.formula gives $example.gives", ({ example }) => {
        const columns = { ...EXAMPLE_TABLE.columns, answer: f(example.formula) }
        const graph = graphOf(build, {}, { parts: { columns } })
        const given = graph.column("parts", "answer")[1]
        if (typeof example.gives === "number") expect(given).toBeCloseTo(example.gives, 12)
        else expect(given).toBe(example.gives)
      })
    })

    describe("numbers", () => {
      // OASIS OpenDocument 1.3 part 4: a prefix binds before ^ (section 5.5), MOD has the sign of the divisor
      // (6.16.37), INT goes down (6.17.2), ROUND away from 0 at a half (6.17.5): from memory. CEILING and FLOOR
      // of numbers below 0: our own choice, up and down on the number line.
      test.each<[string, number]>([
        ["-2^2", 4],
        ["2^3^2", 64],
        ["2^-1", 0.5],
        ["-50%", -0.5],
        ["200%^2", 4],
        ["7 - 2 - 1", 4],
        ["8 / 4 / 2", 1],
        ["1 + 2 * 3", 7],
        ["ROUND(2.5; 0)", 3],
        ["ROUND(-2.5; 0)", -3],
        ["ROUND(2.25; 1)", 2.3],
        ["ROUND(25; -1)", 30],
        ["ROUND(2.4)", 2],
        ["ROUNDUP(2.125; 2)", 2.13],
        ["ROUNDUP(-2.1; 0)", -3],
        ["ROUNDUP(1; -2)", 100],
        ["ROUNDUP(3; 0)", 3],
        ["ROUNDDOWN(-2.9; 0)", -2],
        ["ROUNDDOWN(199; -2)", 100],
        ["TRUNC(-2.9)", -2],
        ["INT(2.9)", 2],
        ["INT(-0.5)", -1],
        ["INT(-2)", -2],
        ["CEILING(7; 2)", 8],
        ["CEILING(8; 2)", 8],
        ["CEILING(-7; 2)", -6],
        ["CEILING(-7; -2)", -8],
        ["CEILING(0; 0)", 0],
        ["FLOOR(7; 2)", 6],
        ["FLOOR(-7; 2)", -8],
        ["FLOOR(-7; -2)", -6],
        ["MOD(7; 3)", 1],
        ["MOD(-7; 3)", 2],
        ["MOD(7; -3)", -2],
        ["MOD(5.5; 2)", 1.5],
        ["MOD(6; 3)", 0],
        ["POWER(0; 0)", 1],
        ["POWER(4; 0.5)", 2],
        ["SQRT(0)", 0],
        ["EXP(-1000)", 0],
        ["MIN(3; 1; 2)", 1],
        ["MAX(-3; -1; -2)", -1],
        ["SUM(1; parts.count; 2)", 38],
        ["AVERAGE(parts.size)", 14 / 3],
        ["ATAN2(0; 1)", Math.PI / 2],
        ["ATAN2(-1; 0)", Math.PI],
        ["SIN(PI() / 6)", 0.5],
        ["ASIN(1)", Math.PI / 2],
        ["LN(EXP(2))", 2],
        ["0.0000001 * 1e7", 1],
        ["1e-9 * 1E+9", 1],
        ["1.5e21 / 1e21", 1.5],
      ])("%s is %d", (formula, expected) => {
        expect(valueFrom(formula)).toBeCloseTo(expected, 12)
      })

      test("whole numbers of nanometres stay whole as far as a double can hold them", () => {
        expect(valueFrom("9007199254740991 - 1")).toBe(9_007_199_254_740_990)
        expect(valueFrom("25400000 * 354")).toBe(8_991_600_000)
      })
    })

    describe("yes and no", () => {
      test.each<[string, boolean]>([
        ["1 < 2", true],
        ["2 <= 2", true],
        ["2 > 2", false],
        ["2 >= 2", true],
        ["1 = 1", true],
        ["1 <> 1", false],
        ['"Bar" = "bAR"', true],
        ['"bar" <> "bars"', true],
        ['"a " = "a"', false],
        ["TRUE() = NOT(FALSE())", true],
        ["AND(TRUE(); TRUE(); FALSE())", false],
        ["OR(FALSE(); FALSE())", false],
        ["NOT(AND(TRUE(); OR(FALSE(); TRUE())))", false],
      ])("%s is %s", (formula, expected) => {
        expect(valueFrom(formula)).toBe(expected)
      })
    })

    describe("texts", () => {
      test.each<[string, string]>([
        ['"a" & "b" & 3', "ab3"],
        ['"say ""hi"""', 'say "hi"'],
        ['CONCATENATE(1; " "; 0.5)', "1 0.5"],
        ['"" & ""', ""],
        ['IF(1 > 2; "a"; "B")', "B"],
        ["INDEX(parts.item; 1) & INDEX(parts.size; 1)", "bar2"],
      ])("%s is %s", (formula, expected) => {
        expect(valueFrom(formula)).toBe(expected)
      })
    })

    describe("finding rows", () => {
      test.each<[string, GraphValue]>([
        ["INDEX(parts.size; 1)", 2],
        ["INDEX(parts.size; 3)", 8],
        ["INDEX(parts.size; 2.9)", 4],
        ['MATCH("BAR"; parts.item; 0)', 1],
        ["MATCH(4; parts.size; 0)", 2],
        ["MATCH(4; parts.size; 1)", 2],
        ["MATCH(7.9; parts.size; 1)", 2],
        ["MATCH(99; parts.size; 1)", 3],
        ["MATCH(5; parts.size)", 2],
        ["MATCH(5; falling.size; -1)", 2],
        ["MATCH(8; falling.size; -1)", 2],
        ["MATCH(1; falling.size; -1)", 3],
        ["LOOKUP(4; parts.size; parts.count)", 20],
        ["LOOKUP(7.9; parts.size; parts.item)", "plate"],
        ["LOOKUP(1000; parts.size; parts.count)", 5],
        ["INDEX(parts.count; MATCH(8; parts.size; 0))", 5],
        ['COUNTIF(parts.item; "BAR")', 2],
        ['COUNTIF(parts.item; "<>bar")', 1],
        ['COUNTIF(parts.item; "b*")', 0],
        ['COUNTIF(parts.item; "ba?")', 0],
        ['COUNTIF(parts.item; "")', 0],
        ["COUNTIF(parts.size; 4)", 1],
        ["COUNTIF(parts.size; 0)", 0],
        ['COUNTIF(parts.size; "<1")', 0],
        ['COUNTIF(parts.size; ">2")', 2],
        ['COUNTIF(parts.size; ">= 2")', 3],
        ['COUNTIF(parts.size; "<>2")', 2],
        ['COUNTIF(parts.size; "=2")', 1],
        ['COUNTIF(parts.size; "<-1.5e0")', 0],
        ["COUNTIF(flags.up; TRUE())", 2],
        ["COUNTIF(flags.up; FALSE())", 1],
        ["MATCH(FALSE(); flags.up; 0)", 2],
        ['SUMIF(parts.item; "<>bar"; parts.count)', 20],
        ['SUMIF(none.x; "<>2"; none.x)', 0],
        ['COUNTIF(none.x; "<>2")', 0],
        ['SUMIF(parts.size; ">2"; parts.count)', 25],
        ['SUMIF(parts.size; ">2")', 12],
        ["SUMIF(parts.size; 2; parts.count)", 10],
        ['SUMIF(parts.item; "nothing"; parts.count)', 0],
        ["SUMPRODUCT(parts.size)", 14],
        ["COUNT(parts.size; 1; parts.count)", 7],
        ['COUNTIF(parts.item; ("<>bar"))', 1],
        ['COUNTIF(parts.item; "<>" & "bar")', 1],
        ["COUNTIF(parts.item; but_bars)", 1],
        ["SUMIF(parts.item; but_bars; parts.count)", 20],
      ])("%s is %s", (formula, expected) => {
        const tables = {
          parts: EXAMPLE_TABLE,
          falling: { columns: { size: [9, 8, 4] } },
          flags: { columns: { up: [true, false, true] } },
          none: NO_ROWS,
        }
        expect(valueFrom(formula, { but_bars: "<>bar" }, tables)).toBe(expected)
      })
    })

    describe("errors", () => {
      test.each<[string, GraphError]>([
        ["1 / 0", "division_by_zero"],
        ["MOD(5; 0)", "division_by_zero"],
        ["CEILING(7; 0)", "division_by_zero"],
        ["FLOOR(7; 0)", "division_by_zero"],
        ["ATAN2(0; 0)", "division_by_zero"],
        ["AVERAGE(none.x)", "division_by_zero"],
        ["SQRT(-1)", "not_a_number"],
        ["LN(0)", "not_a_number"],
        ["LN(-1)", "not_a_number"],
        ["ASIN(2)", "not_a_number"],
        ["POWER(-8; 0.5)", "not_a_number"],
        ["POWER(0; -1)", "not_a_number"],
        ["CEILING(7; -2)", "not_a_number"],
        ["1e308 * 10", "not_a_number"],
        ["10^400", "not_a_number"],
        ["EXP(1000)", "not_a_number"],
        ["NA()", "not_found"],
        ["INDEX(parts.size; 0)", "not_found"],
        ["INDEX(parts.size; 0.9)", "not_found"],
        ["INDEX(parts.size; -1)", "not_found"],
        ["INDEX(parts.size; 4)", "not_found"],
        ["INDEX(none.x; 1)", "not_found"],
        ["MATCH(3; parts.size; 0)", "not_found"],
        ["MATCH(1; parts.size; 1)", "not_found"],
        ["MATCH(9; parts.size; -1)", "not_found"],
        ["MATCH(1; none.x; 0)", "not_found"],
        ["MATCH(0; parts.size; 0)", "not_found"],
        ['MATCH(""; parts.item; 0)', "not_found"],
        ['MATCH("b*"; parts.item; 0)', "not_found"],
        ["LOOKUP(1; parts.size; parts.count)", "not_found"],
        ["LOOKUP(1; none.x; none.x)", "not_found"],
        ['"a" + 1', "text_for_number"],
        // What passes from one formula to the next: the first error, in the order of the text.
        ["1 / 0 + NA()", "division_by_zero"],
        ["NA() + 1 / 0", "not_found"],
        ["-(1 / 0)", "division_by_zero"],
        ["NA()%", "not_found"],
        ["MAX(SQRT(-1); NA())", "not_a_number"],
        ["SUM(parts.size; NA(); 1 / 0)", "not_found"],
        ["ROUND(NA(); 1 / 0)", "not_found"],
        ["NA() = 1", "not_found"],
        ['"a" & NA()', "not_found"],
        ["AND(FALSE(); NA())", "not_found"],
        ["OR(TRUE(); NA())", "not_found"],
        ["NOT(NA() > 1)", "not_found"],
        ["IF(NA() > 1; 1; 2)", "not_found"],
        ["IF(1 > 2; 1; NA())", "not_found"],
        ["INDEX(parts.size; NA())", "not_found"],
        ["MATCH(1 / 0; parts.size; 0)", "division_by_zero"],
        ["IFERROR(1 / 0; NA())", "not_found"],
        ["SUM(broken.x)", "division_by_zero"],
        ["MIN(broken.x)", "division_by_zero"],
        ["MAX(1; broken.x)", "division_by_zero"],
        ["AVERAGE(broken.x)", "division_by_zero"],
        ["SUMPRODUCT(broken.x; broken.y)", "division_by_zero"],
        ['COUNTIF(broken.x; ">0")', "division_by_zero"],
        ['SUMIF(broken.x; ">0"; broken.y)', "division_by_zero"],
        ["SUMIF(broken.y; 2; broken.x)", "division_by_zero"],
        ['SUMIF(broken.y; "<>2"; broken.x)', "division_by_zero"],
        ["INDEX(broken.x; 2)", "division_by_zero"],
      ])("%s is %s", (formula, error) => {
        const tables = { parts: EXAMPLE_TABLE, none: NO_ROWS, broken: BROKEN }
        expect(valueFrom(formula, {}, tables)).toEqual({ error })
      })

      test.each<[string, GraphValue]>([
        ["IF(1 < 2; 1; 1 / 0)", 1],
        ["IF(1 > 2; NA(); 2)", 2],
        ["IFERROR(1 / 0; 7)", 7],
        ["IFERROR(7; 1 / 0)", 7],
        ["IFERROR(MATCH(3; parts.size; 0); 0)", 0],
        ["COUNT(broken.x)", 2],
        ["COUNT(1 / 0; 5)", 1],
        ["INDEX(broken.x; 1)", 5],
        ["MATCH(3; broken.x; 0)", 3],
      ])("%s is %s all the same", (formula, expected) => {
        const tables = { parts: EXAMPLE_TABLE, none: NO_ROWS, broken: BROKEN }
        expect(valueFrom(formula, {}, tables)).toBe(expected)
      })

      const errors: readonly GraphError[] = [
        "division_by_zero",
        "not_a_number",
        "not_found",
        "text_for_number",
        "no_value",
      ]
      test.each(errors)("a constant may be the error %s, and passes on", (error) => {
        const graph = graphOf(
          build,
          { blank: { error }, more: f("blank + 1"), caught: f("IFERROR(blank; 5)") },
          { t: { columns: { x: [1, { error }], y: f("x * 2") } } },
        )
        expect(graph.scalar("blank")).toEqual({ error })
        expect(graph.scalar("more")).toEqual({ error })
        expect(graph.scalar("caught")).toBe(5)
        expect(graph.column("t", "x")).toEqual([1, { error }])
        expect(graph.column("t", "y")).toEqual([2, { error }])
      })
    })

    describe("names", () => {
      test.each(["joist16", "r1", "rc", "a1", "TRUE", "sum", "pi", "check.demand", "constructor"])(
        "%s names a scalar like any other",
        (id) => {
          const graph = graphOf(build, { [id]: 3, double: f(`${id} * 2`) })
          expect(graph.scalar(id)).toBe(3)
          expect(graph.scalar("double")).toBe(6)
        },
      )

      test("capitals tell names apart", () => {
        const graph = graphOf(build, { a: 1, A: 2, both: f("10 * a + A") })
        expect(graph.scalar("both")).toBe(12)
      })

      test("a name may be used before it is defined", () => {
        const graph = graphOf(
          build,
          { last: f("first + t.x_total"), "t.x_total": f("SUM(t.x)"), first: 1 },
          {
            t: { columns: { x: [1, 2] } },
          },
        )
        expect(graph.scalar("last")).toBe(4)
      })
    })

    describe("texts that look like something else stay texts", () => {
      const texts = [
        "2x6",
        "1/2",
        "5/4x6",
        "=1+1",
        "'x",
        "''",
        "12",
        "1e3",
        "50%",
        "$5",
        "12:30",
        "01/02/2024",
        "TRUE",
        "#N/A",
        " padded ",
        "1,000",
        "{=1}",
        "+1",
        "-1",
        'a"b',
        "a\\b",
        "\\",
        '\\"',
        "a\nb",
        "木",
      ]

      test.each(texts)("%j", (text) => {
        const quoted = `"${text.replaceAll('"', '""')}"`
        const graph = graphOf(
          build,
          {
            constant: text,
            found: f("INDEX(t.text; 2)"),
            literal: f(quoted),
            row: f("MATCH(constant; t.text; 0)"),
            same: f(`constant = ${quoted}`),
            changed: "before",
          },
          { t: { columns: { text: ["other", text], copy: f("text") } } },
        )
        for (const id of ["constant", "found", "literal"]) expect(graph.scalar(id)).toBe(text)
        expect(graph.scalar("row")).toBe(2)
        expect(graph.scalar("same")).toBe(true)
        expect(graph.column("t", "text")).toEqual(["other", text])
        expect(graph.column("t", "copy")).toEqual(["other", text])
        graph.apply({ scalars: new Map([["changed", { value: text }]]) })
        expect(graph.scalar("changed")).toBe(text)
      })

      test.each(["2x6", "1/2", "5/4x6", "12", "50%", "01/02/2024"])("%s is counted as a text", (text) => {
        const graph = graphOf(
          build,
          { count: f(`COUNTIF(t.text; "${text}")`), sum: f(`SUMIF(t.text; "${text}"; t.n)`) },
          {
            t: { columns: { text: [text, "other", text], n: [1, 2, 4] } },
          },
        )
        expect(graph.scalar("count")).toBe(2)
        expect(graph.scalar("sum")).toBe(5)
      })
    })

    describe("tables", () => {
      const around = {
        factor: 10,
        total: f("SUM(t.scaled)"),
        greatest: f("MAX(t.x)"),
        least: f("MIN(t.x)"),
        many: f("COUNT(t.x)"),
        product: f("SUMPRODUCT(t.x; t.scaled)"),
        matched: f("IFERROR(MATCH(2; t.x; 0); 0)"),
        last: f("IFERROR(INDEX(t.x; COUNT(t.x)); 0)"),
        above: f('COUNTIF(t.x; ">1")'),
        next: f("total + 1"),
      }
      const tables = (rows: number): Readonly<Record<string, Table>> => ({
        t: {
          columns: {
            x: grown(rows),
            scaled: f("x * factor"),
            row: f("ROW()"),
            so_far: f("SUM(t.x) - x"),
            before: f("IF(ROW() = 1; 0; INDEX(t.scaled; ROW() - 1))"),
          },
        },
        u: { rows: 2, columns: { share: f("ROW() * SUM(t.x)") } },
      })
      const expected = (rows: number) => {
        const sum = (rows * (rows + 1)) / 2
        return {
          total: sum * 10,
          greatest: rows,
          least: Math.min(rows, 1),
          many: rows,
          product: grown(rows).reduce((all, x) => all + x * x * 10, 0),
          matched: rows >= 2 ? 2 : 0,
          last: rows,
          above: Math.max(rows - 1, 0),
          next: sum * 10 + 1,
          scaled: grown(rows).map((x) => x * 10),
          row: grown(rows),
          so_far: grown(rows).map((x) => sum - x),
          before: grown(rows).map((x) => (x - 1) * 10),
          share: [sum, sum * 2],
        }
      }
      const held = (graph: ReturnType<GraphBuilder>) => ({
        ...Object.fromEntries(
          Object.keys(around)
            .filter((id) => id !== "factor")
            .map((id) => [id, graph.scalar(id)]),
        ),
        ...Object.fromEntries(
          ["scaled", "row", "so_far", "before"].map((column) => [column, graph.column("t", column)]),
        ),
        share: graph.column("u", "share"),
      })

      test.each([0, 1, 2, 5, 30])("with %d rows", (rows) => {
        expect(held(graphOf(build, around, tables(rows)))).toEqual(expected(rows))
      })

      test("that grow, shrink, empty and fill again take all that leans on them along", () => {
        const graph = graphOf(build, around, tables(3))
        for (const rows of [4, 2, 0, 0, 1, 40, 39, 100, 0, 3]) {
          graph.apply({ tables: new Map([["t", { rows, values: { x: grown(rows) } }]]) })
          expect(held(graph)).toEqual(expected(rows))
        }
      })

      test("whose rows only change their constants", () => {
        const graph = graphOf(build, around, tables(3))
        graph.apply({ tables: new Map([["t", { rows: 3, values: { x: [3, 5, 4] } }]]) })
        expect(graph.scalar("total")).toBe(120)
        expect(graph.scalar("greatest")).toBe(5)
        expect(graph.column("t", "before")).toEqual([0, 30, 50])
      })

      test("of formulas alone are as long as they are told", () => {
        const graph = graphOf(
          build,
          { total: f("SUM(t.n)") },
          { t: { rows: 3, columns: { n: f("ROW() * 2") } } },
        )
        expect(graph.column("t", "n")).toEqual([2, 4, 6])
        graph.apply({ tables: new Map([["t", { rows: 5, values: {} }]]) })
        expect(graph.column("t", "n")).toEqual([2, 4, 6, 8, 10])
        expect(graph.scalar("total")).toBe(30)
      })

      test("that lean on the rows of one another", () => {
        const graph = graphOf(
          build,
          {},
          {
            prices: { columns: { item: ["bar", "plate"], price: [3, 7] } },
            wanted: {
              columns: {
                item: ["plate", "bar", "rod"],
                count: [2, 5, 1],
                price: f("IFERROR(INDEX(prices.price; MATCH(item; prices.item; 0)); 0)"),
                cost: f("price * count"),
              },
            },
          },
        )
        expect(graph.column("wanted", "cost")).toEqual([14, 15, 0])
        graph.apply({
          tables: new Map([
            ["prices", { rows: 3, values: { item: ["bar", "rod", "plate"], price: [3, 1, 8] } }],
          ]),
        })
        expect(graph.column("wanted", "cost")).toEqual([16, 15, 1])
      })

      test("of one column are lists", () => {
        const graph = graphOf(
          build,
          { longest: f("MAX(stock.value)") },
          { stock: { columns: { value: [8, 12, 10] } } },
        )
        expect(graph.scalar("longest")).toBe(12)
        graph.apply({ tables: new Map([["stock", { rows: 1, values: { value: [16] } }]]) })
        expect(graph.scalar("longest")).toBe(16)
      })

      test("may hold yes, no and text that change places", () => {
        const graph = graphOf(
          build,
          { ups: f("COUNTIF(t.up; TRUE())") },
          {
            t: { columns: { up: [true, false], word: ["a", "b"], says: f('IF(up; word; "-")') } },
          },
        )
        graph.apply({ tables: new Map([["t", { rows: 2, values: { up: [true, true], word: ["c", "d"] } }]]) })
        expect(graph.scalar("ups")).toBe(2)
        expect(graph.column("t", "says")).toEqual(["c", "d"])
      })
    })

    describe("changes", () => {
      test("move what leans on them, near and far, and nothing else", () => {
        //   a     b
        //    \   / \
        //     sum   twice
        //      |
        //    squared
        const graph = graphOf(build, { a: 1, b: 2, sum: f("a + b"), twice: f("b * 2"), squared: f("sum^2") })
        graph.apply({ scalars: new Map([["a", { value: 5 }]]) })
        expect(["sum", "twice", "squared"].map((id) => graph.scalar(id))).toEqual([7, 4, 49])
        graph.apply({
          scalars: new Map([
            ["a", { value: 0 }],
            ["b", { value: 10 }],
          ]),
        })
        expect(["sum", "twice", "squared"].map((id) => graph.scalar(id))).toEqual([10, 20, 100])
      })

      test("of scalars and tables at once are one change", () => {
        const graph = graphOf(build, { k: 2, total: f("k * SUM(t.x)") }, { t: { columns: { x: [1, 2] } } })
        graph.apply({
          scalars: new Map([["k", { value: 3 }]]),
          tables: new Map([["t", { rows: 3, values: { x: [1, 1, 1] } }]]),
        })
        expect(graph.scalar("total")).toBe(9)
      })

      test("may put a formula in place of a constant, a constant of a formula, or one formula of another", () => {
        const graph = graphOf(build, { a: 2, b: f("a * 3"), c: f("b + 1") })
        graph.apply({ scalars: new Map([["b", { value: 10 }]]) })
        expect(graph.scalar("c")).toBe(11)
        graph.apply({ scalars: new Map([["a", { value: 4 }]]) })
        expect(graph.scalar("c")).toBe(11)
        graph.apply({ scalars: new Map([["b", contentOf(f("a * 5"))]]) })
        expect(graph.scalar("c")).toBe(21)
        graph.apply({ scalars: new Map([["b", contentOf(f("a * 7"))]]) })
        expect(graph.scalar("c")).toBe(29)
        graph.apply({ scalars: new Map([["a", contentOf(f("1 + 1"))]]) })
        expect(graph.scalar("c")).toBe(15)
      })

      test("may turn what leans on what around", () => {
        const graph = graphOf(build, { a: 1, b: f("a + 1") })
        graph.apply({
          scalars: new Map([
            ["a", contentOf(f("b + 1"))],
            ["b", { value: 10 }],
          ]),
        })
        expect(graph.scalar("a")).toBe(11)
      })

      test("to a formula over a column that a later change lengthens", () => {
        const graph = graphOf(build, { a: 0, b: f("a") }, { t: { columns: { x: [1, 2] } } })
        graph.apply({ scalars: new Map([["a", contentOf(f("SUM(t.x)"))]]) })
        expect(graph.scalar("b")).toBe(3)
        graph.apply({ tables: new Map([["t", { rows: 3, values: { x: [1, 2, 4] } }]]) })
        expect(graph.scalar("b")).toBe(7)
        graph.apply({ tables: new Map([["t", { rows: 100, values: { x: grown(100) } }]]) })
        expect(graph.scalar("b")).toBe(5_050)
      })

      test("name what they moved, all of it", () => {
        const graph = graphOf(
          build,
          { a: 1, sum: f("a + SUM(t.y)") },
          { t: { columns: { x: [1, 2], y: f("x * a") } } },
        )
        const moved = graph.apply({ scalars: new Map([["a", { value: 2 }]]) })
        for (const id of ["a", "sum", "t.y"]) expect(moved).toContain(id)
        for (const rows of [3, 0]) {
          const resized = graph.apply({ tables: new Map([["t", { rows, values: { x: grown(rows) } }]]) })
          for (const id of ["t.x", "t.y", "sum"]) expect(resized).toContain(id)
        }
      })

      test("that are empty change nothing", () => {
        const graph = graphOf(build, { a: 1, b: f("a + 1") })
        graph.apply({})
        expect(graph.scalar("b")).toBe(2)
      })

      test("may bring and mend an error", () => {
        const graph = graphOf(build, { a: 1, b: f("6 / a"), c: f("b + 1") })
        graph.apply({ scalars: new Map([["a", { value: 0 }]]) })
        expect(graph.scalar("c")).toEqual({ error: "division_by_zero" })
        graph.apply({ scalars: new Map([["a", { value: { error: "no_value" } }]]) })
        expect(graph.scalar("c")).toEqual({ error: "no_value" })
        graph.apply({ scalars: new Map([["a", { value: 3 }]]) })
        expect(graph.scalar("c")).toBe(3)
      })

      test("of many inputs at once are one recalculation's worth of work", () => {
        const inputs = Object.fromEntries(Array.from({ length: 500 }, (_, i) => [`in_${i}`, i]))
        const sums = Object.fromEntries(
          Array.from({ length: 499 }, (_, i) => [
            `sum_${i}`,
            f(i === 0 ? "in_0 + in_1" : `sum_${i - 1} + in_${i + 1}`),
          ]),
        )
        const graph = graphOf(build, { ...inputs, ...sums })
        expect(graph.scalar("sum_498")).toBe((499 * 500) / 2)
        graph.apply({ scalars: new Map(Object.keys(inputs).map((id) => [id, { value: 2 }])) })
        expect(graph.scalar("sum_498")).toBe(1_000)
      })
    })

    describe("size and depth", () => {
      test("a chain of 1,000 scalars, the last defined first", () => {
        const chain = Object.fromEntries(
          Array.from({ length: 1_000 }, (_, i) => [`s_${999 - i}`, i === 999 ? 1 : f(`s_${998 - i} + 1`)]),
        )
        const graph = graphOf(build, chain)
        expect(graph.scalar("s_999")).toBe(1_000)
        graph.apply({ scalars: new Map([["s_0", { value: 5 }]]) })
        expect(graph.scalar("s_999")).toBe(1_004)
      })

      // A call is two levels, so half as many of them.
      const some = MOST_LEVELS
      const half = Math.floor(MOST_LEVELS / 2)
      const third = Math.floor(MOST_LEVELS / 3)
      const deep: readonly (readonly [string, string, number])[] = [
        ["parentheses", `${"(".repeat(some)}1${")".repeat(some)}`, 1],
        ["signs", `${"-".repeat(some)}1`, (-1) ** some],
        ["percents", `1e${2 * some}${"%".repeat(some)}`, 1],
        ["additions", `1${"+1".repeat(some)}`, some + 1],
        ["additions to the right", `${"1+(".repeat(half)}1${")".repeat(half)}`, half + 1],
        ["functions", `${"MAX(1;".repeat(half)}2${")".repeat(half)}`, 2],
        ["sums in functions", `${"ABS(1+".repeat(third)}1${")".repeat(third)}`, third + 1],
        ["whole numbers", `${"INT(".repeat(half)}2.5${")".repeat(half)}`, 2],
        ["conditions", `${"IF(FALSE();1;".repeat(half - 1)}2${")".repeat(half - 1)}`, 2],
        ["rows found", `${"INDEX(t.x;".repeat(half)}1${")".repeat(half)}`, 1],
        ["look-ups", `${"LOOKUP(".repeat(half)}1${";t.x;t.x)".repeat(half)}`, 1],
        ["counts", `${"COUNTIF(t.x;".repeat(half)}1${")".repeat(half)}`, 1],
      ]
      test.each(deep)("a formula as deep as is read, of %s", (_, formula, expected) => {
        const value = valueFrom(formula, {}, { t: { columns: { x: [1, 2] } } })
        expect(value).toBeCloseTo(expected, 9)
      })
    })

    describe("misuse throws", () => {
      const graph = () => graphOf(build, { a: 1 }, { t: { columns: { x: [1] } } })
      test.each<[string, () => unknown]>([
        ["reading a scalar that does not exist", () => graph().scalar("b")],
        ["reading a column that does not exist", () => graph().column("t", "y")],
        ["reading a column of a table that does not exist", () => graph().column("u", "x")],
        [
          "changing a scalar that does not exist",
          () => graph().apply({ scalars: new Map([["b", { value: 1 }]]) }),
        ],
        [
          "changing a table that does not exist",
          () => graph().apply({ tables: new Map([["u", { rows: 0, values: {} }]]) }),
        ],
      ])("%s", (_, misuse) => {
        expect(misuse).toThrow(RangeError)
      })
    })
  })
}

function grown(rows: number): readonly number[] {
  return Array.from({ length: rows }, (_, index) => index + 1)
}

const NO_ROWS: Table = { columns: { x: [] } }
const BROKEN: Table = { columns: { x: [5, { error: "division_by_zero" }, 3], y: [1, 2, 3] } }
