import type { Texts } from "../dictionary.ts"

export const bearerJoints: Texts = {
  "Bearers and their joints": "Lambourdes et leurs joints",
  "Lengths of bearer you can buy": "Longueurs de lambourde qui s'achètent",
  "Each piece must lie on the slab by at least this much, or a little movement lets it slip off.":
    "Chaque morceau doit reposer au moins d'autant sur la dalle, sinon un petit mouvement le fait glisser.",
  "Pieces of the bearers": "Morceaux des lambourdes",
  "The line of bearers, as in the layout.": "La ligne de lambourdes, comme dans le plan.",
  "Where the piece ends: in the middle of a slab, or at the end of the frame.":
    "Où finit le morceau : au milieu d'une dalle, ou au bout du cadre.",
  "Joints of the bearers": "Joints des lambourdes",
  "How much of the slab lies under each of the two ends.":
    "Quelle longueur de la dalle est sous chacun des deux bouts.",
  "Pieces of bearer": "Morceaux de lambourde",
  "Joints in the bearers": "Joints dans les lambourdes",
  "A joint is only as good as the slab under it.": "Un joint ne vaut que la dalle dessous.",
  "Shortest slab that may carry a joint": "Plus courte dalle qui peut porter un joint",
  "Bearer timber bought": "Bois de lambourde acheté",
}
