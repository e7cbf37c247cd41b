import type { Texts } from "../dictionary.ts"

export const drainage: Texts = {
  "Water and air": "Eau et air",
  "Rain has to run away from the platform, and air has to pass under it.":
    "La pluie doit s'éloigner de la plateforme, et l'air doit passer dessous.",
  "Ground falls away over": "Le sol s'abaisse sur",
  "The strip round the platform that has to lead water away from it.":
    "La bande autour de la plateforme qui doit en éloigner l'eau.",
  "Fall within that strip": "Dénivelé sur cette bande",
  "A house code asks for this much round a house; timber near the ground is glad of the same. Where the ground rises against the platform, dig a shallow ditch along that side.":
    "Un code d'habitation en demande autant autour d'une maison ; du bois près du sol en est aussi content. Là où le sol monte contre la plateforme, creusez un fossé peu profond le long de ce côté.",
  "That fall as a share": "Ce dénivelé en part",
  "To set with a level and a straight board.": "À régler avec un niveau et une règle droite.",
  "Your ground falls away, at the worst side": "Votre sol s'abaisse, au pire côté",
  "How much the ground drops over that strip on the side where it drops least; on the uphill side of a slope measure in the ditch. Negative: it rises, and water comes to the platform.":
    "De combien le sol descend sur cette bande du côté où il descend le moins ; du côté amont, mesurez dans le fossé. Négatif : il monte, et l'eau vient à la plateforme.",
  "Fall still to be made": "Dénivelé qui reste à faire",
  "How much lower the outer end of the strip, or the bottom of a ditch there, has to become.":
    "De combien le bout extérieur de la bande, ou le fond d'un fossé, doit devenir plus bas.",
  "Does water run away?": "L'eau s'éloigne-t-elle ?",
  "Water that stands under timber rots it, and freezes under what carries it.":
    "L'eau qui reste sous le bois le pourrit, et gèle sous ce qui le porte.",
  "Do not lead water onto a neighbour's ground; ask your authority where it may go.":
    "Ne menez pas l'eau chez un voisin ; demandez à votre municipalité où elle peut aller.",
  "Make {fall_away_missing} more fall within {fall_away_run} on the worst side, or dig a ditch there that leads the water round.":
    "Faites {fall_away_missing} de dénivelé de plus sur {fall_away_run} du pire côté, ou creusez-y un fossé qui contourne.",
  "Least air to leave under joists": "Moindre air à laisser sous les solives",
  "Less than this fills with leaves and grass within a year or two, and the joists stay damp.":
    "Moins que cela se remplit de feuilles et d'herbe en un an ou deux, et les solives restent humides.",
  "Enough air under the joists?": "Assez d'air sous les solives ?",
  "Wood that dries after each rain lasts; wood that stays damp does not.":
    "Le bois qui sèche après chaque pluie dure ; celui qui reste humide, non.",
  "Take deeper timbers under the joists, or raise the underside, until {air_gap_joists_least} is left under the joists.":
    "Prenez des bois plus hauts sous les solives, ou montez le dessous, jusqu'à laisser {air_gap_joists_least} sous les solives.",
  "Part of the edge left open to the air": "Part du bord laissée ouverte à l'air",
  "The rims, a skirt or mesh close some of the edge; open mesh counts as open for about as much as its holes.":
    "Les solives de rive, une jupe ou un grillage ferment une part du bord ; un grillage ouvert compte ouvert à peu près pour ses trous.",
  "Opening for air round the edge": "Ouverture pour l'air autour du bord",
  "For information: the least air gap all the way round, as much of it as is open.":
    "Pour information : le moindre passage d'air sur tout le tour, pour la part qui est ouverte.",
}
