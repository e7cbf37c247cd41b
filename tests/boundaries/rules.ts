import { posix } from "node:path"
import { imports, split } from "./source-text.ts"

/** What a package's source may import, besides its own files. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  engine: ["decimal.js", "fflate", "hyperformula", "zod/mini", "zod/v4/locales/en.js"],
  templates: ["@pegbook/engine", "@pegbook/engine/hyperformula", "delaunator", "highs", "zod"],
  ui: [
    "@pegbook/templates",
    "@pegbook/templates/cutting",
    "@pegbook/engine",
    "solid-js",
    "solid-js/web",
    "solid-js/store",
    "idb",
  ],
}

/** Libraries that exactly one file knows. */
const ONE_DOOR: Readonly<Record<string, string>> = {
  hyperformula: "packages/engine/src/graph/hyperformula-graph.ts",
  "decimal.js": "packages/engine/src/quantity/decimal.ts",
  fflate: "packages/engine/src/exchange/write-open-document.ts",
  delaunator: "packages/templates/src/solvers/ground.ts",
  highs: "packages/templates/src/cutting/highs-solver.ts",
}

/** The one folder outside the tools that runs in Node and not in a browser. */
const RUNS_IN_NODE = "packages/templates/src/command/"

/** What is wrong with one source file, in words; nothing when all is well. `file` is relative to the project. */
export function wrongImports(file: string, source: string): string[] {
  if (file.startsWith("tests/")) return pastADoor(file, source)
  const owner = /^packages\/(\w+)\/src\//.exec(file)?.[1]
  if (owner === undefined) return []
  const wrong: string[] = []
  for (const { from } of imports(split(source).code)) {
    const door = ONE_DOOR[from]
    if (from.startsWith(".")) {
      const target = posix.join(posix.dirname(file), from)
      if (!target.startsWith(`packages/${owner}/src/`)) {
        wrong.push(`${file} reaches past its package's door: ${from}`)
      } else if (target.startsWith(RUNS_IN_NODE) && !file.startsWith(RUNS_IN_NODE)) {
        wrong.push(`${file} imports the headless command, which no browser can run: ${from}`)
      }
    } else if (from.startsWith("node:")) {
      if (!file.startsWith(RUNS_IN_NODE)) wrong.push(`${file} imports ${from}, which no browser has`)
    } else if (!(MAY_IMPORT[owner] ?? []).includes(from)) {
      wrong.push(`${file} may not import ${from}`)
    } else if (door !== undefined && file !== door) {
      wrong.push(`${file} imports ${from}; only ${door} may`)
    }
  }
  return wrong
}

/** Tests across packages use what a package offers, not its insides. */
function pastADoor(file: string, source: string): string[] {
  return imports(split(source).code)
    .filter(
      ({ from }) => from.startsWith(".") && posix.join(posix.dirname(file), from).startsWith("packages/"),
    )
    .map(({ from }) => `${file} reaches past a package's door: ${from}`)
}

const TRADE_WORDS = [
  "joist",
  "timber",
  "lumber",
  "skid",
  "screw",
  "nail",
  "plywood",
  "decking",
  "sleeper",
  "stringer",
  "gravel",
  "topsoil",
  "soil",
  "kerf",
  "carpenter",
  "sawmill",
  "paver",
]

/** Trade words in a source of the engine. A comment may give an entry's name as an example, in back quotes. */
export function tradeWords(file: string, source: string): string[] {
  const { code, comments } = split(source)
  const text = `${code}\n${comments.replace(/`[^`]*`/g, "")}`
  const words = new Set(
    text
      .replace(/([a-z])([A-Z])/g, "$1 $2")
      .toLowerCase()
      .split(/[^a-z]+/),
  )
  return TRADE_WORDS.filter((word) => words.has(word) || words.has(`${word}s`)).map(
    (word) => `${file} speaks of the trade: ${word}`,
  )
}

const NOT_ON_A_SCREEN: readonly { readonly says: string; readonly pattern: RegExp }[] = [
  {
    says: "writes raw markup",
    pattern: /\bdocument\.write|\b(?:inner|outer)HTML\b|\binsertAdjacentHTML\b|\bsetHTMLUnsafe\b/,
  },
  { says: "runs text as code", pattern: /\beval\s*\(|\bnew\s+Function\b/ },
  {
    says: "holds formula text",
    pattern:
      /["'`=]\s*=?[^"'`\n]*\b(?:ROUND(?:UP|DOWN)?|TRUNC|CEILING|FLOOR|SUM(?:IF|PRODUCT)?|COUNT(?:IF)?|AVERAGE|IF(?:ERROR)?|INDEX|MATCH|LOOKUP|SQRT|POWER|MIN|MAX|MOD|ABS|ROW)\([^)\n]*[;)]/,
  },
  {
    says: "reads or evaluates formulas itself",
    pattern: /\b(?:parseFormula|checkTypes|build\w*Graph|Decimal)\b/,
  },
]

/** What a source of the screens must not do: raw markup, code from text, and formulas, which belong to templates. */
export function notOnAScreen(file: string, source: string): string[] {
  const { code } = split(source)
  return NOT_ON_A_SCREEN.filter(({ pattern }) => pattern.test(code)).map(({ says }) => `${file} ${says}`)
}

/**
 * A ring of imports among files, if there is one, in order. Imports of types are left out: they are gone when it runs.
 * `sources` maps each file to its text.
 */
export function importRing(sources: ReadonlyMap<string, string>): string[] | undefined {
  const targets = new Map<string, string[]>()
  for (const [file, source] of sources) {
    const own = imports(split(source).code).filter(({ from, typeOnly }) => from.startsWith(".") && !typeOnly)
    targets.set(
      file,
      own.map(({ from }) => posix.join(posix.dirname(file), from)),
    )
  }
  const done = new Set<string>()
  const path: string[] = []
  const visit = (file: string): string[] | undefined => {
    const at = path.indexOf(file)
    if (at >= 0) return [...path.slice(at), file]
    if (done.has(file)) return undefined
    path.push(file)
    for (const target of targets.get(file) ?? []) {
      const ring = visit(target)
      if (ring !== undefined) return ring
    }
    path.pop()
    done.add(file)
    return undefined
  }
  for (const file of sources.keys()) {
    const ring = visit(file)
    if (ring !== undefined) return ring
  }
  return undefined
}
