import type { Texts } from "../dictionary.ts"

export const stringers: Texts = {
  Stringers: "Longerons",
  "The timbers along the walk that the boards lie on: how many lines, and where each one lies.":
    "Les bois le long du sentier où reposent les planches : combien de lignes, et où va chacune.",
  "Size of the stringers": "Grosseur des longerons",
  "They stand on edge along the walk. A deeper one spans further from sleeper to sleeper, and makes the walk higher.":
    "Ils sont sur chant le long du sentier. Plus hauts, ils portent plus loin d'une traverse à l'autre, et le sentier est plus haut.",
  "Stringers this near the ground must be treated for ground contact, cut ends too. Never burn the off-cuts.":
    "Des longerons si près du sol doivent être traités pour le contact avec le sol, bouts coupés compris. Ne brûlez jamais les chutes.",
  "Thickness of a stringer, real": "Épaisseur réelle d'un longeron",
  "The narrow face, which the boards are screwed to.": "La face étroite, où se vissent les planches.",
  "Depth of a stringer, real": "Hauteur réelle d'un longeron",
  "Upright: part of the height of the walk.": "Debout : une part de la hauteur du sentier.",
  "Length of a line of stringers": "Longueur d'une ligne de longerons",
  "Each line runs the whole length of the walk, in one piece or in several that meet over a sleeper.":
    "Chaque ligne fait toute la longueur du sentier, d'un seul morceau ou de plusieurs qui se rejoignent sur une traverse.",
  "Widest spacing of the stringers": "Plus grand espacement des longerons",
  "The boards span from stringer to stringer: thin boards need stringers close together.":
    "Les planches portent d'un longeron à l'autre : des planches minces veulent des longerons rapprochés.",
  "Outer stringers set in by": "Longerons extérieurs en retrait de",
  "How far the outer faces of the first and last stringer stand back from the walk's edges; 0: flush. A little hides them and keeps rain off.":
    "De combien les faces extérieures du premier et du dernier longeron sont en retrait des bords du sentier ; 0 : au ras. Un peu les cache et les garde de la pluie.",
  "Lines of stringers": "Lignes de longerons",
  "Spacing of the stringers, centre to centre": "Espacement des longerons, centre à centre",
  "The spaces shared out evenly. Mark this on every sleeper.":
    "Les intervalles répartis également. Marquez ceci sur chaque traverse.",
  "From the frame's first long edge to the middle of the stringer.":
    "Du premier long bord du cadre au milieu du longeron.",
  "Boards beyond the middle of the outer stringer": "Planches au-delà du milieu du longeron extérieur",
  "A foot on the edge of the walk stands here.": "Un pied au bord du sentier se pose ici.",
  "Boards may reach past the outer stringer by no more than this share of the spacing, or the edge gets springy and can tip. The published figure is for joists past a beam.":
    "Les planches ne peuvent dépasser le longeron extérieur de plus que cette part de l'espacement, sinon le bord fait ressort et peut basculer. Le chiffre publié est pour des solives au-delà d'une poutre.",
  "The share above, of the spacing of the stringers.": "La part ci-dessus, de l'espacement des longerons.",
  "Are the outer stringers far enough out?": "Les longerons extérieurs sont-ils assez près du bord ?",
  "Somebody who steps on the edge must not lift the other end of the board.":
    "Qui marche sur le bord ne doit pas soulever l'autre bout de la planche.",
  "Set the outer stringers in less, so that no more than {stringer_overhang_most} is left beyond their middle.":
    "Mettez les longerons extérieurs moins en retrait, pour qu'il ne reste pas plus de {stringer_overhang_most} au-delà de leur milieu.",
}
