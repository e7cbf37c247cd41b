import type { Texts } from "../dictionary.ts"

/** What solvers say of themselves, and what they find where a workbook is not as the template has it. */
export const extra: Texts = {
  "every point held against every other": "chaque point comparé à tous les autres",
  "the plane": "le plan",
  "linear over the triangles of Delaunay; beyond them the plane, shifted to meet the outer edge":
    "linéaire sur les triangles de Delaunay ; au-delà, le plan, décalé pour rejoindre le bord extérieur",
  "dynamic programming over the supports, two neighbouring lines at once":
    "programmation dynamique sur les appuis, deux lignes voisines à la fois",
  "dynamic programming over the bearers, two neighbouring rows at once":
    "programmation dynamique sur les porteurs, deux rangées voisines à la fois",
  "length bought, each piece from a board of its own":
    "longueur achetée, chaque morceau dans sa propre pièce",
  "boards bought, by your prices, each piece from a board of its own":
    "planches achetées, selon vos prix, chaque morceau dans sa propre pièce",
  "boards, by your prices, were each piece cut from a board of its own":
    "planches, selon vos prix, si chaque morceau était coupé dans sa propre planche",
  "length, were each piece cut from a board of its own":
    "longueur, si chaque morceau était coupé dans sa propre planche",
  "crosscuts packed along the sheets, best fit first; no layout of these pieces needs fewer sheets":
    "coupes rangées le long des panneaux, le meilleur ajustement d'abord ; aucune disposition de ces morceaux ne demande moins de panneaux",
  "crosscuts packed along the sheets, best fit first; not proven best":
    "coupes rangées le long des panneaux, le meilleur ajustement d'abord ; non prouvé le meilleur",
  "sheets used": "panneaux utilisés",
  "stiffness method, exact along each span; live load on every span or not, whichever is worst; joints turn freely":
    "méthode des rigidités, exacte sur chaque portée ; surcharge sur chaque portée ou non, le pire des cas ; joints libres de tourner",
  "the beam's own curves, read off at even steps between supports and joints, and where they turn":
    "les courbes mêmes de la poutre, lues à pas réguliers entre appuis et joints, et là où elles tournent",
  "repeated tries of the published formula, each from half way to the last answer":
    "essais répétés de la formule publiée, chacun à mi-chemin de la dernière réponse",
  depth: "profondeur",
  "pieces of one part, size and length counted together":
    "morceaux d'une même sorte, grosseur et longueur comptés ensemble",
  "boards of the cutting plan that you do not have yet":
    "planches du plan de coupe que vous n'avez pas encore",
  "best-fit decreasing, tried with each length sold and filling board by board":
    "meilleur ajustement du plus long au plus court, essayé avec chaque longueur vendue et planche par planche",
  "not proven best": "non prouvé le meilleur",
  "no plan for these pieces buys less": "aucun plan pour ces morceaux n'achète moins",
  "timber bought, by your prices": "bois acheté, d'après vos prix",
  "timber bought, end to end": "bois acheté, bout à bout",
  "two ends a piece, less those that came from the treater":
    "deux bouts par morceau, moins ceux qui viennent du traiteur",
  "every set of suppliers, each line at its cheapest mix of packs, moved towards least orders and free delivery":
    "chaque ensemble de fournisseurs, chaque ligne à sa combinaison de paquets la moins chère, poussée vers les commandes minimales et la livraison gratuite",
  "the choice of suppliers, by your prices": "le choix des fournisseurs, d'après vos prix",
  "the choice of suppliers, added up for each way to buy":
    "le choix des fournisseurs, additionné pour chaque façon d'acheter",
  "the list's costs, added up by supplier": "les coûts de la liste, additionnés par fournisseur",
  "what you noted as bought, held against the list": "ce que vous avez noté comme acheté, comparé à la liste",
  "quantities times the masses of your table, or of size and density":
    "quantités fois les poids de votre tableau, ou d'après grosseur et masse volumique",
  "the haul list, by the step that uses each thing first":
    "la liste de transport, selon l'étape qui se sert d'abord de chaque chose",
  "the highest of each side's stations, both corners with it":
    "la plus haute des stations de chaque côté, les deux coins compris",
  "each thing bought is looked for among the stages, and the other way round":
    "chaque achat est cherché parmi les étapes, et l'inverse",
  "what is bought and dug, less what is in the work":
    "ce qui est acheté et creusé, moins ce qui est dans l'ouvrage",
  "paid to the suppliers, goods by measure and each tax to the nearest cent":
    "payé aux fournisseurs, marchandise à la mesure et chaque taxe au cent près",

  // Buying
  "the least in all, suppliers mixed": "le moins cher en tout, fournisseurs combinés",
  "one trip only": "un seul voyage",
  mixed: "combinés",
  "has everything": "a tout",
  "a supplier without a name": "un fournisseur sans nom",
  "there is no way to buy": "il n'y a aucune façon d'acheter",
  "whole packs only": "paquets entiers seulement",
  "sold by measure, as much as is wanted": "vendu à la mesure, autant qu'il en faut",
  "one price for every length": "un prix pour toutes les longueurs",
  "more than is needed, because it costs less or packs are whole":
    "plus que le besoin, car c'est moins cher ou les paquets sont entiers",
  "the price has no day": "le prix n'a pas de date",
  "your table": "votre tableau",
  bought: "acheté",
  "not enough": "pas assez",
  "more than is needed": "plus que le besoin",
  "on the list no more": "plus sur la liste",
  "less is bought than is used": "on en achète moins qu'on n'en utilise",
  "no stage uses it": "aucune étape ne s'en sert",
  "on no list of things to buy": "sur aucune liste d'achats",
  price: "prix",
  pack: "paquet",
  days: "jours",
  date: "date",
  length: "longueur",
  from: "à partir de",
  delivery: "livraison",
  "free from": "gratuite à partir de",
  "least order": "commande minimale",
  paid: "payé",
  used: "utilisé",
  sag: "flèche",
  vibration: "vibration",
  "the end of the tables": "la fin des tableaux",

  // What cannot be done
  "A length or a load is missing.": "Il manque une longueur ou une charge.",
  "A load stands beyond the end of the beam. Move it onto the beam.":
    "Une charge est au-delà du bout de la poutre. Mettez-la sur la poutre.",
  "A support stands beyond the end of the beam. Move it under.":
    "Un appui est au-delà du bout de la poutre. Mettez-le dessous.",
  "The beam has no length. Give it one.": "La poutre n'a pas de longueur. Donnez-lui-en une.",
  "The beam has no stiffness. Give its size and its modulus of elasticity.":
    "La poutre n'a pas de rigidité. Donnez sa grosseur et son module d'élasticité.",
  "The beam is not held: a piece of it can swing or fall freely. Every piece between two hinges needs two supports, or one support and a neighbour that holds it. Move a joint onto a support, or add a support.":
    "La poutre n'est pas tenue : un morceau peut basculer ou tomber. Chaque morceau entre deux charnières veut deux appuis, ou un appui et un voisin qui le tient. Mettez un joint sur un appui, ou ajoutez un appui.",
  "The depth did not settle. Check the post's force and the soil.":
    "La profondeur ne s'est pas stabilisée. Vérifiez la force du poteau et le sol.",
  "No lengths to buy are listed. List at least one.":
    "Aucune longueur vendue n'est listée. Listez-en au moins une.",
  "Delete one of them, or correct where it stands.": "Supprimez l'un d'eux, ou corrigez sa place.",
  "Joints of neighbouring lines lie over the same supports: the lengths you can buy leave no other place. Add a length that spans one more support, allow a shorter piece, or tie these joints with longer splice pieces.":
    "Des joints de lignes voisines tombent sur les mêmes appuis : les longueurs vendues ne laissent pas d'autre place. Ajoutez une longueur qui franchit un appui de plus, permettez un morceau plus court, ou reliez ces joints par des éclisses plus longues.",
}
