import type { Texts } from "../dictionary.ts"

export const bearers: Texts = {
  Bearers: "Lambourdes",
  "The timbers along the floor that carry its joists: how many lines, and where each one lies.":
    "Les bois le long du plancher qui portent ses solives : combien de lignes, et où va chacune.",
  "Size of the bearers": "Grosseur des lambourdes",
  "The timbers that carry the joists. They lie on the slabs and run the long way.":
    "Les bois qui portent les solives. Ils reposent sur les dalles et vont dans le sens long.",
  "Thickness of a bearer": "Épaisseur d'une lambourde",
  "Depth of a bearer": "Hauteur d'une lambourde",
  "Length of a line of bearers": "Longueur d'une ligne de lambourdes",
  "Each line runs the whole length of the floor, in one piece or in several that meet over a slab.":
    "Chaque ligne fait toute la longueur du plancher, d'un seul morceau ou de plusieurs qui se rejoignent sur une dalle.",
  "Widest spacing of the bearers": "Plus grand espacement des lambourdes",
  "The joists span from bearer to bearer: the wider the bearers lie, the deeper the joists must be.":
    "Les solives portent d'une lambourde à l'autre : plus elles sont écartées, plus les solives doivent être hautes.",
  "Outer bearers set in by": "Lambourdes extérieures en retrait de",
  "How far the outer faces of the first and last bearer stand back from the frame's long edges; 0: flush.":
    "De combien les faces extérieures de la première et de la dernière lambourde sont en retrait des longs bords du cadre ; 0 : au ras.",
  "Lines of bearers": "Lignes de lambourdes",
  "Spacing of the bearers, centre to centre": "Espacement des lambourdes, centre à centre",
  "From the frame's first long edge to the middle of the bearer.":
    "Du premier long bord du cadre au milieu de la lambourde.",
  "Joists may reach past the outer bearer by no more than this share of the spacing, or the edge gets springy and can tip.":
    "Les solives ne peuvent dépasser la lambourde extérieure de plus que cette part de l'espacement, sinon le bord fait ressort et peut basculer.",
  "Overhang beyond the outer bearers": "Porte-à-faux au-delà des lambourdes extérieures",
  "From the middle of the outer bearer to the edge of the frame.":
    "Du milieu de la lambourde extérieure au bord du cadre.",
  "The share above, of the spacing of the bearers.": "La part ci-dessus, de l'espacement des lambourdes.",
  "Are the outer bearers far enough out?": "Les lambourdes extérieures sont-elles assez près du bord ?",
}
