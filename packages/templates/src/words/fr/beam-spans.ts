import type { Texts } from "../dictionary.ts"

export const beamSpans: Texts = {
  "Reserve on the sag of a beam": "Réserve sur la flèche d'une poutre",
  "A beam that runs on over its posts is judged a little stiffer than one span alone. The table's shallow three-ply beams come out with this.":
    "Une poutre continue sur ses poteaux se juge un peu plus rigide qu'une seule portée. Les poutres basses à trois plis du tableau en sortent ainsi.",
  "A group's span is that of its least species.":
    "La portée d'un groupe est celle de sa plus faible essence.",
  "Where half the load, at the post, has used up the section.":
    "Là où la moitié de la charge, au poteau, a épuisé la section.",
  "Where the sag under live load, with its reserve, reaches the span over the limit.":
    "Là où la flèche sous surcharge, avec sa réserve, atteint la portée sur la limite.",
  "Longest beam span": "Plus longue portée de poutre",
  "From post to post. No beam of this kind may span further under these joists.":
    "D'un poteau à l'autre. Aucune poutre de cette sorte ne peut porter plus loin sous ces solives.",
  "The printed beam table was recalled, not read, and some of its rules were found by working it backwards. Hold the answer against your local table.":
    "Le tableau imprimé des poutres est de mémoire, non lu, et certaines de ses règles ont été trouvées à rebours. Comparez la réponse à votre tableau local.",
  "Plies must be joined as your code says, and every joint between lengths must stand over a post.":
    "Les plis doivent être joints comme le dit votre code, et tout joint entre longueurs doit tomber sur un poteau.",
  "Longest beam span, as tables print it": "Plus longue portée de poutre, telle qu'imprimée",
  "Yours, or the longest one allowed.": "La vôtre, ou la plus longue permise.",
  "Moment in the beam": "Moment dans la poutre",
  "Half of what lies on the beam. A post in the middle of a beam gets this from both sides.":
    "La moitié de ce qui est sur la poutre. Un poteau au milieu d'une poutre reçoit cela des deux côtés.",
  "Sag under live load, with its reserve": "Flèche sous surcharge, avec sa réserve",
  "Bending, shear and sag together.": "Flexion, cisaillement et flèche ensemble.",
  "{beam_span_governed_by} allows {beam_span_max}: set posts closer, add a ply, or choose a deeper size.":
    "{beam_span_governed_by} permet {beam_span_max} : rapprochez les poteaux, ajoutez un pli, ou prenez plus haut.",
}
