import type { Texts } from "../dictionary.ts"

export const sources2: Texts = {
  "light net posts about 8 ft apart": "poteaux légers de filet à environ 8 pi",
  "two guys at a corner, one at a post between": "deux haubans à un coin, un à un poteau intermédiaire",
  "pegs out by half the height or more": "piquets à la moitié de la hauteur ou plus",
  "two feet for knots": "deux pieds pour les nœuds",
  "FAO catalogue of small-scale fishing gear, hanging ratios":
    "Catalogue de la FAO sur les petits engins de pêche, rapports de montage",
  "hung height ÷ stretched height = √(1 − ratio²)": "hauteur montée ÷ hauteur tendue = √(1 − rapport²)",
  "Table tennis equipment rules: ball of 40 mm": "Règles d'équipement du tennis de table : balle de 40 mm",
  "Structural calculations in an Idaho permit file": "Calculs de structure d'un dossier de permis de l'Idaho",
  "115 mph, exposure B": "115 mi/h, exposition B",
  "Minimum Design Loads, ASCE 7: exposure at 15 ft and below":
    "Minimum Design Loads, ASCE 7 : exposition à 15 pi et dessous",
  "Minimum Design Loads, ASCE 7: velocity pressure": "Minimum Design Loads, ASCE 7 : pression dynamique",
  "0.613 × factors × speed squared, in pascals and metres per second":
    "0,613 × facteurs × vitesse au carré, en pascals et mètres par seconde",
  "Minimum Design Loads, ASCE 7-16, as a city's permit calculation uses it":
    "Minimum Design Loads, ASCE 7-16, selon le calcul de permis d'une ville",
  "16 psf at least, gust 0.85": "16 lb/pi² au moins, rafale 0,85",
  "Minimum Design Loads, ASCE 7: combinations for allowable loads":
    "Minimum Design Loads, ASCE 7 : combinaisons pour charges admissibles",
  "0.6 of the dead load against wind; 0.6 of a wind from a map of ultimate speeds":
    "0,6 de la charge permanente contre le vent ; 0,6 d'un vent tiré d'une carte de vitesses ultimes",
  "lateral bearing": "portance latérale",
  "Minimum Design Loads, ASCE 7-16, table 29.4-2: open signs and single-plane frames":
    "Minimum Design Loads, ASCE 7-16, tableau 29.4-2 : enseignes ouvertes et cadres à un plan",
  "International Building Code, section 1807.3.2: posts in the ground":
    "International Building Code, article 1807.3.2 : poteaux dans le sol",
  "no restraint at the ground: d = 0.5 A (1 + √(1 + 4.36 h/A)), A = 2.34 P ÷ (S₁ b)":
    "sans retenue au sol : d = 0,5 A (1 + √(1 + 4,36 h/A)), A = 2,34 P ÷ (S₁ b)",
  "Minimum Design Loads, ASCE 7: outside and inside pressure on small closed buildings":
    "Minimum Design Loads, ASCE 7 : pressions extérieure et intérieure sur petits bâtiments fermés",
  "International Building Code, section 1806.3.4: poles that may move half an inch at the ground":
    "International Building Code, article 1806.3.4 : poteaux qui peuvent bouger d'un demi-pouce au sol",
  "Solid share of a square mesh": "Part pleine d'une maille carrée",
  "2 d/m − (d/m)², with d the twine and m the mesh, knot to knot":
    "2 d/m − (d/m)², d étant le fil et m la maille, de nœud à nœud",
  "Bending of a post that stands free under an even load":
    "Flexion d'un poteau isolé sous une charge uniforme",
  "International Building Code": "International Building Code (IBC)",
  "2304.10.5.1, fasteners in preservative-treated wood": "2304.10.5.1, attaches dans du bois traité",
  "Southern pine producers' association: fasteners and connectors":
    "Association de producteurs de pin du Sud : attaches et connecteurs",
  "the order of the treatments was read; the advice for each restates the building code":
    "l'ordre des traitements a été lu ; le conseil pour chacun reprend le code du bâtiment",
  "US Forest Service: corrosion of fasteners in treated wood":
    "Service forestier des É.-U. : corrosion des attaches dans le bois traité",
  "hot-dip fasteners to A153 with connectors of G185; no bare aluminium":
    "attaches à chaud A153 avec connecteurs G185 ; pas d'aluminium nu",
  "2304.9.5: plain steel in borate-treated wood, only indoors and dry":
    "2304.9.5 : acier nu dans du bois au borate, seulement à l'intérieur et au sec",
  "Common practice for grades of stainless steel": "Usage courant pour les nuances d'inox",
  "304 or 305 inland; 316 near salt water, de-icing salt or pool chemicals":
    "304 ou 305 à l'intérieur des terres ; 316 près de l'eau salée, du sel de route ou des produits de piscine",
  "ranks of protection": "rangs de protection",
  "USDA Forest Products Laboratory, fastener corrosion at 100 percent relative humidity":
    "USDA Forest Products Laboratory, corrosion des attaches à 100 % d'humidité relative",
  "found electroplated zinc lasting longer than hot-dip in ACQ; codes ask for hot-dip all the same, and are followed here":
    "a trouvé que l'électrozingué dure plus que le zinc à chaud dans l'ACQ ; les codes veulent quand même le zinc à chaud, et sont suivis ici",
  "pools, salt water, below ground, trapped water; do not mix metals":
    "piscines, eau salée, sous terre, eau retenue ; ne mélangez pas les métaux",
  "AWPA retentions by use class": "Rétentions AWPA par classe d'emploi",
  "UC3B, UC4A and UC4B": "UC3B, UC4A et UC4B",
  "0.40 for ACQ and 0.21 for CA-B were also read in a trade article":
    "0,40 pour l'ACQ et 0,21 pour le CA-B ont aussi été lus dans un article de métier",
  "Trade article on hardware for treated wood": "Article de métier sur la quincaillerie pour bois traité",
  "retentions above which stainless is advised": "rétentions au-dessus desquelles l'inox est conseillé",
  "a secondary article": "un article de seconde main",
  "one tie a crossing": "une attache par croisement",
  "International Building Code, fastening schedule": "International Building Code, tableau des fixations",
  "Table 2304.9.1, item 1: joist to sill or girder, three 8d nails driven at a slant":
    "Tableau 2304.9.1, ligne 1 : solive sur lisse ou poutre, trois clous 8d posés en biais",
  "written for nails": "écrit pour des clous",
  "three screws through a rim into a joist": "trois vis à travers une solive de rive dans une solive",
  "two screws at a blocking end": "deux vis à un bout d'entretoise",
  "an edge board screwed at every joist": "une planche de rive vissée à chaque solive",
  "International Residential Code, fastening schedule":
    "International Residential Code, tableau des fixations",
  "older item numbers, as kept in a Minnesota permit file":
    "anciens numéros, gardés dans un dossier de permis du Minnesota",
  "Table R602.3(1), structural panels 19/32 in to 1 in: 6 in at edges, 12 in between":
    "Tableau R602.3(1), panneaux structuraux de 19/32 po à 1 po : 6 po aux bords, 12 po entre",
  "the table is written for nails; the same spacings are kept here for screws":
    "le tableau est écrit pour des clous ; les mêmes espacements sont gardés ici pour des vis",
  "How-to article on screws for a deck": "Article pratique sur les vis d'une terrasse",
  "350 screws for 100 sq ft of 6 in boards on joists at 16 in":
    "350 vis pour 100 pi² de planches de 6 po sur des solives à 16 po",
  "counting the article's own 10 ft × 10 ft deck gives 396: the rule leaves out the end joist":
    "compter la terrasse de 10 pi × 10 pi de l'article donne 396 : la règle oublie la solive de bout",
  "1 1/2 in into the timber below, 3/4 in to 1 in from an edge":
    "1 1/2 po dans le bois du dessous, à 3/4 po à 1 po d'un bord",
  "Trade habit for the length of a screw": "Habitude du métier pour la longueur d'une vis",
  "the piece on top and 1 1/4 in to 1 1/2 in into the timber below: 2 1/2 in for 5/4 boards, 3 in for 2x boards":
    "la pièce du dessus et 1 1/4 po à 1 1/2 po dans le bois du dessous : 2 1/2 po pour des planches 5/4, 3 po pour des 2x",
  "lengths by half inches": "longueurs au demi-pouce",
  "one box for the frame, one for the surface": "une boîte pour le cadre, une pour la surface",
  "No. 10 in frames, No. 8 in surfaces": "No. 10 dans les cadres, No. 8 dans les surfaces",
  "one in ten spare": "une sur dix en réserve",
  "2304.10.5.1, connectors on treated wood outdoors: as their maker or the treater says, otherwise zinc G185 at least":
    "2304.10.5.1, connecteurs sur bois traité dehors : selon leur fabricant ou le traiteur, sinon zinc G185 au moins",
  "a small tie takes about eight": "une petite attache en prend environ huit",
  "a circular saw takes about 1/8 in": "une scie circulaire prend environ 1/8 po",
  "US Navy engineering aid text: the board foot":
    "Manuel d'aide-ingénieur de la marine des É.-U. : le pied-planche",
  "page 6-3": "page 6-3",
  "Board foot, softwood: length in feet × nominal width × nominal thickness in inches ÷ 12":
    "Pied-planche, résineux : longueur en pieds × largeur nominale × épaisseur nominale en pouces ÷ 12",
  "Tabulation of the American Softwood Lumber Standard, PS 20":
    "Tableau de l'American Softwood Lumber Standard, PS 20",
  "nominal sizes": "grosseurs nominales",
  "the size in the name, before drying and planing": "la grosseur du nom, avant séchage et rabotage",
  "AWPA use categories above the ground": "Classes d'emploi AWPA hors sol",
  "UC3A coated and quick to drain, UC3B uncoated or slow to drain":
    "UC3A peint et vite égoutté, UC3B nu ou lent à s'égoutter",
  "AWPA use categories, as a treaters' page defines them":
    "Classes d'emploi AWPA, telles que les définit la page d'un traiteur",
  "UC4A, ground contact, general": "UC4A, contact avec le sol, général",
  "UC4B, ground contact, heavy duty": "UC4B, contact avec le sol, usage dur",
  "Acceptance criteria for preservative-treated wood, AC236": "Critères d'acceptation du bois traité, AC236",
  "less than 6 in above the ground counts as ground contact":
    "à moins de 6 po au-dessus du sol compte comme contact avec le sol",
  "Canadian Wood Council on the National Building Code":
    "Conseil canadien du bois, sur le Code national du bâtiment",
  "treated wood within 150 mm of finished ground; a field-cut preservative on the cuts":
    "bois traité à moins de 150 mm du sol fini ; un préservatif sur les coupes",
  "Trade article on the change of the treating standard":
    "Article de métier sur le changement de la norme de traitement",
  "stringers that reach the ground need ground contact; treaters disagreed about joists":
    "les longerons qui touchent le sol veulent le contact avec le sol ; les traiteurs divergeaient pour les solives",
  "a secondary article; the evaluation criteria are followed here":
    "un article de seconde main ; les critères d'évaluation sont suivis ici",
  "AWPA M4, as a treaters' institute prints it": "AWPA M4, telle qu'imprimée par un institut de traiteurs",
  "every cut, hole or injury that may pass the treated zone":
    "chaque coupe, trou ou blessure qui peut dépasser la zone traitée",
  "Permit sheet of a wood preservative": "Fiche d'homologation d'un préservatif du bois",
  "brush-on coverage a coat: 225 to 250 sq ft a gallon smooth, 100 rough; two coats, a day between":
    "rendement au pinceau par couche : 225 à 250 pi² au gallon lisse, 100 brut ; deux couches, à un jour d'écart",
  "AWPA M4": "AWPA M4",
  "copper naphthenate with 2 % copper, 1 % where that is not to be had":
    "naphténate de cuivre à 2 % de cuivre, 1 % si introuvable",
  "Questions and answers of a preservative's maker": "Questions et réponses du fabricant d'un préservatif",
  "200 sq ft a gallon": "200 pi² au gallon",
  "a secondary page; it prints the same figure as 18.6 m3: square metres a gallon are meant, 4.9 m2 a litre":
    "une page de seconde main ; elle imprime le même chiffre comme 18,6 m3 : il s'agit de mètres carrés au gallon, 4,9 m2 au litre",
  "tape over the tops of joists keeps water out of the screw holes":
    "du ruban sur le dessus des solives garde l'eau hors des trous de vis",
  "the order of a walk through a yard": "l'ordre d'une visite dans une cour à bois",
  "delivery is taxed like goods": "la livraison est taxée comme la marchandise",
  "a tenth for surprises": "un dixième pour les surprises",
  "money is rounded to the hundredth": "l'argent s'arrondit au centième",
  "shops take back whole packs only": "les magasins ne reprennent que des paquets entiers",
  "Wood Handbook, specific gravity at 12 % moisture": "Wood Handbook, densité relative à 12 % d'humidité",
  "f-025 to f-029": "f-025 à f-029",
  "Wood Handbook, FPL-GTR-190": "Wood Handbook, FPL-GTR-190",
  "table 4-3, shrinkage from green to oven-dry": "tableau 4-3, retrait de vert à anhydre",
  "table 4-3, rows for loblolly pine and white spruce":
    "tableau 4-3, lignes du pin à encens et de l'épinette blanche",
  "agrees with the change coefficients of table 13-5 by the link of the two tables (f-022)":
    "concorde avec les coefficients du tableau 13-5 par le lien des deux tableaux (f-022)",
  "kiln-dried timber is sold at 19 % or less": "le bois séché au séchoir se vend à 19 % ou moins",
  "timber outdoors settles near 12 %": "dehors, le bois se stabilise près de 12 %",
  "University forestry page: density of wood = density of water × specific gravity × (1 + moisture)":
    "Page universitaire de foresterie : masse volumique du bois = celle de l'eau × densité relative × (1 + humidité)",
  "A roofing reference page: water that treating puts into wood":
    "Page de référence en toiture : eau que le traitement met dans le bois",
  "4 gallons, or 32 lb, a cubic foot": "4 gallons, ou 32 lb, par pied cube",
  "A roofing reference page: treated southern pine, fresh 69.8 and dry 40.1 lb per cubic foot":
    "Page de référence en toiture : pin du Sud traité, frais 69,8 et sec 40,1 lb par pied cube",
  "for the heaviest of the southern pines": "pour le plus lourd des pins du Sud",
  "From memory, no source": "De mémoire, sans source",
  "softwood plywood of 3/4 in weighs about 2 1/4 lb a square foot dry, 3 lb fresh treated":
    "le contreplaqué de résineux de 3/4 po pèse environ 2 1/4 lb par pied carré sec, 3 lb frais traité",
  "a snap tile of a foot square and 5/8 in weighs about 3/4 lb":
    "une tuile emboîtable d'un pied carré et de 5/8 po pèse environ 3/4 lb",
  "Revised lifting equation of the United States' institute for safety at work":
    "Équation de levage révisée de l'institut de sécurité au travail des États-Unis",
  "load constant": "constante de charge",
  "51 lb (23 kg) for an ideal lift, close to the body; every reach, twist and repeat takes away from it":
    "51 lb (23 kg) pour un levage idéal, près du corps ; toute portée, torsion ou répétition en retranche",
  "British guidance on handling loads by hand, lifting filter at waist height close to the body":
    "Guide britannique de manutention, filtre de levage à hauteur de taille près du corps",
  "25 kg for men, 16 kg for women; from the ground and at arm's length far less":
    "25 kg pour un homme, 16 kg pour une femme ; du sol et à bout de bras, bien moins",
  "figures to start from": "des chiffres pour commencer",
  "International Residential Code, section R311.7.5": "International Residential Code, article R311.7.5",
  "treads of 10 in at least": "girons de 10 po au moins",
  "string pegs stand clear of the digging": "les piquets de cordeau sont hors du creusage",
  "about a long step beyond the corner": "environ un grand pas au-delà du coin",
  "a quarter of an inch over a small frame": "un quart de pouce sur un petit cadre",
  "no published rate was found; time your own first hour":
    "aucun rythme publié n'a été trouvé ; chronométrez votre première heure",
  "six hours of eight": "six heures sur huit",
  "how far each goes is a guess to start from": "combien chacun dure est une estimation de départ",
  "no published figure was found": "aucun chiffre publié n'a été trouvé",
  "what the work is usually done with": "avec quoi ce travail se fait d'habitude",
  "a plate tamper is hired": "une plaque vibrante se loue",
  "Comparison of battery types by a maker of power tools, cold-capacity row":
    "Comparaison de sortes de batteries par un fabricant d'outils, ligne de la capacité au froid",
  "Data sheets of common lithium cells": "Fiches techniques de piles au lithium courantes",
  "80 to 90 per cent at freezing; the lower is taken":
    "80 à 90 % au point de congélation ; le moindre est pris",
  "the size printed on a battery is for a warm day":
    "la capacité imprimée sur une batterie vaut pour un jour chaud",
  "Screws by the energy of a battery": "Vis selon l'énergie d'une batterie",
  "3.3 screws of 2 1/2 in to a watt-hour, worked from a mean torque; reports of 2 to 4; no measured figure was found":
    "3,3 vis de 2 1/2 po par wattheure, tirées d'un couple moyen ; rapports de 2 à 4 ; aucun chiffre mesuré n'a été trouvé",
  "what goes where; your authority has the last word": "ce qui va où ; votre municipalité a le dernier mot",
  "what goes where": "ce qui va où",
  "Canadian Standard Lumber, CSA O141": "Bois d'œuvre canadien normalisé, CSA O141",
  "metric dressed sizes": "grosseurs métriques rabotées",
  "Sawn softwood sizes, EN 1313-1": "Grosseurs de sciages résineux, EN 1313-1",
  "target sizes of sawn timber": "grosseurs visées des sciages",
  "Metric decking boards as northern European yards sell them, planed":
    "Planches de terrasse métriques telles que les vendent les cours du nord de l'Europe, rabotées",
  "sizes differ by a millimetre or two from yard to yard: measure one":
    "les grosseurs varient d'un millimètre ou deux d'une cour à l'autre : mesurez-en une",
  "Course page: earthwork by the grid (borrow-pit) method":
    "Page de cours : terrassement par la méthode de la grille",
  "a corner of one cell counts once, of two twice, of four four times, over four":
    "un coin d'une cellule compte une fois, de deux deux fois, de quatre quatre fois, sur quatre",
  "International Building Code, table 1806.2": "International Building Code, tableau 1806.2",
  "friction of a footing on the soil": "frottement d'une semelle sur le sol",
  "Civil Engineering Formulas, page 170: wood screws, withdrawal":
    "Civil Engineering Formulas, page 170 : vis à bois, arrachement",
  "2850 × specific gravity squared × diameter, per inch of thread":
    "2850 × densité relative au carré × diamètre, par pouce de filet",
  "A structural engineers' worked example to the NDS of 2005: 16d common nail":
    "Exemple résolu d'ingénieurs en structure selon la NDS de 2005 : clou ordinaire 16d",
  "141 lb in Douglas fir-larch through 1 1/2 in": "141 lb dans du Douglas-mélèze à travers 1 1/2 po",
  "six diameters at least, ten for the full value": "six diamètres au moins, dix pour la pleine valeur",
  "Wood Handbook, withdrawal of wood screws": "Wood Handbook, arrachement des vis à bois",
  "15 700 × specific gravity squared × diameter × thread":
    "15 700 × densité relative au carré × diamètre × filet",
  "table 12.3.3A, specific gravity, read in a transcription":
    "tableau 12.3.3A, densité relative, lu dans une transcription",
  "wet service of screws and nails: 0.7": "service humide des vis et clous : 0,7",
  "table 2.3.2, ten minutes (wind): 1.6; ten years (people): 1.0":
    "tableau 2.3.2, dix minutes (vent) : 1,6 ; dix ans (gens) : 1,0",
  "Civil Engineering Formulas, page 170: wood screws, sideways":
    "Civil Engineering Formulas, page 170 : vis à bois, de côté",
  "a constant of the species group × diameter squared":
    "une constante du groupe d'essences × diamètre au carré",
  "an older method; newer standards look at how the screw and the wood yield, and may give less in thin timber":
    "une méthode plus ancienne ; les normes récentes regardent comment cèdent la vis et le bois, et peuvent donner moins dans du bois mince",
}
