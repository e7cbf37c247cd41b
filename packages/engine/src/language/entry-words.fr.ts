import type { EntryWords } from "./entry-words.en.ts"

export const FRENCH_ENTRIES: EntryWords = {
  kinds: {
    input: "entrée",
    figure: "donnée",
    formula: "formule",
    column: "colonne",
    solved: "recherche",
    check: "vérification",
  },
  sourceKinds: {
    standard: "norme",
    handbook: "manuel",
    measured: "mesure",
    geometry: "géométrie",
    common_practice: "usage courant",
    memory: "de mémoire",
    user: "à vous",
  },
  verdicts: {
    passes: "conforme",
    near: "près de la limite",
    fails: "non conforme",
    outside_table: "hors du tableau",
    needs_entry: "entrée manquante",
    no_verdict: "sans verdict",
  },
  verdictCounts: {
    passes: ["conforme", "conformes"],
    near: ["près de la limite", "près de la limite"],
    fails: ["non conforme", "non conformes"],
    outside_table: ["hors du tableau", "hors du tableau"],
    needs_entry: ["attend une entrée", "attendent une entrée"],
    no_verdict: ["sans verdict", "sans verdict"],
  },
}
