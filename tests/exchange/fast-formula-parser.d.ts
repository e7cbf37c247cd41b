declare module "fast-formula-parser" {
  interface Position {
    readonly sheet: string
    readonly row: number
    readonly col: number
  }
  class FormulaError extends Error {
    static readonly NA: FormulaError
    static readonly VALUE: FormulaError
    static readonly NUM: FormulaError
    static readonly DIV0: FormulaError
  }
  /** A range's value is a list of rows. */
  export interface LibraryArgument {
    readonly value: unknown
    readonly isCellRef?: boolean
  }
  export default class FormulaParser {
    static readonly FormulaError: typeof FormulaError
    funsNeedContext: readonly string[]
    funsNeedContextAndNoDataRetrieve: readonly string[]
    constructor(config: {
      functions: Readonly<Record<string, (...args: readonly LibraryArgument[]) => unknown>>
      onCell: (at: Position) => unknown
      onRange: (range: {
        sheet: string
        from: { row: number; col: number }
        to: { row: number; col: number }
      }) => unknown
    })
    /** Returns or throws a FormulaError. */
    parse(formula: string, at: Position): unknown
  }
}
