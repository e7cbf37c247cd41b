import type { Texts } from "../dictionary.ts"

export const vibration: Texts = {
  "Vibration, limit states only": "Vibration, états limites seulement",
  "Most spans of Canada's floor table are shorter than strength and sag alone would give.":
    "La plupart des portées du tableau canadien de planchers sont plus courtes que ne donneraient résistance et flèche seules.",
  "Spans at which a floor trembles, S-P-F No.1/No.2 under 1.9 kPa":
    "Portées où un plancher tremble, S-P-F No.1/No.2 sous 1,9 kPa",
  "Published spans that are shorter than sag explains. 60 m stands where sag decides.":
    "Portées publiées plus courtes que n'explique la flèche. 60 m se tient là où la flèche décide.",
  "Depth in millimetres and what ties the joists.": "Hauteur en millimètres et ce qui relie les solives.",
  "At the closer spacing": "À l'espacement serré",
  "Joists at 300 mm.": "Solives à 300 mm.",
  "At the wider spacing": "Au grand espacement",
  "Joists at 400 mm.": "Solives à 400 mm.",
  "Where vibration is not judged": "Où la vibration ne se juge pas",
  "By allowable stress no span table judges it: a length that no joist reaches.":
    "Par contraintes admissibles, aucun tableau ne la juge : une longueur que n'atteint aucune solive.",
  "Closer spacing of the published spans": "Espacement serré des portées publiées",
  "The first column of the table.": "La première colonne du tableau.",
  "Wider spacing of the published spans": "Grand espacement des portées publiées",
  "The second column of the table.": "La seconde colonne du tableau.",
  "Canada's floor table ends at a spacing of": "Le tableau canadien de planchers finit à un espacement de",
  "600 mm, or the 24 in that are sold for it.": "600 mm, ou les 24 po vendus pour cela.",
  "Canada's floor table is for a live load of": "Le tableau canadien de planchers est pour une surcharge de",
  "Homes. A sports or assembly floor needs a design of its own.":
    "Habitations. Un plancher de sport ou de réunion demande sa propre conception.",
  "One millimetre": "Un millimètre",
  "Turns a metric depth into the number in a size's name.":
    "Change une hauteur métrique en le nombre du nom d'une grosseur.",
  "Row of the published spans": "Ligne des portées publiées",
  "0 where the table has none.": "0 si le tableau n'en a pas.",
  "Canada's floor table covers it": "Le tableau canadien de planchers le couvre",
  "The rule behind these spans was not found, so they are used only where they were published: S-P-F No.1/No.2, homes.":
    "La règle derrière ces portées n'a pas été trouvée ; elles ne servent donc que là où elles ont été publiées : S-P-F No.1/No.2, habitations.",
  "Inches for millimetres: slack": "Pouces pour millimètres : jeu",
  "12 in joists stand in the column of 300 mm, and 40 psf for 1.9 kPa.":
    "Des solives à 12 po sont dans la colonne de 300 mm, et 40 lb/pi² pour 1,9 kPa.",
  "Span by vibration": "Portée par vibration",
  "The published spans at the two spacings; by the same power of the spacing between and beyond them.":
    "Les portées publiées aux deux espacements ; par la même puissance de l'espacement entre eux et au-delà.",
  "From a spacing of 400 mm on, the span is carried on from the cells at 300 mm and 400 mm: the printed cell was not seen.":
    "À partir d'un espacement de 400 mm, la portée est prolongée depuis les cases à 300 mm et 400 mm : la case imprimée n'a pas été vue.",
}
