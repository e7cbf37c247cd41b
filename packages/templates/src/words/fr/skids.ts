import type { Texts } from "../dictionary.ts"

export const skids: Texts = {
  Skids: "Patins",
  "The heavy timbers along the platform: how many lines, and where each one lies.":
    "Les gros bois le long de la plateforme : combien de lignes, et où va chacune.",
  "Size of the skids": "Grosseur des patins",
  "The heavy timbers that carry the frame. They lie on the blocks and run the long way.":
    "Les gros bois qui portent le cadre. Ils reposent sur les blocs et vont dans le sens long.",
  "Timber this near the ground must be treated for ground contact, cut ends too. Wear gloves, goggles and a dust mask when you saw it, and never burn the off-cuts.":
    "Du bois si près du sol doit être traité pour le contact avec le sol, bouts coupés compris. Portez gants, lunettes et masque antipoussière pour le scier, et ne brûlez jamais les chutes.",
  "Thickness of a skid": "Épaisseur d'un patin",
  "What the timber really measures across, not what it is called.":
    "Ce que le bois mesure vraiment en travers, pas ce que dit son nom.",
  "Depth of a skid": "Hauteur d'un patin",
  "What the timber really measures upright. It is part of the platform's height.":
    "Ce que le bois mesure vraiment debout. Cela compte dans la hauteur de la plateforme.",
  "Length of a line of skids": "Longueur d'une ligne de patins",
  "Each line runs the whole length of the platform, in one piece or in several that meet over a support.":
    "Chaque ligne fait toute la longueur de la plateforme, d'un seul morceau ou de plusieurs qui se rejoignent sur un appui.",
  "Widest spacing of the skids": "Plus grand espacement des patins",
  "The joists span from skid to skid: the wider the skids lie, the deeper the joists must be.":
    "Les solives portent d'un patin à l'autre : plus les patins sont écartés, plus les solives doivent être hautes.",
  "Outer skids set in by": "Patins extérieurs en retrait de",
  "How far the outer faces of the first and last skid stand back from the frame's long edges; 0: flush.":
    "De combien les faces extérieures du premier et du dernier patin sont en retrait des longs bords du cadre ; 0 : au ras.",
  "Lines of skids": "Lignes de patins",
  "The spaces that the width needs, counted up, and one more: a fence has one post more than it has gaps. Two at least, or all would tip.":
    "Les intervalles que demande la largeur, comptés vers le haut, plus un : une clôture a un poteau de plus que d'intervalles. Au moins deux, sinon tout basculerait.",
  "Spacing of the skids, centre to centre": "Espacement des patins, centre à centre",
  "The spaces shared out evenly. Mark this on the end strings.":
    "Les intervalles répartis également. Marquez ceci sur les cordeaux des bouts.",
  "Where each line lies, and how much of the width rests on it.":
    "Où va chaque ligne, et quelle part de la largeur repose dessus.",
  Line: "Ligne",
  "Counted across the width from the first side.": "Comptée sur la largeur depuis le premier côté.",
  "Centre, across the width": "Centre, sur la largeur",
  "From the frame's first long edge to the middle of the skid.":
    "Du premier long bord du cadre au milieu du patin.",
  "Carries from": "Porte depuis",
  "Half way to the line before it, or the edge of the frame.":
    "À mi-chemin de la ligne d'avant, ou le bord du cadre.",
  "Carries to": "Porte jusqu'à",
  "Half way to the next line, or the edge of the frame.":
    "À mi-chemin de la ligne suivante, ou le bord du cadre.",
  "Width carried": "Largeur portée",
  "How much of the platform's width rests on this line.":
    "Quelle part de la largeur de la plateforme repose sur cette ligne.",
  "Overhang, share of the spacing": "Porte-à-faux, part de l'espacement",
  "Joists may reach past the outer skid by no more than this share of the spacing, or the edge gets springy and can tip.":
    "Les solives ne peuvent dépasser le patin extérieur de plus que cette part de l'espacement, sinon le bord fait ressort et peut basculer.",
  "Overhang beyond the outer skids": "Porte-à-faux au-delà des patins extérieurs",
  "From the middle of the outer skid to the edge of the frame.":
    "Du milieu du patin extérieur au bord du cadre.",
  "Most overhang at this spacing": "Plus grand porte-à-faux à cet espacement",
  "The share above, of the spacing of the skids.": "La part ci-dessus, de l'espacement des patins.",
  "Are the outer skids far enough out?": "Les patins extérieurs sont-ils assez près du bord ?",
  "Somebody standing on the edge must not lift the other side.":
    "Quelqu'un debout sur le bord ne doit pas soulever l'autre côté.",
  "Set the outer skids in less, so that no more than {skid_overhang_most} is left beyond them.":
    "Mettez les patins extérieurs moins en retrait, pour qu'il ne reste pas plus de {skid_overhang_most} au-delà.",
  "The heavy timbers that carry the frame. They lie on the stone, full length, and run the long way.":
    "Les gros bois qui portent le cadre. Ils reposent sur la pierre de toute leur longueur, dans le sens long.",
  "Each line runs the whole length of the base, in one piece or in several that meet over a slab let into the stone.":
    "Chaque ligne fait toute la longueur de la base, d'un seul morceau ou de plusieurs qui se rejoignent sur une dalle encastrée dans la pierre.",
}
