import type { Texts } from "../dictionary.ts"

export const values3: Texts = {
  "ties along one outer bearer, against the wind's lift":
    "attaches le long d'une lambourde extérieure, contre le soulèvement du vent",
  "one of the slabs": "une des dalles",
  "up to 100 °F": "jusqu'à 100 °F",
  "over 100 °F, to 125 °F": "plus de 100 °F, à 125 °F",
  "over 125 °F, to 150 °F": "plus de 125 °F, à 150 °F",
}
