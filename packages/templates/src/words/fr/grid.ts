import type { Texts } from "../dictionary.ts"

export const grid: Texts = {
  "The ground as a grid": "Le sol en grille",
  "The ground under the platform and a margin round it, point by point: volumes on a slope come from it.":
    "Le sol sous la plateforme et une marge autour, point par point : les volumes dans une pente en viennent.",
  "Ground works beyond the frame, each side": "Terrassement au-delà du cadre, chaque côté",
  "Stone that ended at the frame would crumble away from under its edge; and somebody has to work there.":
    "Une pierre qui finirait au cadre s'effriterait sous son bord ; et quelqu'un doit y travailler.",
  "Length of the ground works": "Longueur du terrassement",
  "The platform and the margin at both ends.": "La plateforme et la marge aux deux bouts.",
  "Width of the ground works": "Largeur du terrassement",
  "The platform and the margin on both sides.": "La plateforme et la marge des deux côtés.",
  "Area of the ground works": "Aire du terrassement",
  "Turf comes off all of it.": "Le gazon s'enlève partout.",
  "Cells of the grid along the length": "Cellules de la grille sur la longueur",
  "More cells follow the ground more closely. On even ground one would do.":
    "Plus de cellules suivent le sol de plus près. Sur un sol régulier, une suffirait.",
  "Cells of the grid across the width": "Cellules de la grille sur la largeur",
  "Ground at the grid, between points": "Sol à la grille, entre les points",
  "Points of the grid": "Points de la grille",
  "Row by row across the width, each from the first end on.":
    "Rangée par rangée sur la largeur, chacune depuis le premier bout.",
  "Steps along": "Pas en long",
  "0 at the first end.": "0 au premier bout.",
  "Steps across": "Pas en travers",
  "0 on the first side.": "0 au premier côté.",
  "From the frame's first end; negative: out in the margin.":
    "Depuis le premier bout du cadre ; négatif : dans la marge.",
  "From the frame's first side; negative: out in the margin.":
    "Depuis le premier côté du cadre ; négatif : dans la marge.",
  "Cells that meet here": "Cellules qui s'y rejoignent",
  "One at a corner of the works, two at an edge, four inside: a depth counts as often.":
    "Une à un coin, deux à un bord, quatre à l'intérieur : une profondeur compte autant de fois.",
  "Area it stands for": "Aire qu'il représente",
  "A quarter of each cell that meets here.": "Un quart de chaque cellule qui s'y rejoint.",
  Cut: "Déblai",
  "How far the ground stands above the formation.":
    "De combien le sol dépasse la plateforme de terrassement.",
  Fill: "Remblai",
  "How far it lies below.": "De combien il est dessous.",
  "Bottom of the stone": "Fond de la pierre",
  "Deep enough for the least thickness and out of the topsoil; one level everywhere, or following the ground.":
    "Assez creux pour l'épaisseur minimale et hors de la terre végétale ; un seul niveau partout, ou suivant le sol.",
  "From the grass down.": "Depuis l'herbe.",
  "From there up to the top of the pad.": "De là jusqu'au dessus de l'assise.",
  "Stone beyond the least thickness": "Pierre au-delà de l'épaisseur minimale",
  "The wedge that the slope makes.": "Le coin que fait la pente.",
  "Stone standing above the ground at the edge": "Pierre qui dépasse du sol au bord",
  "What the edging holds. Inside, the stone holds itself.":
    "Ce que tient la bordure. À l'intérieur, la pierre se tient elle-même.",
  "Lowest ground of the works": "Sol le plus bas du terrassement",
  "Margin included; a hollow in the middle counts.": "Marge comprise ; un creux au milieu compte.",
  "Mean level of the ground": "Niveau moyen du sol",
  "Each point weighed by the area that it stands for.": "Chaque point pesé par l'aire qu'il représente.",
}
