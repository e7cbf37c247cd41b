import type { Texts } from "../dictionary.ts"

export const joistResistances: Texts = {
  "Joist: what the timber resists, limit states": "Solive : ce à quoi résiste le bois, états limites",
  "The Canadian way: loads are made larger and strengths smaller, each by its own factor.":
    "La façon canadienne : les charges sont majorées et les résistances réduites, chacune par son facteur.",
  "Joist: size factor, KZ": "Solive : facteur de grosseur, KZ",
  "By the wide side, and by the width of all plies together.":
    "Selon le grand côté, et la largeur de tous les plis ensemble.",
  "Joist: thickness classes reached": "Solive : classes d'épaisseur atteintes",
  "Which rows of the size factors are for this depth and not for thicker pieces.":
    "Quelles lignes des facteurs de grosseur sont pour cette hauteur et non pour des pièces plus épaisses.",
  Reached: "Atteinte",
  "Yes where the piece is as deep as the row says and at least as thick.":
    "Oui si la pièce est aussi haute que le dit la ligne et au moins aussi épaisse.",
  "Joist: resistances by species": "Solive : résistances par essence",
  "Each species of the group by itself.": "Chaque essence du groupe à part.",
  "Its Canadian name; a dash where it has none here.": "Son nom canadien ; un tiret s'il n'y en a pas ici.",
  "0 where the table has no row: then there is no answer.":
    "0 si le tableau n'a pas de ligne : il n'y a alors pas de réponse.",
  "Bending, specified": "Flexion, prévue",
  "Shear, specified": "Cisaillement, prévu",
  "Bearing, specified": "Portance, prévue",
  "Stiffness, specified": "Rigidité, prévue",
  "Only thin timber of a species that needs it.": "Seulement du bois mince d'une essence qui en a besoin.",
  "Treatment factor, KT": "Facteur de traitement, KT",
  "On strength.": "Sur la résistance.",
  "Bending strength in use, Fb": "Résistance en flexion en service, Fb",
  "fb × KD × KH × KSb × KT.": "fb × KD × KH × KSb × KT.",
  "Shear strength in use, Fv": "Résistance en cisaillement en service, Fv",
  "fv × KD × KH × KSv × KT.": "fv × KD × KH × KSv × KT.",
  "Bearing strength in use, Fcp": "Résistance en portance en service, Fcp",
  "fcp × KD × KScp × KT.": "fcp × KD × KScp × KT.",
  "Bending stress resisted": "Contrainte de flexion résistée",
  "φ × Fb × KZb × KL.": "φ × Fb × KZb × KL.",
  "Shear stress resisted": "Contrainte de cisaillement résistée",
  "φ × Fv × KZv.": "φ × Fv × KZv.",
  "Bearing stress resisted": "Contrainte de portance résistée",
  "φ × Fcp × KB.": "φ × Fcp × KB.",
  "E × KSE × KT.": "E × KSE × KT.",
  "Joist: every species has a specified strength": "Solive : chaque essence a une résistance prévue",
  "No where the Canadian table here has no row: then nothing is guessed.":
    "Non si le tableau canadien d'ici n'a pas de ligne : rien n'est alors deviné.",
}
