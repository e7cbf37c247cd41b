import type { Span } from "../formula/ast.ts"
import type { ValueType } from "../formula/value-type.ts"

/** Where a problem is: an entry or column by name, a row counted from 1, a part of the formula. */
export interface Place {
  readonly entry?: string
  readonly row?: number
  /** Of a text that was read, from 1. */
  readonly line?: number
  readonly span?: Span
}

/**
 * Everything that can be wrong, as data. `in-words.en.ts`, and its siblings in other languages, alone have sentences for them.
 * Bad input never throws; a programmer's misuse does.
 */
export type Problem =
  // Reading a formula
  | { readonly code: "formula_empty"; readonly at: Place }
  | { readonly code: "formula_too_long"; readonly at: Place; readonly length: number; readonly most: number }
  | { readonly code: "formula_too_deep"; readonly at: Place; readonly most: number }
  | { readonly code: "unexpected"; readonly at: Place; readonly found: string; readonly expected: string }
  | {
      readonly code: "unknown_name"
      readonly at: Place
      readonly name: string
      readonly near: readonly string[]
    }
  | {
      readonly code: "unknown_function"
      readonly at: Place
      readonly name: string
      readonly near: readonly string[]
    }
  | {
      readonly code: "wrong_argument_count"
      readonly at: Place
      readonly function: string
      readonly given: number
      readonly least: number
      readonly most: number
    }
  // Dimensions and types, before anything is calculated
  | {
      readonly code: "dimension_mismatch"
      readonly at: Place
      /** What was being done: an operator or a function's name. */
      readonly doing: string
      readonly left: ValueType
      readonly right: ValueType
    }
  | {
      readonly code: "wrong_argument"
      readonly at: Place
      readonly function: string
      readonly position: number
      readonly given: ValueType
      /** What is accepted, as a short noun phrase: "a plain number", "a column". */
      readonly accepted: string
    }
  | { readonly code: "column_where_one_value"; readonly at: Place; readonly name: string }
  | {
      readonly code: "result_mismatch"
      readonly at: Place
      readonly given: ValueType
      readonly wanted: ValueType
    }
  // The graph
  | { readonly code: "cycle"; readonly at: Place; readonly ring: readonly string[] }
  | { readonly code: "leans_on_problem"; readonly at: Place; readonly on: readonly string[] }
  | { readonly code: "needs_entry"; readonly at: Place; readonly inputs: readonly string[] }
  // Calculating
  | { readonly code: "division_by_zero"; readonly at: Place }
  | { readonly code: "not_a_number"; readonly at: Place }
  | { readonly code: "not_found"; readonly at: Place }
  | { readonly code: "text_for_number"; readonly at: Place }
  | { readonly code: "too_many_rows"; readonly at: Place; readonly wanted: number; readonly most: number }
  | { readonly code: "bad_row_count"; readonly at: Place; readonly wanted: number }
  | { readonly code: "unmet"; readonly at: Place; readonly says: readonly string[] }
  // What a person typed
  | { readonly code: "input_empty"; readonly at: Place; readonly example: string }
  | {
      readonly code: "input_unreadable"
      readonly at: Place
      readonly given: string
      readonly example: string
    }
  | {
      readonly code: "input_wrong_unit"
      readonly at: Place
      readonly given: string
      readonly unit: string
      readonly accepted: readonly string[]
    }
  | {
      readonly code: "input_unknown_unit"
      readonly at: Place
      readonly given: string
      readonly unit: string
      readonly accepted: readonly string[]
    }
  | { readonly code: "input_below"; readonly at: Place; readonly given: string; readonly least: string }
  | { readonly code: "input_above"; readonly at: Place; readonly given: string; readonly most: string }
  | { readonly code: "input_not_whole"; readonly at: Place; readonly given: string }
  | {
      readonly code: "input_not_a_choice"
      readonly at: Place
      readonly given: string
      readonly choices: readonly string[]
    }
  | { readonly code: "input_too_long"; readonly at: Place; readonly length: number; readonly most: number }
  | {
      readonly code: "no_such_entry"
      readonly at: Place
      readonly name: string
      readonly near: readonly string[]
    }
  | { readonly code: "not_an_input"; readonly at: Place; readonly name: string; readonly kind: string }
  | {
      readonly code: "no_such_column"
      readonly at: Place
      readonly table: string
      readonly column: string
      readonly columns: readonly string[]
    }
  | { readonly code: "table_too_long"; readonly at: Place; readonly given: number; readonly most: number }
  // A table's text
  | { readonly code: "csv_empty"; readonly at: Place; readonly columns: readonly string[] }
  | { readonly code: "csv_open_quote"; readonly at: Place }
  | {
      readonly code: "csv_no_column"
      readonly at: Place
      readonly missing: readonly string[]
      readonly columns: readonly string[]
    }
  | { readonly code: "csv_column_twice"; readonly at: Place; readonly column: string }
  | {
      readonly code: "csv_too_many_cells"
      readonly at: Place
      readonly given: number
      readonly most: number
    }
  | { readonly code: "scenario_sealed"; readonly at: Place; readonly title: string }
  // An entry of the user's own
  | { readonly code: "bad_name"; readonly at: Place; readonly name: string }
  | { readonly code: "name_taken"; readonly at: Place; readonly name: string }
  | { readonly code: "not_own"; readonly at: Place; readonly name: string }
  | { readonly code: "no_measure"; readonly at: Place; readonly given: ValueType }
  | { readonly code: "leaned_on"; readonly at: Place; readonly name: string; readonly by: readonly string[] }
  | { readonly code: "bad_entry"; readonly at: Place; readonly reason: string; readonly part?: string }
  | { readonly code: "too_many_values"; readonly at: Place; readonly given: number; readonly most: number }
  | { readonly code: "too_many_entries"; readonly at: Place; readonly given: number; readonly most: number }
  // A saved workbook
  | { readonly code: "file_unreadable"; readonly at: Place; readonly reason: string; readonly part?: string }
  | {
      readonly code: "file_from_future"
      readonly at: Place
      readonly version: number
      readonly known: number
    }
  | {
      readonly code: "file_unknown_template"
      readonly at: Place
      readonly template: string
      readonly known: readonly string[]
    }

export type ProblemCode = Problem["code"]
