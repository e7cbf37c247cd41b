import { expect, test } from "vitest"
import { FRENCH } from "../../src/language/french.ts"
import type { Problem } from "../../src/problems/problem.ts"

const said = (problem: Problem) => FRENCH.inWords(problem, "metric")

test.each<[Problem, string, string]>([
  [
    { code: "input_below", at: { entry: "joist_spacing" }, given: "1.5 mm", least: "1,250 mm" },
    "joist_spacing\u00a0: 1,5\u00a0mm est trop petit.",
    "Entrez 1\u202f250\u00a0mm ou plus.",
  ],
  [
    { code: "unknown_name", at: {}, name: "jost", near: ["joist", "post"] },
    "Rien ne s’appelle «\u00a0jost\u00a0».",
    "Vouliez-vous dire joist ou post\u00a0? Vérifiez l’orthographe.",
  ],
  [
    {
      code: "unexpected",
      at: { span: { start: 2, end: 3 } },
      found: ")",
      expected: "a name, a number, a function or a parenthesis",
    },
    "au caractère 3 de la formule\u00a0: la formule est illisible\u00a0: elle contient ) là où il faudrait un nom, un nombre, une fonction ou une parenthèse.",
    "Mettez-y un nom, un nombre, une fonction ou une parenthèse, ou retirez ).",
  ],
  [
    { code: "unexpected", at: {}, found: ",", expected: "an operator or the end of the formula" },
    "La formule est illisible\u00a0: elle contient , là où il faudrait un opérateur ou la fin de la formule.",
    "Les décimales s’écrivent avec un point, 1.5, et les valeurs d’une fonction se séparent par un point-virgule\u00a0: MIN(a; b).",
  ],
  [
    { code: "table_too_long", at: {}, given: 1200, most: 1 },
    "1\u202f200 lignes ont été données.",
    "Au plus 1 ligne sont acceptées. Retirez-en.",
  ],
])("%o", (problem, says, next) => {
  expect(said(problem)).toEqual({ says, next })
})
