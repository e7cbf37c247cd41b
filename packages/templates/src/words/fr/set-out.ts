import type { Texts } from "../dictionary.ts"

export const setOut: Texts = {
  "Setting out": "Implantation",
  "Where every peg and string goes, from one corner, and what to do when a measurement does not agree.":
    "Où va chaque piquet et chaque cordeau, à partir d'un coin, et que faire quand une mesure ne concorde pas.",
  Pegs: "Piquets",
  "Everything is measured from one corner, A, so that one slip does not add to the next. String pegs stand beyond the corners, out of the way of the spade.":
    "Tout se mesure à partir d'un coin, A, pour qu'une erreur ne s'ajoute pas à la suivante. Les piquets de cordeau sont au-delà des coins, hors du chemin de la bêche.",
  "Have buried cables and pipes marked before the first peg is driven: a peg can pierce them.":
    "Faites repérer les câbles et conduites avant de planter le premier piquet : il peut les percer.",
  Peg: "Piquet",
  "Corners are lettered round the frame from the datum, A.":
    "Les coins portent des lettres autour du cadre depuis l'origine, A.",
  Marks: "Marque",
  "What the peg is for.": "À quoi sert le piquet.",
  "Lengths from A": "Longueurs depuis A",
  "1: at the far end of the length.": "1 : au bout éloigné de la longueur.",
  "Widths from A": "Largeurs depuis A",
  "1: at the far side of the width.": "1 : au côté éloigné de la largeur.",
  "Beyond, along the length": "Au-delà, sur la longueur",
  "−1: behind the corner; 1: beyond it.": "−1 : derrière le coin ; 1 : au-delà.",
  "Beyond, across the width": "Au-delà, sur la largeur",
  "How far beyond the corner": "À quelle distance du coin",
  "Far enough that nobody digs the peg out. Yours to change where a tree or a wall stands in the way.":
    "Assez loin pour que personne ne déterre le piquet. À vous de changer si un arbre ou un mur gêne.",
  "Along the length, from A": "Sur la longueur, depuis A",
  "Below nothing: on the other side of A.": "Sous zéro : de l'autre côté de A.",
  "Across the width, from A": "Sur la largeur, depuis A",
  "Straight from A": "En ligne droite depuis A",
  "One pull of the tape from A that checks the two offsets.":
    "Un seul coup de ruban depuis A, qui vérifie les deux décalages.",
  "Lines of the skids": "Lignes des patins",
  "Where each skid lies, across the width from the datum line through A. Mark all from A; never one from the next.":
    "Où va chaque patin, sur la largeur depuis la ligne d'origine par A. Marquez-les tous depuis A ; jamais l'un depuis l'autre.",
  "Counted from A.": "Compté depuis A.",
  "Near face": "Face proche",
  "A string along the face shows more than one over the middle.":
    "Un cordeau le long de la face montre plus qu'un au milieu.",
  Centre: "Centre",
  "The middle of the skid.": "Le milieu du patin.",
  "Far face": "Face éloignée",
  "The other face of the skid.": "L'autre face du patin.",
  "Each stack: where, how deep, how high": "Chaque pile : où, à quelle profondeur, à quelle hauteur",
  "A level string at the underside of the lowest timber is the datum of heights: everything is measured down from it.":
    "Un cordeau de niveau au dessous du bois le plus bas est l'origine des hauteurs : tout se mesure de là vers le bas.",
  "To the middle.": "Jusqu'au milieu.",
  "Dig from the ground": "Creuser depuis le sol",
  "Measured again at the peg before you dig.": "Mesuré de nouveau au piquet avant de creuser.",
  "String down to the bottom of the hole": "Du cordeau au fond du trou",
  "Turf and loose soil are out.": "Gazon et terre lâche enlevés.",
  "String down to the top of the stone": "Du cordeau au dessus de la pierre",
  "Tamped, and level both ways.": "Compactée, et de niveau dans les deux sens.",
  "One on another; the top comes to the string.": "L'un sur l'autre ; le dessus arrive au cordeau.",
  "Distances to check": "Distances à vérifier",
  "Equal diagonals alone do not prove it: a frame with one long side too short has them as well. Measure both pairs of sides too.":
    "Des diagonales égales ne prouvent rien à elles seules : un cadre dont un long côté est trop court les a aussi. Mesurez aussi les deux paires de côtés.",
  "From and to": "De et à",
  "Hook the tape on the nail in the peg, not on the peg.":
    "Accrochez le ruban au clou du piquet, pas au piquet.",
  Distance: "Longueur à lire",
  "Pull the tape tight and level, not along the slope of the ground.":
    "Tendez le ruban de niveau, et non le long de la pente.",
  "Diagonal A to C, as measured": "Diagonale A à C, mesurée",
  "Leave it blank until it is measured.": "Laissez vide jusqu'à la mesure.",
  "Diagonal B to D, as measured": "Diagonale B à D, mesurée",
  "Short side A to D, as measured": "Petit côté A à D, mesuré",
  "The end of the frame at the datum corner.": "Le bout du cadre au coin d'origine.",
  "as planned": "comme prévu",
  "Short side B to C, as measured": "Petit côté B à C, mesuré",
  "The other end. The two ends have to be alike.": "L'autre bout. Les deux bouts doivent être pareils.",
  "How near is near enough": "À quel point c'est assez juste",
  "Later work hides less than this, and magnifies more.":
    "La suite des travaux cache moins que cela, et grossit plus.",
  "What is held against the plan.": "Ce qui est comparé au plan.",
  "May differ by": "Peut différer de",
  "Yours to make stricter.": "À vous de le rendre plus sévère.",
  "Out of square": "Hors d'équerre",
  "What the tape says, in one line. The far side is found from the other five lengths: where the tape says something else there, one of them was misread.":
    "Ce que dit le ruban, en une ligne. Le côté éloigné se trouve par les cinq autres longueurs : si le ruban y dit autre chose, l'une d'elles a été mal lue.",
  "Diagonals differ by": "Les diagonales diffèrent de",
  "Nothing, when the frame is square and its sides are true.":
    "Rien, quand le cadre est d'équerre et ses côtés justes.",
  "Short sides differ by": "Les petits côtés diffèrent de",
  "Nothing, when the long sides run side by side.": "Rien, quand les longs côtés sont parallèles.",
  "D to C should now measure": "De D à C, il devrait y avoir",
  "Measure it: it tells a slip of the tape from a slip of the frame.":
    "Mesurez-le : cela distingue une erreur de ruban d'une erreur de cadre.",
  "Long sides differ by": "Les longs côtés diffèrent de",
  "Nothing, when the second long side is as long as the first.":
    "Rien, quand le second long côté est aussi long que le premier.",
  "Push the far corners": "Pousser les coins éloignés",
  "A and B stay. Each far corner is found from its distances to A and to B, as where two arcs of the tape meet, and held against its place on the plan.":
    "A et B restent. Chaque coin éloigné se trouve par ses distances à A et à B, là où deux arcs de ruban se croisent, et se compare à sa place sur le plan.",
  Corner: "Coin",
  "C lies across from A, D across from B.": "C fait face à A, D à B.",
  "From A": "Depuis A",
  "As measured.": "Tel que mesuré.",
  "From B": "Depuis B",
  "Is along the length at": "Se trouve sur la longueur à",
  "The cosine rule in the triangle of A, B and the corner.":
    "La loi des cosinus dans le triangle de A, de B et du coin.",
  "Is across the width at": "Se trouve sur la largeur à",
  "Pythagoras in the same triangle.": "Pythagore dans le même triangle.",
  "Push along the length": "Pousser sur la longueur",
  "How far; the next column says which way.": "De combien ; la colonne suivante dit de quel côté.",
  "Which way": "De quel côté",
  "Along the long sides.": "Le long des grands côtés.",
  "Push across the width": "Pousser sur la largeur",
  "Along the short sides.": "Le long des petits côtés.",
  "Is the frame square?": "Le cadre est-il d'équerre ?",
  "Boards and sheets show it at once when it is not, and by then everything is screwed down.":
    "Planches et panneaux le montrent tout de suite quand il ne l'est pas, et tout est alors déjà vissé.",
  "Leave A and B where they are and push C and D along the long way, as the table of corrections says; then measure both diagonals again.":
    "Laissez A et B où ils sont et poussez C et D dans le sens long, comme le dit le tableau des corrections ; mesurez ensuite les deux diagonales de nouveau.",
  "Are the far corners where they belong?": "Les coins éloignés sont-ils à leur place ?",
  "Diagonals may be equal in a frame with unlike ends or with one side short. This looks at the corners themselves.":
    "Les diagonales peuvent être égales dans un cadre aux bouts inégaux ou à un côté court. Ceci regarde les coins eux-mêmes.",
  "Push each far corner as the table of corrections says; then measure sides and diagonals again.":
    "Poussez chaque coin éloigné comme le dit le tableau des corrections ; mesurez ensuite côtés et diagonales de nouveau.",
  "Lines of the sleepers": "Lignes des traverses",
  "Where each sleeper lies, along the length from the datum line through A. Mark all from A; never one from the next.":
    "Où va chaque traverse, sur la longueur depuis la ligne d'origine par A. Marquez-les toutes depuis A ; jamais l'une depuis l'autre.",
  "The middle of the sleeper.": "Le milieu de la traverse.",
  "The other face of the sleeper.": "L'autre face de la traverse.",
  "Each strip of stone: where, how deep, how high":
    "Chaque bande de pierre : où, à quelle profondeur, à quelle hauteur",
  "Lines of the beams": "Lignes des poutres",
  "Where each beam lies, across the width from the datum line through A. Mark all from A; never one from the next.":
    "Où va chaque poutre, sur la largeur depuis la ligne d'origine par A. Marquez-les toutes depuis A ; jamais l'une depuis l'autre.",
  "The middle of the beam.": "Le milieu de la poutre.",
  "The other face of the beam.": "L'autre face de la poutre.",
  "Each pad: where, how deep, how high": "Chaque dalle d'appui : où, à quelle profondeur, à quelle hauteur",
  "Lines of the bearers": "Lignes des lambourdes",
  "Where each bearer lies, across the width from the datum line through A. Mark all from A; never one from the next.":
    "Où va chaque lambourde, sur la largeur depuis la ligne d'origine par A. Marquez-les toutes depuis A ; jamais l'une depuis l'autre.",
  "The middle of the bearer.": "Le milieu de la lambourde.",
  "The other face of the bearer.": "L'autre face de la lambourde.",
  "Each slab: where, how deep, how high": "Chaque dalle : où, à quelle profondeur, à quelle hauteur",
}
