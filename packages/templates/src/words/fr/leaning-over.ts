import type { Texts } from "../dictionary.ts"

/** One load anywhere, beams that could lean over, planks laid flat. */
export const leaningOver: Texts = {
  "The lines of support are taken as equally firm, and joists as one piece over all of them. Where a joist is cut over a line, or a line sinks, its neighbours carry more.":
    "Les lignes d'appui sont tenues pour également fermes, et les solives pour une seule pièce sur toutes. Là où une solive est coupée sur une ligne, ou qu'une ligne s'enfonce, ses voisines portent plus.",
  "One load anywhere on it": "Une charge en tout endroit",
  "A person, a wheel or the leg of a table, in the worst place; in place of the people spread out, not with them. Its neighbours are not taken to help.":
    "Une personne, une roue ou un pied de table, au pire endroit ; à la place des personnes réparties, non avec elles. On ne compte pas sur l'aide des pièces voisines.",
  "International Residential Code, notes to table R301.5, as Washington adopted it":
    "International Residential Code, notes du tableau R301.5, tel qu'adopté par l'État de Washington",
  "300 lb on 2 in by 2 in of a stair's tread": "300 lb sur 2 po par 2 po d'une marche d'escalier",
  "1.3 kN on a floor, National Building Code of Canada, is from memory":
    "1,3 kN sur un plancher, Code national du bâtiment du Canada, de mémoire",
  "Flat use factor, Cfu": "Facteur de pose à plat, Cfu",
  "A plank laid on its wide face bears a little more. 1 for what stands on edge or is square, and by limit states.":
    "Un madrier posé sur sa face large porte un peu plus. 1 pour ce qui est sur chant ou carré, et aux états limites.",
  "Upper edge free over": "Bord du haut libre sur",
  "How far it is between things that keep its upper edge from leaning over: the joists on a beam; 0 under sheets and boards, which hold a piece that is not too deep for its thickness; one that is counts as free over its span.":
    "La distance entre ce qui empêche son bord du haut de se déverser : les solives sur une poutre ; 0 sous panneaux et planches, qui tiennent une pièce pas trop haute pour son épaisseur ; une qui l'est compte comme libre sur sa portée.",
  "Free length that counts": "Longueur libre qui compte",
  "By how an even load leans a beam over.": "Selon la façon dont une charge égale déverse une poutre.",
  "3.3.3, beam stability": "3.3.3, stabilité des poutres",
  "Slenderness, RB": "Élancement, RB",
  "Beyond 50 the rule does not hold.": "Au-delà de 50, la règle ne vaut pas.",
  "Bending stress before leaning over, Fb*": "Contrainte de flexion avant déversement, Fb*",
  "The published value with every factor but those for leaning over and for lying flat.":
    "La valeur publiée avec tous les facteurs, sauf ceux de déversement et de pose à plat.",
  "Stress at which it leans over, FbE": "Contrainte de déversement, FbE",
  "0 where the edge is held all along, and by limit states: then nothing is taken off.":
    "0 là où le bord est tenu tout du long, et aux états limites : alors rien n'est retranché.",
  "1 where sheets or boards hold its upper edge, and where it is no more than about twice as deep as thick. By limit states 1: hold pieces more than four times as deep as thick at their ends.":
    "1 là où panneaux ou planches tiennent son bord du haut, et là où elle n'est pas plus d'environ deux fois plus haute qu'épaisse. Aux états limites 1 : tenez à leurs bouts les pièces plus de quatre fois plus hautes qu'épaisses.",
  "Where people stand on the worst spans, or one load stands in the worst place, with the load factors. A post is bent by wind.":
    "Là où des personnes se tiennent sur les pires portées, ou une charge au pire endroit, avec les facteurs de charge. Un poteau est fléchi par le vent.",
  "No: no published row for it, nothing holds it up, or it is so slim that the rule for leaning over does not hold. Then nothing is guessed.":
    "Non : aucune rangée publiée pour elle, rien ne la porte, ou elle est si élancée que la règle de déversement ne vaut pas. Alors rien n'est deviné.",
  "One load anywhere": "Une charge en tout endroit",
  "A heavy person, a wheel or the leg of a table. The code asks it of a stair's tread; Canada's asks 1.3 kN of a floor, which is a little less. Put in more where you roll a barrow of stone, a mower or a heavy table.":
    "Une personne lourde, une roue ou un pied de table. Le code l'exige d'une marche d'escalier ; celui du Canada exige 1,3 kN d'un plancher, un peu moins. Mettez plus là où vous roulez une brouette de pierre, une tondeuse ou une table lourde.",
  "Leaning over: long from a free length over depth of":
    "Déversement : longue à partir d'une longueur libre sur hauteur de",
  "From here another rule for the length counts.": "À partir d'ici, une autre règle de longueur compte.",
  "Leaning over: short, free length times": "Déversement : courte, longueur libre fois",
  "An even load on one span.": "Une charge égale sur une portée.",
  "Leaning over: long, free length times": "Déversement : longue, longueur libre fois",
  "An even load; 1.37 for a load in the middle alone.":
    "Une charge égale ; 1,37 pour une charge au milieu seule.",
  "Leaning over: long, and depths": "Déversement : longue, plus hauteurs",
  "Added when long.": "Ajoutées si elle est longue.",
  "Leaning over: stiffness over slenderness squared, times":
    "Déversement : rigidité sur élancement au carré, fois",
  "FbE = 1.20 E′min ÷ RB².": "FbE = 1,20 E′min ÷ RB².",
  "Leaning over: spread of the rule": "Déversement : dispersion de la règle",
  "From the published rule for CL.": "De la règle publiée de CL.",
  "Leaning over: where breaking and leaning meet": "Déversement : là où rupture et déversement se rejoignent",
  "Leaning over: slenderness at most": "Déversement : élancement maximal",
  "Beyond this the rule does not hold.": "Au-delà, la règle ne vaut pas.",
  "Stands by itself up to a depth over thickness of": "Tient seule jusqu'à une hauteur sur épaisseur de",
  "The rule is 2 to 1 in the sizes of the name: two 2x8 side by side, which are 2.4 to 1 as planed.":
    "La règle est 2 pour 1 dans les grosseurs du nom : deux 2x8 côte à côte, soit 2,4 pour 1 une fois rabotés.",
  "Held by sheets or boards up to a depth over thickness of":
    "Tenue par panneaux ou planches jusqu'à une hauteur sur épaisseur de",
  "The rule is 5 to 1 in the sizes of the name: a 2x10, which is 6.2 to 1 as planed. Deeper ones need bridging as well.":
    "La règle est 5 pour 1 dans les grosseurs du nom : un 2x10, soit 6,2 pour 1 une fois raboté. Les plus hautes veulent aussi des entretoises.",
  "A plank laid flat may be stressed a little more. Members that stand on edge take 1.":
    "Un madrier posé à plat peut être un peu plus sollicité. Les pièces sur chant prennent 1.",
  "stiffness method, exact along each span; live load on every span or not, or one force anywhere, whichever is worst; joints turn freely":
    "méthode des rigidités, exacte sur chaque portée ; surcharge sur chaque portée ou non, ou une force en tout endroit, le pire des cas ; joints libres de tourner",
}
