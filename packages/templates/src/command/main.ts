import { documentJsonSchema, languageInForce } from "@pegbook/engine"
import { QUICK_TEMPLATES, speak, TEMPLATES } from "../index.ts"
import { spokenTemplate } from "../words/speak.ts"
import { type Given, languageAsked, OPTION_USAGE, type OptionName, readArguments } from "./arguments.ts"
import { BadInput, quoted } from "./bad-input.ts"
import { type BookPrinter, buildBook, checkBookPath } from "./build-book.ts"
import { calcJson } from "./calc-json.ts"
import { calcText } from "./calc-text.ts"
import { compare } from "./compare.ts"
import { cut } from "./cut.ts"
import { checkExport, exportBook } from "./export.ts"
import { aligned } from "./layout.ts"
import { type Opened, open } from "./open.ts"
import { said } from "./said.ts"
import { settleProofs } from "./solving.ts"
import { why } from "./why.ts"

interface Command {
  readonly name: string
  /** The positionals as they are written in the help. */
  readonly takes: string
  readonly least: number
  readonly most: number
  readonly options: readonly OptionName[]
  /** Options that `takes` already shows. */
  readonly chooses?: readonly OptionName[]
  readonly says: string
  readonly run: (given: Given, printer: BookPrinter) => readonly string[] | Promise<readonly string[]>
}

const COMMANDS: readonly Command[] = [
  {
    name: "list",
    takes: "",
    least: 0,
    most: 0,
    options: ["language"],
    says: "the templates, one a line",
    run: () =>
      aligned(
        [...TEMPLATES, ...QUICK_TEMPLATES]
          .map(spokenTemplate)
          .map(({ id, title, says }) => [id, title, says]),
        "",
      ),
  },
  {
    name: "calc",
    takes: "<template-or-saved-file>",
    least: 1,
    most: 1,
    options: ["set", "table", "units", "language", "seconds", "json"],
    says: "every number of a workbook, in the order of the work",
    run: (given) => {
      const print = (opened: Opened): readonly string[] =>
        given.json ? [JSON.stringify(calcJson(opened), null, 2)] : calcText(opened)
      return whenProven(given, print)
    },
  },
  {
    name: "why",
    takes: "<template-or-saved-file> <name>",
    least: 2,
    most: 2,
    options: ["set", "table", "units", "language", "seconds"],
    says: "why a number is what it is, down to what was entered",
    run: (given) => whenProven(given, ({ book }) => why(book, given.positionals[1] ?? "")),
  },
  {
    name: "audit",
    takes: "<template-or-saved-file>",
    least: 1,
    most: 1,
    options: ["set", "table", "units", "language"],
    says: "every number worked out again by two other evaluators, and where they differ",
    // The library that it audits with takes half a second to load.
    run: (given) => import("./audit.ts").then(({ audit }) => audit(open(given.positionals[0] ?? "", given))),
  },
  {
    name: "compare",
    takes: "<saved-file> [scenario scenario]",
    least: 1,
    most: 3,
    options: ["units", "language"],
    says: "what differs between two scenarios of a saved workbook",
    run: (given) => compare(open(given.positionals[0] ?? "", given).book, given.positionals.slice(1)),
  },
  {
    name: "export",
    takes: "<template-or-saved-file> (--entries | --table name | --headings table | --to file.ods)",
    least: 1,
    most: 1,
    options: ["set", "units", "language", "seconds"],
    chooses: ["entries", "table", "headings", "to"],
    says: "a workbook in an open format: CSV of its entries or a table, headings to fill in, or OpenDocument",
    run: (given) => {
      checkExport(given)
      // Here `--table` names a table to write, not a file to read.
      return whenProven({ ...given, tables: [] }, ({ book }) => exportBook(book, given))
    },
  },
  {
    name: "book",
    takes: "<template-or-saved-file>",
    least: 1,
    most: 1,
    options: ["set", "table", "units", "language", "seconds", "out", "paper"],
    says: "the build book as one HTML or PDF file: drawings to scale, set-out, cut list, buying list, steps, what it rests on",
    run: (given, printer) => {
      checkBookPath(given, printer)
      return whenProven(given, (opened) => buildBook(opened, given, printer))
    },
  },
  {
    name: "schema",
    takes: "",
    least: 0,
    most: 0,
    options: ["language"],
    says: "the JSON schema of a saved workbook",
    run: () => [JSON.stringify(documentJsonSchema(), null, 2)],
  },
  {
    name: "cut",
    takes: "<file.json>",
    least: 1,
    most: 1,
    options: ["seconds", "language", "json"],
    says: "the best plan, and the proof of it, for boards, spliced lines, sheets and orders of your own",
    run: (given) => cut(given.positionals[0] ?? "", given),
  },
  { name: "help", takes: "", least: 0, most: 0, options: ["language"], says: "this page", run: help },
]

/** Opens a workbook, puts in what can be proven in the time given, and prints it. */
function whenProven(
  given: Given,
  print: (opened: Opened) => readonly string[] | Promise<readonly string[]>,
): readonly string[] | Promise<readonly string[]> {
  const opened = open(given.positionals[0] ?? "", given)
  if (given.seconds === 0 || opened.book.unproven().length === 0) return print(opened)
  return settleProofs(opened.book, given.seconds).then((notProven) => print({ ...opened, notProven }))
}

function usage(command: Command): string {
  const options = command.options.map((option) => said(OPTION_USAGE[option]))
  return ["pegbook", command.name, said(command.takes), ...options].filter((part) => part !== "").join(" ")
}

function help(): string[] {
  return [
    said(
      "Pegbook works out a timber platform on the ground: every number, its formula and where it comes from.",
    ),
    "",
    ...COMMANDS.flatMap((command) => [usage(command), `    ${said(command.says)}`]),
    "",
    ...HINTS.map(said),
  ]
}

const HINTS: readonly string[] = [
  '--set takes what a person would type, with its unit: --set platform_length="18 ft" --set joist_spacing=400mm',
  '--table takes a JSON file: { "ground_levels": [ { "x": "0 ft", "y": "0 ft", "level": "-3 in" } ] }',
  "    or a CSV file with the columns in its first line, called like its table: ground_levels.csv",
  "--language fr says everything in French, and reads what --set gives in French or English units; files are the same in both.",
  "--seconds says how long a search for the best plan may take: 30 when absent, and with 0 the plan made at once stands.",
  'cut takes { "cases": [ … ] }, each with its id and its kind (cut, splice, sheet or buy): README.md shows one.',
  "Exit status: 0 when calculated, failing checks included; 2 when what was given cannot be used.",
]

function answer(
  argv: readonly string[],
  printer: BookPrinter,
): readonly string[] | Promise<readonly string[]> {
  const [first = "help", ...rest] = argv
  const asked = first === "--help" || first === "-h" ? "help" : first
  const command = COMMANDS.find(({ name }) => name === asked)
  if (command === undefined) {
    const names = COMMANDS.map(({ name }) => name).join(", ")
    throw new BadInput(`${quoted(first)} is no command. The commands are ${names}. Try: pegbook help`)
  }
  const given = readArguments(rest, [...command.options, ...(command.chooses ?? [])], usage(command))
  const count = given.positionals.length
  if (count < command.least || count > command.most) {
    throw new BadInput(`${command.name} was given ${count} names. Write: ${usage(command)}`)
  }
  return command.run(given, printer)
}

/**
 * Runs the headless command. Prints the answer on standard output and returns the exit status 0; for bad input, prints
 * one line on standard error and returns 2. Of a command that has to wait for a solver, the status is a promise.
 * `printer` makes what `book` writes: screens are no business of this package.
 */
export function main(argv: readonly string[], printer: BookPrinter): number | Promise<number> {
  const language = languageAsked(argv)
  // A language that is in force needs no waiting for.
  if (language === languageInForce().id) return answered(argv, printer)
  return speak(language).then(() => answered(argv, printer))
}

function answered(argv: readonly string[], printer: BookPrinter): number | Promise<number> {
  try {
    const lines = answer(argv, printer)
    return lines instanceof Promise ? lines.then(print, refuse) : print(lines)
  } catch (error) {
    return refuse(error)
  }
}

function print(lines: readonly string[]): number {
  process.stdout.write(`${lines.join("\n")}\n`)
  return 0
}

function refuse(error: unknown): number {
  if (!(error instanceof BadInput)) throw error
  process.stderr.write(`pegbook: ${said(error.message)}\n`)
  return 2
}
