import type { Texts } from "../dictionary.ts"

export const tiles: Texts = {
  "Tiles snap together and lie loose on the sheets, with room at every edge to grow on a hot day.":
    "Les tuiles s'emboîtent et sont posées libres sur les panneaux, avec de la place à chaque bord pour s'allonger par temps chaud.",
  "Tile, along the platform": "Tuile, le long de la plateforme",
  "From one tile to the next when they are snapped together: measure ten in a row and divide.":
    "D'une tuile à la suivante une fois emboîtées : mesurez-en dix de suite et divisez.",
  "Tile, across the platform": "Tuile, en travers de la plateforme",
  "The same the other way; most tiles are square.":
    "La même chose dans l'autre sens ; la plupart des tuiles sont carrées.",
  "Tile thickness": "Épaisseur d'une tuile",
  "Part of the height that people step up to.": "Compte dans la hauteur où l'on monte.",
  "Bare strip round the tiles": "Bande nue autour des tuiles",
  "On each side. The tiles need room to grow and a free edge; a strip that leaves whole tiles both ways saves cutting.":
    "De chaque côté. Les tuiles veulent de la place et un bord libre ; une bande qui laisse des tuiles entières dans les deux sens évite de couper.",
  "Laying starts": "La pose commence",
  "From one edge, what is left over is cut at the far edge. From the middle, both edges get a cut tile, alike and at least half a tile wide.":
    "Depuis un bord, ce qui reste se coupe au bord éloigné. Depuis le milieu, les deux bords ont une tuile coupée, pareille et d'au moins une demi-tuile.",
  "from one edge": "d'un bord",
  "from the middle": "du milieu",
  "Tiled length, if the tiles cover less": "Longueur de tuiles, si elles en couvrent moins",
  "Leave it blank to tile all of the platform within the margin; fill it in where the tiles cover a part only.":
    "Laissez vide pour couvrir toute la plateforme dans la marge ; remplissez si les tuiles n'en couvrent qu'une part.",
  "all of the platform within the margin": "toute la plateforme dans la marge",
  "Tiled width, if the tiles cover less": "Largeur de tuiles, si elles en couvrent moins",
  "As for the length: blank for all of the platform within the margin.":
    "Comme pour la longueur : vide pour toute la plateforme dans la marge.",
  "Tiled length": "Longueur de tuiles",
  "The length that the tiles cover: what you entered, or the platform less a bare strip at each end.":
    "La longueur que couvrent les tuiles : ce que vous avez entré, ou la plateforme moins une bande nue à chaque bout.",
  "Tiled width": "Largeur de tuiles",
  "The same across the platform.": "La même chose en travers de la plateforme.",
  "Room for a tile at all?": "Y a-t-il seulement place pour une tuile ?",
  "A wide bare strip on a small platform leaves nothing to tile.":
    "Une large bande nue sur une petite plateforme ne laisse rien à couvrir.",
  "Make the bare strip narrower than {tile_margin}, or the platform larger.":
    "Rétrécissez la bande nue sous {tile_margin}, ou agrandissez la plateforme.",
  "Platform beyond the tiles, each side": "Plateforme au-delà des tuiles, chaque côté",
  "With the tiles in the middle, the narrower of the free strips. A base a few inches larger than the tiles is usual.":
    "Les tuiles au milieu, la plus étroite des bandes libres. Une base de quelques pouces de plus que les tuiles est usuelle.",
  "Tiles in a row": "Tuiles dans une rangée",
  "Whole tiles, and one cut one if the length does not come out even.":
    "Des tuiles entières, et une coupée si la longueur ne tombe pas juste.",
  "Along the platform and across": "Le long de la plateforme et en travers",
  "How the tiles come out, and how they shrink, each way.":
    "Comment tombent les tuiles, et comment elles rétrécissent, dans chaque sens.",
  Direction: "Sens",
  "Along a row of tiles, and across the rows.": "Le long d'une rangée de tuiles, et en travers des rangées.",
  Platform: "Plateforme",
  "Its size this way.": "Sa dimension dans ce sens.",
  Tiled: "Couvert de tuiles",
  "What the tiles cover this way.": "Ce que les tuiles couvrent dans ce sens.",
  "One tile": "Une tuile",
  "Whole tiles that there is room for": "Tuiles entières qui ont place",
  "Before the start is chosen.": "Avant de choisir le départ.",
  "Left over": "Reste",
  "Nothing: the tiles come out even.": "Nul : les tuiles tombent juste.",
  "Cut at both edges": "Coupées aux deux bords",
  "From the middle one whole tile gives way, so that two fair cuts take the place of one sliver.":
    "Depuis le milieu, une tuile entière cède la place, pour que deux bonnes coupes remplacent une languette.",
  "Whole tiles": "Tuiles entières",
  "Those that need no cutting.": "Celles qu'on ne coupe pas.",
  "Cut tile at the far edge": "Tuile coupée au bord éloigné",
  "What is left for the last tile; nothing if the tiles come out even. A narrow strip breaks and comes loose.":
    "Ce qui reste pour la dernière tuile ; nul si elles tombent juste. Une bande étroite casse et se détache.",
  "Cut tile at the first edge": "Tuile coupée au premier bord",
  "Nothing if the laying starts there with a whole tile.": "Nul si la pose y commence par une tuile entière.",
  "Narrowest, share of a tile": "La plus étroite, en part de tuile",
  "All of a tile where nothing is cut.": "Une tuile entière si rien n'est coupé.",
  "Shrinkage, coldest": "Retrait, au plus froid",
  "How much shorter the tiled area is on the coldest day than when it was laid.":
    "De combien la surface de tuiles est plus courte le jour le plus froid qu'à la pose.",
  "Room to grow, share of what is tiled": "Place pour s'allonger, part de ce qui est couvert",
  "Below nothing: there is no room even on a cold day.":
    "Sous zéro : il n'y a pas de place, même un jour froid.",
  "Rows of tiles": "Rangées de tuiles",
  "Whole rows, and a row of cut tiles if the width does not come out even.":
    "Des rangées entières, et une rangée de tuiles coupées si la largeur ne tombe pas juste.",
  "Each row of tiles": "Chaque rangée de tuiles",
  "Where each row lies and how many of its tiles are cut.":
    "Où va chaque rangée et combien de ses tuiles sont coupées.",
  "Counted from the long edge.": "Comptée depuis le long bord.",
  "The tiled area lies in the middle of the platform.":
    "La surface de tuiles est au milieu de la plateforme.",
  "Width of the row's tiles": "Largeur des tuiles de la rangée",
  "The last row takes what is left; from the middle, the first row takes its half of it.":
    "La dernière rangée prend le reste ; depuis le milieu, la première en prend sa moitié.",
  "A row of its full width has whole tiles, all but its last.":
    "Une rangée de pleine largeur a des tuiles entières, toutes sauf la dernière.",
  "Cut tiles": "Tuiles coupées",
  "The last tile of the row, or all of a narrow row.":
    "La dernière tuile de la rangée, ou toutes celles d'une rangée étroite.",
  "Tiles to cut": "Tuiles à couper",
  "Each takes a whole tile: a cut-off has lost the edge that snaps on, so it does not serve elsewhere.":
    "Chacune prend une tuile entière : une chute a perdu son bord d'emboîtement et ne sert pas ailleurs.",
  "Tiles in the floor": "Tuiles dans le plancher",
  "Whole tiles and cut ones.": "Entières et coupées.",
  "Narrowest cut worth laying, share of a tile": "Plus étroite coupe qui vaut la pose, part de tuile",
  "A narrower strip has hardly a joint left to hold it.":
    "Une bande plus étroite n'a presque plus de joint pour la tenir.",
  "No sliver of a tile": "Pas de languette de tuile",
  "Slivers break when they are cut, and lift when they are walked on.":
    "Les languettes cassent à la coupe et se lèvent sous le pas.",
  "Lay from the middle, or tile {tile_area_length_whole} by {tile_area_width_whole}, which needs no cutting.":
    "Posez depuis le milieu, ou couvrez {tile_area_length_whole} sur {tile_area_width_whole}, ce qui ne demande aucune coupe.",
  "Tiled length that needs no cutting": "Longueur de tuiles sans coupe",
  "An offer, not used unless you enter it.": "Une proposition, sans effet tant que vous ne l'entrez pas.",
  "Tiled width that needs no cutting": "Largeur de tuiles sans coupe",
  "Spare tiles": "Tuiles de réserve",
  "For tiles that break, now and in some years, when the colour may no longer be made.":
    "Pour celles qui cassent, maintenant et dans quelques années, quand la couleur ne se fera peut-être plus.",
  Pattern: "Motif",
  "Every colour is bought with a spare of its own: a red tile does not mend a blue floor.":
    "Chaque couleur s'achète avec sa réserve : une tuile rouge ne répare pas un plancher bleu.",
  "one colour": "une couleur",
  "chequered in two colours": "damier de deux couleurs",
  "border in a second colour": "bordure d'une seconde couleur",
  "Tiles in the outermost ring": "Tuiles de l'anneau extérieur",
  "All of them, less what lies inside the ring.": "Toutes, moins celles à l'intérieur de l'anneau.",
  "Tiles of the second colour": "Tuiles de la seconde couleur",
  "Every other tile, or the ring round the edge.": "Une tuile sur deux, ou l'anneau du bord.",
  "Tiles by colour": "Tuiles par couleur",
  "What to order of each colour, the spare rounded up for each.":
    "Quoi commander de chaque couleur, la réserve arrondie vers le haut pour chacune.",
  Colour: "Couleur",
  "Name them as you like; a chequered floor begins with the first in its corner.":
    "Nommez-les à votre goût ; un damier commence par la première dans son coin.",
  "In the floor": "Dans le plancher",
  "Cut tiles count as whole ones.": "Les tuiles coupées comptent comme entières.",
  Spare: "Réserve",
  "The share above, of this colour, rounded up.":
    "La part ci-dessus, de cette couleur, arrondie vers le haut.",
  "To buy": "À acheter",
  "In the floor and spare.": "Plancher et réserve.",
  "Tiles to buy": "Tuiles à acheter",
  "All colours, each with its own spare, rounded up once a colour.":
    "Toutes les couleurs, chacune avec sa réserve, arrondie une fois par couleur.",
  "Expansion of the plastic": "Dilatation du plastique",
  "How much of its length the plastic grows for each degree. Plastics differ; ask the maker of the tiles.":
    "Quelle part de sa longueur le plastique gagne à chaque degré. Les plastiques diffèrent ; demandez au fabricant des tuiles.",
  "Expansion, the high end": "Dilatation, haut de la plage",
  "Another published table gives this for the same plastic. The real value of your tiles may lie between.":
    "Un autre tableau publié donne ceci pour le même plastique. La vraie valeur de vos tuiles peut être entre les deux.",
  "How much plastics grow": "De combien s'allongent les plastiques",
  "Lists differ, and so do mixtures: take the figure of the maker of your tiles where he gives one.":
    "Les listes diffèrent, et les mélanges aussi : prenez le chiffre du fabricant de vos tuiles s'il en donne un.",
  Plastic: "Plastique",
  "It is often moulded into the underside of a tile.": "Souvent moulé dans le dessous d'une tuile.",
  "Low end": "Bas de la plage",
  "From memory, lists of polypropylene go down to 80 millionths.":
    "De mémoire, les listes du polypropylène descendent jusqu'à 80 millionièmes.",
  "High end": "Haut de la plage",
  "From memory, lists of polyethylene go up to 200 millionths.":
    "De mémoire, les listes du polyéthylène montent jusqu'à 200 millionièmes.",
  "Temperature of the tiles when they are laid": "Température des tuiles à la pose",
  "Growth is counted from the day you lay them. Let the tiles lie in the shade first, and lay them neither cold nor hot.":
    "L'allongement se compte depuis le jour de la pose. Laissez d'abord les tuiles à l'ombre, et posez-les ni froides ni chaudes.",
  "Hottest that the tiles get": "Plus chaud que deviennent les tuiles",
  "Of the tiles, not of the air: in full sun a dark surface gets far hotter than the day.":
    "Des tuiles, pas de l'air : en plein soleil, une surface foncée devient bien plus chaude que le jour.",
  "Coldest that the tiles get": "Plus froid que deviennent les tuiles",
  "Of a clear winter night where you live. The tiles shrink and the gaps at the edges widen.":
    "D'une nuit d'hiver claire chez vous. Les tuiles rétrécissent et les jeux des bords s'ouvrent.",
  "Growth along the platform": "Allongement le long de la plateforme",
  "How much longer the tiled area is on the hottest day than when it was laid. Snap joints take up a part of it; the edges must be able to take it all.":
    "De combien la surface de tuiles est plus longue le jour le plus chaud qu'à la pose. Les joints emboîtés en prennent une part ; les bords doivent pouvoir tout prendre.",
  "Growth across the platform": "Allongement en travers de la plateforme",
  "Gap and cut at each edge": "Jeu et coupe à chaque bord",
  "The tiled area lies in the middle and grows from there to all sides, so that opposite edges take half each.":
    "La surface de tuiles est au milieu et s'allonge de là vers tous les côtés ; les bords opposés en prennent chacun la moitié.",
  Edge: "Bord",
  "As the marks are measured from.": "D'où les marques se mesurent.",
  "Cut tile there": "Tuile coupée là",
  "Nothing: whole tiles lie along this edge.": "Nul : des tuiles entières longent ce bord.",
  "Gap when laid": "Jeu à la pose",
  "Set the tiles this far from what bounds them.": "Mettez les tuiles à cette distance de ce qui les borde.",
  "Gap, hottest": "Jeu, au plus chaud",
  "What growth leaves of it.": "Ce que l'allongement en laisse.",
  "Gap, hottest, with the high expansion": "Jeu, au plus chaud, à la forte dilatation",
  "If your tiles grow as much as the other table says.":
    "Si vos tuiles s'allongent autant que le dit l'autre tableau.",
  "Gap, coldest": "Jeu, au plus froid",
  "How far it opens: wide enough for a heel is too wide.":
    "Jusqu'où il s'ouvre : assez large pour un talon, c'est trop.",
  "Room left at the edges, hottest": "Place qui reste aux bords, au plus chaud",
  "From the tiles to the edge boards on the hottest day, the narrowest of the four.":
    "Des tuiles aux planches de rive le jour le plus chaud, la plus étroite des quatre.",
  "Gap at the edges, coldest": "Jeu aux bords, au plus froid",
  "The widest gap, in the cold: check that no foot or ball gets caught in it.":
    "Le plus large jeu, au froid : vérifiez qu'aucun pied ni balle ne s'y prenne.",
  "Least room at an edge, hottest": "Moindre place à un bord, au plus chaud",
  "What should still be free when the tiles are at their largest.":
    "Ce qui devrait rester libre quand les tuiles sont au plus grand.",
  "Longest tiled length that fits": "Plus grande longueur de tuiles qui tient",
  "On the hottest day it still leaves the least room at both ends.":
    "Le jour le plus chaud, il reste encore la moindre place aux deux bouts.",
  "Widest tiled width that fits": "Plus grande largeur de tuiles qui tient",
  "Coldest that they may be laid": "Plus froid où l'on peut les poser",
  "Laid warmer than this they have less left to grow and keep the least room. Hotter than any day: no temperature will do, the tiled area must be smaller.":
    "Posées plus chaudes, elles ont moins à gagner et gardent la moindre place. Plus chaud que tout jour : aucune température n'y suffit, il faut moins de tuiles.",
  "Room for the tiles to grow": "Place pour que les tuiles s'allongent",
  "Tiles that meet something solid on both sides lift in the middle and make a trip edge.":
    "Des tuiles coincées des deux côtés se soulèvent au milieu et font trébucher.",
  "Never screw tiles down at two opposite edges, and keep net posts and table legs from pinning them.":
    "Ne vissez jamais les tuiles à deux bords opposés, et ne laissez ni poteaux de filet ni pieds de table les clouer au sol.",
  "Keep the tiled area to {tile_area_length_most} by {tile_area_width_most} at most, or make the platform larger.":
    "Gardez la surface de tuiles à {tile_area_length_most} sur {tile_area_width_most} au plus, ou agrandissez la plateforme.",
  "Or lay them when they are at {lay_temperature_least} or warmer: they then have less left to grow. If that is hotter than they can be, only a smaller tiled area helps.":
    "Ou posez-les à {lay_temperature_least} ou plus : elles ont alors moins à gagner. Si c'est plus chaud qu'elles ne peuvent l'être, seule une surface plus petite y remédie.",
}
