// Every public name of the engine, by hand: read it as the table of contents.

// A workbook that is open, and what is saved of it
export type { Book, BookChange } from "./book/book.ts"
export {
  type BookDocument,
  type Change,
  DOCUMENT_VERSION,
  DocumentSchema,
  readDocument,
  type StageProgress,
} from "./book/document.ts"
export type { HistoryStep } from "./book/history.ts"
export { inferMeasure } from "./book/infer-measure.ts"
export { type OpenOptions, openBook } from "./book/open-book.ts"
export type { OwnHeading } from "./book/own-entries.ts"
export { type OwnEntry, ownName } from "./book/own-entry.ts"
export {
  type NearValue,
  type SeekNearWanted,
  type SeekWanted,
  type Sought,
  seek,
  seekNear,
} from "./book/seek.ts"
export type { Unproven } from "./book/settled.ts"
export type { StageNeedView, StageTableView, StageView } from "./book/stages.ts"
export {
  rangeAround,
  type Share,
  type SweepEnd,
  type SweepRow,
  type SweepWanted,
  type SweptInput,
  sweep,
  sweepRows,
  sweptValues,
} from "./book/sweep.ts"
export type {
  CheckView,
  Comparison,
  Difference,
  EditResult,
  EntryView,
  Moved,
  Override,
  Reading,
  RemedyView,
  ScenarioView,
  TableView,
  Verdict,
  Working,
} from "./book/views.ts"

// What a template is made of
export type { Definition, Section } from "./definition/definition.ts"
export type {
  Axis,
  BoxShape,
  Coordinate,
  DimensionShape,
  Drawing,
  Extent,
  Layer,
  Look,
  ProfileShape,
  Shape,
  Term,
  Where,
} from "./definition/drawing.ts"
export type {
  CheckEntry,
  Column,
  Described,
  Entry,
  EntryKind,
  FigureEntry,
  FormulaEntry,
  InputEntry,
  Remedy,
  Rows,
  TableEntry,
} from "./definition/entry.ts"
export type { Exploration, Thrift } from "./definition/exploration.ts"
export type { Proof, Solution, SolverGiven, SolverReport, SolverValue } from "./definition/solver.ts"
export type { Source, SourceKind } from "./definition/source.ts"
export type { Cell, Stage, StageNeed, StageTable, StageValue } from "./definition/stage.ts"

// Drawings with a workbook's values in them
export type {
  Bounds,
  Drawn,
  DrawnArea,
  DrawnDimension,
  DrawnLine,
  DrawnMark,
  DrawnShape,
  Point,
} from "./drawing/drawn.ts"
export { drawnNames } from "./drawing/names.ts"
export { type ResolveOptions, resolveDrawing } from "./drawing/resolve.ts"
export { steppedLength } from "./drawing/stepped.ts"
export type { DrawingSource } from "./drawing/values.ts"

// Tables and workbooks in open formats
export { entriesCsv, exportTemplate, tableCsv, typedColumnsOf } from "./exchange/book-csv.ts"
export { type ExportedBook, sourceInOneLine } from "./exchange/exported-book.ts"
export { documentJsonSchema } from "./exchange/json-schema.ts"
export {
  type BadRow,
  type DecimalMark,
  type GoodRow,
  type ReadTableOptions,
  readTable,
  type TableText,
  type TextColumn,
} from "./exchange/read-table.ts"
export { writeOpenDocument } from "./exchange/write-open-document.ts"

// Formulas
export { FUNCTIONS } from "./formula/functions/index.ts"
export { nearNames } from "./formula/near-names.ts"
export { parseFormula } from "./formula/parse.ts"
export { buildDecimalGraph } from "./graph/decimal-graph.ts"
export { buildDoubleGraph } from "./graph/double-graph.ts"
export type { Graph, GraphBuilder } from "./graph/graph.ts"
// The language that people read and type
export {
  inLanguage,
  keptAs,
  languageInForce,
  shownAs,
  useLanguage,
} from "./language/in-force.ts"
export type { Dictionary, Language, LanguageId } from "./language/language.ts"
export { loadLanguage } from "./language/load-language.ts"
// Problems
export { inWords } from "./problems/in-words.ts"
export type { Place, Problem, ProblemCode } from "./problems/problem.ts"
export { type Scales, USUAL_SCALES } from "./quantity/scales.ts"
// The graph and what it holds
export { Remembered } from "./remembered.ts"

// Units
export type { Measure, MeasureId, UnitSystem } from "./units/measure.ts"
export { measure } from "./units/measures.ts"
export { printedTo, printQuantity } from "./units/print-value.ts"
export { readValue } from "./units/read-value.ts"
