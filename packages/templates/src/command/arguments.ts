import { parseArgs } from "node:util"
import type { LanguageId, UnitSystem } from "@pegbook/engine"
import { BadInput, oneLine, quoted } from "./bad-input.ts"

/** The sheets that a book is laid out for. */
export type Paper = "a4" | "letter"

/** What a command may be given besides its positionals. */
export type OptionName =
  | "set"
  | "table"
  | "units"
  | "language"
  | "json"
  | "seconds"
  | "entries"
  | "headings"
  | "to"
  | "out"
  | "paper"

export interface Given {
  readonly positionals: readonly string[]
  /** `--set name=value`, in the order given; a name given twice keeps its last value. */
  readonly set: Readonly<Record<string, string>>
  /** What was given with `--table`: paths of files to read, and to `export` the name of a table. */
  readonly tables: readonly string[]
  readonly units?: UnitSystem
  readonly json: boolean
  /** That a search for a proof may take; 0: none is made. */
  readonly seconds: number
  readonly entries: boolean
  readonly headings?: string
  readonly to?: string
  readonly out?: string
  readonly paper?: Paper
}

const OPTIONS = {
  set: { type: "string", multiple: true },
  table: { type: "string", multiple: true },
  units: { type: "string" },
  language: { type: "string" },
  json: { type: "boolean" },
  seconds: { type: "string" },
  entries: { type: "boolean" },
  headings: { type: "string" },
  to: { type: "string" },
  out: { type: "string" },
  paper: { type: "string" },
} as const

/** How each option is written, for messages and the help. */
export const OPTION_USAGE: Readonly<Record<OptionName, string>> = {
  set: "[--set name=value]...",
  table: "[--table file.json]...",
  units: "[--units us|metric]",
  language: "[--language en|fr]",
  json: "[--json]",
  seconds: "[--seconds number]",
  entries: "[--entries]",
  headings: "[--headings table]",
  to: "[--to file.ods]",
  out: "[--out file.html|file.pdf]",
  paper: "[--paper a4|letter]",
}

/** That a search may take where nothing is said. */
const USUAL_SECONDS = 30
const MOST_SECONDS = 86_400

/** Reads a command's arguments; `usage` ends the line that says what was wrong. */
export function readArguments(argv: readonly string[], allowed: readonly OptionName[], usage: string): Given {
  const { values, positionals } = parse(argv, allowed, usage)
  if (values.language !== undefined) checkLanguage(values.language)
  return {
    positionals,
    set: Object.fromEntries((values.set ?? []).map(readSetting)),
    tables: values.table ?? [],
    ...(values.units === undefined ? {} : { units: readUnits(values.units) }),
    json: values.json ?? false,
    seconds: values.seconds === undefined ? USUAL_SECONDS : readSeconds(values.seconds),
    entries: values.entries ?? false,
    ...(values.headings === undefined ? {} : { headings: values.headings }),
    ...(values.to === undefined ? {} : { to: values.to }),
    ...(values.out === undefined ? {} : { out: values.out }),
    ...(values.paper === undefined ? {} : { paper: readPaper(values.paper) }),
  }
}

/**
 * The language that the arguments ask for, before they are read: what is wrong with them is said in it as well.
 * English where none is asked for, or one that there is not.
 */
export function languageAsked(argv: readonly string[]): LanguageId {
  const at = argv.lastIndexOf("--language")
  const asked = at < 0 ? argv.findLast((one) => one.startsWith("--language="))?.slice(11) : argv[at + 1]
  return asked === "fr" ? "fr" : "en"
}

function parse(argv: readonly string[], allowed: readonly OptionName[], usage: string) {
  let parsed: ReturnType<typeof parseAll>
  try {
    parsed = parseAll(argv)
  } catch (error) {
    const reason = error instanceof Error ? oneLine(error.message).replace(/\. .*/, ".") : String(error)
    throw new BadInput(`${reason} Write: ${usage}`)
  }
  const refused = Object.keys(parsed.values).find((name) => !allowed.some((option) => option === name))
  if (refused !== undefined) throw new BadInput(`--${refused} is of no use here. Write: ${usage}`)
  return parsed
}

function parseAll(argv: readonly string[]) {
  return parseArgs({ args: [...argv], options: OPTIONS, allowPositionals: true, strict: true })
}

function readSetting(text: string): [name: string, typed: string] {
  const at = text.indexOf("=")
  const name = text.slice(0, Math.max(at, 0)).trim()
  if (name === "") {
    throw new BadInput(
      `--set: ${quoted(text)} is not name=value. Write for example --set platform_length="20 ft".`,
    )
  }
  return [name, text.slice(at + 1)]
}

function readSeconds(text: string): number {
  const seconds = /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : Number.NaN
  if (seconds <= MOST_SECONDS) return seconds
  throw new BadInput(
    `--seconds: ${quoted(text)} is not accepted. Write a number from 0 (nothing is proven) to ${MOST_SECONDS}, such as --seconds 60.`,
  )
}

function readPaper(text: string): Paper {
  if (text === "a4" || text === "letter") return text
  throw new BadInput(`--paper: ${quoted(text)} is not accepted. Write --paper a4 or --paper letter.`)
}

function readUnits(text: string): UnitSystem {
  if (text === "us" || text === "metric") return text
  throw new BadInput(`--units: ${quoted(text)} is not accepted. Write --units us or --units metric.`)
}

function checkLanguage(text: string): void {
  if (text === "en" || text === "fr") return
  throw new BadInput(
    `--language: ${quoted(text)} is not accepted. Write --language en for English or --language fr for French; without it everything is said in English.`,
  )
}
