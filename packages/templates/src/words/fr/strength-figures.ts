import type { Texts } from "../dictionary.ts"

export const strengthFigures: Texts = {
  "Published strengths and factors": "Résistances et facteurs publiés",
  "What others have measured and agreed on. Every number can be changed, and then says so.":
    "Ce que d'autres ont mesuré et convenu. Chaque nombre peut être changé, et le dit alors.",
  "Load duration factor, CD": "Facteur de durée de charge, CD",
  "People stand for about ten years in all of a platform's life. Take another row of the table where snow or wind decides.":
    "Des gens s'y tiennent environ dix ans dans toute la vie d'une plateforme. Prenez une autre ligne du tableau si neige ou vent décide.",
  "Incising factor on strength, Ci": "Facteur d'incision sur la résistance, Ci",
  "The slits cut for the preservative take this much off bending, tension, shear and compression.":
    "Les fentes faites pour le préservatif ôtent autant à flexion, traction, cisaillement et compression.",
  "Incising factor on stiffness, Ci": "Facteur d'incision sur la rigidité, Ci",
  "The slits cost little stiffness. Bearing loses nothing.":
    "Les fentes coûtent peu de rigidité. La portance ne perd rien.",
  "Repetitive member factor, Cr": "Facteur de pièces en série, Cr",
  "Three or more joists under one floor help a weak one out. Bending only.":
    "Trois solives ou plus sous un même plancher en aident une faible. En flexion seulement.",
  "Repetitive up to a spacing of": "En série jusqu'à un espacement de",
  "Timber that cools at night loses nothing.": "Un bois qui refroidit la nuit ne perd rien.",
  "Temperature factors, Ct": "Facteurs de température, Ct",
  "Only timber that stays hot for long loses strength; a deck in the sun cools at night and takes 1.":
    "Seul un bois longtemps chaud perd de la résistance ; une terrasse au soleil refroidit la nuit et prend 1.",
  "Temperature of the wood": "Température du bois",
  "Kept up for long.": "Maintenue longtemps.",
  "Tension and stiffness": "Traction et rigidité",
  "On Ft, E and Emin.": "Sur Ft, E et Emin.",
  "Other strengths, dry": "Autres résistances, sec",
  "On Fb, Fv and Fc.": "Sur Fb, Fv et Fc.",
  "Other strengths, wet": "Autres résistances, mouillé",
  "Beam stability factor, CL": "Facteur de stabilité, CL",
  "A floor fastened along the top edge keeps a joist from leaning over, so nothing is taken off.":
    "Un plancher fixé le long du bord supérieur empêche une solive de verser ; rien n'est donc ôté.",
  "Bearing length factor, Cb": "Facteur de longueur d'appui, Cb",
  "At the end of a piece nothing is added. Only a short seat well away from the ends would carry more.":
    "Au bout d'une pièce, rien ne s'ajoute. Seul un court siège loin des bouts porterait plus.",
  "Peak of shear in a rectangle": "Pointe de cisaillement dans un rectangle",
  "Shear is greatest in the middle of the depth: one and a half times the average.":
    "Le cisaillement est le plus grand à mi-hauteur : une fois et demie la moyenne.",
  "Section modulus of a rectangle: b d² over": "Module de section d'un rectangle : b d² sur",
  "Geometry of a rectangle that bends.": "Géométrie d'un rectangle fléchi.",
  "Greatest moment of an even load, share of w L²": "Plus grand moment d'une charge uniforme, part de w L²",
  "In the middle of one span on two supports.": "Au milieu d'une portée sur deux appuis.",
  "Greatest sag of an even load, share of w L⁴ ÷ (E I)":
    "Plus grande flèche d'une charge uniforme, part de w L⁴ ÷ (E I)",
  "Tables print spans to the nearest": "Les tableaux impriment les portées à",
  "Worked again, the published spans are rounded to the nearest inch, not down.":
    "Recalculées, les portées publiées sont arrondies au pouce le plus proche, non vers le bas.",
  "Flat use factors, Cfu": "Facteurs d'usage à plat, Cfu",
  "A plank laid flat may be stressed a little more. Members that stand on edge, as all here do, take 1.":
    "Un madrier à plat peut être un peu plus sollicité. Les pièces sur chant, comme toutes ici, prennent 1.",
  "10 stands for 10 and wider.": "10 vaut pour 10 et plus large.",
  "2 or 3 in thick": "Épaisseur 2 ou 3 po",
  "4 in thick": "Épaisseur 4 po",
  "Species in each group": "Essences de chaque groupe",
  "A published table prints one span for several species: the least of them, so that any may be bought.":
    "Un tableau publié imprime une portée pour plusieurs essences : la moindre, pour que chacune s'achète.",
  Group: "Groupe",
  "The name under which a table lists it; one species is a group of one.":
    "Le nom sous lequel un tableau le liste ; une essence est un groupe d'une.",
  "A species whose strength counts.": "Une essence dont la résistance compte.",
  "Timber may be weaker than its grade says.": "Le bois peut être plus faible que ne dit sa qualité.",
  "Across the grain timber varies more.": "En travers du fil, le bois varie plus.",
  "Load duration factor, KD": "Facteur de durée de charge, KD",
  "1 for people; 1.15 under a week in all, 0.65 for what always lies there.":
    "1 pour des gens ; 1,15 moins d'une semaine en tout, 0,65 pour ce qui est toujours là.",
  "System factor, KH": "Facteur de système, KH",
  "Three or more members not over 610 mm apart that share the load. A sheathed floor may take 1.4 in bending.":
    "Trois pièces ou plus à 610 mm au plus qui partagent la charge. Un plancher revêtu peut prendre 1,4 en flexion.",
  "Lateral stability factor, KL": "Facteur de stabilité latérale, KL",
  "1 where the floor holds the upper edge.": "1 si le plancher tient le bord supérieur.",
  "Bearing length factor, KB": "Facteur de longueur d'appui, KB",
  "Up to this least dimension, damp and slits count.":
    "Jusqu'à cette plus petite dimension, humidité et fentes comptent.",
  "Wet service factor, KSb": "Facteur de service humide, KSb",
  "On bending of thin timber.": "En flexion de bois mince.",
  "Wet service factor, KSv": "Facteur de service humide, KSv",
  "On shear of thin timber.": "En cisaillement de bois mince.",
  "Wet service factor, KScp": "Facteur de service humide, KScp",
  "On bearing, thin or thick.": "En portance, mince ou gros.",
  "Wet service factor, KSE": "Facteur de service humide, KSE",
  "On the stiffness of thin timber.": "Sur la rigidité de bois mince.",
  "Treatment factor, KT, incised and wet": "Facteur de traitement, KT, incisé et humide",
  "Treatment factor, KT, incised and dry": "Facteur de traitement, KT, incisé et sec",
  "Treatment factor on stiffness, incised and wet": "Facteur de traitement sur la rigidité, incisé et humide",
  "What is left of E.": "Ce qui reste de E.",
  "Treatment factor on stiffness, incised and dry": "Facteur de traitement sur la rigidité, incisé et sec",
  "The floor may be heavier than thought.": "Le plancher peut être plus lourd qu'on pense.",
  "More people may come than thought.": "Plus de gens peuvent venir qu'on pense.",
  "A check that uses more than this share of its limit passes, but has little room for a heavier load.":
    "Une vérification qui prend plus que cette part de sa limite est conforme, mais laisse peu de place à une charge plus lourde.",
}
