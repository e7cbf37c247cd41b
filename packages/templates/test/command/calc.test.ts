import { spawn } from "node:child_process"
import { expect, test } from "vitest"
import { COMMAND, calcJson, file, pegbook, refuses, spawned } from "./run.ts"

const T = "game-table-platform"

// The 3-4-5 triangle that builders square a frame with: 12 ft by 16 ft has a diagonal of 20 ft exactly.
const SQUARED = ["--set", "platform_length=16 ft", "--set", "platform_width=12 ft"]

test("values are in SI units, whatever was typed", () => {
  const { template, quantities } = calcJson(T, ...SQUARED)
  expect(template).toBe(T)
  expect(quantities.platform_length).toMatchObject({
    value: 4.8768,
    unit: "m",
    text: "16' 0\"",
    kind: "input",
  })
  expect(quantities.platform_diagonal).toMatchObject({
    value: 6.096,
    unit: "m",
    text: "20' 0\"",
    kind: "formula",
  })
  // 1 ft = 0.3048 m exactly (the international foot): 192 sq ft.
  expect(quantities.platform_area?.value).toBeCloseTo(192 * 0.3048 ** 2, 9)
  expect(quantities.platform_area?.unit).toBe("m2")
})

test("a number carries its formula, why, and at least one source", () => {
  const { quantities, checks, tables } = calcJson(T)
  for (const [name, quantity] of Object.entries(quantities)) {
    expect(quantity.why, name).not.toBe("")
    expect(quantity.sources.length, name).toBeGreaterThan(0)
    expect("formula" in quantity, name).toBe(quantity.kind === "formula")
  }
  expect(quantities.joist_count?.formula).toContain("joist_spacing")
  expect(Object.keys(checks)).toContain("soil_bearing_check")
  expect(tables.supports?.length).toBe(quantities.support_count?.value)
  expect(tables.supports?.[0]?.x).toMatchObject({ unit: "m" })
})

test("a check has its verdict, and demand over limit is its ratio", () => {
  const { checks } = calcJson(T)
  const check = checks.soil_bearing_check
  expect(check?.verdict).toMatch(/^(passes|near|fails|outside_table|needs_entry)$/)
  expect(check?.ratio).toBeCloseTo(
    (check?.demand?.value ?? Number.NaN) / (check?.limit?.value ?? Number.NaN),
    9,
  )
})

test("metric and feet are the same dimension, and --units changes what is read, not what is held", () => {
  const us = calcJson(T, "--set", "platform_length=6.096 m", "--set", "platform_width=12 ft")
  const metric = calcJson(
    T,
    "--set",
    "platform_length=20 ft",
    "--set",
    "platform_width=3657.6 mm",
    "--units",
    "metric",
  )
  const values = (printed: typeof us): unknown[] =>
    Object.entries(printed.quantities).map(([name, { value }]) => [name, value])
  expect(values(metric)).toEqual(values(us))
  expect(us.quantities.platform_length?.text).toContain("20' 0\"")
  expect(metric.quantities.platform_length?.text).toMatch(/m$/)
})

test("a table is read from a file", () => {
  const flat = file(
    '{ "ground_levels": [ { "x": "0 ft", "y": "0 ft", "level": "0 in" }, { "x": "20 ft", "y": "0 ft", "level": "0 in" }, { "x": "0 ft", "y": "12 ft", "level": 0 } ] }',
  )
  const { tables } = calcJson(T, "--table", flat)
  expect(tables.ground_levels?.map((row) => [row.x?.value, row.y?.value, row.level?.value])).toEqual([
    [0, 0, 0],
    [6.096, 0, 0],
    [0, 3.6576, 0],
  ])
})

test("the text has the sections in the order of the work, with label, name and value", () => {
  const { out, status } = pegbook("calc", T, ...SQUARED)
  expect(status).toBe(0)
  expect(out).toMatch(/ {2}platform_diagonal +20' 0"\n/)
  expect(out).toMatch(/soil_bearing_check +(passes|near the limit|fails|outside the table)/)
  expect(out).not.toMatch(/[ \t]\n/)
})

test("in a process of its own it prints the same, and its exit status says whether it could", () => {
  const calculated = spawned("calc", T, ...SQUARED, "--json", "--seconds", "0")
  expect(JSON.parse(calculated.out)).toEqual(calcJson(T, ...SQUARED))
  expect(calculated).toMatchObject({ status: 0, err: "" })
  const refused = spawned("calc", T, "--set", "platform_length=long")
  expect(refused).toMatchObject({ status: 2, out: "" })
  expect(refused.err).toMatch(/^pegbook: [^\n]+\n$/)
})

test("who reads may stop reading", async () => {
  const child = spawn(process.execPath, [COMMAND, "calc", T, "--json"], { stdio: ["ignore", "pipe", "pipe"] })
  let complaints = ""
  child.stderr.on("data", (part) => {
    complaints += String(part)
  })
  child.stdout.once("data", () => child.stdout.destroy())
  const status = await new Promise((resolve) => child.on("close", resolve))
  expect(complaints).toBe("")
  expect(status).toBe(0)
})

test("an unreadable value is refused in one line that says what is accepted", () => {
  refuses(["calc", T, "--set", "platform_length=long"], "platform_length", "long", "Type it like this")
  refuses(["calc", T, "--set", "platform_length="], "platform_length")
  refuses(["calc", T, "--set", "platform_length=-3 ft"], "platform_length", "-3 ft")
  refuses(["calc", T, "--set", "platform_length=12 kg"], "platform_length", "kg")
  refuses(["calc", T, "--set", "platform_length=1e999 ft"], "platform_length")
})

test("a setting that has no name or no such entry is refused, with near names", () => {
  refuses(["calc", T, "--set", "platform_lenght=3 ft"], "platform_lenght", "platform_length")
  refuses(["calc", T, "--set", "area_limit_check=3"], "area_limit_check")
  refuses(["calc", T, "--set", "=3"], "--set", "name=value")
  refuses(["calc", T, "--set", "platform_length"], "--set", "name=value")
  refuses(["calc", T, "--set", "__proto__=3"], "__proto__")
  refuses(["calc", T, "--set", "constructor=3"], "constructor")
})

test("an unknown template or file is refused, with near ones", () => {
  refuses(["calc", "game-table-platfrom"], "game-table-platfrom", `mean ${T}`)
  refuses(["calc", "./none.json"], "none.json", "saved workbook")
  refuses(["calc", "__proto__"], "__proto__")
  refuses(["calc", "/"], "saved workbook")
})

test("a file that is no workbook is refused", () => {
  refuses(["calc", file("{")], "JSON")
  refuses(["calc", file("[".repeat(100_000))], "JSON")
  refuses(["calc", file("[]")], "saved workbook")
  refuses(["calc", file('{"format":"pegbook-workbook","version":999}')], "999")
})

test("a table that cannot be used is refused with its place", () => {
  refuses(["calc", T, "--table", "none.json"], "--table", "none.json")
  refuses(["calc", T, "--table", file("[]")], "--table", "one object")
  refuses(["calc", T, "--table", file('{"ground_levels": 3}')], "ground_levels", "list of rows")
  refuses(["calc", T, "--table", file('{"ground_levels": [3]}')], "row 1", "ground_levels")
  refuses(["calc", T, "--table", file('{"ground_levels": [{"x": {}}]}')], "row 1", "x")
  refuses(
    ["calc", T, "--table", file('{"ground_levels": [{"x": "1 ft", "y": "1 ft", "level": "deep"}]}')],
    "deep",
  )
  refuses(["calc", T, "--table", file('{"ground_levels": [{"x": "1 ft", "z": "1 ft"}]}')], "z")
  refuses(["calc", T, "--table", file('{"no_such_table": []}')], "no_such_table")
  refuses(["calc", T, "--table", file('{"supports": []}')], "supports")
})

test("arguments that make no sense are refused with how to write them", () => {
  refuses(["calculate"], "calculate", "calc")
  refuses(["calc"], "template-or-saved-file")
  refuses(["calc", T, "extra"], "template-or-saved-file")
  refuses(["calc", T, "--colour"], "--colour")
  refuses(["calc", T, "--set"], "--set")
  refuses(["calc", T, "--units", "feet"], "feet", "metric")
  refuses(["list", "--json"], "--json")
})

test("line ends and terminal codes in what was given do not reach the terminal", () => {
  refuses(["calc", "a\n\u001b[31mb\u2028c"], "a [31mb c")
  refuses(["calc", T, "--set", "platform_length=\u001b]0;x\u0007\n\n9"], "platform_length")
  refuses(["calc", T, "--set", `platform_length=${"9".repeat(100_000)}`], "platform_length")
})

test("what can be solved better is, before it is printed; with no time for it the plan made at once is", () => {
  const proven = JSON.parse(spawned("calc", T, "--json").out)
  const atOnce = calcJson(T)
  expect(proven.notProven).toEqual([])
  expect(proven.searches.cut_plan).toMatchObject({ proven: true, gap: 0 })
  expect(proven.searches.cut_plan.bound.value).toBe(proven.searches.cut_plan.objective.value)
  const bought = Number(proven.quantities.timber_length_bought.value)
  expect(bought).toBeLessThanOrEqual(Number(atOnce.quantities.timber_length_bought?.value))
  expect(bought).toBeCloseTo(proven.searches.cut_plan.objective.value, 6)
})
