import type { Texts } from "../dictionary.ts"

export const strips: Texts = {
  "Crushed stone under every sleeper: how much in place, and how much to order loose.":
    "Pierre concassée sous chaque traverse : combien en place, et combien commander en vrac.",
  "Across the walk. A little longer than the sleeper, so that its end does not break the edge.":
    "En travers du sentier. Un peu plus long que la traverse, pour que son bout n'effrite pas le bord.",
  "Width of a strip": "Largeur d'une bande de pierre",
  "Along the walk. Wide enough to be tamped, and to spread the load.":
    "Le long du sentier. Assez large pour se compacter et étaler la charge.",
  "Least stone beyond the sleeper": "Minimum de pierre au-delà de la traverse",
  "So that the sleeper lies on stone that is held, not on its edge.":
    "Pour que la traverse repose sur une pierre tenue, et non sur son bord.",
  "Where the ground falls away the stone stands proud. It must be held by an edging this high, or by soil banked against it.":
    "Là où le sol s'abaisse, la pierre dépasse. Une bordure de cette hauteur doit la retenir, ou de la terre relevée contre elle.",
  "All strips together, each with its own thickness.":
    "Toutes les bandes ensemble, chacune avec son épaisseur.",
  "Where the ground is low the strips get thicker than planned.":
    "Là où le sol est bas, les bandes deviennent plus épaisses que prévu.",
  "Is the strip bigger than the sleeper?": "La bande est-elle plus grande que la traverse ?",
  "A sleeper at the edge of its strip tips. On the narrower side, each way.":
    "Une traverse au bord de sa bande bascule. Du côté le plus étroit, dans chaque sens.",
  "Make the strip at least {stone_bed_margin_least} bigger than the sleeper on every side.":
    "Faites la bande d'au moins {stone_bed_margin_least} plus grande que la traverse de chaque côté.",
}
