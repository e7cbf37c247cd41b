import type { Texts } from "../dictionary.ts"

export const supports1: Texts = {
  Supports: "Appuis",
  "Where the stacks stand under each skid, how high each one is, and what it carries.":
    "Où vont les piles sous chaque patin, quelle hauteur a chacune, et ce qu'elle porte.",
  "Clearance under the timber": "Dégagement sous le bois",
  "Air between the ground at the high corner and the lowest timber. Timber that touches soil rots; a little more air costs height.":
    "L'air entre le sol au coin haut et le bois le plus bas. Le bois qui touche la terre pourrit ; un peu plus d'air coûte de la hauteur.",
  "Level of the skids' underside": "Niveau du dessous des patins",
  "The one level line of the whole job: the top of every stack is here.":
    "La seule ligne de niveau de tout le chantier : le dessus de chaque pile est ici.",
  "Widest spacing of the supports": "Plus grand espacement des appuis",
  "How far a skid may span from stack to stack. Closer stacks share the load better and cost more digging.":
    "Jusqu'où un patin peut porter d'une pile à l'autre. Des piles plus rapprochées partagent mieux la charge et demandent plus de creusage.",
  "First support in from the end": "Premier appui à cette distance du bout",
  "From the skid's end to the middle of the first and the last stack, so that the end lies full on its block.":
    "Du bout du patin au milieu de la première et de la dernière pile, pour que le bout repose en plein sur son bloc.",
  "Supports under one skid": "Appuis sous un patin",
  "The spaces between the first and the last, counted up, and one more.":
    "Les intervalles entre le premier et le dernier, comptés vers le haut, plus un.",
  "Spacing of the supports, centre to centre": "Espacement des appuis, centre à centre",
  "The spaces shared out evenly. Mark this along each skid's string.":
    "Les intervalles répartis également. Marquez ceci sur le cordeau de chaque patin.",
  "Supports in all": "Appuis en tout",
  "As many holes to dig, beds to tamp and stacks to level: the slowest part of the work.":
    "Autant de trous à creuser, de lits à compacter et de piles à mettre de niveau : la partie la plus lente des travaux.",
  "Supports along one skid": "Appuis le long d'un patin",
  "The marks on the string of any one skid; a joint may lie over all but the first and the last.":
    "Les marques sur le cordeau d'un patin ; un joint peut tomber sur toutes sauf la première et la dernière.",
  Support: "Appui",
  "Counted along the skid from the first end.": "Compté le long du patin depuis le premier bout.",
  "From the frame's first end to the middle of the stack.": "Du premier bout du cadre au milieu de la pile.",
  "Half way to the support before it, or the end of the frame.":
    "À mi-chemin de l'appui d'avant, ou le bout du cadre.",
  "Half way to the next support, or the end of the frame.":
    "À mi-chemin de l'appui suivant, ou le bout du cadre.",
  "Length carried": "Longueur portée",
  "How much of the platform's length rests on this support.":
    "Quelle part de la longueur de la plateforme repose sur cet appui.",
  "Block under the skid": "Bloc sous le patin",
  "How much of the skid lies on the block: the block's length, which lies along the skid.":
    "Quelle longueur du patin repose sur le bloc : la longueur du bloc, qui suit le patin.",
  "Ground at the supports, between points": "Sol aux appuis, entre les points",
  "Supports, one by one": "Appuis, un par un",
  "Every stack has its own ground, its own number of blocks and its own hole. Take this table outside with you.":
    "Chaque pile a son sol, son nombre de blocs et son trou. Emportez ce tableau dehors.",
  "Before you dig, have buried cables and pipes marked; the service asks for some days' notice. Dig by hand near a marked line.":
    "Avant de creuser, faites repérer les câbles et conduites enfouis ; le service demande quelques jours de préavis. Creusez à la main près d'une ligne marquée.",
  "The level of the ground is read at the middle of each stack, from a plane or between the levels that you took. Measure it again at each peg before you cut or dig.":
    "Le niveau du sol se lit au milieu de chaque pile, sur un plan ou entre les niveaux que vous avez pris. Mesurez-le de nouveau à chaque piquet avant de couper ou de creuser.",
  "The line of skids that the support stands under.": "La ligne de patins sous laquelle est l'appui.",
  "Support in the line": "Appui dans la ligne",
  "Counted along the line from the first end.": "Compté le long de la ligne depuis le premier bout.",
  "From the frame's first long edge to the middle of the stack.":
    "Du premier long bord du cadre au milieu de la pile.",
  "Level of the ground at the middle of the stack, up positive.":
    "Niveau du sol au milieu de la pile, positif vers le haut.",
  "Ground to underside": "Du sol au dessous",
  "What the blocks must bridge here.": "Ce que les blocs doivent rattraper ici.",
  "Blocks in the stack": "Blocs dans la pile",
  "Enough blocks that the stack's foot stands at or below the ground, never above it; always one at least.":
    "Assez de blocs pour que le pied de la pile soit au niveau du sol ou plus bas, jamais au-dessus ; toujours au moins un.",
  "Height of the stack": "Hauteur de la pile",
  "From the top of the stone to the underside of the skid.": "Du dessus de la pierre au dessous du patin.",
  "Top of the stone": "Dessus de la pierre",
  "Level to which the stone is tamped: check it with a straight board and a level before the block goes on.":
    "Niveau jusqu'où la pierre est compactée : vérifiez-le avec une règle droite et un niveau avant de poser le bloc.",
  "Bottom of the hole": "Fond du trou",
  "Deep enough for the full bed of stone, and deep enough to be out of the turf.":
    "Assez creux pour tout le lit de pierre, et assez creux pour être sous le gazon.",
  "How deep to dig here, from the grass down.": "Combien creuser ici, depuis l'herbe.",
  "Stone beyond the planned bed": "Pierre en plus du lit prévu",
  "Where the hole must go deeper than the bed is thick, stone fills the rest.":
    "Là où le trou doit aller plus creux que l'épaisseur du lit, la pierre remplit le reste.",
  "Stone, tamped": "Pierre, compactée",
  "How thick the bed of stone is here when tamped.": "L'épaisseur du lit de pierre ici, une fois compacté.",
  "Stone standing above the ground": "Pierre qui dépasse du sol",
  "Stone that stands proud must be held in by an edging, or it walks away from under the block.":
    "Une pierre qui dépasse doit être retenue par une bordure, sinon elle fuit de sous le bloc.",
  "Soil dug": "Terre creusée",
  "Measured in the ground, before it loosens.": "Mesurée en place, avant qu'elle foisonne.",
  "Stone in place": "Pierre en place",
  "Measured tamped; you order it loose, which is more.":
    "Mesurée compactée ; vous la commandez en vrac, ce qui fait plus.",
  "Area carried": "Aire portée",
  "The part of the platform that rests on this stack: half way to each neighbour, and out to the edge of the frame.":
    "La part de la plateforme qui repose sur cette pile : à mi-chemin de chaque voisine, et jusqu'au bord du cadre.",
  Load: "Charge",
  "By statics, as heavy as the loads that you entered: a timber that runs on over a support leans harder on it. Half the way to each neighbour counts only where the lines cannot be worked out.":
    "Par la statique, aussi lourde que les charges entrées : un bois continu sur un appui y pèse davantage. La mi-distance aux voisins ne sert que là où les lignes ne peuvent pas être calculées.",
  "Pressure under the block": "Pression sous le bloc",
  "The load over the face of the block, before the stone spreads it.":
    "La charge sur la face du bloc, avant que la pierre la répartisse.",
  "Pressure under the stone": "Pression sous la pierre",
  "The stone spreads the load before it reaches the soil. A second opinion; the check goes by the block's face.":
    "La pierre répartit la charge avant qu'elle atteigne le sol. Un deuxième avis ; la vérification se fait sur la face du bloc.",
  "Height, and places along the skids": "Hauteur, et emplacements le long des patins",
  "How high the base lies, and where two pieces of a skid may meet.":
    "À quelle hauteur est la base, et où deux morceaux d'un patin peuvent se rejoindre.",
  "Stone above the ground at the high corner": "Pierre au-dessus du sol au coin haut",
  "How far the top of the pad, and so the lowest timber, stands above the grass at the high corner. Water must run away from it, not onto it.":
    "De combien le dessus de l'assise, donc le bois le plus bas, est au-dessus de l'herbe au coin haut. L'eau doit s'en éloigner, pas y couler.",
  "The one level line of the whole job: the top of the stone is here.":
    "La seule ligne de niveau de tout le chantier : le dessus de la pierre est ici.",
  "Widest spacing of the places": "Plus grand espacement des emplacements",
  "Places along a skid where two pieces of it may meet over a slab. If the base stood on footings, they would stand here.":
    "Emplacements le long d'un patin où deux morceaux peuvent se rejoindre sur une dalle. Si la base avait des fondations, elles seraient ici.",
  "First place in from the end": "Premier emplacement à cette distance du bout",
  "From the skid's end to the middle of the first and the last place.":
    "Du bout du patin au milieu du premier et du dernier emplacement.",
  "Places along one skid": "Emplacements le long d'un patin",
  "Spacing of the places, centre to centre": "Espacement des emplacements, centre à centre",
  "Places in all": "Emplacements en tout",
  "As many footings, if the base stood on footings instead of stone.":
    "Autant de fondations, si la base avait des fondations au lieu de la pierre.",
  "Marks on the string of any one skid; a joint may lie over all but the first and the last.":
    "Marques sur le cordeau d'un patin ; un joint peut tomber sur toutes sauf la première et la dernière.",
  "From the frame's first end to the middle of the slab.": "Du premier bout du cadre au milieu de la dalle.",
  "How much of the skid lies on the slab: the slab's length, which lies along the skid.":
    "Quelle longueur du patin repose sur la dalle : la longueur de la dalle, qui suit le patin.",
  "The strips, one by one": "Les bandes, une par une",
  "Where each sleeper lies, how deep to dig for its strip of stone, and what it carries.":
    "Où va chaque traverse, combien creuser pour sa bande de pierre, et ce qu'elle porte.",
  "The top of the stone above the ground at the high corner. Timber that touches soil rots; a little more air costs height.":
    "Le dessus de la pierre au-dessus du sol au coin haut. Le bois qui touche la terre pourrit ; un peu plus d'air coûte de la hauteur.",
  "Level of the sleepers' underside": "Niveau du dessous des traverses",
  "The one level line of the whole job: the top of every strip is here.":
    "La seule ligne de niveau de tout le chantier : le dessus de chaque bande est ici.",
  "Strips of stone": "Bandes de pierre",
  "One under each sleeper: as many trenches to dig, to fill and to level.":
    "Une sous chaque traverse : autant de tranchées à creuser, à remplir et à mettre de niveau.",
  "Underside of a sleeper": "Dessous d'une traverse",
  "The face that presses on the stone.": "La face qui presse sur la pierre.",
  "Ground at the sleepers, between points": "Sol aux traverses, entre les points",
  "Sleepers and their strips, one by one": "Traverses et leurs bandes, une par une",
  "Every sleeper has its own ground and its own trench. Take this table outside with you.":
    "Chaque traverse a son sol et sa tranchée. Emportez ce tableau dehors.",
  "The level of the ground is read at the middle of each strip, from a plane or between the levels that you took. Measure it again at each peg before you cut or dig.":
    "Le niveau du sol se lit au milieu de chaque bande, sur un plan ou entre les niveaux que vous avez pris. Mesurez-le de nouveau à chaque piquet avant de couper ou de creuser.",
  "Across the walk": "En travers du sentier",
  "The middle of the sleeper is the middle of the walk.":
    "Le milieu de la traverse est le milieu du sentier.",
  "Level of the ground at the middle of the strip, up positive.":
    "Niveau du sol au milieu de la bande, positif vers le haut.",
  "What the sleepers must bridge here.": "Ce que les traverses doivent rattraper ici.",
  "One level along the whole walk: the sleepers lie straight on it. Check it with a straight board and a level.":
    "Un seul niveau sur tout le sentier : les traverses reposent directement dessus. Vérifiez-le avec une règle droite et un niveau.",
  "Stone that stands proud must be held in by an edging, or it walks away from under the sleeper.":
    "Une pierre qui dépasse doit être retenue par une bordure, sinon elle fuit de sous la traverse.",
  "Half way to the sleepers on either side, over the whole width of the walk.":
    "À mi-chemin des traverses de chaque côté, sur toute la largeur du sentier.",
  "People and platform on that area, as heavy as the loads that you entered.":
    "Les gens et la plateforme sur cette aire, aussi lourds que les charges entrées.",
  "Pressure under the sleeper": "Pression sous la traverse",
  "The load over the underside of the sleeper, before the stone spreads it.":
    "La charge sur le dessous de la traverse, avant que la pierre la répartisse.",
  "The stone spreads the load before it reaches the soil. A second opinion; the check goes by the sleeper's underside.":
    "La pierre répartit la charge avant qu'elle atteigne le sol. Un deuxième avis ; la vérification se fait sur le dessous de la traverse.",
  "Where the pads stand under each beam, how high each one is, and what it carries.":
    "Où vont les dalles d'appui sous chaque poutre, quelle hauteur a chacune, et ce qu'elle porte.",
  "Level of the beams' underside": "Niveau du dessous des poutres",
  "The one level line of the whole job: the top of every pad is here.":
    "La seule ligne de niveau de tout le chantier : le dessus de chaque dalle d'appui est ici.",
  "How far a beam may span from pad to pad. Closer pads share the load better and cost more digging.":
    "Jusqu'où une poutre peut porter d'une dalle d'appui à l'autre. Des dalles plus rapprochées partagent mieux la charge et demandent plus de creusage.",
  "From the beam's end to the middle of the first and the last pad, so that the end lies full on its pad.":
    "Du bout de la poutre au milieu de la première et de la dernière dalle d'appui, pour que le bout repose en plein dessus.",
  "Supports under one beam": "Appuis sous une poutre",
  "The spaces shared out evenly. Mark this along each beam's string.":
    "Les intervalles répartis également. Marquez ceci sur le cordeau de chaque poutre.",
  "As many holes to dig, beds to tamp and pads to level: the slowest part of the work.":
    "Autant de trous à creuser, de lits à compacter et de dalles à mettre de niveau : la partie la plus lente des travaux.",
  "Supports along one beam": "Appuis le long d'une poutre",
  "The marks on the string of any one beam; a joint may lie over all but the first and the last.":
    "Les marques sur le cordeau d'une poutre ; un joint peut tomber sur toutes sauf la première et la dernière.",
  "Counted along the beam from the first end.": "Compté le long de la poutre depuis le premier bout.",
  "From the frame's first end to the middle of the pad.":
    "Du premier bout du cadre au milieu de la dalle d'appui.",
  "Pad under the beam": "Dalle d'appui sous la poutre",
  "How much of the beam lies on the pad: the pad's length, which lies along the beam.":
    "Quelle longueur de la poutre repose sur la dalle d'appui : sa longueur, qui suit la poutre.",
  "Every pad has its own ground and its own hole. Take this table outside with you.":
    "Chaque dalle d'appui a son sol et son trou. Emportez ce tableau dehors.",
  "The level of the ground is read at the middle of each pad, from a plane or between the levels that you took. Measure it again at each peg before you cut or dig.":
    "Le niveau du sol se lit au milieu de chaque dalle d'appui, sur un plan ou entre les niveaux que vous avez pris. Mesurez-le de nouveau à chaque piquet avant de couper ou de creuser.",
  "The line of beams that the support stands under.": "La ligne de poutres sous laquelle est l'appui.",
  "From the frame's first long edge to the middle of the pad.":
    "Du premier long bord du cadre au milieu de la dalle d'appui.",
  "Level of the ground at the middle of the pad, up positive.":
    "Niveau du sol au milieu de la dalle d'appui, positif vers le haut.",
  "What the pads must bridge here.": "Ce que les dalles d'appui doivent rattraper ici.",
  "Pads here": "Dalles d'appui ici",
  "One, unless you allow more to be stacked. The stone below takes up the fall.":
    "Une, sauf si vous permettez d'en empiler plus. La pierre dessous rattrape le dénivelé.",
  "Height of the pad": "Hauteur de la dalle d'appui",
  "From the top of the stone to the underside of the beam.":
    "Du dessus de la pierre au dessous de la poutre.",
  "Level to which the stone is tamped: check it with a straight board and a level before the pad goes on.":
    "Niveau jusqu'où la pierre est compactée : vérifiez-le avec une règle droite et un niveau avant de poser la dalle d'appui.",
  "Stone that stands proud must be held in by an edging, or it walks away from under the pad.":
    "Une pierre qui dépasse doit être retenue par une bordure, sinon elle fuit de sous la dalle d'appui.",
  "The part of the platform that rests on this pad: half way to each neighbour, and out to the edge of the frame.":
    "La part de la plateforme qui repose sur cette dalle d'appui : à mi-chemin de chaque voisine, et jusqu'au bord du cadre.",
  "Pressure under the pad": "Pression sous la dalle d'appui",
  "The load over the face of the pad, before the stone spreads it.":
    "La charge sur la face de la dalle d'appui, avant que la pierre la répartisse.",
  "The stone spreads the load before it reaches the soil. A second opinion; the check goes by the pad's face.":
    "La pierre répartit la charge avant qu'elle atteigne le sol. Un deuxième avis ; la vérification se fait sur la face de la dalle d'appui.",
  "Load by statics": "Charge par la statique",
  "What the timber really hands down: where it runs on over a support it leans harder on it than half the way to each neighbour says, and less on the next.":
    "Ce que le bois transmet vraiment : continu sur un appui, il y pèse plus que ne le dit la mi-distance aux voisins, et moins sur le suivant.",
  "Pressure by statics": "Pression par la statique",
  "Under the same face as the pressure before.": "Sous la même face que la pression précédente.",
  "Where the slabs stand under each bearer, how high each one is, and what it carries.":
    "Où vont les dalles sous chaque lambourde, quelle hauteur a chacune, et ce qu'elle porte.",
  "Level of the bearers' underside": "Niveau du dessous des lambourdes",
  "The one level line of the whole job: the top of every slab is here.":
    "La seule ligne de niveau de tout le chantier : le dessus de chaque dalle est ici.",
  "How far a bearer may span from slab to slab. Closer slabs share the load better and cost more digging.":
    "Jusqu'où une lambourde peut porter d'une dalle à l'autre. Des dalles plus rapprochées partagent mieux la charge et demandent plus de creusage.",
  "From the bearer's end to the middle of the first and the last slab, so that the end lies full on its slab.":
    "Du bout de la lambourde au milieu de la première et de la dernière dalle, pour que le bout repose en plein sur sa dalle.",
  "Supports under one bearer": "Appuis sous une lambourde",
  "The spaces shared out evenly. Mark this along each bearer's string.":
    "Les intervalles répartis également. Marquez ceci sur le cordeau de chaque lambourde.",
  "As many holes to dig, beds to tamp and slabs to level: the slowest part of the work.":
    "Autant de trous à creuser, de lits à compacter et de dalles à poser de niveau : la partie la plus lente des travaux.",
  "Supports along one bearer": "Appuis le long d'une lambourde",
  "The marks on the string of any one bearer; a joint may lie over all but the first and the last.":
    "Les marques sur le cordeau d'une lambourde ; un joint peut tomber sur toutes sauf la première et la dernière.",
  "Counted along the bearer from the first end.": "Compté le long de la lambourde depuis le premier bout.",
  "Slab under the bearer": "Dalle sous la lambourde",
  "How much of the bearer lies on the slab: the slab's length, which lies along the bearer.":
    "Quelle longueur de la lambourde repose sur la dalle : la longueur de la dalle, qui suit la lambourde.",
  "Every slab has its own ground and its own hole. Take this table outside with you.":
    "Chaque dalle a son sol et son trou. Emportez ce tableau dehors.",
  "The level of the ground is read at the middle of each slab, from a plane or between the levels that you took. Measure it again at each peg before you cut or dig.":
    "Le niveau du sol se lit au milieu de chaque dalle, sur un plan ou entre les niveaux que vous avez pris. Mesurez-le de nouveau à chaque piquet avant de couper ou de creuser.",
  "The line of bearers that the support stands under.": "La ligne de lambourdes sous laquelle est l'appui.",
  "From the frame's first long edge to the middle of the slab.":
    "Du premier long bord du cadre au milieu de la dalle.",
  "Level of the ground at the middle of the slab, up positive.":
    "Niveau du sol au milieu de la dalle, positif vers le haut.",
  "What the slabs must bridge here.": "Ce que les dalles doivent rattraper ici.",
  "Slabs here": "Dalles ici",
  "Height of the slab": "Hauteur de la dalle",
  "From the top of the stone to the underside of the bearer.":
    "Du dessus de la pierre au dessous de la lambourde.",
  "Level to which the stone is tamped: check it with a straight board and a level before the slab goes on.":
    "Niveau jusqu'où la pierre est compactée : vérifiez-le avec une règle droite et un niveau avant de poser la dalle.",
  "Stone that stands proud must be held in by an edging, or it walks away from under the slab.":
    "Une pierre qui dépasse doit être retenue par une bordure, sinon elle fuit de sous la dalle.",
  "The part of the platform that rests on this slab: half way to each neighbour, and out to the edge of the frame.":
    "La part de la plateforme qui repose sur cette dalle : à mi-chemin de chaque voisine, et jusqu'au bord du cadre.",
}
