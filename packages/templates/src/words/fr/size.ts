import type { Texts } from "../dictionary.ts"

export const size: Texts = {
  Size: "Dimensions",
  "The outside of the frame, and the lengths that show it is square before anything is dug.":
    "L'extérieur du cadre, et les longueurs qui montrent qu'il est d'équerre avant de creuser.",
  "Length of the platform": "Longueur de la plateforme",
  "The outside of the frame, the long way. Nearly every count follows from it.":
    "L'extérieur du cadre, dans le sens long. Presque toutes les quantités en découlent.",
  "Width of the platform": "Largeur de la plateforme",
  "The outside of the frame, the short way.": "L'extérieur du cadre, dans le sens court.",
  Area: "Aire",
  "Permit rules, sheets and cost per square foot all start from the area.":
    "Règles de permis, panneaux et coût par pied carré partent tous de l'aire.",
  "All the way round": "Tour complet",
  "How much edge there is: edge boards, edging and string line go by it.":
    "Combien il y a de bord : planches de rive, bordure et cordeau en dépendent.",
  Diagonal: "Diagonale",
  "Measure both diagonals of the pegs, and later of the frame. When both are this long and opposite sides are equal, every corner is square.":
    "Mesurez les deux diagonales des piquets, puis du cadre. Quand les deux ont cette longueur et que les côtés opposés sont égaux, tous les coins sont d'équerre.",
  "Step of the 3-4-5 triangle": "Pas du triangle 3-4-5",
  "The triangle is set out in whole steps of this, so that its sides are easy marks on a tape.":
    "Le triangle se trace en pas entiers de cette longueur, pour que ses côtés soient des marques faciles sur un ruban.",
  "3-4-5 triangle": "Triangle 3-4-5",
  "The biggest 3-4-5 triangle that fits the platform: the bigger it is, the less a slip of the tape matters.":
    "Le plus grand triangle 3-4-5 qui tient dans la plateforme : plus il est grand, moins une erreur de ruban compte.",
  "Along the width": "Sur la largeur",
  "Mark this from the corner peg along the short string.":
    "Marquez ceci à partir du piquet de coin, le long du cordeau court.",
  "Along the length": "Sur la longueur",
  "Mark this from the same corner peg along the long string.":
    "Marquez ceci à partir du même piquet de coin, le long du cordeau long.",
  Across: "En travers",
  "When the two marks are exactly this far apart, the strings meet square.":
    "Quand les deux marques sont exactement à cette distance, les cordeaux se croisent d'équerre.",
  "Length of the base": "Longueur de la base",
  "The outside of the frame, the long way. Ask the shed's maker whether its walls stand on the edge or overhang it.":
    "L'extérieur du cadre, dans le sens long. Demandez au fabricant du cabanon si ses murs reposent au bord ou dépassent.",
  "Width of the base": "Largeur de la base",
  "Length of the walk": "Longueur du sentier",
  "Along the walk, without ramps and steps. Nearly every count follows from it.":
    "Le long du sentier, sans rampes ni marches. Presque toutes les quantités en découlent.",
  "Width of the walk": "Largeur du sentier",
  "Across the walk: the length of the boards, but for what they overhang. Two people pass each other on 4 ft.":
    "En travers du sentier : la longueur des planches, à leur débord près. Deux personnes se croisent sur 4 pi.",
  "Area of the walk": "Aire du sentier",
  "Length of the floor": "Longueur du plancher",
  "Width of the floor": "Largeur du plancher",
}
