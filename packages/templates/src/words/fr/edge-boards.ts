import type { Texts } from "../dictionary.ts"

export const edgeBoards: Texts = {
  "Low boards around the surface keep things from rolling off and cover the edges of frame, sheets and tiles.":
    "Des planches basses autour de la surface empêchent les choses de rouler dehors et couvrent le bord du cadre, des panneaux et des tuiles.",
  "Edge board size": "Grosseur des planches de rive",
  "The board stands on edge outside the frame. It must reach down far enough to be screwed to it.":
    "La planche est sur chant, hors du cadre. Elle doit descendre assez pour s'y visser.",
  "Edge board thickness, real": "Épaisseur réelle d'une planche de rive",
  "The side boards are longer by this, to cover the ends of the end boards.":
    "Les planches de côté sont plus longues d'autant, pour couvrir le bout des planches d'extrémité.",
  "Edge board depth, real": "Hauteur réelle d'une planche de rive",
  "Shared between what stands above the surface and what is screwed to the frame.":
    "Partagée entre ce qui dépasse de la surface et ce qui se visse au cadre.",
  "Height above the surface": "Hauteur au-dessus de la surface",
  "High enough to stop a rolling ball, low enough to be stepped over.":
    "Assez haute pour arrêter une balle qui roule, assez basse pour être enjambée.",
  "A low board is a trip edge. Leave it out where people step up, and paint or mark it where they might step over it.":
    "Une planche basse fait trébucher. Ne la mettez pas là où l'on monte, et peignez-la ou marquez-la là où l'on pourrait l'enjamber.",
  "Edge board against the frame": "Planche de rive contre le cadre",
  "What is left of the board below the surface, the tiles and the sheets: this is the part that can be screwed to the frame.":
    "Ce qui reste de la planche sous la surface, les tuiles et les panneaux : la part qu'on peut visser au cadre.",
  "Least overlap with the frame": "Recouvrement minimal sur le cadre",
  "Room for two screws above each other, neither near an edge.":
    "Place pour deux vis l'une au-dessus de l'autre, ni l'une ni l'autre près d'un bord.",
  "Edge boards reach the frame": "Les planches de rive atteignent le cadre",
  "A board that is held by its lowest inch is kicked off.":
    "Une planche tenue par son dernier pouce part d'un coup de pied.",
  "Take a deeper board, or let it stand less high above the surface than {edge_board_rise}.":
    "Prenez une planche plus haute, ou laissez-la dépasser moins que {edge_board_rise} de la surface.",
  "Ends with an edge board": "Bouts avec une planche de rive",
  "One end is left open here, for stepping up.": "Un bout reste ouvert ici, pour monter.",
  "Long sides with an edge board": "Longs côtés avec une planche de rive",
  "Both long sides, unless people also step up there.":
    "Les deux longs côtés, sauf si l'on monte aussi par là.",
  "Long sides and ends": "Longs côtés et bouts",
  "How far each edge board runs, and out of how many pieces it is made.":
    "Jusqu'où va chaque planche de rive, et de combien de morceaux elle est faite.",
  "Sides and ends are alike among themselves.": "Les côtés sont pareils entre eux, les bouts aussi.",
  "How many": "Combien",
  "As chosen above.": "Comme choisi ci-dessus.",
  "Run of one": "Course d'une",
  "The side boards run past the ends and cover the end boards' cut ends.":
    "Les planches de côté dépassent les bouts et couvrent les bouts coupés des planches d'extrémité.",
  "Pieces in one": "Morceaux dans une",
  "What is behind them runs all along, so pieces may meet anywhere. They are made alike, which looks better than one stub at the end.":
    "Ce qui est derrière est continu ; les morceaux peuvent donc se joindre n'importe où. On les fait pareils, ce qui est plus beau qu'un bout court à la fin.",
  "The run shared out between its pieces.": "La course partagée entre ses morceaux.",
  "Screwed at, each piece": "Vissée à, chaque morceau",
  "Along each piece, both its ends counted.": "Le long de chaque morceau, ses deux bouts compris.",
  "Edge boards, end to end": "Planches de rive, bout à bout",
  "All sides together, before saw cuts.": "Tous les côtés ensemble, avant traits de scie.",
  "Lengths sold, edge boards": "Longueurs vendues, planches de rive",
  "A side longer than the longest of these is made of several boards.":
    "Un côté plus long que la plus longue se fait de plusieurs planches.",
  "Longest edge board that can be bought": "Plus longue planche de rive qu'on peut acheter",
  "Each edge board": "Chaque planche de rive",
  "What to cut for the edges.": "Quoi couper pour les bords.",
  "Which edge it goes on.": "Sur quel bord elle va.",
  "The run shared out between its boards.": "La course partagée entre ses planches.",
}
