import type { Texts } from "../dictionary.ts"

export const drawings: Texts = {
  Plan: "Plan",
  "Seen from above: the supports, the timbers on them and the joists. The surface and the ground’s levels can be laid over.":
    "Vu d'en haut : les appuis, les bois dessus et les solives. La surface et les niveaux du sol peuvent s'y superposer.",
  "Ground levels": "Niveaux du sol",
  Stone: "Pierre",
  Dig: "Déblai",
  Blocks: "Blocs",
  "Timbers along": "Bois en long",
  Joints: "Joints",
  Blocking: "Entretoises",
  Joists: "Solives",
  Rims: "Solives de rive",
  Sheets: "Panneaux",
  Tiles: "Tuiles",
  "Edge boards": "Planches de rive",
  "Ramps and steps": "Rampes et marches",
  "Net posts": "Poteaux de filet",
  "Guard posts": "Poteaux de garde-corps",
  Outline: "Contour",
  Dimensions: "Cotes",
  "Section along": "Coupe en long",
  "Cut the long way through the first line: the ground as it falls, what is dug, and the stack on it.":
    "Coupé dans le sens long par la première ligne : le sol en pente, ce qui est creusé, et la pile dessus.",
  Ground: "Sol",
  Heights: "Hauteurs",
  "Section across": "Coupe en travers",
  "Cut the short way near the first end, seen from the far end.":
    "Coupé dans le sens court près du premier bout, vu du bout éloigné.",
  "First long side": "Premier long côté",
  "How the platform looks from the first long side, with its height above the ground there.":
    "La plateforme vue du premier long côté, avec sa hauteur au-dessus du sol à cet endroit.",
  Net: "Filet",
  "Far end": "Bout éloigné",
  "How the platform looks from the far end, with its height above the ground there.":
    "La plateforme vue du bout éloigné, avec sa hauteur au-dessus du sol à cet endroit.",
  "Other long side": "Autre long côté",
  "How the platform looks from the other long side, with its height above the ground there.":
    "La plateforme vue de l'autre long côté, avec sa hauteur au-dessus du sol à cet endroit.",
  "First end": "Premier bout",
  "How the platform looks from the first end, with its height above the ground there.":
    "La plateforme vue du premier bout, avec sa hauteur au-dessus du sol à cet endroit.",
  "Detail of a support": "Détail d'un appui",
  "The first support of the first line, cut the long way: the hole, the stone, and what stands on it.":
    "Le premier appui de la première ligne, coupé dans le sens long : le trou, la pierre, et ce qui repose dessus.",
  "Detail of a joint": "Détail d'un joint",
  "Where two pieces of one line meet: in the middle of what carries them.":
    "Là où deux morceaux d'une ligne se rejoignent : au milieu de ce qui les porte.",
  "No line has a joint at these lengths: each is one piece.":
    "Aucune ligne n'a de joint à ces longueurs : chacune est d'un seul morceau.",
  "Detail of the edge": "Détail du bord",
  "The first long edge, cut across: what closes it, and what lies on it.":
    "Le premier long bord, coupé en travers : ce qui le ferme, et ce qui repose dessus.",
  Stack: "Empilement",
  "The whole stack seen from above at an angle. Pull the layers apart, or leave some out, to see what lies on what.":
    "Tout l'empilement vu d'en haut et de biais. Écartez les couches, ou enlevez-en, pour voir ce qui repose sur quoi.",
  Sleepers: "Traverses",
  "Set-out": "Implantation",
  "Seen from above: the pegs by their letters, the strings between them, the holes, and what proves that the corners are square.":
    "Vu d'en haut : les piquets par leurs lettres, les cordeaux entre eux, les trous, et ce qui prouve que les coins sont d'équerre.",
  "Middle lines": "Lignes d'axe",
  Strings: "Cordeaux",
  Diagonals: "Diagonales",
  "Triangle 3-4-5": "Triangle 3-4-5",
}
