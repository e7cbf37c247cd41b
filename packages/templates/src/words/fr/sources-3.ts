import type { Texts } from "../dictionary.ts"

export const sources3: Texts = {
  "International Residential Code, section R401.3": "International Residential Code, article R401.3",
  "fall of 6 in within 10 ft; hard surfaces 2 percent": "dénivelé de 6 po sur 10 pi ; surfaces dures 2 %",
  "Agricultural course, lesson 18: land levelling by the plane method":
    "Cours d'agriculture, leçon 18 : nivellement par la méthode du plan",
  "a plane through the middle of the plot at its mean level balances cut and fill":
    "un plan par le milieu du terrain à son niveau moyen équilibre déblai et remblai",
  "International Residential Code, section R403.1": "International Residential Code, article R403.1",
  "2006, a state's edition": "2006, édition d'un État",
  "footings at least 12 in below undisturbed ground": "semelles à au moins 12 po sous le sol non remanié",
  "International Residential Code, section R403.1.4.1, as amended in Connecticut":
    "International Residential Code, article R403.1.4.1, modifié au Connecticut",
  "methods of frost protection and their exceptions":
    "méthodes de protection contre le gel et leurs exceptions",
  "Yields of bagged concrete: 90, 60 or 45 bags of 40, 60 or 80 lb to the cubic yard":
    "Rendement du béton en sac : 90, 60 ou 45 sacs de 40, 60 ou 80 lb à la verge cube",
  "One article prints 0.60 cu ft for a bag of 40 lb; 0.30 is right.":
    "Un article imprime 0,60 pi³ pour un sac de 40 lb ; 0,30 est juste.",
  "cleats on both sides of a butt joint": "éclisses des deux côtés d'un joint bout à bout",
  "two pairs of screws beside each end of a joint": "deux paires de vis de chaque côté d'un joint",
  "Wood Handbook, chapter on moisture and wood": "Wood Handbook, chapitre sur l'humidité et le bois",
  "shrinkage at a moisture between green and oven-dry: in proportion, from fibre saturation down":
    "retrait à une humidité entre vert et anhydre : en proportion, à partir de la saturation des fibres",
  "the change coefficients of table 13-5 (f-009 to f-014) say the same between 6 % and 14 %":
    "les coefficients du tableau 13-5 (f-009 à f-014) disent la même chose entre 6 % et 14 %",
  "Advice of a trade association, quoted in a forum":
    "Conseil d'une association du métier, cité dans un forum",
  "1/8 in to 1/4 in between seasoned boards; a thick nail as spacer":
    "1/8 po à 1/4 po entre planches sèches ; un gros clou comme espaceur",
  "an inch or so of overhang": "un pouce de débord environ",
  "no slivers at an edge": "pas de languettes au bord",
  "decking is mostly flat-sawn, so its width shrinks along the rings, the greater of the two shrinkages":
    "les planches de terrasse sont surtout sur dosse ; leur largeur rétrécit donc le long des cernes, le plus grand des deux retraits",
  "A trade blog on laying boards wet": "Blogue de métier sur la pose de planches mouillées",
  "laid tight, gaps of 1/4 in to 3/8 in open as they dry":
    "posées serrées, des jeux de 1/4 po à 3/8 po s'ouvrent en séchant",
  "joints of neighbouring boards on different joists":
    "joints de planches voisines sur des solives différentes",
  "a board over three joists at least": "une planche sur au moins trois solives",
  "boards meet on the middle of a joist": "les planches se rejoignent au milieu d'une solive",
  "one board in twenty spare": "une planche sur vingt en réserve",
  "International Residential Code, table R507.7, as one city adopted it":
    "International Residential Code, tableau R507.7, adopté par une ville",
  "2018 numbering": "numérotation de 2018",
  "joist spacing under boards laid square across":
    "espacement des solives sous des planches posées d'équerre",
  "kerbs on packers": "chasse-roues sur cales",
  "ADA Standards for Accessible Design": "Normes ADA d'accessibilité",
  "section 405.9, edge protection: a kerb that a 4 in ball does not pass":
    "article 405.9, protection des bords : un chasse-roue que ne passe pas une balle de 4 po",
  "section 405, ramps: 1 in 12 at most, 30 in of rise for one run, 36 in clear between the edges":
    "article 405, rampes : 1 sur 12 au plus, 30 po de montée par volée, 36 po libres entre les bords",
  "written for places open to the public; a private garden may be steeper, but is pushed up by the same arms":
    "écrit pour les lieux ouverts au public ; un jardin privé peut être plus raide, mais ce sont les mêmes bras qui poussent",
  "a ramp goes on with the walk's own lines": "une rampe continue les lignes du sentier",
  "section 405.8, handrails where a ramp rises more than 6 in":
    "article 405.8, mains courantes si une rampe monte de plus de 6 po",
  "section 405.7, landings 60 in long": "article 405.7, paliers de 60 po de long",
  "ramp stringers in one piece, or a sleeper under the joint":
    "longerons de rampe d'un seul morceau, ou une traverse sous le joint",
  "two 5 1/2 in boards to a tread": "deux planches de 5 1/2 po par giron",
  "carriages of 2x12": "limons de 2x12",
  "carriages no wider apart than the stringers": "limons pas plus écartés que les longerons",
  "Rule of the comfortable step": "Règle de la marche confortable",
  "two risers and a tread come to 24 in to 25 in": "deux contremarches et un giron font 24 po à 25 po",
  "two screws at every joist": "deux vis à chaque solive",
  "four screws, and a seat below": "quatre vis, et un siège dessous",
  "built-up beams of two or three planks": "poutres composées de deux ou trois madriers",
  "built-up beams screwed every 16 in": "poutres composées vissées aux 16 po",
  "two rows of screws": "deux rangs de vis",
  "a base set in by about a hand's breadth of the rim": "une base en retrait d'environ une largeur de main",
  "ten pounds a square foot for a timber floor": "dix livres par pied carré pour un plancher de bois",
  "a quarter runs through": "un quart passe au travers",
  "eight pounds a square foot for a light timber floor":
    "huit livres par pied carré pour un plancher de bois léger",
  "table 2, joist spans and overhangs": "tableau 2, portées et porte-à-faux de solives",
  "International Residential Code, table R502.3.1, floor joists":
    "International Residential Code, tableau R502.3.1, solives de plancher",
  "2012, read; 2015 to 2021, from memory": "2012, lu ; 2015 à 2021, de mémoire",
  "National Building Code of Canada, span table 9.23.4.2.-A, floor joists":
    "Code national du bâtiment du Canada, tableau de portées 9.23.4.2.-A, solives de plancher",
  "Not printed: 3 in, twice half a two-ply beam, is what reproduces all 36 printed overhangs.":
    "Non imprimé : 3 po, deux fois la moitié d'une poutre à deux plis, reproduit les 36 porte-à-faux imprimés.",
  "International Residential Code, table R507.6, cantilevers":
    "International Residential Code, tableau R507.6, porte-à-faux",
  "The code's own formula was not found. In the cells at 300 mm and 400 mm the span goes by a power of the spacing; the same power is kept up to 600 mm.":
    "La formule même du code n'a pas été trouvée. Dans les cases à 300 mm et 400 mm, la portée suit une puissance de l'espacement ; la même est gardée jusqu'à 600 mm.",
  "table 4A, flat use": "tableau 4A, usage à plat",
  "International Residential Code, table R507.5 (DCA 6-15, table 3A), deck beams":
    "International Residential Code, tableau R507.5 (DCA 6-15, tableau 3A), poutres de terrasse",
  "Not printed: found by working the table's cells backwards.":
    "Non imprimé : trouvé en reprenant les cases du tableau à rebours.",
  "Panel design specification D510C, 2012, and design capacities of a testing agency, 2008":
    "Spécification de calcul des panneaux D510C, 2012, et capacités d'un organisme d'essai, 2008",
  "Strand board was read in an open transcription; plywood is from memory.":
    "Le panneau à copeaux a été lu dans une transcription ouverte ; le contreplaqué est de mémoire.",
  "Uniform load on panels, method of the panel makers' specification":
    "Charge uniforme sur panneaux, méthode de la spécification des fabricants",
  "Three spans were read in a worked example; one and two spans are from memory.":
    "Trois portées lues dans un exemple résolu ; une et deux portées de mémoire.",
  "Three spans up to 32 in, two beyond: what a sheet of 8 ft reaches.":
    "Trois portées jusqu'à 32 po, deux au-delà : ce qu'atteint un panneau de 8 pi.",
  "National Building Code, Alberta edition 2023, table 9.23.15.5.-A":
    "Code national du bâtiment, édition albertaine 2023, tableau 9.23.15.5.-A",
  "International Residential Code, table R503.1, as adopted in Michigan 2015":
    "International Residential Code, tableau R503.1, adopté au Michigan en 2015",
  "International Residential Code, table R507.7, decking":
    "International Residential Code, tableau R507.7, terrasses",
}
