import type { Texts } from "../dictionary.ts"

export const net: Texts = {
  "Ball-stop net": "Filet pare-balles",
  "A light net on posts along the ends and sides. Each side is a net of its own, so that it can be taken down.":
    "Un filet léger sur des poteaux le long des bouts et des côtés. Chaque côté est un filet à part, pour pouvoir se démonter.",
  "Ends with a net": "Bouts avec un filet",
  "One end is left open here: people step up there. With a net at both ends, leave a way in along a side.":
    "Un bout reste ouvert ici : on monte par là. Avec un filet aux deux bouts, laissez une entrée sur un côté.",
  "Long sides with a net": "Longs côtés avec un filet",
  "Balls leave by the ends more often than by the sides.":
    "Les balles sortent plus souvent par les bouts que par les côtés.",
  "Height of the net above the surface": "Hauteur du filet au-dessus de la surface",
  "A higher net stops more balls and catches more wind. From 5 ft to 8 ft is usual.":
    "Un filet plus haut arrête plus de balles et prend plus de vent. De 5 pi à 8 pi est usuel.",
  "Wind on a net pulls hard, and a net with leaves, ice or a cloth on it pulls many times harder than the section on wind works out.":
    "Le vent tire fort sur un filet, et un filet chargé de feuilles, de glace ou d'une toile tire bien plus fort que ne le calcule la section sur le vent.",
  "Take the net down in winter and before a storm. A post that falls can hurt somebody: have its fastening looked at by someone who answers for it.":
    "Démontez le filet l'hiver et avant une tempête. Un poteau qui tombe peut blesser : faites vérifier sa fixation par quelqu'un qui en répond.",
  "Posts, at most apart": "Poteaux, au plus à",
  "Posts farther apart let the top rope sag and carry more of the wind each.":
    "Des poteaux plus écartés laissent fléchir la corde du haut et prennent chacun plus de vent.",
  "Nets, by side": "Filets, par côté",
  "Ends in the first row, long sides in the second.":
    "Les bouts dans la première ligne, les longs côtés dans la seconde.",
  "Each side is a net of its own.": "Chaque côté est un filet à part.",
  Nets: "Filets",
  "As entered above.": "Comme entré ci-dessus.",
  "Length of one": "Longueur d'un",
  "From corner to corner of the platform.": "De coin à coin de la plateforme.",
  "Spaces between posts": "Intervalles entre poteaux",
  "Whole spaces, all alike.": "Des intervalles entiers, tous pareils.",
  "From post to post": "D'un poteau à l'autre",
  "0 where there is no net.": "0 là où il n'y a pas de filet.",
  "Corner posts": "Poteaux de coin",
  "A corner between two nets needs one post, not two.": "Un coin entre deux filets veut un poteau, pas deux.",
  "The corners, and the posts between them.": "Les coins, et les poteaux entre eux.",
  "Each net post": "Chaque poteau de filet",
  "Where the posts stand, measured on the edges of the platform.":
    "Où vont les poteaux, mesuré sur les bords de la plateforme.",
  "Corner posts are pulled two ways and want a brace.":
    "Les poteaux de coin sont tirés de deux côtés et veulent une contrefiche.",
  "Along the platform": "Le long de la plateforme",
  "The first end with a net is the far one.": "Le premier bout avec un filet est le bout éloigné.",
  "Across the platform": "En travers de la plateforme",
  "The first side with a net is the far one.": "Le premier côté avec un filet est le côté éloigné.",
  "Ground at the net posts, between points": "Sol aux poteaux de filet, entre les points",
  "Level of the ground where the post stands, up positive.":
    "Niveau du sol là où se tient le poteau, positif vers le haut.",
  "Level of its foot": "Niveau de son pied",
  "As deep below its own ground as a hole is counted; of a post that is bolted to the frame, the underside of the rim.":
    "Aussi profond sous son propre sol qu'un trou est compté ; d'un poteau boulonné au bâti, le dessous de la rive.",
  "Length of a post, at least": "Longueur d'un poteau, au moins",
  "Guy lines at a corner post": "Haubans à un poteau de coin",
  "A corner post is pulled by two nets, so it wants a line against each of them.":
    "Un poteau de coin est tiré par deux filets ; il veut donc un hauban contre chacun.",
  "Guy lines at a post between": "Haubans à un poteau intermédiaire",
  "Guy lines, and pegs": "Haubans, et piquets",
  "Counted by the posts. Each takes a peg.": "Comptés d'après les poteaux. Chacun prend un piquet.",
  "A guy line is a trip line: tie something bright to it, and keep it out of the way that people walk. Have buried cables and pipes marked before you drive a peg.":
    "Un hauban fait trébucher : nouez-y quelque chose de voyant, et tenez-le hors du chemin des gens. Faites repérer câbles et conduites avant de planter un piquet.",
  "Pegs out from the posts": "Piquets à cette distance des poteaux",
  "The farther out, the better a line holds. Out by less than half the height it mostly pulls the post down.":
    "Plus il est loin, mieux un hauban tient. À moins de la moitié de la hauteur, il tire surtout le poteau vers le bas.",
  "More for the knots, each line": "En plus pour les nœuds, chaque hauban",
  "For the knot above and the tightener below.": "Pour le nœud du haut et le tendeur du bas.",
  "Run of the nets": "Course des filets",
  "All netted sides, end to end.": "Tous les côtés avec filet, bout à bout.",
  "Hanging ratio": "Rapport de montage",
  "Knotted net is sold stretched flat and hangs on a shorter rope. At 0.707 the meshes stand square and the net covers the most.":
    "Le filet noué se vend tendu à plat et se monte sur une corde plus courte. À 0,707, les mailles sont carrées et le filet couvre le plus.",
  Ball: "Balle",
  "What the net has to stop.": "Ce que le filet doit arrêter.",
  "Largest mesh that stops it": "Plus grande maille qui l'arrête",
  "A mesh stretches when a ball hits it, so it has to be a good deal smaller than the ball.":
    "Une maille s'étire sous la balle ; elle doit donc être nettement plus petite.",
  "Mesh, knot to knot": "Maille, de nœud à nœud",
  "The length of one bar of the mesh. Shops also give the mesh stretched, which is twice this: ask which.":
    "La longueur d'un côté de la maille. Les magasins donnent aussi la maille étirée, le double : demandez laquelle.",
  "The mesh stops the ball": "La maille arrête la balle",
  "A ball must not go through, nor get stuck half way.":
    "Une balle ne doit ni passer au travers ni rester prise à mi-chemin.",
  "Take a mesh of {net_mesh_most} or less, knot to knot.":
    "Prenez une maille de {net_mesh_most} ou moins, de nœud à nœud.",
  "Ties, at most apart": "Attaches, au plus à",
  "Each tie holds the border rope to a wire or a post. Farther apart, a ball slips out between net and rope. From 8 in to 12 in is usual.":
    "Chaque attache tient la corde de bordure à un câble ou à un poteau. Plus loin, une balle passe entre le filet et la corde. De 8 po à 12 po est usuel.",
  "Net, ropes and ties to order": "Filet, cordes et attaches à commander",
  "For all nets together, in one row.": "Pour tous les filets ensemble, en une ligne.",
  Of: "De quoi",
  "One row stands for all.": "Une ligne vaut pour tous.",
  "Area, hung": "Aire, monté",
  "What the wind meets.": "Ce que le vent rencontre.",
  "Height, hung": "Hauteur, monté",
  "Stretched length": "Longueur tendue",
  "The length of net pulled tight, before it is hung on the shorter rope.":
    "La longueur du filet tendu, avant de le monter sur la corde plus courte.",
  "Stretched width": "Largeur tendue",
  "The width of net pulled tight that hangs to the height you want.":
    "La largeur de filet tendu qui donne, monté, la hauteur voulue.",
  Ties: "Attaches",
  "Along the top and the bottom of every net, and up every post that it passes.":
    "Le long du haut et du bas de chaque filet, et de chaque poteau qu'il croise.",
  "Border rope": "Corde de bordure",
  "All round every net. Add a little for the knots.":
    "Tout autour de chaque filet. Ajoutez un peu pour les nœuds.",
  "Length of a guy line": "Longueur d'un hauban",
  "From the top of a post to the lowest ground, on a slant, and the knots. On the high side it is shorter.":
    "Du haut d'un poteau au sol le plus bas, en biais, avec les nœuds. Du côté haut, il est plus court.",
  "Rope for the guy lines": "Corde pour les haubans",
  "All of them.": "Tous les haubans.",
}
