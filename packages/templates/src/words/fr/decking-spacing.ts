import type { Texts } from "../dictionary.ts"

export const deckingSpacing: Texts = {
  "Boards on joists": "Planches sur solives",
  "Deck boards are not calculated: a table says how far apart the joists may lie.":
    "Les planches de terrasse ne se calculent pas : un tableau dit à quelle distance peuvent être les solives.",
  "Deck boards": "Planches de terrasse",
  "5/4 boards are one inch thick when planed. For composites the maker's evaluation decides.":
    "Les planches 5/4 font un pouce une fois rabotées. Pour les composites, l'évaluation du fabricant décide.",
  "5/4 boards": "planches 5/4",
  "2 in boards": "planches de 2 po",
  "plastic composite": "composite de plastique",
  "Boards lie": "Les planches sont",
  "Laid slantwise a board spans further from joist to joist.":
    "Posée en biais, une planche porte plus loin d'une solive à l'autre.",
  "across the joists": "en travers des solives",
  "at 45 degrees": "à 45 degrés",
  "Joist spacing under deck boards": "Espacement des solives sous planches de terrasse",
  "Boards that span further feel soft underfoot.":
    "Des planches qui portent plus loin semblent molles sous le pied.",
  "Boards and direction in one text.": "Planches et sens en un texte.",
  "The table has these boards": "Le tableau a ces planches",
  "Composites are not in the table: ask for the maker's evaluation report.":
    "Les composites ne sont pas dans le tableau : demandez le rapport d'évaluation du fabricant.",
  "Joists under these boards no further apart than": "Solives sous ces planches à au plus",
  "Joist spacing under the boards": "Espacement des solives sous les planches",
  "Holds your joist spacing against the table.": "Compare votre espacement de solives au tableau.",
  "Set joists {decking_spacing_max} apart at most, or take thicker boards.":
    "Mettez les solives à {decking_spacing_max} au plus, ou prenez des planches plus épaisses.",
  "A spacing is near its limit from": "Un espacement est de justesse à partir de",
  "A spacing that is just what the table prints is meant to be used, so it is no near thing.":
    "Un espacement tout juste imprimé au tableau est fait pour servir ; ce n'est donc pas de justesse.",
}
