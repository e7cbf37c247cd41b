import type { Texts } from "../dictionary.ts"

export const strength1: Texts = {
  "Strong enough?": "Assez solide ?",
  "What acts in each member, what its timber may bear, and what gives first.":
    "Ce qui agit dans chaque pièce, ce que son bois peut porter, et ce qui cède en premier.",
  "Strength, member by member": "Résistance, pièce par pièce",
  "Each step from the piece to the answer, in the order of the calculation.":
    "Chaque pas de la pièce à la réponse, dans l'ordre du calcul.",
  "Your local code and a licensed designer decide where people's safety leans on this: a public or sports floor, a high platform, or timber that is notched, cracked or of unknown grade.":
    "Votre code local et un concepteur habilité décident quand la sécurité de gens en dépend : plancher public ou de sport, plateforme haute, ou bois entaillé, fendu ou de qualité inconnue.",
  "Figures marked as recalled were not seen in print. Confirm them before you build on them.":
    "Les chiffres marqués de mémoire n'ont pas été vus imprimés. Confirmez-les avant de construire dessus.",
  "Each line of support is taken to carry half of the joists' span on either side. Joists in one piece over three lines lean up to a quarter harder on the middle one, and less on the outer two.":
    "Chaque ligne d'appuis est supposée porter la moitié de la portée des solives de chaque côté. Des solives d'un morceau sur trois lignes pèsent jusqu'à un quart de plus sur celle du milieu, et moins sur les deux autres.",
  Member: "Pièce",
  "One kind of member a row.": "Une sorte de pièce par ligne.",
  "As it is sold.": "Tel que vendu.",
  "Thickness of a ply": "Épaisseur d'un pli",
  "As it is planed.": "Tel que raboté.",
  Depth: "Hauteur",
  "As it stands.": "Tel que posé.",
  Plies: "Plis",
  "Pieces that bend together.": "Les morceaux qui fléchissent ensemble.",
  "Thickness in all": "Épaisseur en tout",
  "All plies together.": "Tous les plis ensemble.",
  "Plies that run through": "Plis continus",
  "Where planks of a beam meet, the others carry the bending alone: the worst such place counts for all of it.":
    "Là où des madriers d'une poutre se rejoignent, les autres portent seuls la flexion : le pire endroit compte pour toute la poutre.",
  "Length of its seat": "Longueur de son siège",
  "How much of it lies on its support. Of a post: nothing lies on it.":
    "Quelle longueur repose sur son appui. D'un poteau : rien.",
  "Own weight of the platform": "Poids propre de la plateforme",
  "On every part of the floor.": "Sur toutes les parties du plancher.",
  "People and things": "Gens et choses",
  "On some spans, or all.": "Sur certaines portées, ou toutes.",
  "Load factor on dead load": "Facteur sur la charge permanente",
  "1 in allowable stress design.": "1 par contraintes admissibles.",
  "Load factor on live load": "Facteur sur la surcharge",
  "Section modulus": "Module de section",
  "How well the shape resists bending, of the plies that run through. Twice the depth counts four times.":
    "À quel point la forme résiste à la flexion, pour les plis continus. Deux fois plus haut compte quatre fois.",
  "Class of thickness": "Classe d'épaisseur",
  "Thin timber and timbers of 5 in and more are graded by different rules.":
    "Le bois mince et les gros bois de 5 po et plus se classent selon d'autres règles.",
  "Width in the name, inches": "Largeur dans le nom, pouces",
  "The size factor goes by it. 0: a size that the tables do not hold.":
    "Le facteur de grosseur en dépend. 0 : une grosseur que les tableaux n'ont pas.",
  "Class of published values": "Classe des valeurs publiées",
  "Where a species is published by width, the row for this width.":
    "Quand une essence est publiée par largeur, la ligne de cette largeur.",
  "Counts as thin": "Compte comme mince",
  "In limit states, damp and slits count for thin pieces.":
    "Aux états limites, humidité et fentes comptent pour les pièces minces.",
  "Row of the published table": "Ligne du tableau publié",
  "0 where the table has no row for this species, grade and size: then there is no answer, and what follows is left blank.":
    "0 si le tableau n'a pas de ligne pour cette essence, qualité et grosseur : il n'y a alors pas de réponse, et la suite reste vide.",
  "Bending, published": "Flexion, publiée",
  "Before any factor.": "Avant tout facteur.",
  "Shear, published": "Cisaillement, publié",
  "Bearing, published": "Portance, publiée",
  "Across the grain, before any factor.": "En travers du fil, avant tout facteur.",
  "Stiffness, published": "Rigidité, publiée",
  "How long its load lasts in all": "Durée de sa charge en tout",
  "Over the life of the platform, added up. A gust lasts minutes.":
    "Sur la vie de la plateforme, additionnée. Une rafale dure des minutes.",
  "Load duration factor, CD or KD": "Facteur de durée de charge, CD ou KD",
  "Wood carries a short load better than a lasting one.":
    "Le bois porte mieux une charge courte qu'une durable.",
  "Row of the Canadian size factors": "Ligne des facteurs de grosseur canadiens",
  "The first row of its depth.": "La première ligne de sa hauteur.",
  "Size factor, CF or KZ": "Facteur de grosseur, CF ou KZ",
  "A slim piece is stronger for its size. 1 where the size is inside the published value. On bending; by limit states on shear as well.":
    "Une pièce mince est plus résistante pour sa taille. 1 si la grosseur est déjà dans la valeur publiée. Sur la flexion ; aux états limites, sur le cisaillement aussi.",
  "Wet service factor on bending": "Facteur de service humide sur la flexion",
  "1 where it stays dry, and by allowable stress where Fb × CF is not over the threshold.":
    "1 si elle reste sèche, et par contraintes admissibles si Fb × CF ne dépasse pas le seuil.",
  "Wet service factor on shear": "Facteur de service humide sur le cisaillement",
  "1 where it stays dry.": "1 si elle reste sèche.",
  "Wet service factor on bearing": "Facteur de service humide sur la portance",
  "Wet wood is crushed across the grain far more easily.":
    "Le bois mouillé s'écrase bien plus facilement en travers du fil.",
  "Wet service factor on stiffness": "Facteur de service humide sur la rigidité",
  "Wet wood sags more.": "Le bois mouillé fléchit plus.",
  Incised: "Incisé",
  "Only a species that needs it; by limit states, only thin pieces.":
    "Seulement une essence qui en a besoin ; aux états limites, seulement les pièces minces.",
  "Incising factor on strength": "Facteur d'incision sur la résistance",
  "The slits cut for the preservative cost strength.":
    "Les fentes faites pour le préservatif coûtent de la résistance.",
  "Incising factor on stiffness": "Facteur d'incision sur la rigidité",
  "The slits cost little stiffness.": "Les fentes coûtent peu de rigidité.",
  "Members that share, Cr or KH": "Pièces qui partagent, Cr ou KH",
  "Three or more joists under one floor help a weak one out.":
    "Trois solives ou plus sous un même plancher en aident une faible.",
  "Stability factor, CL or KL": "Facteur de stabilité, CL ou KL",
  "1 where what lies on it holds its upper edge.": "1 quand ce qui repose dessus tient son bord supérieur.",
  "Temperature factor, Ct": "Facteur de température, Ct",
  "1 for timber that cools at night.": "1 pour du bois qui refroidit la nuit.",
  "Resistance factor, bending and shear": "Facteur de résistance, flexion et cisaillement",
  "Resistance factor, bearing": "Facteur de résistance, portance",
  "Bearing length factor, Cb or KB": "Facteur de longueur d'appui, Cb ou KB",
  "At the end of a piece nothing is added.": "Au bout d'une pièce, rien ne s'ajoute.",
  "Bending stress it may bear": "Contrainte de flexion qu'elle peut porter",
  "The published value, times each factor in this row.":
    "La valeur publiée, fois chaque facteur de cette ligne.",
  "Shear stress it may bear": "Contrainte de cisaillement qu'elle peut porter",
  "By limit states, size and sharing count here too.":
    "Aux états limites, grosseur et partage comptent ici aussi.",
  "Bearing stress it may bear": "Contrainte de portance qu'elle peut porter",
  "By allowable stress, duration and incising do not count here.":
    "Par contraintes admissibles, durée et incision ne comptent pas ici.",
  "Stiffness in use": "Rigidité en service",
  "Duration does not count here.": "La durée ne compte pas ici.",
  "Greatest span": "Plus grande portée",
  "From support to support; of a post, its height.": "D'un appui à l'autre ; d'un poteau, sa hauteur.",
  "Greatest moment": "Plus grand moment",
  "Where people stand on the worst spans, with the load factors. A post is bent by wind.":
    "Là où des gens sont sur les pires portées, avec les facteurs de charge. Un poteau est fléchi par le vent.",
  "Greatest shear": "Plus grand effort tranchant",
  "Beside a support, the full force.": "À côté d'un appui, la pleine force.",
  "Greatest load on a seat": "Plus grande charge sur un siège",
  "What the busiest support pushes back with; 0 of a post.":
    "Ce que l'appui le plus chargé rend ; 0 d'un poteau.",
  "Sag under people": "Flèche sous les gens",
  "How springy it feels.": "À quel point on la sent souple.",
  "Sag in all": "Flèche en tout",
  "With the platform's weight. Wet timber goes on sagging, to about twice this.":
    "Avec le poids de la plateforme. Le bois mouillé continue de fléchir, jusqu'à environ le double.",
  "Bending stress": "Contrainte de flexion",
  "At the edge of the piece.": "Au bord de la pièce.",
  "Shear stress": "Contrainte de cisaillement",
  "In the middle of the depth.": "Au milieu de la hauteur.",
  "Bearing stress": "Contrainte de portance",
  "Where it sits.": "Là où elle repose.",
  "Seat needed": "Siège requis",
  "How much of it has to rest on its support.": "Quelle longueur doit reposer sur son appui.",
  "Bending, of what it may bear": "Flexion, sur ce qu'elle peut porter",
  "Over 100 % it breaks at its lower or upper edge.":
    "Au-dessus de 100 %, elle rompt à son bord inférieur ou supérieur.",
  "Shear, of what it may bear": "Cisaillement, sur ce qu'elle peut porter",
  "Over 100 % it splits along the grain near its end.":
    "Au-dessus de 100 %, elle fend le long du fil près de son bout.",
  "Bearing, of what it may bear": "Portance, sur ce qu'elle peut porter",
  "Over 100 % it is crushed where it sits.": "Au-dessus de 100 %, elle s'écrase là où elle repose.",
  "Sag under people, of what is accepted": "Flèche sous les gens, sur ce qui est accepté",
  "Over 100 % the floor feels soft.": "Au-dessus de 100 %, le plancher semble mou.",
  "Sag in all, of what is accepted": "Flèche en tout, sur ce qui est accepté",
  "Over 100 % what lies on it cracks.": "Au-dessus de 100 %, ce qui est posé dessus fend.",
  "Inside the tables": "Dans les tableaux",
  "No: no published row for it, or nothing holds it up. Then nothing is guessed.":
    "Non : aucune ligne publiée pour elle, ou rien ne la soutient. Rien n'est alors deviné.",
  "Worst of all": "Le pire de tout",
  "The one that gives first.": "Ce qui cède en premier.",
  "What gives first": "Ce qui cède en premier",
  "Change this first.": "Changez cela d'abord.",
  "Worst, where it is known": "Le pire, là où il est connu",
  "So that the other members can be compared when one is outside the tables.":
    "Pour que les autres pièces puissent se comparer quand l'une est hors des tableaux.",
  "In words": "En mots",
  "What gives first, and how far it is from its limit.":
    "Ce qui cède en premier, et à quelle distance de sa limite.",
  "What acts in each member": "Ce qui agit dans chaque pièce",
  "The worst of all lines and spans of each kind of member.":
    "Le pire de toutes les lignes et portées de chaque sorte de pièce.",
  "Which kind of member.": "Quelle sorte de pièce.",
  "From support to support.": "D'un appui à l'autre.",
  "Between supports or over one.": "Entre les appuis ou sur l'un d'eux.",
  "Beside a support. Never notch a member there.":
    "À côté d'un appui. N'entaillez jamais une pièce à cet endroit.",
  "With people where they press hardest.": "Avec des gens là où ils pressent le plus.",
  "Sag under people, at 1 GPa": "Flèche sous les gens, à 1 GPa",
  "For a stiffness of 1 GPa: a step of the calculation.": "Pour une rigidité de 1 GPa : un pas du calcul.",
  "Sag in all, at 1 GPa": "Flèche en tout, à 1 GPa",
  "Sag under people over its length, at 1 GPa": "Flèche sous les gens sur sa longueur, à 1 GPa",
  "An overhang counts twice its length.": "Un porte-à-faux compte deux fois sa longueur.",
  "Sag in all over its length, at 1 GPa": "Flèche en tout sur sa longueur, à 1 GPa",
  "Every line stands": "Toutes les lignes tiennent",
  "No where a line could turn or fall.": "Non si une ligne pouvait tourner ou tomber.",
  "Each span of each member": "Chaque portée de chaque pièce",
  "From support to support, and the ends that reach past the outer supports.":
    "D'un appui à l'autre, et les bouts qui dépassent les appuis extérieurs.",
  "Counted as in the layout.": "Comptée comme dans le plan.",
  Span: "Portée",
  "Where the span begins.": "Où commence la portée.",
  "From centre to centre of the supports.": "De centre à centre des appuis.",
  "Length that the sag is held against": "Longueur à laquelle se compare la flèche",
  "The size is decided by it.": "C'est elle qui décide de la grosseur.",
  "Where it is bent most": "Là où elle fléchit le plus",
  "Keep big knots and cuts away from here.": "Gardez gros nœuds et coupes loin d'ici.",
  "Beside a support.": "À côté d'un appui.",
  "What each support carries": "Ce que porte chaque appui",
  "By statics: a member that runs on over a support leans harder on it than half way to each neighbour says, and a joint lets off its neighbours.":
    "Par la statique : une pièce continue sur un appui y pèse plus que ne le dit la mi-distance aux voisins, et un joint soulage les siens.",
  "Supports are taken as equally firm. On soft ground the load moves to the firmer ones.":
    "Les appuis sont supposés également fermes. Sur un sol mou, la charge passe aux plus fermes.",
  "Along the line": "Le long de la ligne",
  "Where the support stands.": "Où se tient l'appui.",
  "From the platform alone": "De la plateforme seule",
  "With nobody there.": "Sans personne.",
  "With everything loaded": "Avec tout chargé",
  "Adds up to the whole load, over all supports.": "Fait en tout la charge entière, sur tous les appuis.",
  "At most": "Au plus",
  "With people on the spans that press hardest here.":
    "Avec des gens sur les portées qui pressent le plus ici.",
  "At least": "Au moins",
}
