import type { Texts } from "../dictionary.ts"

/** Texts that formulas and solvers put together; `{1}`, `{2}` are said in French themselves where they are known. */
export const patterns: Texts = {
  "line {1}": "ligne {1}",
  "line {1}, piece {2}": "ligne {1}, morceau {2}",
  "{1}, row {2}": "{1}, rangée {2}",
  "off-cuts of {1}": "chutes de {1}",
  "{1} in wide": "{1} po de large",
  "{1}: {2} takes {3} % of what is accepted": "{1} : {2} prend {3} % de ce qui est accepté",
  "{1}: {2} are needed, {3} are there": "{1} : il en faut {2}, il y en a {3}",
  "{1} or better for {2}: {3}": "{1} ou mieux pour {2} : {3}",
}
