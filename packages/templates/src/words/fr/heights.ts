import type { Texts } from "../dictionary.ts"

export const heights: Texts = {
  "Heights and steps": "Hauteurs et marches",
  "How high the surface is above the ground on every side, and how many steps each side needs.":
    "À quelle hauteur est la surface au-dessus du sol de chaque côté, et combien de marches il faut à chacun.",
  "Surface above the high corner": "Surface au-dessus du coin haut",
  "Clearance, frame and surface, added up: the least height anywhere on the edge.":
    "Dégagement, cadre et surface, additionnés : la moindre hauteur de tout le bord.",
  "Level of the surface": "Niveau de la surface",
  "In the same levels as the ground.": "Dans les mêmes niveaux que le sol.",
  "Stations on each side": "Stations de chaque côté",
  "At how many places along each side the height is taken, the first corner included.":
    "À combien d'endroits de chaque côté la hauteur est prise, le premier coin compris.",
  "Ground at the edge, between points": "Sol au bord, entre les points",
  "Height round the edge": "Hauteur autour du bord",
  "The surface above the ground at each station round the platform, in order from the first corner.":
    "La surface au-dessus du sol à chaque station autour de la plateforme, dans l'ordre depuis le premier coin.",
  Side: "Côté",
  "1 and 3 are the long sides, 2 the far end, 4 the first end.":
    "1 et 3 sont les longs côtés, 2 le bout éloigné, 4 le premier bout.",
  "Share of the side": "Part du côté",
  "0 at the corner where the side begins.": "0 au coin où commence le côté.",
  "Where the station is.": "Où est la station.",
  "Level of the ground beside the platform there.": "Niveau du sol à côté de la plateforme à cet endroit.",
  "Surface above the ground": "Surface au-dessus du sol",
  "What somebody who steps off here drops.": "De combien tombe qui sort du bord ici.",
  "Greatest height above the ground": "Plus grande hauteur au-dessus du sol",
  "To the lowest ground beside the platform: the height that permit rules ask about.":
    "Jusqu'au sol le plus bas à côté : la hauteur dont parlent les règles de permis.",
  "Least height above the ground": "Moindre hauteur au-dessus du sol",
  "Where a trolley or a wheelchair gets on most easily.":
    "Là où un chariot ou un fauteuil roulant monte le plus facilement.",
  "Greatest drop along each side": "Plus grande chute de chaque côté",
  "Where somebody who steps off a side falls farthest.": "Là où qui sort d'un côté tombe de plus haut.",
  "As in the heights round the edge.": "Comme dans les hauteurs autour du bord.",
  Drop: "Chute",
  "At its worst station, both corners with it.": "À sa pire station, les deux coins compris.",
  "Where that is.": "Où c'est.",
  "Steps at the high end": "Marches au bout haut",
  "Each side has its own drop, and so its own number of steps.":
    "Chaque côté a sa chute, donc son nombre de marches.",
  "Steps at the low end": "Marches au bout bas",
  "Steps at the first long side": "Marches au premier long côté",
  "Steps at the other long side": "Marches à l'autre long côté",
  "Getting up at each side": "Monter de chaque côté",
  "From the ground at the middle of each side to the surface: steps or ramps stand there. The end with the higher ground first, then the other end and the two long sides.":
    "Du sol au milieu de chaque côté jusqu'à la surface : marches ou rampes vont là. Le bout au sol le plus haut d'abord, puis l'autre bout et les deux longs côtés.",
  "Measure the rise where the foot of the steps will stand. Steps need a firm, level landing, and from some number of steps a handrail: ask your authority.":
    "Mesurez la montée là où sera le pied des marches. Elles veulent un palier ferme et de niveau et, à partir d'un certain nombre, une main courante : demandez à votre municipalité.",
  "The higher end first. The first long side is the one that levels across are measured from.":
    "Le bout haut d'abord. Le premier long côté est celui d'où se mesurent les niveaux en travers.",
  "Its number": "Son numéro",
  "Steps here?": "Des marches ici ?",
  "As you chose.": "Comme vous avez choisi.",
  "At, along the length": "À, sur la longueur",
  "Where this end of the platform is: the first end's 0 or the whole length.":
    "Où est ce bout de la plateforme : le 0 du premier bout ou toute la longueur.",
  "At the middle of the side.": "Au milieu du côté.",
  Rise: "Montée",
  "From the ground there to the surface.": "Du sol à cet endroit jusqu'à la surface.",
  "Steps up": "Marches à monter",
  "How often you lift your foot. The last one is onto the platform itself.":
    "Combien de fois vous levez le pied. La dernière est sur la plateforme elle-même.",
  "Height of each step": "Hauteur de chaque marche",
  "All steps of one flight must be alike: people trip on the odd one.":
    "Toutes les marches d'une volée doivent être pareilles : on trébuche sur celle qui diffère.",
  "Greatest drop along the side": "Plus grande chute le long du côté",
  "To the lowest ground beside it. Where it is much more than the rise, measure where the steps will stand.":
    "Jusqu'au sol le plus bas à côté. Si c'est bien plus que la montée, mesurez là où seront les marches.",
  "Within the limit anywhere on the side?": "Dans la limite partout sur le côté ?",
  "Yes: as many steps stay within your limit even where the drop is greatest. No: keep them to the middle, or make one step more.":
    "Oui : ce nombre de marches reste dans votre limite même là où la chute est la plus grande. Non : gardez-les au milieu, ou faites une marche de plus.",
  "Treads to make": "Girons à faire",
  "One fewer than the steps: the platform is the last tread. None where you want no steps.":
    "Un de moins que les marches : la plateforme est le dernier. Aucun là où vous ne voulez pas de marches.",
  "Length of a ramp": "Longueur d'une rampe",
  "Along the ground, as if it were level in front.": "Sur le sol, comme s'il était de niveau devant.",
  "Steps up at the high end": "Marches à monter au bout haut",
  "Height of each step at the high end": "Hauteur de chaque marche au bout haut",
  "Steps up at the low end": "Marches à monter au bout bas",
  "On a slope the two ends often need different numbers of steps.":
    "Dans une pente, les deux bouts demandent souvent un nombre différent de marches.",
  "Steps need a firm, level landing, and from some number of steps a handrail: ask your authority.":
    "Les marches veulent un palier ferme et de niveau et, à partir d'un certain nombre, une main courante : demandez à votre municipalité.",
  "Height of each step at the low end": "Hauteur de chaque marche au bout bas",
  "All steps of one flight must be alike.": "Toutes les marches d'une volée doivent être pareilles.",
  "Slope of a ramp": "Pente d'une rampe",
  "Rise over run. One in twelve is the usual steepest for a wheelchair.":
    "Hauteur sur longueur. Un sur douze est le plus raide usuel pour un fauteuil roulant.",
  "Length of a ramp at the high end": "Longueur d'une rampe au bout haut",
  "The high end is where a ramp is shortest.": "C'est au bout haut qu'une rampe est la plus courte.",
  "Depth of a tread": "Profondeur d'un giron",
  "From front to back. A whole shoe should fit on it.":
    "De l'avant à l'arrière. Un soulier entier devrait y tenir.",
  "Where the steps stand": "Où vont les marches",
  "So that the ground beside the platform is kept free for them, and so that they can be drawn.":
    "Pour que le sol à côté de la plateforme leur reste libre, et pour qu'on puisse les dessiner.",
  "Each side has its own steps.": "Chaque côté a ses marches.",
  "At a short side": "À un petit côté",
  "The first two are the ends.": "Les deux premiers sont les bouts.",
  Treads: "Girons",
  "One less than risers; none where none are wanted.":
    "Un de moins que les contremarches ; aucun si on n'en veut pas.",
  Riser: "Contremarche",
  "All of one flight alike.": "Toutes celles d'une volée pareilles.",
  "Begins, along the length": "Commence, sur la longueur",
  "At the edge of the platform.": "Au bord de la plateforme.",
  "Begins, across the width": "Commence, sur la largeur",
  "A tread goes on by, along the length": "Un giron avance de, sur la longueur",
  "Away from the platform.": "En s'éloignant de la plateforme.",
  "A tread goes on by, across the width": "Un giron avance de, sur la largeur",
}
