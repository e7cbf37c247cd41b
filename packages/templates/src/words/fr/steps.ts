import type { Texts } from "../dictionary.ts"

export const steps: Texts = {
  "Treads and the timbers that carry them, at the sides where people climb steps.":
    "Les marches et les bois qui les portent, aux côtés où l'on monte.",
  "Least depth of a tread": "Moindre profondeur d'un giron",
  "Shallower treads are climbed on the toes and come down on the heels.":
    "Moins profonds, on les monte sur la pointe et on les descend sur le talon.",
  "Are the treads deep enough?": "Les girons sont-ils assez profonds ?",
  "Most falls happen going down.": "La plupart des chutes arrivent en descendant.",
  "Make the treads at least {tread_depth_least} deep.":
    "Faites les girons d'au moins {tread_depth_least} de profondeur.",
  "Boards on a tread": "Planches par giron",
  "Two boards with the usual gap make one tread.": "Deux planches au jeu usuel font un giron.",
  "Timber that carries the treads": "Bois qui porte les marches",
  "Notched boards on edge. Enough wood has to be left below the notches.":
    "Des planches entaillées sur chant. Il doit rester assez de bois sous les entailles.",
  "Carriages under a flight": "Limons sous une volée",
  "One at each side and one or two between, so that the treads do not sag.":
    "Un de chaque côté et un ou deux entre, pour que les girons ne fléchissent pas.",
  "Each side": "Chaque côté",
  "What steps at each side come to; nothing is counted where none are wanted.":
    "Ce que donnent des marches de chaque côté ; rien n'est compté là où l'on n'en veut pas.",
  "The higher end first.": "Le bout haut en premier.",
  "As chosen with the ramps and the heights.": "Comme choisi avec les rampes et les hauteurs.",
  "From the ground at the middle of the side to the surface.": "Du sol au milieu du côté jusqu'à la surface.",
  "The surface of the walk itself is the last tread.":
    "La surface du sentier est elle-même le dernier giron.",
  "The treads one after the other.": "Les girons l'un après l'autre.",
  "From tread to tread": "D'un giron à l'autre",
  "Along the length: the depth of a tread, away from the walk. Below 0 before the first end.":
    "Sur la longueur : la profondeur d'un giron, en s'éloignant du sentier. Sous 0 avant le premier bout.",
  "Two risers and a tread": "Deux contremarches et un giron",
  "People's stride: steps for which this comes near 25 in (635 mm) are climbed without thinking.":
    "Le pas des gens : des marches qui font près de 25 po (635 mm) se montent sans y penser.",
  Carriages: "Limons",
  "None where there is no tread to carry.": "Aucun s'il n'y a pas de giron à porter.",
  "Crossings of tread boards and carriages": "Croisements de planches de giron et de limons",
  "Each takes the same screws as a crossing on the walk.":
    "Chacun prend les mêmes vis qu'un croisement du sentier.",
  "Length of a carriage": "Longueur d'un limon",
  "Along the slope of the flight, from the ground to the walk.":
    "Le long de la pente de la volée, du sol au sentier.",
  "Each tread board": "Chaque planche de giron",
  "Of the walk's own boards.": "Des planches mêmes du sentier.",
  "As wide as the walk.": "Aussi larges que le sentier.",
  "Each carriage": "Chaque limon",
  "What to cut for the steps.": "Quoi couper pour les marches.",
  "A carriage stands on stone or a slab, never on soil. Every notch is a cut: brush it with preservative.":
    "Un limon repose sur de la pierre ou une dalle, jamais sur la terre. Chaque entaille est une coupe : badigeonnez-la de préservatif.",
  Flight: "Volée",
  "1: the high end. 2: the low end. 3 and 4: the long sides.":
    "1 : le bout haut. 2 : le bout bas. 3 et 4 : les longs côtés.",
  "Before notching.": "Avant les entailles.",
  "Lengths sold, carriages": "Longueurs vendues, limons",
  "The lengths your yard has in this size.": "Les longueurs que tient votre cour à bois dans cette grosseur.",
}
