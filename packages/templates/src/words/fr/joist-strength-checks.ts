import type { Texts } from "../dictionary.ts"

export const joistStrengthChecks: Texts = {
  "Joist: strong and stiff enough?": "Solive : assez solide et rigide ?",
  "What the loads ask for, against what the piece can take.":
    "Ce que demandent les charges, comparé à ce que peut prendre la pièce.",
  "Joist: bending": "Solive : flexion",
  "Too much bending breaks a piece at its lower edge, in the middle of the span.":
    "Trop de flexion rompt une pièce à son bord inférieur, au milieu de la portée.",
  "Choose a deeper size, a shorter span, a closer spacing or a better grade: a moment of {joist_moment} meets {joist_moment_capacity}.":
    "Prenez plus haut, une portée plus courte, un espacement plus serré ou une meilleure qualité : un moment de {joist_moment} rencontre {joist_moment_capacity}.",
  "Joist: shear": "Solive : cisaillement",
  "Too much shear splits a piece along the grain near its end. The full force at the support is counted.":
    "Trop de cisaillement fend une pièce le long du fil près de son bout. La pleine force à l'appui est comptée.",
  "Choose a larger size or a shorter span: a shear of {joist_reaction} meets {joist_shear_capacity}.":
    "Prenez une plus grande grosseur ou une portée plus courte : un cisaillement de {joist_reaction} rencontre {joist_shear_capacity}.",
  "Joist: bearing on its seat": "Solive : portance sur son siège",
  "The wood is crushed across the grain where it sits. Span tables leave this out, so it is checked apart.":
    "Le bois s'écrase en travers du fil là où il repose. Les tableaux de portées l'omettent ; c'est donc vérifié à part.",
  "Give it a seat of at least {joist_seat_needed}, or shorten the span.":
    "Donnez-lui un siège d'au moins {joist_seat_needed}, ou raccourcissez la portée.",
  "Joist: seat needed": "Solive : siège requis",
  "How much of the piece has to rest on its support.":
    "Quelle longueur de la pièce doit reposer sur son appui.",
  "Joist: sag": "Solive : flèche",
  "It sags {joist_deflection} where {joist_deflection_allowed} is accepted: choose a deeper size or a shorter span.":
    "Elle fléchit de {joist_deflection} pour {joist_deflection_allowed} accepté : prenez plus haut ou une portée plus courte.",
}
