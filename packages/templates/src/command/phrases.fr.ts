import { FRENCH_CUT } from "./cut-phrases.fr.ts"
import type { Phrases } from "./phrases.en.ts"

export const FRENCH_PHRASES: Phrases = {
  colon: " : ",
  atMost: "au plus",
  atLeast: "au moins",
  ratio: (ratio) => `rapport ${ratio}`,
  moreRows: (count) => `… et ${count < 2 ? `${count} autre ligne` : `${count} autres lignes`}`,
  changed: "modifié",
  provenBest: "le meilleur, c'est prouvé",
  bestMayBe: (bound) => `pas prouvé le meilleur, qui serait peut-être ${bound}`,
  gap: (gap) => `écart ${gap}`,
  notProven: "Non prouvé",
  problems: "Problèmes",
  cautions: "Mises en garde",
  why: "Pourquoi",
  from: "Source",
  caution: "Mise en garde",
  workedOut: "Calcul",
  withValues: "Avec les valeurs",
  withValuesInRow: "Avec les valeurs de la ligne 1",
  asAbove: "(comme plus haut)",
  compared: {
    entered: "Saisi",
    follows: "En découle",
    checks: "Vérifications",
    rows: "Lignes",
    same: (count) => (count < 2 ? `${count} entrée est pareille.` : `${count} entrées sont pareilles.`),
  },
  audited: {
    heading: (title) => `${title}, recalculé à partir des mêmes saisies`,
    decimals: "décimales, 40 chiffres",
    alike: (count) => `${count} valeurs sont les mêmes, à un milliardième près`,
    differ: (count) =>
      count === 0 ? "aucune ne diffère" : `${count} ${count === 1 ? "diffère" : "diffèrent"} :`,
    row: (row) => `ligne ${row}`,
  },
  cut: FRENCH_CUT,
  wroteBook: (path, title) =>
    `${path} est écrit : le cahier de chantier de « ${title} », à ouvrir dans un navigateur et à imprimer de là en grandeur réelle.`,
  wrotePdf: (path, title) =>
    `${path} est écrit : le cahier de chantier de « ${title} », à imprimer en grandeur réelle.`,
  wroteSheets: (path, title, tables) =>
    `${path} est écrit : « ${title} » avec ses formules, et une feuille pour chacun des ${tables} tableaux.`,
  solverFailed: (reason) =>
    `le solveur exact n'a pas pu servir (${reason}) ; voici le plan fait tout de suite, pas prouvé le meilleur.`,
  noBetterPlan: (seconds) =>
    `aucun meilleur plan n'a été trouvé en ${seconds} s ; voici le plan fait tout de suite, pas prouvé le meilleur.`,
}
