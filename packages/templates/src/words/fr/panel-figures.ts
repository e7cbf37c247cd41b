import type { Texts } from "../dictionary.ts"

export const panelFigures: Texts = {
  "Loads and limits": "Charges et limites",
  "What codes ask of a floor.": "Ce que les codes demandent à un plancher.",
}
