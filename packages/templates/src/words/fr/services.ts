import type { Texts } from "../dictionary.ts"

export const services: Texts = {
  "Before anything is dug": "Avant de creuser quoi que ce soit",
  "Where cables and pipes lie under the ground comes first.":
    "Où passent câbles et conduites sous terre, cela vient en premier.",
}
