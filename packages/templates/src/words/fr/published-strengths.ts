import type { Texts } from "../dictionary.ts"

export const publishedStrengths: Texts = {
  "Published strengths": "Résistances publiées",
  "What others have measured and agreed on. Every cell can be changed, and then says so.":
    "Ce que d'autres ont mesuré et convenu. Chaque cellule peut être changée, et le dit alors.",
  "Published strengths of graded timber": "Résistances publiées du bois classé",
  "What timber of a species and grade carries when it is dry and the load lasts ten years in all, before anything is taken off or added.":
    "Ce que porte le bois d'une essence et d'une qualité, sec et chargé dix ans en tout, avant d'ôter ou d'ajouter quoi que ce soit.",
  "Found by": "Trouvé par",
  "Species, grade and class of size in one text.": "Essence, qualité et classe de grosseur en un texte.",
  "The species or the group sold under one name.": "L'essence, ou le groupe vendu sous un nom.",
  "The grade stamped on the piece.": "La qualité estampillée sur la pièce.",
  Sizes: "Grosseurs",
  "Which sizes the row is for.": "Pour quelles grosseurs vaut la ligne.",
  Bending: "Flexion",
  "Fb, at the edge of a bent piece.": "Fb, au bord d'une pièce fléchie.",
  Tension: "Traction",
  "Ft, along the grain.": "Ft, le long du fil.",
  Shear: "Cisaillement",
  "Fv, along the grain near the supports.": "Fv, le long du fil près des appuis.",
  Bearing: "Portance",
  "Fc across the grain, where a piece sits on its support.":
    "Fc en travers du fil, là où une pièce repose sur son appui.",
  Compression: "Compression",
  "Fc along the grain, as in a post.": "Fc le long du fil, comme dans un poteau.",
  Stiffness: "Rigidité",
  "E, which decides how far a piece sags.": "E, qui décide de la flèche d'une pièce.",
  "Stiffness, low": "Rigidité, basse",
  "Emin, for sideways buckling.": "Emin, pour le flambement latéral.",
  "Specific gravity": "Densité relative",
  "Dry weight against water; decides what a fastener holds.":
    "Poids sec par rapport à l'eau ; décide de ce que tient une attache.",
  "Size already inside": "Grosseur déjà comprise",
  "Southern Pine is published by width, so no size factor is put on top.":
    "Le pin du Sud est publié par largeur ; aucun facteur de grosseur ne s'y ajoute.",
  "Rows from memory were not seen in print when they were written down: confirm them before you lean on them.":
    "Les lignes de mémoire n'ont pas été vues imprimées quand elles ont été notées : confirmez-les avant de vous y appuyer.",
  "Where the row was read, or what it was recalled from.":
    "Où la ligne a été lue, ou d'où elle est rappelée.",
  "Which class a size is in": "Dans quelle classe est une grosseur",
  "Strength is published by class of width and thickness, not by each size.":
    "La résistance est publiée par classe de largeur et d'épaisseur, non pour chaque grosseur.",
  "Sold as": "Vendu comme",
  "The name on the rack.": "Le nom sur le présentoir.",
  "The wide side before planing; it picks the size factor.":
    "Le grand côté avant rabotage ; il choisit le facteur de grosseur.",
  "Width, metric class": "Largeur, classe métrique",
  "The wide side by which the Canadian size factor goes.":
    "Le grand côté selon lequel va le facteur de grosseur canadien.",
  Thickness: "Épaisseur",
  "Thin, 4 in, or timbers, which are graded by other rules.":
    "Mince, 4 po, ou gros bois, classé selon d'autres règles.",
  "The column of the strength table.": "La colonne du tableau des résistances.",
  "Size factors, CF": "Facteurs de grosseur, CF",
  "A slim piece is stronger for its size: a knot or a flaw weakens a deep one more. Not for Southern Pine, and 1 for timbers up to 12 in deep.":
    "Une pièce mince est plus résistante pour sa taille : un nœud ou un défaut affaiblit davantage une haute. Pas pour le pin du Sud, et 1 pour les gros bois jusqu'à 12 po de haut.",
  "The wide side before planing.": "Le grand côté avant rabotage.",
  "Bending, 2 or 3 in thick": "Flexion, épaisseur 2 ou 3 po",
  "Times Fb, bending.": "Fois Fb, flexion.",
  "Bending, 4 in thick": "Flexion, épaisseur 4 po",
  "Times Ft, tension.": "Fois Ft, traction.",
  "On Fc along the grain.": "Sur Fc le long du fil.",
  "How each species is treated, and its Canadian name":
    "Comment chaque essence est traitée, et son nom canadien",
  "Wood that preservative hardly enters is cut with small slits first. The slits cost strength, so only such species lose it.":
    "Le bois où le préservatif pénètre mal est d'abord fendu de petites incisions. Elles coûtent de la résistance ; seules ces essences la perdent.",
  "Incised before treating": "Incisé avant traitement",
  "Whether treated wood of it has rows of small slits.":
    "Si son bois traité porte des rangs de petites fentes.",
  "Name in Canada": "Nom au Canada",
  "The name in the Canadian standard; a dash where it has none here.":
    "Le nom dans la norme canadienne ; un tiret s'il n'y en a pas ici.",
  "Load duration factors, CD": "Facteurs de durée de charge, CD",
  "Wood carries a short load better than a lasting one. On bending, tension, shear and compression; not on stiffness or bearing.":
    "Le bois porte mieux une charge courte qu'une durable. Sur flexion, traction, cisaillement et compression ; pas sur rigidité ni portance.",
  CD: "CD",
  "On the published strengths.": "Sur les résistances publiées.",
  "Such as": "Par exemple",
  "The load that usually lasts so long.": "La charge qui dure d'habitude si longtemps.",
  "Wet service factors, CM": "Facteurs de service humide, CM",
  "Timber that stays damp, as out of doors, is weaker and springier.":
    "Un bois qui reste humide, comme dehors, est plus faible et plus souple.",
  "Timbers were never dry, so they lose less.":
    "Les gros bois n'ont jamais été secs ; ils perdent donc moins.",
  "On Fb; for thin timber only where Fb × CF is over the threshold.":
    "Sur Fb ; pour le bois mince, seulement si Fb × CF dépasse le seuil.",
  "What is left of Ft.": "Ce qui reste de Ft.",
  "What is left of Fv.": "Ce qui reste de Fv.",
  "On Fc across the grain.": "Sur Fc en travers du fil.",
  "On E and Emin.": "Sur E et Emin.",
  "Specified strengths of Canadian timber": "Résistances prévues du bois canadien",
  "What the Canadian standard lets a grade bear before its own factors.":
    "Ce que la norme canadienne laisse porter à une qualité, avant ses propres facteurs.",
  "Species and grade in one text.": "Essence et qualité en un texte.",
  "Called fb there.": "Appelée là fb.",
  "Called fv there.": "Appelée là fv.",
  "fc, along the grain.": "fc, le long du fil.",
  "fcp, across the grain.": "fcp, en travers du fil.",
  "Called ft there.": "Appelée là ft.",
  "Called E there.": "Appelée là E.",
  "E05, for buckling.": "E05, pour le flambement.",
  "Canadian size factors, KZ": "Facteurs de grosseur canadiens, KZ",
  "On bending and shear, by the wide side and the thickness.":
    "Sur flexion et cisaillement, selon le grand côté et l'épaisseur.",
  "Wide side": "Grand côté",
  "The larger dimension of the piece.": "La plus grande dimension de la pièce.",
  "Thickness from": "Épaisseur depuis",
  "The class that the whole member's width falls in.": "La classe où tombe la largeur de la pièce entière.",
  KZ: "KZ",
  "On bending and shear.": "Sur flexion et cisaillement.",
  "Live loads that codes ask for": "Surcharges que demandent les codes",
  "A home deck is not a sports floor: where a crowd may gather, the load is two and a half times as much.":
    "Une terrasse de maison n'est pas un plancher de sport : là où une foule peut se réunir, la charge est deux fois et demie plus grande.",
  Whose: "De qui",
  "The code that says so.": "Le code qui le dit.",
  "What for": "Pour quoi",
  "The use of the floor.": "L'usage du plancher.",
  "Even load": "Charge uniforme",
  "How far a floor may sag": "Flèche permise d'un plancher",
  "The span over this number. A larger number is stiffer.":
    "La portée divisée par ce nombre. Plus il est grand, plus c'est rigide.",
  "The member it is about.": "La pièce dont il s'agit.",
  "Span over": "Portée sur",
  "Span over this number.": "La portée divisée par ce nombre.",
  Under: "Sous",
  "Which load is counted.": "Quelle charge est comptée.",
}
