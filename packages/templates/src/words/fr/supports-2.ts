import type { Texts } from "../dictionary.ts"

export const supports2: Texts = {
  "Pressure under the slab": "Pression sous la dalle",
  "The load over the face of the slab, before the stone spreads it.":
    "La charge sur la face de la dalle, avant que la pierre la répartisse.",
  "The stone spreads the load before it reaches the soil. A second opinion; the check goes by the slab's face.":
    "La pierre répartit la charge avant qu'elle atteigne le sol. Un deuxième avis ; la vérification se fait sur la face de la dalle.",
}
