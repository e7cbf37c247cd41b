import type { Plugin } from "vite"

/**
 * The families of functions that formulas may use, as the evaluator calls them. It brings some hundreds of functions more,
 * for money, dates and statistics, which no formula can name: they would be half of what has to be fetched to calculate.
 */
export const FUNCTION_FAMILIES: readonly string[] = [
  "AbsPlugin",
  "BooleanPlugin",
  "CharPlugin",
  "ConditionalAggregationPlugin",
  "DegreesPlugin",
  "ExpPlugin",
  "InformationPlugin",
  "LogarithmPlugin",
  "LookupPlugin",
  "MathConstantsPlugin",
  "ModuloPlugin",
  "NumericAggregationPlugin",
  "PowerPlugin",
  "RadiansPlugin",
  "RoundingPlugin",
  "SqrtPlugin",
  "SumprodPlugin",
  "TextPlugin",
  "TrigonometryPlugin",
]

const familiesFile = FUNCTION_FAMILIES.map((family) => `export { ${family} } from "./${family}.mjs"\n`).join(
  "",
)

/** What each function is for, in words: for editors of spreadsheets. */
const noWords =
  'export * from "./FunctionDescription.mjs"\nexport const FUNCTION_DOCS = Object.create(null)\n'

/** Leaves what no formula can reach out of the evaluator that is built: other families, and words about functions. */
export function evaluatorFunctions(): Plugin {
  return {
    name: "evaluator-functions",
    load: {
      filter: {
        id: /[\\/]hyperformula[\\/]es[\\/]interpreter[\\/](?:plugin|functionMetadata)[\\/]index\.mjs$/,
      },
      handler: (id) => (/plugin[\\/]index\.mjs$/.test(id) ? familiesFile : noWords),
    },
  }
}
