import type { Texts } from "../dictionary.ts"

export const fixings1: Texts = {
  "Ties and screws": "Attaches et vis",
  "Screws are counted where they are driven, one kind for the frame and one for the surface, and then rounded up to whole boxes.":
    "Les vis se comptent là où on les pose, une sorte pour le cadre et une pour la surface, puis s'arrondissent à des boîtes entières.",
  "What treatments ask of a screw": "Ce que les traitements demandent à une vis",
  "The copper that keeps wood from rotting eats the zinc off a screw, and then the steel.":
    "Le cuivre qui garde le bois de pourrir mange le zinc d'une vis, puis l'acier.",
  Treatment: "Traitement",
  "It is on the tag at the end of the timber.": "C'est sur l'étiquette au bout du bois.",
  "Rank needed": "Rang requis",
  "The code wants hot-dip zinc or better in all treated wood outdoors. Borate is easier on metal, but plain steel is allowed with it only indoors and dry.":
    "Le code veut du zinc à chaud ou mieux dans tout bois traité dehors. Le borate ménage le métal, mais l'acier nu n'y est permis qu'à l'intérieur et au sec.",
  Because: "Parce que",
  "Said again where a check fails.": "Redit là où une vérification échoue.",
  "How well screws are protected": "À quel point les vis sont protégées",
  "A plain order of ranks, higher lasts longer. It is not a measure of years.":
    "Un simple ordre de rangs, plus haut dure plus. Ce n'est pas une mesure d'années.",
  Screw: "Vis",
  "It is on the box. A coating of the maker's own counts as what a test report for your treatment says it equals.":
    "C'est sur la boîte. Un revêtement maison vaut ce qu'un rapport d'essai pour votre traitement dit qu'il égale.",
  Rank: "Rang",
  "The code does not let wood screws be plated mechanically only, so they rank with the electroplated.":
    "Le code n'admet pas les vis à bois seulement zinguées mécaniquement ; elles ont donc le rang des électrozinguées.",
  Metal: "Métal",
  "Two metals that touch in wet wood corrode.":
    "Deux métaux qui se touchent dans du bois mouillé se corrodent.",
  "Who says what about plated screws": "Qui dit quoi des vis zinguées",
  "The sources disagree. Pegbook follows the code, and shows you the other finding rather than hide it.":
    "Les sources ne s'accordent pas. Pegbook suit le code, et vous montre l'autre constat plutôt que de le cacher.",
  Who: "Qui",
  "All three were read.": "Les trois ont été lus.",
  "What it says of treated wood": "Ce qu'il dit du bois traité",
  "A test of weeks in one climate is no reason to go against the code.":
    "Un essai de quelques semaines sous un seul climat n'est pas une raison d'aller contre le code.",
  "Followed here": "Suivi ici",
  "The check goes by the code.": "La vérification suit le code.",
  "What the place asks of a screw": "Ce que l'endroit demande à une vis",
  "Salt and chlorine do more harm than the treatment does.":
    "Sel et chlore font plus de mal que le traitement.",
  Place: "Endroit",
  "Where the platform stands.": "Où se trouve la plateforme.",
  "Stainless 304 serves in wet places inland; near salt or pool chemicals it pits, and 316 lasts.":
    "L'inox 304 convient aux endroits humides de l'intérieur ; près du sel ou des produits de piscine il se pique, et le 316 dure.",
  "Treatment of the timber": "Traitement du bois",
  "What the timber was treated with decides what screws and metal ties it may touch.":
    "Ce dont le bois a été traité décide quelles vis et attaches de métal il peut toucher.",
  "Sawdust of treated wood is harmful: gloves, mask and goggles. Never burn the off-cuts, in the open or in a stove. Brush cut ends with preservative.":
    "La sciure de bois traité est nocive : gants, masque et lunettes. Ne brûlez jamais les chutes, ni dehors ni dans un poêle. Badigeonnez les bouts coupés de préservatif.",
  "none, or wood that lasts by itself": "aucun, ou bois durable par nature",
  borate: "borate",
  "micronised copper (MCA)": "cuivre micronisé (MCA)",
  "copper azole, CA-B": "azole de cuivre, CA-B",
  "copper azole, CA-C": "azole de cuivre, CA-C",
  "copper quat (ACQ)": "cuivre quaternaire (ACQ)",
  "chromated copper arsenate (CCA)": "arséniate de cuivre chromaté (CCA)",
  "Where it stands": "Où elle se trouve",
  "Near the sea, a pool or a salted road only the better stainless steel lasts.":
    "Près de la mer, d'une piscine ou d'une route salée, seul le meilleur inox dure.",
  inland: "à l'intérieur des terres",
  "always damp, or often wetted": "toujours humide, ou souvent mouillé",
  "near salt water": "près de l'eau salée",
  "by a pool or a salted road": "près d'une piscine ou d'une route salée",
  "Metal of the screws": "Métal des vis",
  "Screws and metal ties should be of the same metal: two metals that touch in wet wood corrode.":
    "Vis et attaches de métal devraient être du même métal : deux métaux qui se touchent dans du bois mouillé se corrodent.",
  "plain steel": "acier nu",
  "electroplated zinc": "zinc électrolytique",
  "mechanically plated zinc": "zinc mécanique",
  "hot-dip zinc": "zinc à chaud",
  "stainless 304": "inox 304",
  "stainless 316": "inox 316",
  "What this timber and this place ask of a screw": "Ce que ce bois et cet endroit demandent à une vis",
  "The harder of the two decides.": "Le plus sévère des deux décide.",
  "Asked by": "Demandé par",
  "From the table of treatments, and from the table of places.":
    "Du tableau des traitements, et du tableau des endroits.",
  "Why that rank": "Pourquoi ce rang",
  "Whichever of the two asks for more.": "Celui des deux qui demande le plus.",
  "Least screw for this timber and place": "Vis minimale pour ce bois et cet endroit",
  "The first in the table that reaches the rank.": "La première du tableau qui atteint le rang.",
  "Screws that the timber and the place do not eat": "Des vis que le bois et l'endroit ne mangent pas",
  "Screws that rust through inside the wood give no sign until a board comes loose.":
    "Des vis qui rouillent dans le bois ne donnent aucun signe avant qu'une planche se détache.",
  "The treater's and the screw maker's own words, and the local code, go before this order of ranks.":
    "Ce que disent le traiteur, le fabricant des vis et le code local passe avant cet ordre de rangs.",
  "Take {fastener_needed} or better, and metal ties with their nails to match. {fastener_reason}":
    "Prenez {fastener_needed} ou mieux, et des attaches de métal avec leurs clous assortis. {fastener_reason}",
  "Preservative that stays in the wood": "Préservatif qui reste dans le bois",
  "Timber for harder use holds more preservative, and more of it eats more metal. The tag at the end of the timber says how much yours holds.":
    "Du bois pour un usage plus dur en retient plus, et davantage mange plus de métal. L'étiquette au bout du bois dit combien en tient le vôtre.",
  "As named on the tag.": "Comme nommé sur l'étiquette.",
  "Above the ground.": "Au-dessus du sol.",
  "In contact with the ground.": "En contact avec le sol.",
  "In contact with the ground, hard use.": "En contact avec le sol, usage dur.",
  "Above this retention, stainless is advised": "Au-dessus de cette rétention, l'inox est conseillé",
  "Where the tag says more than this, a trade article advises stainless steel though the code would take hot-dip zinc.":
    "Quand l'étiquette dit plus que cela, un article de métier conseille l'inox, même si le code accepterait le zinc à chaud.",
  "More than": "Plus de",
  "Advice, not a rule: no check leans on it.":
    "Un conseil, pas une règle : aucune vérification ne s'y appuie.",
  "Ties where a joist crosses a skid": "Attaches là où une solive croise un patin",
  "A small metal tie keeps the joist on the skid when wind or a push lifts it.":
    "Une petite attache de métal garde la solive sur le patin quand le vent ou une poussée la soulève.",
  "Frame screws where a joist crosses a skid": "Vis de charpente là où une solive croise un patin",
  "Driven at a slant, one from either face, they hold the joist on its mark until the tie is on. Without ties the code's table asks for three nails.":
    "Posées en biais, une de chaque face, elles tiennent la solive à sa marque jusqu'à l'attache. Sans attaches, le tableau du code demande trois clous.",
  "Crossings of joists and skids": "Croisements de solives et de patins",
  "Every joist crosses every skid.": "Chaque solive croise chaque patin.",
  "Each crossing": "Chaque croisement",
  "Each is a place to fasten, so ties and screws are counted here and not by area.":
    "Chacun est un endroit où fixer ; attaches et vis se comptent donc ici, et non à l'aire.",
  Skid: "Patin",
  "Which skid.": "Quel patin.",
  "Which joist.": "Quelle solive.",
  "The joist's middle.": "Le milieu de la solive.",
  "The skid's middle.": "Le milieu du patin.",
  "Frame screws": "Vis de charpente",
  "Over all crossings.": "Sur tous les croisements.",
  "Use the nails or screws that the ties' maker names, in every hole that he says.":
    "Prenez les clous ou les vis que nomme le fabricant des attaches, dans tous les trous qu'il dit.",
  "Frame screws into a joist's end": "Vis de charpente dans le bout d'une solive",
  "Through the rim into the end of the joist. Screws in end grain hold the frame together; what carries the load is the skid below.":
    "À travers la solive de rive, dans le bout de la solive. Des vis en bois de bout tiennent le cadre ensemble ; ce qui porte la charge, c'est le patin dessous.",
  "Frame screws at a blocking end": "Vis de charpente à un bout d'entretoise",
  "Through the joist, or at a slant where the next piece is in the way.":
    "À travers la solive, ou en biais si le morceau suivant gêne.",
  "Frame screws in a block behind a rim joint": "Vis de charpente dans un bloc derrière un joint de rive",
  "Four into the rim, two into the joist.": "Quatre dans la solive de rive, deux dans la solive.",
  "Edge-board screws, places at most apart": "Vis de planche de rive, endroits au plus à",
  "The boards are stepped on and kicked.": "On marche sur ces planches et on les frappe du pied.",
  "Edge-board screws at a place": "Vis de planche de rive par endroit",
  "One above the other, so that the board cannot cup.":
    "L'une au-dessus de l'autre, pour que la planche ne se creuse pas.",
  "Edge-board screws, places": "Vis de planche de rive, endroits",
  "Along each board, both its ends counted.": "Le long de chaque planche, ses deux bouts comptés.",
  "Sheet screws along a sheet's edges": "Vis de panneau le long des bords",
  "Edges lift first, so the screws stand closer there.":
    "Les bords se lèvent d'abord ; les vis y sont donc plus rapprochées.",
  "Sheet screws on the joists between": "Vis de panneau sur les solives entre les bords",
  "In the middle of a sheet they may stand wider.":
    "Au milieu d'un panneau, elles peuvent être plus écartées.",
  "Sheet screws along a long edge, between two joists":
    "Vis de panneau le long d'un long bord, entre deux solives",
  "Into the blocking under a long seam, and into the rim. With joists at 16 in, two between them keep the screws within 6 in.":
    "Dans les entretoises sous un joint long, et dans la solive de rive. Avec des solives à 16 po, deux entre elles gardent les vis à moins de 6 po.",
  "Sheet screws between two joists, for that spacing":
    "Vis de panneau entre deux solives, pour cet espacement",
  "The joists give a screw at either end; this many between keep the spacing along the edge.":
    "Les solives donnent une vis à chaque bout ; autant entre elles gardent l'espacement le long du bord.",
  "Sheet screws along a long edge, apart": "Vis de panneau le long d'un long bord, distance",
  "What the screws between the joists come to.": "Ce que donnent les vis entre les solives.",
  "Long edges screwed closely enough": "Longs bords vissés assez serré",
  "A long edge is an edge like the others.": "Un long bord est un bord comme les autres.",
  "Put {screws_mid_bay_needed} screws between two joists.":
    "Mettez {screws_mid_bay_needed} vis entre deux solives.",
  "Sheet screws, row by row": "Vis de panneau, rangée par rangée",
  "Counted where they are driven: along each joist under each row of sheets. A seam takes two lines of screws, one in either sheet.":
    "Comptées là où on les pose : le long de chaque solive sous chaque rangée de panneaux. Un joint prend deux lignes de vis, une dans chaque panneau.",
  "Row of sheets": "Rangée de panneaux",
  "Which row.": "Quelle rangée.",
  "Lines at sheet ends": "Lignes aux bouts de panneau",
  "Both ends of the row, and two lines at each seam.":
    "Les deux bouts de la rangée, et deux lignes à chaque joint.",
  "Lines between": "Lignes entre",
  "On all other joists.": "Sur toutes les autres solives.",
  "Screws in an end line": "Vis dans une ligne de bout",
  "Whole spaces across the sheet, and one screw more.":
    "Des intervalles entiers en travers du panneau, et une vis de plus.",
  "Screws in a line between": "Vis dans une ligne entre",
  "The same at the wider spacing.": "La même chose au plus grand espacement.",
  "Screws on the joists": "Vis sur les solives",
  "All lines of the row.": "Toutes les lignes de la rangée.",
  "Long edges with timber under them": "Longs bords avec du bois dessous",
  "The two outer edges lie on the rims; each line of blocking takes the two edges of one seam.":
    "Les deux bords extérieurs reposent sur les solives de rive ; chaque rang d'entretoises prend les deux bords d'un joint.",
  "Screws counted by the area": "Vis comptées à l'aire",
  "Some people count screws so. Only to compare: nothing is bought by it.":
    "Certains comptent les vis ainsi. Pour comparer seulement : rien n'est acheté d'après cela.",
  "Rule of thumb": "Règle approximative",
  "It was made for deck boards.": "Elle a été faite pour des planches de terrasse.",
  Screws: "Vis",
  "For the area beside it.": "Pour l'aire à côté.",
  "For an area of": "Pour une aire de",
  "The area that the rule gives them for.": "L'aire pour laquelle la règle les donne.",
  "Would say": "Dirait",
  "For this platform.": "Pour cette plateforme.",
  "How far off it is": "De combien elle se trompe",
  "Above nothing: it would have you buy too many. Below: you would run out.":
    "Au-dessus de zéro : elle vous en ferait trop acheter. Dessous : vous en manqueriez.",
  "Thread in the timber below, at least": "Filet dans le bois du dessous, au moins",
  "A screw holds by what is in the lower piece.": "Une vis tient par ce qui est dans la pièce du bas.",
  "Screws are made every": "Les vis se font tous les",
  "The length worked out is rounded up to a length that can be bought.":
    "La longueur calculée s'arrondit vers le haut à une longueur qui s'achète.",
  "Screws, joint by joint": "Vis, joint par joint",
  "Every joint has a place, a number and a length of its own. Where screws are guessed from the area, the edges and the end joists are forgotten.":
    "Chaque joint a sa place, son nombre et sa longueur. Quand on devine les vis à l'aire, on oublie les bords et les solives de bout.",
  Joint: "Joint",
  "Where the screws go.": "Où vont les vis.",
  "Out of which box": "De quelle boîte",
  "Frame screws are long and stout; surface screws hold what you walk on.":
    "Les vis de charpente sont longues et fortes ; celles de surface tiennent ce sur quoi on marche.",
  Gauge: "Calibre",
  "The thickness that is usual for such a joint. It is a habit, not a calculation: where the joint carries a load, its maker or a designer says.":
    "L'épaisseur usuelle pour un tel joint. C'est une habitude, pas un calcul : là où le joint porte une charge, son fabricant ou un concepteur le dit.",
  Places: "Endroits",
  "Counted from the crossings, the ends and the edges; never from the area.":
    "Comptés d'après les croisements, les bouts et les bords ; jamais à l'aire.",
  "Screws at a place": "Vis par endroit",
  "As chosen for the joint.": "Comme choisi pour le joint.",
  "Places times screws at a place.": "Endroits fois vis par endroit.",
  "Goes through": "Traverse",
  "The piece that is held. This much of the screw holds nothing yet.":
    "La pièce qui est tenue. Cette part de la vis ne tient encore rien.",
}
