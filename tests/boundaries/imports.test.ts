import { expect, test } from "vitest"
import { files, read } from "../files.ts"
import { importRing, notOnAScreen, tradeWords, wrongImports } from "./rules.ts"

const CODE = [".ts", ".tsx"]
const all = files("packages", CODE).filter((file) => file.includes("/src/"))
const engine = all.filter((file) => file.startsWith("packages/engine/"))
const ui = all.filter((file) => file.startsWith("packages/ui/"))

test("there are sources of every package to look at", () => {
  for (const name of ["engine", "templates", "ui"]) {
    expect(all.filter((file) => file.startsWith(`packages/${name}/src/`)).length, name).toBeGreaterThan(5)
  }
})

/** This folder's own files hold wrong imports as examples. */
const tests = files("tests", CODE).filter((file) => !file.startsWith("tests/boundaries/"))

test("imports point one way: ui to templates to engine, through each package's door", () => {
  expect([...all, ...tests].flatMap((file) => wrongImports(file, read(file)))).toEqual([])
})

test("no files import each other in a ring", () => {
  expect(importRing(new Map(all.map((file) => [file, read(file)])))).toBeUndefined()
})

test("the engine does not speak of the trade", () => {
  expect(engine.flatMap((file) => tradeWords(file, read(file)))).toEqual([])
})

test("screens hold no formula, no raw markup and no code made from text", () => {
  expect(ui.flatMap((file) => notOnAScreen(file, read(file)))).toEqual([])
})

test.each([
  ["packages/engine/src/a.ts", 'import { template } from "@pegbook/templates"'],
  ["packages/engine/src/a.ts", 'import "@pegbook/ui"'],
  ["packages/engine/src/a.ts", 'import { readFileSync } from "node:fs"'],
  ["packages/engine/src/a.ts", 'import DecimalJs from "decimal.js"'],
  ["packages/engine/src/graph/graph.ts", 'import { HyperFormula } from "hyperformula"'],
  ["packages/engine/src/a.ts", 'export { X } from "../../templates/src/x.ts"'],
  ["packages/templates/src/a.ts", 'import { render } from "solid-js/web"'],
  ["packages/templates/src/a.ts", 'import { Decimal } from "decimal.js"'],
  ["packages/templates/src/a.ts", 'import { openBook } from "@pegbook/engine/src/book/open.ts"'],
  ["packages/templates/src/index.ts", 'export { main } from "./command/main.ts"'],
  ["packages/ui/src/a.tsx", 'const graph = await import("hyperformula")'],
  ["packages/ui/src/a.tsx", 'import type {\n  Book,\n} from "../../engine/src/book/book.ts"'],
  ["packages/ui/src/a.tsx", 'const fs = require("node:fs")'],
  ["tests/journeys/a.test.ts", 'import { x } from "../../packages/engine/src/x.ts"'],
])("an import that points the wrong way is found: %s: %s", (file, source) => {
  expect(wrongImports(file, source)).toHaveLength(1)
})

test.each([
  ["packages/engine/src/quantity/decimal.ts", 'import DecimalJs from "decimal.js"'],
  ["packages/engine/src/graph/hyperformula-graph.ts", 'import { HyperFormula } from "hyperformula"'],
  [
    "packages/templates/src/a.ts",
    'import type { Definition } from "@pegbook/engine"\nimport { b } from "./b.ts"',
  ],
  [
    "packages/templates/src/command/main.ts",
    'import { parseArgs } from "node:util"\nimport { T } from "../index.ts"',
  ],
  ["packages/ui/src/a.tsx", '// import { x } from "hyperformula"\nimport { createSignal } from "solid-js"'],
])("an import that points the right way is let through: %s", (file, source) => {
  expect(wrongImports(file, source)).toEqual([])
})

test.each([
  'const label = "Joists"',
  "const joistCount = 3",
  "const soil_bearing = 1",
  "// how many screws there are",
  "const a = `kerf`",
])("a word of the trade is found in the engine: %s", (source) => {
  expect(tradeWords("packages/engine/src/a.ts", source)).toHaveLength(1)
})

test.each(["/** An entry's name, such as `joist_count`. */", "const thumbnail = snail + screwed"])(
  "what is no word of the trade is let through: %s",
  (source) => {
    expect(tradeWords("packages/engine/src/a.ts", source)).toEqual([])
  },
)

test.each([
  'document.write("x")',
  "node.innerHTML = text",
  "<div innerHTML={text} />",
  "eval(text)",
  'const f = "ROUNDUP(a / b; 0) + 1"',
  "const f = `=SUM(supports.dig)`",
  "parseFormula(text)",
])("what does not belong on a screen is found: %s", (source) => {
  expect(notOnAScreen("packages/ui/src/a.tsx", source)).toHaveLength(1)
})

test.each(["Math.max(a, b)", "if (a) b()", "// document.write", 'const says = "Worked out from"'])(
  "what belongs on a screen is let through: %s",
  (source) => {
    expect(notOnAScreen("packages/ui/src/a.tsx", source)).toEqual([])
  },
)

test("a ring of imports is found and named in order, and types make none", () => {
  const sources = (back: string) =>
    new Map([
      ["p/a.ts", 'import { b } from "./b.ts"'],
      ["p/b.ts", 'import { c } from "./deep/c.ts"'],
      ["p/deep/c.ts", back],
    ])
  expect(importRing(sources('import { a } from "../a.ts"'))).toEqual([
    "p/a.ts",
    "p/b.ts",
    "p/deep/c.ts",
    "p/a.ts",
  ])
  expect(importRing(sources('import type { A } from "../a.ts"'))).toBeUndefined()
})
