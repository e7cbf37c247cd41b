import type { Texts } from "../dictionary.ts"

export const houseRules: Texts = {
  "Rules and published sizes": "Règles et grosseurs publiées",
  "What the other sections lean on: how a count is rounded, when a pass is a near thing, and what timber really measures.":
    "Ce sur quoi s'appuient les autres sections : comment un compte s'arrondit, quand un résultat est de justesse, et ce que mesure vraiment le bois.",
  "Slack when counting up": "Jeu en comptant vers le haut",
  "A spacing that was itself divided can miss a whole number by a hair. This much is forgiven, so that an exact fit does not cost you one piece too many.":
    "Un espacement lui-même divisé peut manquer un nombre entier d'un cheveu. On pardonne autant, pour qu'un ajustement exact ne vous coûte pas un morceau de trop.",
  "A pass is near from": "Un résultat est de justesse à partir de",
  "A check that uses more than this share of its limit passes, but has little room for a heavier load or softer ground.":
    "Une vérification qui prend plus que cette part de sa limite est conforme, mais laisse peu de place à une charge plus lourde ou à un sol plus mou.",
  "Actual sizes of timber": "Grosseurs réelles du bois",
  "A 2x6 is not 2 by 6: it is planed after it was named. Counts and heights go by the actual size.":
    "Un 2x6 ne fait pas 2 sur 6 : il est raboté après avoir été nommé. Comptes et hauteurs suivent la grosseur réelle.",
  "The name on the rack; in inches the size before planing, in millimetres the actual one.":
    "Le nom sur le présentoir ; en pouces la grosseur avant rabotage, en millimètres la vraie.",
  "The narrow side, as you would measure it.": "Le petit côté, tel que vous le mesureriez.",
  "The wide side; it stands upright in a joist or a skid.":
    "Le grand côté ; il est debout dans une solive ou un patin.",
  "Which standard gives the row's size, and whether it was read or recalled.":
    "Quelle norme donne la grosseur de la ligne, et si elle a été lue ou rappelée.",
}
