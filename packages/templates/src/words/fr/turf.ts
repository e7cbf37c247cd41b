import type { Texts } from "../dictionary.ts"

export const turf: Texts = {
  "Turf and topsoil": "Gazon et terre végétale",
  "What grows, and what it grows in, comes off first: it rots and shrinks under a load.":
    "Ce qui pousse, et ce dans quoi cela pousse, s'enlève d'abord : cela pourrit et se tasse sous une charge.",
  "Turf and topsoil taken off": "Gazon et terre végétale enlevés",
  "Down to soil that is firm and has no roots. Dig a small hole and look: the dark layer is the topsoil.":
    "Jusqu'au sol ferme et sans racines. Creusez un petit trou et regardez : la couche foncée est la terre végétale.",
  "Turf alone": "Gazon seul",
  "Grass with its roots, cut in sods. It can be laid again elsewhere within a day or two.":
    "L'herbe avec ses racines, coupée en plaques. On peut la reposer ailleurs en un jour ou deux.",
  "Area of turf": "Aire de gazon",
  "As much lawn can be patched with it, if it is kept damp and laid soon.":
    "Autant de pelouse peut être réparée avec, s'il reste humide et se repose vite.",
  "Turf, in the ground": "Gazon, en place",
  "The top of what is taken off.": "Le dessus de ce qui est enlevé.",
  "Topsoil, in the ground": "Terre végétale, en place",
  "Below the turf. Keep it in a heap of its own: beds and bare patches want it.":
    "Sous le gazon. Gardez-la en tas à part : plates-bandes et endroits nus en veulent.",
  "Turf and topsoil, in the ground": "Gazon et terre végétale, en place",
  "Both together, as they lie.": "Les deux ensemble, tels quels.",
  "Turf and topsoil, loose": "Gazon et terre végétale, en vrac",
  "What the heaps take.": "Ce que prennent les tas.",
  "Ground under the strips": "Sol sous les bandes",
  "Only what lies under stone is stripped; the grass between may stay, and dies in the shade.":
    "Seul ce qui est sous la pierre est décapé ; l'herbe entre peut rester, et meurt à l'ombre.",
  "Every trench goes down through turf and topsoil to firm soil.":
    "Chaque tranchée traverse gazon et terre végétale jusqu'au sol ferme.",
}
