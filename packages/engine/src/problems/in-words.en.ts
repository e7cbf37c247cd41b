import { FORMULA_END } from "../formula/formula-end.ts"
import type { ValueType } from "../formula/value-type.ts"
import type { Words } from "../language/language.ts"
import {
  BASE_DIMENSIONS,
  type BaseDimension,
  type Dimension,
  isPlain,
  sameDimension,
} from "../quantity/dimension.ts"
import type { UnitSystem } from "../units/measure.ts"
import { MEASURES } from "../units/measures.ts"
import { isUnit } from "../units/registry.ts"
import type { Place, Problem } from "./problem.ts"

/** The sentences for a problem. `system`: the units shown, for examples. */
export function inWords(problem: Problem, system: UnitSystem): Words {
  const { says, next } = sentences(problem, system)
  return { says: placed(problem.at, says), next }
}

/** "a length", "a plain number", "a text": what a value is, with its article. */
export function typeInWords(type: ValueType): string {
  switch (type.kind) {
    case "zero":
      return "zero"
    case "text":
      return "a text"
    case "yes_no":
      return "a yes or no"
    case "number":
      return dimensionInWords(type.dimension)
  }
}

function dimensionInWords(dimension: Dimension): string {
  if (isPlain(dimension)) return "a plain number"
  const says = Object.values(MEASURES)
    .filter((measure) => measure.dimension && sameDimension(measure.dimension, dimension))
    .map((measure) => measure.says)
  return says.length > 0 ? oneOf([...new Set(says)]) : `a number in ${baseUnits(dimension)}`
}

const BASE_UNITS: Readonly<Record<BaseDimension, string>> = {
  mass: "kg",
  length: "m",
  time: "s",
  temperature: "K",
  money: "money",
}

function baseUnits({ exponents }: Dimension): string {
  return BASE_DIMENSIONS.flatMap((base) => {
    const exponent = exponents[base] ?? 0
    if (exponent === 0) return []
    return exponent === 1 ? [BASE_UNITS[base]] : [`${BASE_UNITS[base]}^${exponent}`]
  }).join("·")
}

/** With something that could be typed, so that a reader sees what is meant. */
function withExample(type: ValueType, system: UnitSystem): string {
  if (type.kind !== "number") return typeInWords(type)
  const example = Object.values(MEASURES).find(
    (measure) => measure.dimension && sameDimension(measure.dimension, type.dimension),
  )?.example[system]
  const words = typeInWords(type)
  return example === undefined || isPlain(type.dimension) ? words : `${words} (such as ${example})`
}

function placed(at: Place, says: string): string {
  const row = at.row === undefined ? [] : [`row ${at.row}`]
  const line = at.line === undefined ? [] : [`line ${at.line}`]
  const character = at.span === undefined ? [] : [`at character ${at.span.start + 1} of the formula`]
  const where = [...(at.entry === undefined ? [] : [at.entry]), ...row, ...line, ...character].join(", ")
  return where === "" ? says.charAt(0).toUpperCase() + says.slice(1) : `${where}: ${says}`
}

function oneOf(options: readonly string[]): string {
  const last = options.at(-1) ?? ""
  return options.length < 2 ? last : `${options.slice(0, -1).join(", ")} or ${last}`
}

function count(number: number, noun: string): string {
  return `${number.toLocaleString("en")} ${noun}${number === 1 ? "" : "s"}`
}

function didYouMean(near: readonly string[], otherwise: string): string {
  return near.length > 0 ? `Did you mean ${oneOf(near)}? Check the spelling.` : otherwise
}

function argumentsAccepted(least: number, most: number): string {
  if (least === most) return count(least, "value")
  return Number.isFinite(most)
    ? `from ${least} to ${count(most, "value")}`
    : `at least ${count(least, "value")}`
}

function sentences(problem: Problem, system: UnitSystem): Words {
  switch (problem.code) {
    case "formula_empty":
      return { says: "the formula is empty.", next: "Write a formula, such as 2 * 3." }
    case "formula_too_long":
      return {
        says: `the formula is ${count(problem.length, "character")} long.`,
        next: `At most ${count(problem.most, "character")} are accepted. Split it into several entries.`,
      }
    case "formula_too_deep":
      return {
        says: `the formula has brackets or functions more than ${problem.most} deep.`,
        next: `At most ${problem.most} are accepted, one inside another. Split it into several entries.`,
      }
    case "unexpected":
      return {
        says: `the formula cannot be read: it has ${problem.found} where ${problem.expected} should be.`,
        next: unexpectedNext(problem),
      }
    case "unknown_name":
      return {
        says: `nothing is called "${problem.name}".`,
        next: didYouMean(problem.near, "Use the name of an entry, or add an entry of that name."),
      }
    case "unknown_function":
      return {
        says: `there is no function "${problem.name}".`,
        next: didYouMean(problem.near, "Use a function that is listed, such as SUM, ROUNDUP or IF."),
      }
    case "wrong_argument_count":
      return {
        says: `${problem.function} was given ${count(problem.given, "value")}.`,
        next: `It takes ${argumentsAccepted(problem.least, problem.most)}, with ";" between them.`,
      }
    case "dimension_mismatch":
      return {
        says: `${problem.doing} has ${withExample(problem.left, system)} on one side and ${withExample(problem.right, system)} on the other.`,
        next: "Both sides must be of the same kind. Check that each name is the one that you meant.",
      }
    case "wrong_argument":
      return {
        says: `value ${problem.position} of ${problem.function} is ${withExample(problem.given, system)}.`,
        next: `${problem.function} takes ${problem.accepted} there. Check that the name is the one that you meant.`,
      }
    case "column_where_one_value":
      return {
        says: `"${problem.name}" is a whole column, and one value is wanted.`,
        next: `Take one value from it, such as SUM(${problem.name}), MAX(${problem.name}) or INDEX(${problem.name}; 1).`,
      }
    case "result_mismatch":
      return {
        says: `the formula gives ${withExample(problem.given, system)}, and the entry is ${withExample(problem.wanted, system)}.`,
        next: "Change the formula, or what the entry measures, so that they agree.",
      }
    case "cycle":
      return {
        says: `these entries wait for each other in a ring: ${[...problem.ring, ...problem.ring.slice(0, 1)].join(" → ")}.`,
        next: "Change one of their formulas so that it no longer leans on the next in the ring.",
      }
    case "leans_on_problem":
      return {
        says: `it cannot be worked out, because it leans on ${problem.on.join(", ")}.`,
        next: "Put right what is wrong there; this one follows.",
      }
    case "needs_entry":
      return {
        says: `it waits for ${problem.inputs.join(", ")} to be entered.`,
        next: `Enter ${problem.inputs.join(", ")}.`,
      }
    case "division_by_zero":
      return {
        says: "it divides by zero.",
        next: "Look at its working for the value that is 0, and enter one that is not.",
      }
    case "not_a_number":
      return {
        says: "it does not come to a number, such as the square root of a number below zero, or one too great.",
        next: "Look at its working for a value that is far too great, too small or below zero, and change it.",
      }
    case "not_found":
      return {
        says: "it looks for a value that the table does not have.",
        next: "Choose a value that the table lists, or add a row to the table.",
      }
    case "text_for_number":
      return {
        says: "it has a text where a number is wanted.",
        next: "Look at its working for the text, and enter a number there.",
      }
    case "too_many_rows":
      return {
        says: `the table would have ${count(problem.wanted, "row")}.`,
        next: `At most ${count(problem.most, "row")} are accepted. Make a spacing larger, or a dimension smaller.`,
      }
    case "bad_row_count":
      return {
        says: `the number of rows comes to ${problem.wanted}.`,
        next: "It must be a whole number, 0 or more. Check the dimensions that it is worked out from.",
      }
    case "unmet":
      return {
        says: `no answer was found that keeps to every limit. ${problem.says.join(" ")}`.trim(),
        next: "Change one of the limits named, and it is tried again.",
      }
    case "input_empty":
      return { says: "nothing was entered.", next: `Enter a value, such as ${problem.example}.` }
    case "input_unreadable":
      return { says: `"${problem.given}" cannot be read.`, next: `Type it like this: ${problem.example}.` }
    case "input_wrong_unit":
      return {
        says: `"${problem.given}" has the unit "${problem.unit}", which measures something else.`,
        next: `Accepted here: ${acceptedUnits(problem.accepted)}.`,
      }
    case "input_unknown_unit":
      return {
        says: `"${problem.given}" has "${problem.unit}" where a unit should be, and no unit is spelled so.`,
        next: `Accepted here: ${acceptedUnits(problem.accepted)}.`,
      }
    case "input_below":
      return { says: `${problem.given} is too small.`, next: `Enter ${problem.least} or more.` }
    case "input_above":
      return { says: `${problem.given} is too great.`, next: `Enter ${problem.most} or less.` }
    case "input_not_whole":
      return { says: `${problem.given} is not a whole number.`, next: "Enter a whole number, such as 12." }
    case "input_not_a_choice":
      return {
        says: `"${problem.given}" is not one of the choices.`,
        next: `Choose ${oneOf(problem.choices)}.`,
      }
    case "input_too_long":
      return {
        says: `what was entered is ${count(problem.length, "character")} long.`,
        next: `At most ${count(problem.most, "character")} are accepted. Shorten it.`,
      }
    case "no_such_entry":
      return {
        says: `there is no entry called "${problem.name}".`,
        next: didYouMean(problem.near, "Use the name of an entry of this workbook."),
      }
    case "not_an_input":
      return {
        says: `"${problem.name}" is a ${problem.kind}, which is worked out and cannot be typed over.`,
        next: "Change an input or a figure that it leans on.",
      }
    case "no_such_column":
      return {
        says: `the table "${problem.table}" has no column "${problem.column}" to be entered.`,
        next: `Use ${oneOf(problem.columns)}.`,
      }
    case "table_too_long":
      return {
        says: `${count(problem.given, "row")} were given.`,
        next: `At most ${count(problem.most, "row")} are accepted. Take some out.`,
      }
    case "csv_empty":
      return {
        says: "there is nothing in it.",
        next: `Write ${problem.columns.join(", ")} in the first line, and a row under it for each.`,
      }
    case "csv_open_quote":
      return {
        says: "a quotation mark opens a cell and is never closed; what follows it was not read.",
        next: 'Close it before the next separator, or write it twice ("") where it belongs to the text.',
      }
    case "csv_no_column":
      return {
        says: `no heading is called ${oneOf(problem.missing)}.`,
        next: `Headings accepted in the first line: ${problem.columns.join(", ")}, with commas, semicolons or tabs between them.`,
      }
    case "csv_column_twice":
      return {
        says: `two headings are called ${problem.column}.`,
        next: "Give one of them another name, or take its column out.",
      }
    case "csv_too_many_cells":
      return {
        says: `there are ${count(problem.given, "cell")}, and ${count(problem.most, "heading")} in the first line.`,
        next: "Put quotation marks around a text that has the separator in it, or take out the cells that are too many.",
      }
    case "scenario_sealed":
      return {
        says: `"${problem.title}" is sealed, so that it stays what it was.`,
        next: "Save a copy of it, and change the copy.",
      }
    case "bad_name":
      return {
        says: `"${problem.name}" cannot be a name.`,
        next: 'Use small letters, digits and "_" between words, a letter first, such as gate_width.',
      }
    case "name_taken":
      return {
        says: `there is an entry called "${problem.name}" already.`,
        next: "Choose another name.",
      }
    case "not_own":
      return {
        says: `"${problem.name}" is not an entry that you added.`,
        next: "Only an entry of your own can be changed, renamed or removed. Type a value over it instead.",
      }
    case "no_measure":
      return {
        says: `the formula gives ${withExample(problem.given, system)}, which no entry measures.`,
        next: "Change the formula so that it gives something measured here, such as a length or an area.",
      }
    case "leaned_on":
      return {
        says: `"${problem.name}" is used by ${problem.by.join(", ")}.`,
        next: "Change those first, or remove it all the same: they then say that it is missing.",
      }
    case "bad_entry":
      return {
        says: `the entry cannot be added: ${within(problem)}`,
        next: "Put that part of the entry right, and add it again.",
      }
    case "too_many_values":
      return {
        says: `from there to there in such steps is ${problem.given.toLocaleString("en")} values.`,
        next: `At most ${problem.most.toLocaleString("en")} are tried. Take a larger step, or bring the ends closer together.`,
      }
    case "too_many_entries":
      return {
        says: `there would be ${problem.given.toLocaleString("en")} entries of your own.`,
        next: `At most ${problem.most.toLocaleString("en")} are accepted. Take some out.`,
      }
    case "file_unreadable":
      return {
        says: `the saved workbook cannot be read: ${within(problem)}`,
        next: "Choose a file that was saved here and has not been changed by hand.",
      }
    case "file_from_future":
      return {
        says: `the file was saved in version ${problem.version} of the format, and this copy knows up to ${problem.known}.`,
        next: "Open it with a newer copy.",
      }
    case "file_unknown_template":
      return {
        says: `the file is for the template "${problem.template}", which is not here.`,
        next: `Open a file for ${oneOf(problem.known)}.`,
      }
  }
}

function acceptedUnits(accepted: readonly string[]): string {
  return accepted.length > 0 ? `a number with ${oneOf(accepted)}` : "a number without a unit"
}

const within = ({ part, reason }: { readonly part?: string; readonly reason: string }) =>
  part === undefined ? reason : `${part}: ${reason}`

/** What is left out at the end cannot be taken out; who writes a unit has to learn where amounts stand, and who writes a comma, what it is for. */
function unexpectedNext({ found, expected }: Problem & { readonly code: "unexpected" }): string {
  if (isUnit(found))
    return "A formula has no units in it: make the amount a figure or an input of its own, with its unit, and use its name here."
  if (found === ",")
    return "A decimal mark is a point, 1.5, and values in a function stand apart by a semicolon: MIN(a; b)."
  if (found === FORMULA_END) return `Put ${expected} at the end.`
  return `Put ${expected} there, or take ${found} out.`
}
