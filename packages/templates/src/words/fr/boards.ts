import type { Texts } from "../dictionary.ts"

export const boards: Texts = {
  "The boards to walk on, across the stringers: how many rows, what is left for the last one, and how far the gaps open.":
    "Les planches où l'on marche, en travers des longerons : combien de rangées, ce qui reste pour la dernière, et jusqu'où s'ouvrent les jeux.",
  "Board size": "Grosseur des planches",
  "What it is called in the shop. A 5/4x6 is a board of full inch with rounded edges, made to be walked on.":
    "Comment on l'appelle au magasin. Un 5/4x6 est une planche d'un bon pouce aux bords arrondis, faite pour qu'on y marche.",
  "Decking is treated too: mask, goggles and gloves when you saw it, and never burn the off-cuts.":
    "Le bois de terrasse est traité aussi : masque, lunettes et gants pour le scier, et ne brûlez jamais les chutes.",
  "Board thickness, real": "Épaisseur réelle d'une planche",
  "Part of the height, and what carries you from one support to the next.":
    "Une part de la hauteur, et ce qui vous porte d'un appui au suivant.",
  "Board width, real": "Largeur réelle d'une planche",
  "The face that covers the ground. It is less than the name says, and rows counted by the name come out too few.":
    "La face qui couvre le sol. Moins que le nom ne dit ; des rangées comptées d'après le nom manquent.",
  "Gap between boards, as laid": "Jeu entre planches, à la pose",
  "Water and dirt fall through the gap. Boards that are laid wet shrink and open it; dry ones need it from the start.":
    "Eau et saleté tombent par le jeu. Des planches posées mouillées rétrécissent et l'ouvrent ; sèches, il le faut dès le départ.",
  "Boards beyond the walk's ends": "Planches au-delà des bouts du sentier",
  "0 where a ramp or steps begin at the end of the stringers.":
    "0 là où une rampe ou des marches commencent au bout des longerons.",
  "Length to cover": "Longueur à couvrir",
  "The walk, and the overhang at both of its ends.": "Le sentier, et le débord à ses deux bouts.",
  "Rows of boards": "Rangées de planches",
  "A row takes its board and a gap; the last row has no gap after it. An exact fit takes no row more.":
    "Une rangée prend sa planche et un jeu ; la dernière n'a pas de jeu après. Un ajustement exact ne prend pas de rangée de plus.",
  "Overhang with whole boards": "Débord avec des planches entières",
  "What whole boards leave beyond each long edge, shared evenly. Not enough? Then the last board is sawn.":
    "Ce que des planches entières laissent au-delà de chaque long bord, également. Pas assez ? On refend alors la dernière.",
  "Last board, if sawn to the overhang": "Dernière planche, si refendue au débord",
  "What is left for the last row when the overhang is kept to the letter. Nothing, or less: the last row only fills a gap.":
    "Ce qui reste pour la dernière rangée si le débord est tenu à la lettre. Zéro ou moins : elle ne ferait que combler un jeu.",
  "Narrowest board worth laying": "Plus étroite planche qui vaut la pose",
  "A sliver splits at its screws, and it lies at the edge, where people step.":
    "Une languette fend à ses vis, et elle est au bord, là où l'on marche.",
  "Whole rows that nearly fit": "Rangées entières qui tombent presque juste",
  "An offer: the number of whole boards nearest to your gap. Nothing is counted by it unless you change the gap.":
    "Une proposition : le nombre de planches entières le plus proche de votre jeu. Rien n'en dépend tant que vous ne changez pas le jeu.",
  "Gap that fits them": "Jeu qui les ajuste",
  "With this gap the whole boards cover the width exactly. Enter it as the gap to take the offer.":
    "Avec ce jeu, les planches entières couvrent exactement la largeur. Entrez-le comme jeu pour accepter.",
  "Is the last row wide enough?": "La dernière rangée est-elle assez large ?",
  "A last row without width, or a sliver, is a board bought for nothing.":
    "Une dernière rangée sans largeur, ou une languette, est une planche achetée pour rien.",
  "A gap of {board_gap_fitted} fits {board_rows_fitted} whole rows exactly; check that it is a gap you want.":
    "Un jeu de {board_gap_fitted} ajuste exactement {board_rows_fitted} rangées entières ; vérifiez que c'est un jeu que vous voulez.",
  "Or let whole boards overhang {board_overhang_laid} at each long edge, or saw the first and the last board alike.":
    "Ou laissez les planches entières dépasser de {board_overhang_laid} à chaque long bord, ou refendez pareillement la première et la dernière.",
  "Each row of boards": "Chaque rangée de planches",
  "Marks for the rows, whole boards. Check every fifth row against them: small errors in the gap add up.":
    "Marques des rangées, planches entières. Comparez-y une rangée sur cinq : les petites erreurs de jeu s'additionnent.",
  "Counted from the first edge.": "Comptée depuis le premier bord.",
  "Near edge of the board, from the frame's edge. Less than nothing is beyond the frame.":
    "Bord proche de la planche, depuis le bord du cadre. Sous zéro, c'est hors du cadre.",
  Middle: "Milieu",
  "Middle of the board.": "Milieu de la planche.",
  "Far edge of the board.": "Bord éloigné de la planche.",
  "A board and its gap as they dry": "Une planche et son jeu en séchant",
  "A wet board gets narrower as it dries, by a share that depends on the species. One row.":
    "Une planche mouillée se rétrécit en séchant, d'une part qui dépend de l'essence. Une ligne.",
  "Board width when dry": "Largeur d'une planche sèche",
  "What is left of its width.": "Ce qui reste de sa largeur.",
  "A board shrinks by": "Une planche rétrécit de",
  "From laying to dry. Negative: the board is laid drier than it will be, and swells.":
    "De la pose au sec. Négatif : la planche est posée plus sèche qu'elle ne sera, et gonfle.",
  "Gap when dry": "Jeu une fois sec",
  "Each gap opens by what half of each neighbour gives up: one board's shrinkage in all.":
    "Chaque jeu s'ouvre de ce que cède la moitié de chaque voisine : le retrait d'une planche en tout.",
  "Least gap when dry": "Moindre jeu une fois sec",
  "Less fills with dirt, holds water and rots the edges.":
    "Moins se remplit de saleté, retient l'eau et pourrit les bords.",
  "Widest gap when dry": "Plus grand jeu une fois sec",
  "Wider catches heels, chair legs and small paws.": "Plus prend talons, pattes de chaise et petites pattes.",
  "Lay them at least this far apart": "Posez-les au moins à",
  "So that the gap drains when the boards are dry. Nothing: lay them tight.":
    "Pour que le jeu draine quand les planches sont sèches. Nul : posez-les serrées.",
  "Lay them at most this far apart": "Posez-les au plus à",
  "So that nothing is caught in the gap when the boards are dry.":
    "Pour que rien ne se prenne dans le jeu quand les planches sont sèches.",
  "Does the gap drain when dry?": "Le jeu draine-t-il une fois sec ?",
  "Boards laid tight and dry stay tight, and stand in their own water.":
    "Des planches posées serrées et sèches restent serrées, et baignent dans leur eau.",
  "Lay the boards {board_gap_to_lay_least} apart, or more.":
    "Posez les planches à {board_gap_to_lay_least}, ou plus.",
  "Is the gap narrow enough when dry?": "Le jeu est-il assez étroit une fois sec ?",
  "Boards laid wet with a gap for dry ones end up with gaps that catch a heel.":
    "Des planches posées mouillées avec un jeu pour sèches finissent avec des jeux qui prennent un talon.",
  "Lay the boards {board_gap_to_lay_most} apart, or less; or wait until they have dried.":
    "Posez les planches à {board_gap_to_lay_most}, ou moins ; ou attendez qu'elles aient séché.",
  "Boards beyond the walk's sides": "Planches au-delà des côtés du sentier",
  "Mind the lengths sold: an inch at each side may take one board less out of each length.":
    "Attention aux longueurs vendues : un pouce de chaque côté peut faire perdre une planche par longueur.",
  "Length of a row, across the walk": "Longueur d'une rangée, en travers du sentier",
  "From end to end. Where a board of this length is sold, no row has a joint.":
    "D'un bout à l'autre. Si une planche de cette longueur se vend, aucune rangée n'a de joint.",
  "Lengths sold, boards": "Longueurs vendues, planches",
  "The lengths your yard has. A row longer than the longest is made of boards that meet on a stringer.":
    "Les longueurs que tient votre cour à bois. Une rangée plus longue que la plus longue se fait de planches qui se rejoignent sur un longeron.",
  "Joints of neighbouring rows, at least apart": "Joints de rangées voisines, au moins à",
  "Joints side by side look like a seam across the floor and leave the frame to hold alone.":
    "Des joints côte à côte font comme une couture en travers du plancher et laissent le cadre tenir seul.",
  "Shortest board in a row": "Plus courte planche d'une rangée",
  "A board held by two stringers only works loose.":
    "Une planche tenue par deux longerons seulement se desserre.",
  "Rest of a board's end at a joint": "Appui d'un bout de planche à un joint",
  "Half a stringer. The screws stand near the end there: drill first, or nail a second stringer beside it.":
    "Un demi-longeron. Les vis y sont près du bout : percez d'abord, ou clouez un second longeron à côté.",
  "Pieces of the rows": "Morceaux des rangées",
  "What to cut for each row. Where a row is one board, there is one piece.":
    "Quoi couper pour chaque rangée. Si une rangée est d'une planche, il y a un morceau.",
  "The row of boards.": "La rangée de planches.",
  "Counted along the row from the first end.": "Compté le long de la rangée depuis le premier bout.",
  "Where the piece begins.": "Où commence le morceau.",
  "Where the piece ends: the middle of a stringer, or the end of the row.":
    "Où finit le morceau : au milieu d'un longeron, ou au bout de la rangée.",
  "Joints of the rows": "Joints des rangées",
  "Where two boards of a row meet, and on which stringer.":
    "Où deux planches d'une rangée se rejoignent, et sur quel longeron.",
  "On stringer": "Sur le longeron",
  "Its number, from the first end.": "Son numéro, depuis le premier bout.",
  "Half of the stringer for either board.": "La moitié du longeron pour chaque planche.",
  "Joints in the rows": "Joints dans les rangées",
  "Each wants two more screws.": "Chacun veut deux vis de plus.",
  "Spare boards": "Planches de réserve",
  "Some turn out split or twisted, and one is cut on the wrong side of the line.":
    "Certaines se révèlent fendues ou tordues, et une se coupe du mauvais côté du trait.",
  "Spare boards to buy": "Planches de réserve à acheter",
  "Rounded up once. They are on the buying list with the others.":
    "Arrondi une fois vers le haut. Elles sont sur la liste d'achats avec les autres.",
  "As long as the longest piece, so that each can stand in for any.":
    "Aussi longues que le plus long morceau, pour que chacune puisse en remplacer n'importe lequel.",
  "Leave them whole until one is needed.": "Laissez-les entières jusqu'à ce qu'il en faille une.",
  "How far decking may span": "Jusqu'où peut porter une planche de terrasse",
  "Boards laid square across. Slanting boards span farther for the same spacing and are not in this table.":
    "Planches posées d'équerre. En biais, elles portent plus loin pour le même espacement et ne sont pas dans ce tableau.",
  "Boards from this thickness, real": "Planches à partir de cette épaisseur réelle",
  "The table names them 5/4 and 2 in.": "Le tableau les nomme 5/4 et 2 po.",
  "Spacing at most, centre to centre": "Espacement au plus, centre à centre",
  "For timber. Boards of plastic go by their maker's paper.":
    "Pour du bois. Les planches de plastique suivent le document de leur fabricant.",
  "For loads up to": "Pour des charges jusqu'à",
  "It is a table for the decks of houses. Where a crowd may stand, it does not say enough.":
    "C'est un tableau pour terrasses de maisons. Là où une foule peut se tenir, il n'en dit pas assez.",
  "Spacing of the stringers that these boards allow": "Espacement des longerons que permettent ces planches",
  "From the table, by the boards' real thickness.": "Du tableau, d'après l'épaisseur réelle des planches.",
  "Are the stringers close enough for the boards?":
    "Les longerons sont-ils assez proches pour les planches ?",
  "Boards that span too far bounce, and one day one of them breaks.":
    "Des planches qui portent trop loin rebondissent, et un jour l'une casse.",
  "Put the stringers no more than {board_span_most} apart, or choose thicker boards.":
    "Ne mettez pas les longerons à plus de {board_span_most}, ou prenez des planches plus épaisses.",
  "The boards to walk on, across the joists: how many rows, what is left for the last one, and how far the gaps open.":
    "Les planches où l'on marche, en travers des solives : combien de rangées, ce qui reste pour la dernière, et jusqu'où s'ouvrent les jeux.",
  "Boards beyond the long edges": "Planches au-delà des longs bords",
  "A small overhang lets water drip off free of the rim.":
    "Un petit débord laisse goutter l'eau loin de la solive de rive.",
  "Width to cover": "Largeur à couvrir",
  "The frame, and the overhang at both of its edges.": "Le cadre, et le débord à ses deux bords.",
  "Boards beyond the ends": "Planches au-delà des bouts",
  "Mind the lengths sold: an inch at each end may need the next longer board, for every row.":
    "Attention aux longueurs vendues : un pouce à chaque bout peut demander la planche plus longue suivante, pour chaque rangée.",
  "Length of a row": "Longueur d'une rangée",
  "The lengths your yard has. A row longer than the longest is made of boards that meet on a joist.":
    "Les longueurs que tient votre cour à bois. Une rangée plus longue que la plus longue se fait de planches qui se rejoignent sur une solive.",
  "A board held by two joists only works loose.": "Une planche tenue par deux solives seulement se desserre.",
  "Half a joist. The screws stand near the end there: drill first, or nail a second joist beside it.":
    "Une demi-solive. Les vis y sont près du bout : percez d'abord, ou clouez une seconde solive à côté.",
  "Where the piece ends: the middle of a joist, or the end of the row.":
    "Où finit le morceau : au milieu d'une solive, ou au bout de la rangée.",
  "Where two boards of a row meet, and on which joist.":
    "Où deux planches d'une rangée se rejoignent, et sur quelle solive.",
  "On joist": "Sur la solive",
  "Half of the joist for either board.": "La moitié de la solive pour chaque planche.",
  "Spacing of the joists that these boards allow": "Espacement des solives que permettent ces planches",
  "Are the joists close enough for the boards?": "Les solives sont-elles assez proches pour les planches ?",
  "Put the joists no more than {board_span_most} apart, or choose thicker boards.":
    "Ne mettez pas les solives à plus de {board_span_most}, ou prenez des planches plus épaisses.",
  "What it is called in the shop. In millimetres the name is the real size.":
    "Comment on l'appelle au magasin. En millimètres, le nom est la grosseur réelle.",
  "Plants are watered above: water and soil fall through the gap. Boards that are laid wet shrink and open it.":
    "On arrose des plantes au-dessus : eau et terre tombent par le jeu. Des planches posées mouillées rétrécissent et l'ouvrent.",
  "None where the greenhouse's base stands at the edge.": "Aucun là où la base de la serre est au bord.",
}
