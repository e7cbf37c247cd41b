import type { Texts } from "../dictionary.ts"

export const checkedSpan: Texts = {
  "The span that is checked": "La portée vérifiée",
  "Yours, or the longest one allowed: what it asks of the joist.":
    "La vôtre, ou la plus longue permise : ce qu'elle demande à la solive.",
  "Span checked": "Portée vérifiée",
  "Moment in the joist": "Moment dans la solive",
  "Greatest in the middle of the span.": "Le plus grand au milieu de la portée.",
  "Load on one seat": "Charge sur un siège",
  "Half of what lies on the joist.": "La moitié de ce qui est sur la solive.",
  "Sag under live load": "Flèche sous surcharge",
  "In the middle of the span.": "Au milieu de la portée.",
  "Sag allowed": "Flèche permise",
  "The span over the limit you chose.": "La portée sur la limite que vous avez choisie.",
  "Span against the longest allowed": "Portée comparée à la plus longue permise",
  "With the end of deck tables and, by limit states, vibration.":
    "Avec la fin des tableaux de terrasse et, aux états limites, la vibration.",
  "{joist_span_governed_by} allows {joist_span_max}: shorten the span, or choose a deeper size or a closer spacing.":
    "{joist_span_governed_by} permet {joist_span_max} : raccourcissez la portée, ou prenez plus haut ou plus serré.",
}
