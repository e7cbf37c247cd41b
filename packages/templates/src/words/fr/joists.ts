import type { Texts } from "../dictionary.ts"

export const joists: Texts = {
  "Joists and rims": "Solives et solives de rive",
  "Joists run across the platform and carry the surface; a rim along each long edge closes their ends.":
    "Les solives traversent la plateforme et portent la surface ; une solive de rive ferme leurs bouts le long de chaque long bord.",
  "Joist size": "Grosseur des solives",
  "The name of the timber in the shop. The piece itself is smaller than its name, because it was dried and planed.":
    "Le nom du bois au magasin. La pièce elle-même est plus petite que son nom, car elle a été séchée et rabotée.",
  "Rim size": "Grosseur des solives de rive",
  "A rim as deep as the joists gives a flat top and covers their ends.":
    "Une solive de rive aussi haute que les solives donne un dessus plat et couvre leurs bouts.",
  "Joist thickness, real": "Épaisseur réelle d'une solive",
  "The narrow face. It decides where the end joists stand and how much wood lies under a seam.":
    "La face étroite. Elle décide de la place des solives de bout et du bois qu'il y a sous un joint.",
  "Joist depth, real": "Hauteur réelle d'une solive",
  "The tall face, standing up: part of the height of the platform, and what makes a joist stiff.":
    "La grande face, debout : une part de la hauteur de la plateforme, et ce qui rend une solive rigide.",
  "Rim thickness, real": "Épaisseur réelle d'une solive de rive",
  "Both rims stand outside the joists' ends, so the joists are shorter by two of these.":
    "Les deux solives de rive sont hors des bouts des solives ; celles-ci sont donc plus courtes de deux fois cela.",
  "Rim depth, real": "Hauteur réelle d'une solive de rive",
  "Compare it with the joists' depth: a shallower rim leaves the joists' ends showing.":
    "Comparez-la à celle des solives : moins haute, elle laisse voir leurs bouts.",
  "Rim covers the joists' ends": "La solive de rive couvre les bouts des solives",
  "Screws into a joist's end need rim over the whole of it, and the surface's edge lies on the rim.":
    "Les vis dans le bout d'une solive veulent de la solive de rive sur tout ce bout, et le bord de la surface repose dessus.",
  "Choose rims of the joists' depth, {joist_depth}, or deeper.":
    "Choisissez des solives de rive de la hauteur des solives, {joist_depth}, ou plus hautes.",
  "Joist spacing, centre to centre": "Espacement des solives, centre à centre",
  "Closer joists carry more and bend less, and cost more timber and screws. 12 in, 16 in and 24 in divide 4 ft and 8 ft evenly, which is what sheets are made for.":
    "Des solives plus rapprochées portent plus et fléchissent moins, et coûtent plus de bois et de vis. 12 po, 16 po et 24 po divisent également 4 pi et 8 pi, ce pour quoi les panneaux sont faits.",
  "The spacing that your surface and your load allow is its maker's and the local code's to say.":
    "L'espacement que permettent votre surface et votre charge est à dire par son fabricant et par le code local.",
  "Joists, both ends counted": "Solives, les deux bouts compris",
  "Spaces are rounded up to whole ones, and there is one joist more than there are spaces: counting spaces for joists is the commonest way to come home one short.":
    "Les intervalles s'arrondissent à l'entier supérieur, et il y a une solive de plus que d'intervalles : prendre les intervalles pour des solives est la façon la plus courante d'en manquer une.",
  "Length of each joist": "Longueur de chaque solive",
  "The width of the platform less the rim on either side. Cut them all alike: it makes the frame parallel.":
    "La largeur de la plateforme moins la solive de rive de chaque côté. Coupez-les toutes pareilles : le cadre sera parallèle.",
  "Each joist": "Chaque solive",
  "The marks to draw on both rims before anything is screwed down, measured from the same end.":
    "Les marques à tracer sur les deux solives de rive avant de visser quoi que ce soit, mesurées du même bout.",
  Joist: "Solive",
  "Counted from the end that all marks are measured from.":
    "Comptée depuis le bout d'où toutes les marques se mesurent.",
  "Centre, from the end": "Centre, depuis le bout",
  "The end joists stand flush with the ends; all others stand on even marks measured from the end, so that seams fall on them and screws run in straight lines.":
    "Les solives de bout sont au ras des bouts ; toutes les autres sont sur des marques régulières mesurées du bout, pour que les joints y tombent et que les vis soient en ligne.",
  "Cut length": "Longueur de coupe",
  "What to cut.": "Quoi couper.",
  "Clear to the next joist": "Libre jusqu'à la solive suivante",
  "The clear room between two joists: the length of a piece of blocking in that bay. The last joist has no next one.":
    "Le vide entre deux solives : la longueur d'une entretoise dans cet intervalle. La dernière solive n'en a pas de suivante.",
  "Narrowest bay that can be worked in": "Plus étroit intervalle où l'on peut travailler",
  "Two joists closer than this leave no room for a hand and a driver between them.":
    "Deux solives plus proches ne laissent pas passer une main et une visseuse.",
  "Spacing that makes all bays alike": "Espacement qui rend tous les intervalles pareils",
  "An offer, not used unless you enter it: the same number of joists, spread evenly. Where there are sheets, they then have to be cut to reach a joist.":
    "Une proposition, sans effet tant que vous ne l'entrez pas : le même nombre de solives, réparties également. S'il y a des panneaux, il faut alors les couper pour atteindre une solive.",
  "Room in the last bay": "Place dans le dernier intervalle",
  "The marks run on evenly from one end, so the last bay takes what is left. If the last mark falls almost on the end joist, the two joists touch or even overlap.":
    "Les marques se suivent régulièrement depuis un bout ; le dernier intervalle prend donc le reste. Si la dernière marque tombe presque sur la solive de bout, les deux se touchent ou se chevauchent.",
  "Leave out the joist before the last and check the bay that this makes, or change the platform's length a little.":
    "Laissez de côté l'avant-dernière solive et vérifiez l'intervalle que cela donne, ou changez un peu la longueur de la plateforme.",
  "Spaced evenly, the joists would stand {joist_spacing_even} apart.":
    "Réparties également, les solives seraient à {joist_spacing_even} l'une de l'autre.",
  "Lengths sold, joists": "Longueurs vendues, solives",
  "The lengths your yard has in this size. Each joist is one piece.":
    "Les longueurs que tient votre cour à bois dans cette grosseur. Chaque solive est d'un seul morceau.",
  "Ask before you plan: not every yard has every length, least of all treated.":
    "Demandez avant de planifier : toutes les cours n'ont pas toutes les longueurs, encore moins en traité.",
  "Longest joist that can be bought": "Plus longue solive qu'on peut acheter",
  "The longest length sold, less what is sawn off its two ends to make them square and sound.":
    "La plus longue longueur vendue, moins ce qu'on scie à ses deux bouts pour les rendre d'équerre et sains.",
  "A joist comes out of one piece": "Une solive sort d'un seul morceau",
  "Joists are not joined end to end, so the longest piece sold limits the width of the platform.":
    "Les solives ne se joignent pas bout à bout ; la plus longue pièce vendue limite donc la largeur de la plateforme.",
  "The longest joist to be had is {joist_stock_longest}: make the platform narrower, or add a longer length to the lengths sold.":
    "La plus longue solive disponible fait {joist_stock_longest} : rétrécissez la plateforme, ou ajoutez une longueur aux longueurs vendues.",
  "One along each long edge.": "Une le long de chaque long bord.",
  "Lengths sold, rims": "Longueurs vendues, solives de rive",
  "A rim longer than the longest of these is made of several pieces.":
    "Une solive de rive plus longue que la plus longue d'entre elles se fait de plusieurs morceaux.",
  "How a rim is made up": "Comment se compose une solive de rive",
  "In one piece if the shop has it. If not, every joint has to fall behind a joist. One row.":
    "D'un seul morceau si le magasin l'a. Sinon, chaque joint doit tomber derrière une solive. Une ligne.",
  "Longest piece that can be bought": "Plus long morceau qu'on peut acheter",
  "The longest length sold, less what is sawn off its two ends.":
    "La plus longue longueur vendue, moins ce qu'on scie à ses deux bouts.",
  "Pieces in each rim": "Morceaux dans chaque solive de rive",
  "A piece is at most the whole joist spacings that come out of the longest length.":
    "Un morceau fait au plus les espacements entiers qui sortent de la plus longue longueur.",
  "From one joint to the next": "D'un joint au suivant",
  "Pieces about alike, each ending on a joist: no short piece at the end.":
    "Des morceaux à peu près pareils, chacun finissant sur une solive : pas de bout trop court à la fin.",
  "Short first piece, to set the second rim's joints off":
    "Premier morceau court, pour décaler les joints de la seconde",
  "About the last piece of the first rim, in whole joist spacings.":
    "À peu près le dernier morceau de la première, en espacements entiers.",
  "First piece of every other rim": "Premier morceau d'une solive de rive sur deux",
  "The second rim starts with the short piece, if its last one then still comes out of the longest length: its joints are not opposite those of the first, and the frame has no hinge across it.":
    "La seconde commence par le morceau court, si son dernier sort encore de la plus longue longueur : ses joints ne font pas face à ceux de la première, et le cadre n'a pas de charnière en travers.",
  "Each rim piece": "Chaque morceau de solive de rive",
  "What to cut for the rims, and where each piece goes.":
    "Quoi couper pour les solives de rive, et où va chaque morceau.",
  Rim: "Solive de rive",
  "Which of the long edges.": "Lequel des longs bords.",
  "Counted from the end that the joists are counted from.":
    "Compté depuis le bout d'où les solives se comptent.",
  "Starts at": "Commence à",
  "Where the piece before it ends: the middle of a joist.":
    "Là où finit le morceau d'avant : au milieu d'une solive.",
  "From its start to the next joint, or to the end of the platform.":
    "De son début au joint suivant, ou au bout de la plateforme.",
  "No stub in a rim": "Pas de bout trop court dans une solive de rive",
  "A rim piece that reaches over less than a joist spacing holds to one joist only.":
    "Un morceau qui couvre moins d'un espacement ne tient qu'à une solive.",
  "Add a longer length to the rims' lengths sold, or change the platform's length: the shortest rim piece should reach over {joist_spacing}.":
    "Ajoutez une longueur plus longue aux longueurs vendues, ou changez la longueur de la plateforme : le plus court morceau de solive de rive devrait couvrir {joist_spacing}.",
  "Joints in the rims": "Joints dans les solives de rive",
  "Each joint wants a pair of blocks behind it.":
    "Chaque joint veut une paire de blocs de bois derrière lui.",
  "Each joint in a rim": "Chaque joint d'une solive de rive",
  "Where the rims are joined, and the joist that stands behind.":
    "Où les solives de rive se joignent, et la solive qui est derrière.",
  "At a joint each rim piece has only half a joist's thickness to be screwed to, and screws that near an end split it. Drill first, and screw the blocks in as well.":
    "À un joint, chaque morceau n'a qu'une demi-épaisseur de solive où se visser, et des vis si près d'un bout le fendent. Percez d'abord, et vissez aussi les blocs.",
  "From the end": "Depuis le bout",
  "Where the next piece starts.": "Où commence le morceau suivant.",
  "Joist behind it": "Solive derrière",
  "The joint stands on the middle of this joist's end.": "Le joint tombe au milieu du bout de cette solive.",
  "Wood behind each piece": "Bois derrière chaque morceau",
  "Half the joist's thickness for either piece, if the joint is on its middle.":
    "La moitié de l'épaisseur de la solive pour chacun, si le joint est en son milieu.",
  "Blocks behind a rim joint": "Blocs derrière un joint de rive",
  "One on either side of the joist, screwed to the rim and to the joist: what really holds the joint.":
    "Un de chaque côté de la solive, vissé à la solive de rive et à la solive : c'est ce qui tient vraiment le joint.",
  "Length of a block behind a rim joint": "Longueur d'un bloc derrière un joint de rive",
  "Long enough for four screws, short enough to go in between two joists.":
    "Assez long pour quatre vis, assez court pour entrer entre deux solives.",
  "Blocks behind the rim joints": "Blocs derrière les joints de rive",
  "Short pieces of rim timber, cut with the blocking.":
    "De courts morceaux de bois de rive, coupés avec les entretoises.",
}
