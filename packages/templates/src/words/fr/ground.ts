import type { Texts } from "../dictionary.ts"

export const ground: Texts = {
  "Ground and fall": "Sol et dénivelé",
  "How the ground lies. Two falls are enough to start; levels of three points or more replace them.":
    "Comment le sol se présente. Deux dénivelés suffisent pour commencer ; les niveaux de trois points ou plus les remplacent.",
  "Fall along the length": "Dénivelé sur la longueur",
  "How much lower the ground is at the far end than at the high corner. Stretch a level string and measure down to the grass.":
    "De combien le sol est plus bas au bout éloigné qu'au coin haut. Tendez un cordeau de niveau et mesurez jusqu'à l'herbe.",
  "Fall across the width": "Dénivelé sur la largeur",
  "How much lower the ground is across the short way, measured from the same high corner.":
    "De combien le sol est plus bas dans le sens court, mesuré du même coin haut.",
  "Surveyed levels": "Niveaux relevés",
  "Levels of the ground, if you took them. From three points on, a plane is laid through them and used in place of the two falls.":
    "Les niveaux du sol, si vous les avez pris. À partir de trois points, un plan passe par eux et remplace les deux dénivelés.",
  "How far along the length the point is, from the high corner.":
    "À quelle distance sur la longueur se trouve le point, depuis le coin haut.",
  "Across the width": "Sur la largeur",
  "How far across the width the point is, from the high corner.":
    "À quelle distance sur la largeur se trouve le point, depuis le coin haut.",
  Level: "Niveau",
  "Height of the ground there, up positive, all from one mark that does not move.":
    "Hauteur du sol à cet endroit, positive vers le haut, toutes depuis un repère qui ne bouge pas.",
  "Along, from the middle of the points": "En long, depuis le milieu des points",
  "Working from the middle of the points keeps the sums of the plane small and exact.":
    "Travailler depuis le milieu des points garde les sommes du plan petites et exactes.",
  "Across, from the middle of the points": "En travers, depuis le milieu des points",
  "As along the length.": "Comme sur la longueur.",
  "Level, from the mean level": "Niveau, depuis le niveau moyen",
  "Against the mean level, so that any mark may serve as zero.":
    "Par rapport au niveau moyen, pour que tout repère puisse servir de zéro.",
  "Off the plane": "Écart au plan",
  "How far the ground at this point is from the plane: a bump or a hollow that the plane smooths over.":
    "À quelle distance du plan est le sol en ce point : une bosse ou un creux que le plan lisse.",
  "The plane through the levels": "Le plan par les niveaux",
  "The sums from which the plane of least squares follows, and how well it fits. One row.":
    "Les sommes dont découle le plan des moindres carrés, et à quel point il colle. Une ligne.",
  "Points surveyed": "Points relevés",
  "Three points fix a plane; more of them even out stones and tufts.":
    "Trois points fixent un plan ; d'autres lissent pierres et touffes.",
  "Middle of the points, along": "Milieu des points, en long",
  "The plane of best fit passes through the middle of the points.":
    "Le plan le mieux ajusté passe par le milieu des points.",
  "Middle of the points, across": "Milieu des points, en travers",
  "Mean level": "Niveau moyen",
  "The plane has the mean level at the middle of the points.":
    "Le plan a le niveau moyen au milieu des points.",
  "Spread of the points along": "Étalement des points en long",
  "One of the five sums from which the plane of least squares follows.":
    "L'une des cinq sommes dont découle le plan des moindres carrés.",
  "Spread of the points across": "Étalement des points en travers",
  "Spread of the points, both ways": "Étalement des points, dans les deux sens",
  "Levels against the length": "Niveaux selon la longueur",
  "Levels against the width": "Niveaux selon la largeur",
  "How nearly the points lie in one line": "À quel point les points sont en ligne",
  "Points in one line leave the plane free to tilt about that line. 1 is a perfect line, and so are one or two points; 0 is well spread, or no points at all.":
    "Des points en ligne laissent le plan libre de basculer autour d'elle. 1 est une ligne parfaite, comme un ou deux points ; 0 est bien étalé, ou sans point.",
  "Fall along, by the levels": "Dénivelé en long, d'après les niveaux",
  "How much the plane falls for each foot along the length; 0 while the levels cannot be used.":
    "De combien le plan descend par pied de longueur ; 0 tant que les niveaux ne servent pas.",
  "Fall across, by the levels": "Dénivelé en travers, d'après les niveaux",
  "Worst point off the plane": "Pire point hors du plan",
  "The real ground may be this much higher or lower than the plane. Check the supports nearest to such a point on site.":
    "Le sol réel peut être d'autant plus haut ou plus bas que le plan. Vérifiez sur place les appuis les plus proches d'un tel point.",
  "Most that the points may lie in one line": "Le plus que les points peuvent être en ligne",
  "Nearer to one line than this, a small slip in one level would tilt the whole plane.":
    "Plus près d'une ligne que cela, une petite erreur de niveau ferait basculer tout le plan.",
  "Can the levels be used?": "Les niveaux peuvent-ils servir ?",
  "A plane needs at least three points, not in one line. Until then the two falls are used.":
    "Un plan demande au moins trois points, pas en ligne. D'ici là, les deux dénivelés servent.",
  "Take at least one more level, well to the side of the others: the points are too few or lie in one line. Meanwhile the two falls above are used.":
    "Prenez au moins un niveau de plus, bien à côté des autres : les points sont trop peu nombreux ou en ligne. En attendant, les deux dénivelés ci-dessus servent.",
  "Levels in use?": "Niveaux utilisés ?",
  "Yes: the plane through your levels is used. No: the two falls are.":
    "Oui : le plan par vos niveaux sert. Non : les deux dénivelés.",
  "Fall of the ground along the length": "Dénivelé du sol sur la longueur",
  "How much the ground falls for each foot along the length. Negative: it rises.":
    "De combien le sol descend par pied de longueur. Négatif : il monte.",
  "Fall of the ground across the width": "Dénivelé du sol sur la largeur",
  "How much the ground falls for each foot across the width. Negative: it rises.":
    "De combien le sol descend par pied de largeur. Négatif : il monte.",
  "Ground at the first corner": "Sol au premier coin",
  "The level of the plane at the corner from which everything is measured; 0 when no levels were taken.":
    "Le niveau du plan au coin d'où tout se mesure ; 0 si aucun niveau n'a été pris.",
  "Shape of the ground": "Forme du sol",
  "One even plane smooths out stones and tufts; between points follows every hump and hollow that you measured. Automatic takes the plane while every point is near it.":
    "Un seul plan lisse pierres et touffes ; entre les points, on suit chaque bosse et chaque creux mesurés. Automatique prend le plan tant que tous les points en sont proches.",
  automatic: "automatique",
  plane: "plan",
  "between points": "entre les points",
  "A plane will do up to": "Un plan suffit jusqu'à",
  "Grass, a boot heel and a hand-held level make about an inch between them; a point further than this from the plane is a real hump or hollow.":
    "L'herbe, un talon de botte et un niveau tenu à la main font environ un pouce à eux trois ; un point plus loin du plan est une vraie bosse ou un vrai creux.",
  "Between points in use?": "Entre les points utilisé ?",
  "Yes: the ground at every place is read from the triangle of levels round it. No: from one plane. Three points are a plane already; only a fourth can show that the ground is not one.":
    "Oui : le sol de chaque endroit se lit dans le triangle de niveaux qui l'entoure. Non : sur un seul plan. Trois points sont déjà un plan ; seul un quatrième peut montrer que le sol n'en est pas un.",
  "Levels nearer than this are one point": "Des niveaux plus proches que cela sont un seul point",
  "Two levels at one place contradict each other, and a slip between them tilts the ground steeply.":
    "Deux niveaux au même endroit se contredisent, et une erreur entre eux incline fortement le sol.",
  "Nearest point to each point": "Point le plus proche de chaque point",
  "Shows whether a point was entered twice, and where the survey is thin.":
    "Montre si un point a été entré deux fois, et où le relevé est clairsemé.",
  Point: "Point",
  "The row of the surveyed levels.": "La ligne des niveaux relevés.",
  "Nearest point": "Point le plus proche",
  "The row of the point nearest to it.": "La ligne du point le plus proche.",
  Apart: "Distance",
  "From the one to the other, level.": "De l'un à l'autre, à l'horizontale.",
  "Repeats an earlier point": "Répète un point précédent",
  "1 where an earlier point stands at the same place.": "1 si un point précédent est au même endroit.",
  "Has every level a place of its own?": "Chaque niveau a-t-il son endroit ?",
  "Two levels at one place cannot both be right. Held against each other: the points at a place of their own, and all points.":
    "Deux niveaux au même endroit ne peuvent pas être justes tous les deux. Comparés : les points à leur propre endroit, et tous les points.",
  "Delete one of each pair of points that stand nearer than {levels_apart_least} to one another, or correct where it stands. The table of nearest points shows which.":
    "Supprimez un point de chaque paire plus proche que {levels_apart_least}, ou corrigez sa place. Le tableau des points les plus proches montre lesquels.",
  "Ground at the corners, between points": "Sol aux coins, entre les points",
  "Read from the triangle of surveyed levels round each place. Empty while the plane is in use.":
    "Lu dans le triangle de niveaux relevés autour de chaque endroit. Vide tant que le plan sert.",
  "Level of the ground there, up positive, one row for each row of the other table.":
    "Niveau du sol à cet endroit, positif vers le haut, une ligne pour chaque ligne de l'autre tableau.",
  Corners: "Coins",
  "The ground at the four corners, in order round the platform from the first.":
    "Le sol aux quatre coins, dans l'ordre autour de la plateforme depuis le premier.",
  "0 at the first end, the full length at the far end.":
    "0 au premier bout, toute la longueur au bout éloigné.",
  "0 at the first side, the full width at the other.": "0 au premier côté, toute la largeur à l'autre.",
  "Level of the ground at the corner, up positive.": "Niveau du sol au coin, positif vers le haut.",
  "Ground at the middle of each side, between points": "Sol au milieu de chaque côté, entre les points",
  "Middle of each side": "Milieu de chaque côté",
  "The ground there, where steps or a ramp stand: the first end, the far end, the first long side, the other one.":
    "Le sol là où vont des marches ou une rampe : premier bout, bout éloigné, premier long côté, l'autre.",
  "0 at the first end, the full length at the far end, half of it at a long side.":
    "0 au premier bout, toute la longueur au bout éloigné, la moitié à un long côté.",
  "The middle of an end; 0 at the first long side, the full width at the other.":
    "Le milieu d'un bout ; 0 au premier long côté, toute la largeur à l'autre.",
  "Level of the ground there, up positive.": "Niveau du sol à cet endroit, positif vers le haut.",
  "Ground at the high corner": "Sol au coin haut",
  "The platform's height is set here: its underside clears this corner.":
    "La hauteur de la plateforme se règle ici : son dessous dégage ce coin.",
  "Ground at the low corner": "Sol au coin bas",
  "The tallest stack and the biggest step are near here.":
    "La pile la plus haute et la plus grande marche sont près d'ici.",
  "Fall, high corner to low corner": "Dénivelé, du coin haut au coin bas",
  "The stacks of blocks make up this much. Most people guess it too small.":
    "Les piles de blocs rattrapent cela. On le devine presque toujours trop petit.",
  "Steepest slope of the ground": "Pente la plus forte du sol",
  "Both falls together, straight downhill.": "Les deux dénivelés ensemble, droit vers le bas.",
  "Steepest ground for loose blocks": "Sol le plus raide pour des blocs libres",
  "On steeper ground, blocks that only stand on stone can creep downhill; the site wants terracing or proper footings.":
    "Sur un sol plus raide, des blocs simplement posés sur la pierre peuvent glisser peu à peu ; il faut alors une terrasse ou de vraies fondations.",
  "Is the ground gentle enough?": "Le sol est-il assez doux ?",
  "Stacks of loose blocks hold by their weight alone.":
    "Des piles de blocs libres ne tiennent que par leur poids.",
  "Choose flatter ground, or cut a level bed first. If it must stand here, have someone qualified design footings that cannot slide.":
    "Choisissez un sol plus plat, ou taillez d'abord une assise de niveau. S'il faut le faire ici, faites concevoir par une personne qualifiée des fondations qui ne glissent pas.",
  "The stone is thickest and the step highest near here.":
    "La pierre est la plus épaisse et la marche la plus haute près d'ici.",
  "Stone makes up this much. Most people guess it too small.":
    "La pierre rattrape cela. On le devine presque toujours trop petit.",
  "Steepest ground for a pad of stone": "Sol le plus raide pour une assise de pierre",
  "On steeper ground, stone held by an edging alone can creep downhill; the site wants terracing or proper footings.":
    "Sur un sol plus raide, une pierre retenue par une simple bordure peut glisser peu à peu ; il faut alors une terrasse ou de vraies fondations.",
  "The pad holds by its weight and its edging alone.": "L'assise ne tient que par son poids et sa bordure.",
}
