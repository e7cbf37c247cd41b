import type { Texts } from "../dictionary.ts"

export const limits: Texts = {
  "Limits of the place": "Limites de l'endroit",
  "What your own authority allows. Leave a limit blank until you have asked; its check then waits for you.":
    "Ce que permet votre municipalité. Laissez une limite vide tant que vous n'avez pas demandé ; sa vérification vous attend.",
  "Largest area without further permission": "Plus grande aire sans autre permission",
  "Many places ask for a permit above some area. Ask yours, and write its figure here with the name of who told you in your notes.":
    "Bien des municipalités exigent un permis au-dessus d'une certaine aire. Demandez à la vôtre, et entrez son chiffre ici, avec le nom de la personne dans vos notes.",
  "A small or low platform may still need a permit. Boundary distances, easements and drainage rules hold whatever its size. Ask before you buy anything.":
    "Une plateforme petite ou basse peut quand même exiger un permis. Distances aux limites, servitudes et règles de drainage valent quelle que soit sa taille. Demandez avant d'acheter.",
  "Area against your limit": "Aire comparée à votre limite",
  "Shows how near the platform is to the area at which your place asks for more.":
    "Montre à quel point la plateforme approche l'aire à partir de laquelle votre municipalité en demande plus.",
  "At this width a length of {length_within_area_limit} would stay within {area_limit}; or apply for the permit.":
    "À cette largeur, une longueur de {length_within_area_limit} resterait sous {area_limit} ; sinon, demandez le permis.",
  "Longest length within your area limit": "Plus grande longueur sous votre limite d'aire",
  "How long the platform could be at its present width.":
    "La longueur que la plateforme pourrait avoir à sa largeur actuelle.",
  "Greatest height without further permission": "Plus grande hauteur sans autre permission",
  "Many places ask for a permit above some height of the walking surface over the ground beside it. Ask yours, and from where they measure.":
    "Bien des municipalités exigent un permis au-dessus d'une certaine hauteur de la surface par rapport au sol à côté. Demandez à la vôtre, et d'où elle mesure.",
  "Height against your limit": "Hauteur comparée à votre limite",
  "The height is taken to the lowest ground beside the platform, which is what inspectors measure on a slope.":
    "La hauteur se prend au sol le plus bas à côté de la plateforme : c'est ce que mesurent les inspecteurs dans une pente.",
  "It stands {height_above_ground} above its lowest side, where {height_limit} is allowed. Lower the underside clearance, choose shallower timbers, turn the platform along the slope, or apply for the permit.":
    "Elle est à {height_above_ground} au-dessus de son côté le plus bas, pour {height_limit} permis. Réduisez le dégagement dessous, prenez des bois moins hauts, tournez la plateforme le long de la pente, ou demandez le permis.",
  "Drop that needs a guard": "Chute qui exige un garde-corps",
  "Above some drop, a railing is required. Ask your authority for the figure.":
    "Au-dessus d'une certaine chute, un garde-corps est exigé. Demandez le chiffre à votre municipalité.",
  "Guard: ground counts this far from the edge": "Garde-corps : le sol compte jusqu'à cette distance du bord",
  "Somebody who falls rolls on, so codes look at the ground some way out from the edge too.":
    "Qui tombe roule plus loin ; les codes regardent donc aussi le sol à quelque distance du bord.",
  "Greatest drop within that reach": "Plus grande chute à cette distance",
  "From the walking surface to the lowest ground that counts, with the slope carried on beyond the low corner.":
    "De la surface au sol le plus bas qui compte, la pente étant prolongée au-delà du coin bas.",
  "Is a guard needed?": "Faut-il un garde-corps ?",
  "Fails when the drop is more than your limit: then a guard must be designed, which this workbook does not do.":
    "Non conforme quand la chute dépasse votre limite : un garde-corps doit alors être conçu, ce que ce classeur ne fait pas.",
  "A net or a low edge board is not a guard and must not be leaned on as one.":
    "Un filet ou une planche de rive basse n'est pas un garde-corps et ne doit pas servir d'appui.",
  "The drop is {drop_within_reach}: plan a guard to your code, or lower the platform or raise the ground beside it until the drop is less.":
    "La chute est de {drop_within_reach} : prévoyez un garde-corps selon votre code, ou abaissez la plateforme ou remontez le sol à côté jusqu'à ce que la chute soit moindre.",
  "Slope beside it that needs a guard": "Pente à côté qui exige un garde-corps",
  "Some codes ask for a guard beside steep ground whatever the drop. Ask whether yours does, and write rise over run.":
    "Certains codes exigent un garde-corps à côté d'un sol raide, quelle que soit la chute. Demandez si le vôtre le fait, et entrez hauteur sur longueur.",
  "Is the ground beside it too steep to go without a guard?":
    "Le sol à côté est-il trop raide pour se passer de garde-corps ?",
  "The steepest way down is taken, as it may lie beside any edge. Ground beyond the platform is taken to fall as it does below: look at it.":
    "On prend la descente la plus raide, car elle peut être le long de n'importe quel bord. Au-delà de la plateforme, le sol est supposé descendre comme dessous : allez voir.",
  "The ground falls at {ground_steepness}: grade it flatter beside the platform, or plan a guard to your code.":
    "Le sol descend à {ground_steepness} : aplanissez-le à côté de la plateforme, ou prévoyez un garde-corps selon votre code.",
  "Highest step allowed": "Plus haute marche permise",
  "No single step up may be higher than this. It decides how many steps each side needs.":
    "Aucune marche ne peut être plus haute. C'est ce qui décide du nombre de marches de chaque côté.",
  "Distance to the nearest boundary": "Distance à la limite la plus proche",
  "Measured from the outside of the frame, or of the net if that stands further out.":
    "Mesurée de l'extérieur du cadre, ou du filet s'il dépasse.",
  "Least distance allowed": "Distance minimale permise",
  "Zoning keeps structures off the boundary, small ones too. People have had to move finished work.":
    "Le zonage tient les constructions loin de la limite, les petites aussi. Des gens ont dû déplacer un ouvrage fini.",
  "Far enough from the boundary?": "Assez loin de la limite ?",
  "Holds what you measured against what your place asks.":
    "Compare ce que vous avez mesuré à ce que demande votre municipalité.",
  "Move the platform until it is at least {boundary_distance_least} from the boundary.":
    "Déplacez la plateforme pour qu'elle soit à au moins {boundary_distance_least} de la limite.",
  "Elsewhere: areas": "Ailleurs : aires",
  "What other places say, so that you know what to ask for. Ask for your own place's figures.":
    "Ce que disent d'autres endroits, pour que vous sachiez quoi demander. Demandez les chiffres de chez vous.",
  "What the figure is of.": "De quoi est le chiffre.",
  Where: "Où",
  "Where it holds.": "Où il vaut.",
  "Up to it, less is asked.": "Jusque-là, on en demande moins.",
  Mind: "À noter",
  "What else the place says about it.": "Ce que l'endroit en dit d'autre.",
  "Who says so": "Qui le dit",
  "The text that the figure is from, and its record.": "Le texte d'où vient le chiffre, et sa fiche.",
  "Elsewhere: heights and depths": "Ailleurs : hauteurs et profondeurs",
  "Height, depth or reach": "Hauteur, profondeur ou distance",
  "Above it, more is asked.": "Au-dessus, on en demande plus.",
  "Elsewhere: slopes": "Ailleurs : pentes",
  "Slope, rise over run": "Pente, hauteur sur longueur",
  "On steeper ground beside the edge, a guard is asked for.":
    "Sur un sol plus raide à côté du bord, un garde-corps est exigé.",
  "Measured from whatever stands out furthest: frame, stone, or the shed's roof.":
    "Mesurée de ce qui dépasse le plus : cadre, pierre ou toit du cabanon.",
  "Many places ask for a permit above some area, for the floor or for the greenhouse on it. Ask yours, and write its figure here with the name of who told you in your notes.":
    "Bien des municipalités exigent un permis au-dessus d'une certaine aire, pour le plancher ou pour la serre dessus. Demandez à la vôtre, et entrez son chiffre ici, avec le nom de la personne dans vos notes.",
}
