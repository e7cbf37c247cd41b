import type { Texts } from "../dictionary.ts"

export const beams: Texts = {
  Beams: "Poutres",
  "The timbers under the joists, along the platform: each is made of planks set side by side.":
    "Les bois sous les solives, le long de la plateforme : chacun est fait de madriers côte à côte.",
  "Size of a plank in a beam": "Grosseur d'un madrier de poutre",
  "Set on edge: depth is what makes a beam stiff.":
    "Posé sur chant : c'est la hauteur qui rend une poutre rigide.",
  "Planks side by side in a beam": "Madriers côte à côte dans une poutre",
  "Two thin planks are easier to carry and to buy than one thick timber, and where they are long their joints need not fall together.":
    "Deux madriers minces se portent et s'achètent mieux qu'un gros bois, et s'ils sont longs, leurs joints n'ont pas à tomber ensemble.",
  "Thickness of a beam": "Épaisseur d'une poutre",
  "All planks together, as they really measure.":
    "Tous les madriers ensemble, tels qu'ils mesurent vraiment.",
  "Depth of a beam": "Hauteur d'une poutre",
  "Upright: part of the platform's height.": "Debout : une part de la hauteur de la plateforme.",
  "Length of a beam": "Longueur d'une poutre",
  "Beams run the whole length, each plank in one piece or in several that meet over a support.":
    "Les poutres font toute la longueur, chaque madrier d'un seul morceau ou de plusieurs qui se rejoignent sur un appui.",
  "Widest spacing of the beams": "Plus grand espacement des poutres",
  "The joists span from beam to beam: the wider the beams lie, the deeper the joists must be.":
    "Les solives portent d'une poutre à l'autre : plus les poutres sont écartées, plus les solives doivent être hautes.",
  "Outer beams in from the long edges": "Poutres extérieures à cette distance des longs bords",
  "From the frame's long edge to the middle of the first and the last beam. The joists reach past them by as much.":
    "Du long bord du cadre au milieu de la première et de la dernière poutre. Les solives les dépassent d'autant.",
  "Spacing of the beams, centre to centre": "Espacement des poutres, centre à centre",
  "Each beam": "Chaque poutre",
  "From the frame's first long edge to the middle of the beam.":
    "Du premier long bord du cadre au milieu de la poutre.",
  "Joists may reach past the outer beam by no more than this share of the spacing, or the edge gets springy and can tip.":
    "Les solives ne peuvent dépasser la poutre extérieure de plus que cette part de l'espacement, sinon le bord fait ressort et peut basculer.",
  "The share above, of the spacing of the beams.": "La part ci-dessus, de l'espacement des poutres.",
  "Are the outer beams far enough out?": "Les poutres extérieures sont-elles assez près du bord ?",
  "Set the outer beams in by no more than {beam_edge_offset_most}.":
    "Ne mettez pas les poutres extérieures en retrait de plus de {beam_edge_offset_most}.",
  "Planks in all beams, as lines": "Madriers de toutes les poutres, en lignes",
  "So many lines of plank, each as long as the platform.":
    "Autant de lignes de madriers, chacune aussi longue que la plateforme.",
}
