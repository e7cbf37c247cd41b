import type { Texts } from "../dictionary.ts"

export const edgeTrim: Texts = {
  Kerbs: "Chasse-roues",
  "Low timbers along both edges keep wheels and feet on the walk.":
    "Des bois bas le long des deux bords gardent roues et pieds sur le sentier.",
  "Kerb timber": "Bois de chasse-roue",
  "It lies flat on the boards along the edge.": "Il est à plat sur les planches, le long du bord.",
  "Kerb timber thickness, real": "Épaisseur réelle du bois de chasse-roue",
  "It lies flat, so this is its height.": "Il est à plat ; c'est donc sa hauteur.",
  "Kerb timber width, real": "Largeur réelle du bois de chasse-roue",
  "It lies flat, so this much of the walk's width goes to it.":
    "Il est à plat ; il prend donc autant de la largeur du sentier.",
  "Ends with a kerb": "Bouts avec un chasse-roue",
  "None on a walk: people get on there.": "Aucun sur un sentier : on monte par là.",
  "Long sides with a kerb": "Longs côtés avec un chasse-roue",
  "Both long sides, unless people also step off there.":
    "Les deux longs côtés, sauf si l'on descend aussi par là.",
  "As long as the walk.": "Aussi long que le sentier.",
  "Pieces may meet over any packer. They are made alike, which looks better than one stub at the end.":
    "Les morceaux peuvent se rejoindre sur toute cale. On les fait pareils, ce qui est plus beau qu'un bout court à la fin.",
  "Kerbs, end to end": "Chasse-roues, bout à bout",
  "Lengths sold, kerbs": "Longueurs vendues, chasse-roues",
  "A side longer than the longest of these is made of several pieces.":
    "Un côté plus long que la plus longue se fait de plusieurs morceaux.",
  "Longest kerb that can be bought": "Plus long chasse-roue qu'on peut acheter",
  "Each kerb piece": "Chaque morceau de chasse-roue",
  "Height of the packers": "Hauteur des cales",
  "The kerb lies on short packers, so that water and leaves get out under it.":
    "Le chasse-roue repose sur de courtes cales, pour que l'eau et les feuilles sortent dessous.",
  "Length of a packer": "Longueur d'une cale",
  "Short pieces of kerb timber; off-cuts do.":
    "De courts morceaux de bois de chasse-roue ; des chutes suffisent.",
  "Each packer": "Chaque cale",
  "One wherever the kerb is screwed down.": "Une partout où le chasse-roue est vissé.",
  "Most opening under a kerb": "Plus grande ouverture sous un chasse-roue",
  "A small front wheel must not slip under it.": "Une petite roue avant ne doit pas y glisser.",
  "Does the kerb stop a wheel?": "Le chasse-roue arrête-t-il une roue ?",
  "An opening that a wheel or a foot gets under is worse than no kerb.":
    "Une ouverture où passe une roue ou un pied est pire que pas de chasse-roue.",
  "Take packers lower than {kerb_gap_most}.": "Prenez des cales plus basses que {kerb_gap_most}.",
  "Clear width between the kerbs": "Largeur libre entre les chasse-roues",
  "What is left to walk on.": "Ce qui reste pour marcher.",
}
