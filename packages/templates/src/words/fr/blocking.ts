import type { Texts } from "../dictionary.ts"

export const blocking: Texts = {
  "Short pieces between the joists stop them from twisting and hold up whatever ends between them.":
    "De courts morceaux entre les solives les empêchent de se tordre et soutiennent ce qui finit entre elles.",
  "Lines of blocking": "Rangs d'entretoises",
  "Lines along the platform, the rims not counted. Where sheets meet between joists, a line under each long seam gives those edges something to be screwed to.":
    "Rangs le long de la plateforme, sans compter les solives de rive. Là où des panneaux se rejoignent entre les solives, un rang sous chaque joint long donne à ces bords où se visser.",
  "One line of blocking, bay by bay": "Un rang d'entretoises, intervalle par intervalle",
  "The last bay is seldom like the others, so its piece is cut to its own length.":
    "Le dernier intervalle est rarement comme les autres ; son entretoise se coupe à sa propre longueur.",
  Bay: "Intervalle",
  "The room after the joist of the same number.": "Le vide après la solive du même numéro.",
  "The clear room between two joists. Measure the real one before you cut: timber is never quite straight.":
    "Le vide entre deux solives. Mesurez le vrai avant de couper : le bois n'est jamais tout à fait droit.",
  "Rows apart, shared out": "Distance entre rangs, répartie",
  "Where no edge of a sheet has to be met, the rows of blocking share the width evenly.":
    "Quand aucun bord de panneau n'est à rejoindre, les rangs d'entretoises se partagent également la largeur.",
  "Pieces of blocking": "Entretoises",
  "One in each bay of each line.": "Une dans chaque intervalle de chaque rang.",
  "Blocking, end to end": "Entretoises, bout à bout",
  "How much timber they come to, before saw cuts and off-cuts.":
    "Combien de bois elles font, avant traits de scie et chutes.",
  "Lengths sold, blocking": "Longueurs vendues, entretoises",
  "The lengths to buy for blocking. Off-cuts of joists and rims of the same size are used first.":
    "Les longueurs à acheter pour les entretoises. Les chutes de solives de même grosseur passent d'abord.",
}
