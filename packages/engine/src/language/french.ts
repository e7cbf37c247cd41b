import { inFrench } from "../problems/in-words.fr.ts"
import type { MeasureId } from "../units/measure.ts"
import { FRENCH_ENTRIES } from "./entry-words.fr.ts"
import { frenchNumber, keptNumber } from "./french-numbers.ts"
import type { Language } from "./language.ts"

export const FRENCH_MEASURES: Readonly<Record<MeasureId, string>> = {
  length: "une longueur",
  small_length: "une longueur",
  area: "une aire",
  volume: "un volume",
  bulk_volume: "un volume",
  mass: "une masse",
  force: "une force",
  pressure: "une pression",
  stress: "une contrainte",
  moment: "un moment",
  line_load: "une charge par longueur",
  density: "une masse volumique",
  temperature: "une température",
  temperature_difference: "un écart de température",
  expansion: "une dilatation par degré",
  angle: "un angle",
  time: "une durée",
  speed: "une vitesse",
  energy: "une énergie",
  count: "un nombre entier",
  share: "un pourcentage",
  ratio: "un nombre sans unité",
  money: "un montant d’argent",
  money_per_area: "un montant d’argent par aire",
  text: "un texte",
  yes_no: "un oui ou un non",
}

/** French as it is written in Canada, with a narrow space between thousands. */
export const FRENCH: Language = {
  id: "fr",
  tag: "fr-CA",
  number: frenchNumber,
  kept: keptNumber,
  phrases: {
    yes: "oui",
    no: "non",
    firstPlan: "Premier plan",
    noRows: "aucune ligne",
    listed: " ; ",
    rows: (count) => (count < 2 ? `${count} ligne` : `${count} lignes`),
    values: (count) => `${count} valeurs`,
    between: (least, most) => `de ${least} à ${most}`,
    orMore: (least) => `${least} ou plus`,
    orLess: (most) => `${most} ou moins`,
    measure: (id) => FRENCH_MEASURES[id],
  },
  entries: FRENCH_ENTRIES,
  inWords: (problem, system) => inFrench(problem, system, FRENCH_MEASURES),
}
