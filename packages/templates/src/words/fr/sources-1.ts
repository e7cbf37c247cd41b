import type { Texts } from "../dictionary.ts"

export const sources1: Texts = {
  "Laws of Table Tennis, International Table Tennis Federation":
    "Règles du tennis de table, International Table Tennis Federation",
  "the table": "la table",
  "Playing areas by level": "Aires de jeu selon le niveau",
  "recreation and coaching": "loisir et entraînement",
  Geometry: "Géométrie",
  "FAO training manual on topographic surveying":
    "Manuel de formation de la FAO sur les levés topographiques",
  "1985, R7021E": "1985, R7021E",
  "section 4.1": "section 4.1",
  "Yours to choose or to measure": "À vous de choisir ou de mesurer",
  "Common practice, no source": "Usage courant, sans source",
  "Plane of least squares, normal equations": "Plan des moindres carrés, équations normales",
  Arithmetic: "Arithmétique",
  "Follows from the entries it names; nothing is taken from anywhere else.":
    "Découle des entrées nommées ; rien n'est pris ailleurs.",
  "Linear interpolation over the triangles of Delaunay":
    "Interpolation linéaire sur les triangles de Delaunay",
  "Of all ways to join the points by triangles, the one with the fewest thin ones.":
    "De toutes les façons de relier les points par des triangles, celle qui en a le moins de minces.",
  "Your local authority's word": "La parole de votre municipalité",
  "Ask before you build; the figures of other places only show what to ask for.":
    "Demandez avant de construire ; les chiffres d'ailleurs montrent seulement quoi demander.",
  "Local law": "Loi locale",
  "every trigger is local; zoning distances apply to exempt work too":
    "chaque seuil est local ; les distances du zonage valent aussi pour les ouvrages exemptés",
  "International Residential Code, section R312.1": "International Residential Code, article R312.1",
  "guards, measured within 36 in of the edge": "garde-corps, mesuré à moins de 36 po du bord",
  "South Carolina's residential code, R312": "Code résidentiel de la Caroline du Sud, R312",
  "also where the ground within 36 in falls more than 3 in 12":
    "aussi là où le sol, à moins de 36 po, descend de plus de 3 sur 12",
  "Ontario Building Code, guards": "Code du bâtiment de l'Ontario, garde-corps",
  "part 3 article": "article de la partie 3",
  "International Residential Code, section R311.7": "International Residential Code, article R311.7",
  risers: "contremarches",
  "International Residential Code, section R105.2, as one Californian city words it":
    "International Residential Code, article R105.2, dans les mots d'une ville californienne",
  "deck exemption, four conditions together": "exemption pour terrasses, quatre conditions ensemble",
  "International Building Code, section 105.2": "International Building Code, article 105.2",
  "one-storey detached accessory structures": "petits bâtiments accessoires isolés d'un étage",
  "Ontario Regulation 867/21": "Règlement de l'Ontario 867/21",
  "sheds for storage only": "cabanons de rangement seulement",
  "Ontario regulatory registry, posting on the 10 m² threshold":
    "Registre réglementaire de l'Ontario, avis sur le seuil de 10 m²",
  "Ontario Building Code 9.12.2.2.(7)": "Code du bâtiment de l'Ontario 9.12.2.2.(7)",
  "one storey, 55 m² at most, 600 mm at most from the ground to the underside of the joists":
    "un étage, 55 m² au plus, 600 mm au plus du sol au dessous des solives",
  "International Residential Code R403.1.4.1, as amended in Connecticut":
    "International Residential Code R403.1.4.1, modifié au Connecticut",
  "a deck not supported by a dwelling need not reach the frost line":
    "une terrasse non soutenue par une habitation n'a pas à descendre sous le gel",
  "A county's permit page in Washington State": "Page de permis d'un comté de l'État de Washington",
  "height to the lowest ground within 6 ft": "hauteur jusqu'au sol le plus bas à moins de 6 pi",
  "An Ontario city's deck page": "Page sur les terrasses d'une ville ontarienne",
  "decks over 600 mm": "terrasses de plus de 600 mm",
  "Minnesota Rules 1303.1600, frost depths": "Règles du Minnesota 1303.1600, profondeurs de gel",
  "zone 1 60 in, zone 2 42 in": "zone 1 : 60 po, zone 2 : 42 po",
  "Common practice for blocks on the surface": "Usage courant pour des blocs en surface",
  "Rise of freezing soils, rough shares": "Soulèvement des sols qui gèlent, parts approximatives",
  "to show the order of it; soils and winters differ widely":
    "pour donner l'ordre de grandeur ; sols et hivers diffèrent beaucoup",
  "American Softwood Lumber Standard, PS 20": "American Softwood Lumber Standard, PS 20",
  "dressed sizes, dry; 5 in and thicker as sold green":
    "grosseurs rabotées, sec ; 5 po et plus tel que vendu vert",
  "Read in a tabulation of the standard.": "Lu dans un tableau de la norme.",
  "Handling treated timber": "Manipulation du bois traité",
  "Prescriptive Residential Wood Deck Construction Guide, DCA 6":
    "Prescriptive Residential Wood Deck Construction Guide, DCA 6",
  "table 2, overhang no more than a quarter of the span":
    "tableau 2, porte-à-faux d'au plus un quart de la portée",
  "Tributary area, elementary statics": "Aire tributaire, statique élémentaire",
  "A support carries half way to each neighbour, and to the end of the frame where it has none.":
    "Un appui porte jusqu'à mi-chemin de chaque voisin, et jusqu'au bout du cadre s'il n'en a pas.",
  "Statics of continuous beams, stiffness method": "Statique des poutres continues, méthode des rigidités",
  "held against the handbook's coefficients for two to five equal spans, and against a second method":
    "comparé aux coefficients du manuel pour deux à cinq portées égales, et à une seconde méthode",
  "Spread of a load through a layer, two down for one out":
    "Étalement d'une charge dans une couche, un de large pour deux de creux",
  "Uniform live loads that carry the figures of ASCE 7":
    "Surcharges uniformes qui portent les chiffres de l'ASCE 7",
  "gymnasiums and assembly areas, 100 psf": "gymnases et lieux de réunion, 100 lb/pi²",
  "International Residential Code, table R301.5": "International Residential Code, tableau R301.5",
  "decks of one dwelling, 40 psf": "terrasses d'un logement, 40 lb/pi²",
  "International Residential Code, table R401.4.1 (International Building Code, table 1806.2)":
    "International Residential Code, tableau R401.4.1 (International Building Code, tableau 1806.2)",
  "sandy gravel and gravel": "gravier sableux et gravier",
  "sand, silty or clayey sand and gravel": "sable, sable et gravier silteux ou argileux",
  "clay, sandy clay, silty clay, clayey silt, silt":
    "argile, argile sableuse, argile silteuse, silt argileux, silt",
  "International Residential Code, chapter 4": "International Residential Code, chapitre 4",
  "bearing values apply to undisturbed native soil":
    "les valeurs de portance valent pour un sol naturel non remanié",
  "Notice to the buried-services centre": "Avis au centre de repérage des conduites",
  "two to three working days, or what your centre says":
    "deux à trois jours ouvrables, ou ce que dit votre centre",
  "City of Guelph, duty to have utilities located":
    "Ville de Guelph, obligation de faire repérer les conduites",
  "decks, fences, pools, driveways, trees, gardens, light posts":
    "terrasses, clôtures, piscines, entrées, arbres, jardins, lampadaires",
  "City of Sarnia, duty to have utilities located":
    "Ville de Sarnia, obligation de faire repérer les conduites",
  "five business days, free of charge": "cinq jours ouvrables, gratuit",
  "Training manual on earthwork, volume changes":
    "Manuel de formation en terrassement, changements de volume",
  "cuts are measured in place, fills tamped, hauling loose":
    "déblais mesurés en place, remblais compactés, transport en vrac",
  "Swell factors of soils": "Facteurs de foisonnement des sols",
  "earth and loam, 25 %": "terre et limon, 25 %",
  "Earthmoving Operations, FM 5-434": "Earthmoving Operations, FM 5-434",
  "table 1-1, loam or common earth": "tableau 1-1, limon ou terre ordinaire",
  "Common practice with a plate compactor": "Usage courant avec une plaque vibrante",
  "layers of 3 to 4 in, 3 to 4 passes": "couches de 3 à 4 po, 3 à 4 passes",
  "Road base rule of thumb": "Règle approximative pour fondation de route",
  "1.25 loose for 1 tamped": "1,25 en vrac pour 1 compacté",
  "Construction-methods textbook, table 2-5": "Manuel de méthodes de construction, tableau 2-5",
  "sand and gravel: 3,650 lb tamped for 2,860 lb loose in a cubic yard":
    "sable et gravier : 3 650 lb compacté pour 2 860 lb en vrac dans une verge cube",
  "Working densities of aggregates": "Masses volumiques usuelles des granulats",
  "dense graded crusher run, tamped": "concassé bien gradué, compacté",
  "Silica exposure table, construction safety orders of California, section 1532.3":
    "Tableau d'exposition à la silice, règles de sécurité des chantiers de Californie, article 1532.3",
  "Densities of concrete": "Masses volumiques du béton",
  "plain concrete": "béton ordinaire",
  "rims and joists of one depth": "solives de rive et solives de même hauteur",
  "joists at 16 in are usual": "des solives à 16 po sont usuelles",
  "room for a hand and a driver": "place pour une main et une visseuse",
  "joists in one piece": "solives d'un seul morceau",
  "rims joined behind a joist": "solives de rive jointes derrière une solive",
  "joints of neighbouring lines on different joists": "joints de lignes voisines sur des solives différentes",
  "rim pieces over a whole bay at least": "morceaux de rive sur au moins un intervalle entier",
  "blocks behind a butt joint": "blocs derrière un joint bout à bout",
  "blocking under sheet edges that fall between joists":
    "entretoises sous les bords de panneau qui tombent entre les solives",
  "Installation notes of a panel testing agency: floor sheathing":
    "Notes de pose d'un organisme d'essai des panneaux : sous-plancher",
  "strength axis across the joists, two spans or more, ends on joists and staggered":
    "axe fort en travers des solives, deux portées ou plus, bouts sur des solives et décalés",
  "Builder tips of a panel makers' association: panel spacing":
    "Conseils d'une association de fabricants de panneaux : jeu entre panneaux",
  "gap at all edge and end joints": "jeu à tous les joints de bord et de bout",
  "a recommendation, unless the maker of the sheets says otherwise":
    "une recommandation, à moins que le fabricant des panneaux dise autre chose",
  "half an inch under a sheet's end": "un demi-pouce sous un bout de panneau",
  "no strip of sheet so narrow that its blocking has no room beside the rim":
    "aucune bande de panneau si étroite que ses entretoises n'ont pas de place à côté de la rive",
  "seal the edges of sheets outdoors": "scellez les chants des panneaux dehors",
  "NDS Supplement, design values for wood": "NDS Supplement, valeurs de calcul du bois",
  "tables 4A and 4D, wet service": "tableaux 4A et 4D, service humide",
  "On bending only where Fb × CF is more than 1150 psi.":
    "En flexion seulement si Fb × CF dépasse 1150 lb/po².",
  "table 2, footnote: incising only in the first species group":
    "tableau 2, note : incision dans le premier groupe d'essences seulement",
  "For species that the table does not hold, yes is assumed: it is the safer answer.":
    "Pour les essences que le tableau n'a pas, on suppose oui : c'est la réponse la plus sûre.",
  "National Design Specification for Wood Construction":
    "National Design Specification for Wood Construction",
  "table 2.3.2, load duration": "tableau 2.3.2, durée de charge",
  "table 4A, visually graded dimension lumber; dry, ten years of load":
    "tableau 4A, bois de charpente classé visuellement ; sec, dix ans de charge",
  "Read in an open transcription. Each row says whether it was seen or recalled.":
    "Lu dans une transcription ouverte. Chaque ligne dit si elle a été vue ou rappelée.",
  "Engineering design in wood, CSA O86": "Règles de calcul des charpentes en bois, CSA O86",
  "5.5.4, 5.5.5 and 5.5.7, as used in public calculation sheets":
    "5.5.4, 5.5.5 et 5.5.7, comme dans des feuilles de calcul publiques",
  "June 2013": "juin 2013",
  "table 4B, Southern Pine": "tableau 4B, pin du Sud",
  "In psi from memory; agrees, rounded, with values in MPa that were read.":
    "En lb/po² de mémoire ; concorde, arrondi, avec des valeurs en MPa qui ont été lues.",
  "joist and plank strengths": "résistances des solives et madriers",
  "S-P-F No.1/No.2 was read in public calculation sheets; the rest is from memory.":
    "S-P-F No.1/No.2 a été lu dans des feuilles de calcul publiques ; le reste est de mémoire.",
  "National Building Code of Canada, load factors 1.25 D and 1.5 L":
    "Code national du bâtiment du Canada, facteurs de charge 1,25 D et 1,5 L",
  "As used in public calculation sheets.": "Comme dans des feuilles de calcul publiques.",
  "Standard statics of one span": "Statique usuelle d'une portée",
  "Worked out again numerically.": "Recalculé numériquement.",
  "Grading rules of a lumber manufacturers' association, section 8":
    "Règles de classement d'une association de scieries, section 8",
  "adjustment tables A and B: size, repetitive member":
    "tableaux d'ajustement A et B : grosseur, pièces en série",
  "system, service, treatment and size factors":
    "facteurs de système, de service, de traitement et de grosseur",
  "table 4.3.8, incising": "tableau 4.3.8, incision",
  "0.80 and 0.95 reproduce all twelve published deck spans of the incised species group.":
    "0,80 et 0,95 reproduisent les douze portées de terrasse publiées du groupe d'essences incisées.",
  "3.10.4, bearing area": "3.10.4, aire d'appui",
  "Live load span by span: each span loaded or not, whichever is worst":
    "Surcharge portée par portée : chacune chargée ou non, le pire des cas",
  "3.4, shear of a rectangle: 1.5 V ÷ (b d)": "3.4, cisaillement d'un rectangle : 1,5 V ÷ (b d)",
  "Deflection limits of several codes": "Limites de flèche de plusieurs codes",
  "Each row says whose it is, and whether it was seen or recalled.":
    "Chaque ligne dit de qui elle est, et si elle a été vue ou rappelée.",
  "table 2.3.3, temperature": "tableau 2.3.3, température",
  "4.4.1, held edges": "4.4.1, bords tenus",
  "National Building Code of Canada, part 9": "Code national du bâtiment du Canada, partie 9",
  "2023, Alberta": "2023, Alberta",
  "table 9.4.4.1: half on sand, silt or gravel where water stands within a footing's width below":
    "tableau 9.4.4.1 : moitié sur sable, silt ou gravier où l'eau se tient à moins d'une largeur de semelle dessous",
  "Construction guide of a panel makers' association, recommended uniform floor live loads":
    "Guide de construction d'une association de fabricants de panneaux, surcharges uniformes recommandées pour planchers",
  "International Residential Code, table R503.2.1.1(1)":
    "International Residential Code, tableau R503.2.1.1(1)",
  "Ontario and National Building Code of Canada, table 9.4.4.1":
    "Codes du bâtiment de l'Ontario et national du Canada, tableau 9.4.4.1",
  "table 4D, timbers 5 in and thicker": "tableau 4D, gros bois de 5 po et plus",
  "Read where university problems quote it; Southern Pine from memory.":
    "Lu là où des problèmes universitaires le citent ; pin du Sud de mémoire.",
  "Uniform live loads of several codes": "Surcharges uniformes de plusieurs codes",
  "tiles set out from the middle where the cut would be a sliver":
    "tuiles implantées du milieu quand la coupe serait une languette",
  "a base a few inches larger than the field of tiles": "une base de quelques pouces de plus que les tuiles",
  "Thermal expansion: growth = expansion × length × rise of temperature":
    "Dilatation thermique : allongement = dilatation × longueur × hausse de température",
  "an off-cut of a snap tile has no joint left": "une chute de tuile emboîtable n'a plus de joint",
  "no cut narrower than a quarter of a tile": "aucune coupe plus étroite qu'un quart de tuile",
  "a few tiles in a hundred": "quelques tuiles sur cent",
  "Table of thermal expansion of plastics, polypropylene":
    "Tableau de dilatation thermique des plastiques, polypropylène",
  "Pipe table of thermal growth, polypropylene":
    "Tableau de tuyauterie, allongement thermique, polypropylène",
  "lists of this plastic span 80 to 150 millionths per kelvin (from memory, h-010): look at both ends":
    "les listes de ce plastique vont de 80 à 150 millionièmes par kelvin (de mémoire, h-010) : regardez les deux bouts",
  "Table of thermal expansion of plastics, polyethylene":
    "Tableau de dilatation thermique des plastiques, polyéthylène",
  "130 to 170 millionths per kelvin": "130 à 170 millionièmes par kelvin",
  "Table of thermal expansion of plastics, polypropylene with glass":
    "Tableau de dilatation thermique des plastiques, polypropylène chargé de verre",
  "Span of the lists for plastics": "Plage des listes pour les plastiques",
  "polypropylene 80 to 150, polyethylene 120 to 200 millionths per kelvin":
    "polypropylène 80 à 150, polyéthylène 120 à 200 millionièmes par kelvin",
  "Usual advice for floors of interlocking plastic tiles":
    "Conseil usuel pour planchers de tuiles de plastique emboîtables",
  "6 mm to 13 mm free at every edge; lie loose, never fixed at two opposite edges":
    "6 mm à 13 mm libres à chaque bord ; pose libre, jamais fixée à deux bords opposés",
  "a dark surface in full sun reaches about 140 °F":
    "une surface foncée en plein soleil atteint environ 140 °F",
  "two screws above each other": "deux vis l'une au-dessus de l'autre",
  "Sports-netting practice for a 40 mm ball": "Usage des filets de sport pour une balle de 40 mm",
  "mesh 30 mm at most, border rope, ties each 200 mm to 300 mm, 1.5 m to 2.5 m high":
    "maille de 30 mm au plus, corde de bordure, attaches aux 200 à 300 mm, 1,5 m à 2,5 m de haut",
}
