import type { Texts } from "../dictionary.ts"

export const strength2: Texts = {
  "Below 0 the member would lift off unless it is tied down.":
    "Sous 0, la pièce se soulèverait si elle n'est pas retenue.",
  "Moment, shear and sag along each member": "Moment, cisaillement et flèche le long de chaque pièce",
  "At a support": "Sur un appui",
  "Where the line is held up.": "Où la ligne est portée.",
  "At a joint": "À un joint",
  "Where two pieces meet, and no bending passes.":
    "Où deux morceaux se rejoignent, sans que la flexion passe.",
  "Positive where the left part pushes the right part up.":
    "Positif où la partie gauche pousse la partie droite vers le haut.",
  "With the member's own stiffness, which makes of the sag at 1 GPa the one that is checked. Blank where no table holds it.":
    "Avec la rigidité de la pièce elle-même, qui fait de la flèche à 1 GPa celle qui est vérifiée. Vide si aucune table ne la contient.",
  "Points for a picture: the hardest bent line of each kind, with everything loaded.":
    "Des points pour une image : la ligne la plus fléchie de chaque sorte, avec tout chargé.",
  "From its first end.": "Depuis son premier bout.",
  Moment: "Moment",
  "Positive where the underside is pulled.": "Positif là où le dessous est tendu.",
  "Sag, at 1 GPa": "Flèche, à 1 GPa",
  Sag: "Flèche",
  "Are the skids strong enough?": "Les patins sont-ils assez solides ?",
  "The worse of bending and shear, of what the timber may bear.":
    "Le pire de la flexion et du cisaillement, sur ce que le bois peut porter.",
  "What gives first: {strength_first}.": "Ce qui cède en premier : {strength_first}.",
  "Shorten the span of the skids, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez la portée des patins, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Si celle-ci est hors des tableaux, choisissez une essence, une qualité et une grosseur qu'ils ont.",
  "Are the joists strong enough?": "Les solives sont-elles assez solides ?",
  "Shorten the span of the joists, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez la portée des solives, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Si celle-ci est hors des tableaux, choisissez une essence, une qualité et une grosseur qu'ils ont.",
  "Are the net posts strong enough?": "Les poteaux de filet sont-ils assez solides ?",
  "Shorten the span of the net posts, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez les poteaux de filet, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Si celle-ci est hors des tableaux, choisissez une essence, une qualité et une grosseur qu'ils ont.",
  "Are the members' seats long enough?": "Les sièges des pièces sont-ils assez longs ?",
  "Wood is crushed across the grain where it sits. Span tables leave this out.":
    "Le bois s'écrase en travers du fil là où il repose. Les tableaux de portées n'en parlent pas.",
  "Give the piece a longer seat or a wider one: the column of seats needed says how long. {strength_first}.":
    "Donnez à la pièce un siège plus long ou plus large : la colonne des sièges requis dit combien. {strength_first}.",
  "Is it stiff enough?": "Est-ce assez rigide ?",
  "A floor that sags more than this feels soft and cracks what lies on it, long before it breaks.":
    "Un plancher qui fléchit plus que cela semble mou et fend ce qui est posé dessus, bien avant de rompre.",
  "Shorten the span, or take a deeper size: twice the depth is eight times as stiff. {strength_first}.":
    "Raccourcissez la portée, ou prenez plus haut : deux fois plus haut est huit fois plus rigide. {strength_first}.",
  "Factors of design": "Facteurs de calcul",
  "What is taken off or added to a published strength, and to a load. Each row says why, and whose it is.":
    "Ce qui s'ôte ou s'ajoute à une résistance publiée, et à une charge. Chaque ligne dit pourquoi, et de qui.",
  Factor: "Facteur",
  "As the standards call it.": "Comme l'appellent les normes.",
  Value: "Valeur",
  "1 changes nothing.": "1 ne change rien.",
  Why: "Pourquoi",
  "What it stands for.": "Ce qu'il représente.",
  "The text that the figure is from, and its place.": "Le texte d'où vient le chiffre, et sa place.",
  "Seen or recalled": "Vu ou de mémoire",
  "Confirm what was recalled.": "Confirmez ce qui est de mémoire.",
  "Thresholds and limits of design": "Seuils et limites de calcul",
  "From where a factor counts, and how far a floor may sag.":
    "À partir d'où un facteur compte, et jusqu'où un plancher peut fléchir.",
  "Wet service counts in bending from": "Le service humide compte en flexion à partir de",
  "Below this Fb × CF, wet wood bends no worse than dry wood.":
    "Sous ce Fb × CF, le bois mouillé ne fléchit pas moins bien que le sec.",
  "Members share up to a spacing of": "Les pièces partagent jusqu'à un espacement de",
  "Joists further apart carry alone.": "Des solives plus écartées portent seules.",
  "Wet and incised: thin up to": "Humide et incisé : mince jusqu'à",
  "In limit states, damp and slits count up to this least dimension.":
    "Aux états limites, humidité et fentes comptent jusqu'à cette plus petite dimension.",
  "Sag under people: span over": "Flèche sous les gens : portée sur",
  "A larger number is stiffer.": "Un plus grand nombre est plus rigide.",
  "Sag in all: span over": "Flèche en tout : portée sur",
  "With the platform's own weight. The usual companion of the limit under people.":
    "Avec le poids propre de la plateforme. Le compagnon usuel de la limite sous les gens.",
  "Wet sand, silt and gravel bear": "Sable, silt et gravier mouillés portent",
  "Of what they bear dry.": "De ce qu'ils portent secs.",
  "Stiffness that sags are first worked for": "Rigidité pour laquelle les flèches se calculent d'abord",
  "Only a step of the calculation: the sag of your timber is this sag, times this stiffness over its own.":
    "Seulement un pas du calcul : la flèche de votre bois est celle-ci, fois cette rigidité divisée par la sienne.",
  "Load duration factors, KD": "Facteurs de durée de charge, KD",
  "The Canadian rule has three classes; each duration of the other table is in one of them.":
    "La règle canadienne a trois classes ; chaque durée de l'autre tableau est dans l'une d'elles.",
  "How long in all": "Durée en tout",
  "Over the life of the platform, added up.": "Sur la vie de la plateforme, en tout.",
  KD: "KD",
  "On the specified strengths.": "Sur les résistances prévues.",
  "Live loads on floor sheets": "Surcharges sur panneaux de plancher",
  "What the panel makers recommend for the span rating that is sold in each thickness. Dry, with 10 psf of dead load, and a sag of the span over 360.":
    "Ce que recommandent les fabricants de panneaux pour la cote de portée vendue dans chaque épaisseur. Sec, avec 10 lb/pi² de charge permanente, et une flèche de la portée sur 360.",
  "Sheets from": "Panneaux à partir de",
  "Nominal thickness of the span rating.": "Épaisseur nominale de la cote de portée.",
  "Joist spacing": "Espacement des solives",
  "Strength axis across the joists.": "Axe fort en travers des solives.",
  "Live load up to": "Surcharge jusqu'à",
  "For this spacing.": "Pour cet espacement.",
  "Spacings that your sheets allow": "Espacements que permettent vos panneaux",
  "The rows of the table that are for sheets as thick as yours and loads as heavy as yours.":
    "Les lignes du tableau qui valent pour des panneaux aussi épais et des charges aussi lourdes que les vôtres.",
  "Spacing allowed": "Espacement permis",
  "0 where the sheet is too thin or the load too heavy for the row.":
    "0 si le panneau est trop mince ou la charge trop lourde pour la ligne.",
  "Are the joists close enough for the sheets?": "Les solives sont-elles assez proches pour les panneaux ?",
  "A sheet that spans too far sags between the joists and cracks what lies on it.":
    "Un panneau qui porte trop loin fléchit entre les solives et fend ce qui est posé dessus.",
  "The table was recalled, not read: hold it against the maker's paper and your local code. Look for the span rating stamped on the sheet, lay its strength axis across the joists, and use a sheet that is made for the wet.":
    "Le tableau est de mémoire, non lu : comparez-le au document du fabricant et à votre code local. Cherchez la cote de portée estampillée sur le panneau, mettez son axe fort en travers des solives, et prenez un panneau fait pour l'humidité.",
  "Set the joists closer together, or take thicker sheets.":
    "Rapprochez les solives, ou prenez des panneaux plus épais.",
  "What acts in each member, what its timber may bear, and what gives first. The skids are worked as though the stone had settled between the places along them, and held them only there.":
    "Ce qui agit dans chaque pièce, ce que son bois peut porter, et ce qui cède en premier. Les patins sont calculés comme si la pierre s'était tassée entre les emplacements et ne les tenait que là.",
  "A sleeper as a beam upside down": "Une traverse comme une poutre à l'envers",
  "The stone pushes up all along it, and the stringers hold it down. One row, the busiest sleeper.":
    "La pierre pousse vers le haut tout du long, et les longerons la retiennent. Une ligne, la traverse la plus chargée.",
  "Begins across the walk at": "Commence en travers du sentier à",
  "It lies in the middle.": "Elle est au milieu.",
  "Width of walk for each length of it": "Largeur de sentier par longueur de traverse",
  "All that comes down on it, shared evenly along its length.":
    "Tout ce qui arrive dessus, partagé également sur sa longueur.",
  "Are the stringers strong enough?": "Les longerons sont-ils assez solides ?",
  "Shorten the span of the stringers, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez la portée des longerons, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Si celle-ci est hors des tableaux, choisissez une essence, une qualité et une grosseur qu'ils ont.",
  "Are the sleepers strong enough?": "Les traverses sont-elles assez solides ?",
  "Shorten the span of the sleepers, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez la portée des traverses, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Si celle-ci est hors des tableaux, choisissez une essence, une qualité et une grosseur qu'ils ont.",
  "Planks that meet over the same pad": "Madriers qui se rejoignent sur la même dalle d'appui",
  "Where some planks of a beam meet, the others carry its bending alone; where all of them do, the beam turns there like a hinge.":
    "Là où certains madriers d'une poutre se rejoignent, les autres portent seuls sa flexion ; là où tous le font, la poutre y tourne comme une charnière.",
  Beam: "Poutre",
  "Planks are counted beam by beam.": "Les madriers se comptent poutre par poutre.",
  "Along the beam": "Le long de la poutre",
  "The middle of the pad.": "Le milieu de la dalle d'appui.",
  "Beam and pad in one number": "Poutre et dalle d'appui en un nombre",
  "To find the joints that lie together.": "Pour trouver les joints qui tombent ensemble.",
  "Planks that meet there": "Madriers qui s'y rejoignent",
  "Of this beam, over this pad.": "De cette poutre, sur cette dalle d'appui.",
  "Beam that turns there": "Poutre qui y tourne",
  "0 where a plank runs through.": "0 si un madrier est continu.",
  "Planks lost to bending": "Madriers perdus pour la flexion",
  "Where a plank runs through, those that do not.": "Si un madrier est continu, ceux qui ne le sont pas.",
  "Are the beams strong enough?": "Les poutres sont-elles assez solides ?",
  "Shorten the span of the beams, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez la portée des poutres, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Si celle-ci est hors des tableaux, choisissez une essence, une qualité et une grosseur qu'ils ont.",
  "Can the ground bear the busiest pad by statics?":
    "Le sol peut-il porter la dalle d'appui la plus chargée, par la statique ?",
  "Loads by half the way to each neighbour are how footing tables count; a beam that runs on over a support leans up to a quarter harder on it. This second check takes that, and everything loaded at once; the harder of the two decides.":
    "Les tableaux de fondations comptent la charge à mi-distance des voisins ; une poutre continue sur un appui y pèse jusqu'à un quart de plus. Cette deuxième vérification prend cela, et tout chargé à la fois ; la plus sévère des deux décide.",
  "Give the busiest pad a larger foot, or set the supports closer together.":
    "Donnez un pied plus grand à la dalle d'appui la plus chargée, ou rapprochez les appuis.",
  "Are the bearers strong enough?": "Les lambourdes sont-elles assez solides ?",
  "Shorten the span of the bearers, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.":
    "Raccourcissez la portée des lambourdes, rapprochez-les, ou prenez la grosseur suivante ou une meilleure qualité. Si celle-ci est hors des tableaux, choisissez une essence, une qualité et une grosseur qu'ils ont.",
  "Can the ground bear the busiest slab by statics?":
    "Le sol peut-il porter la dalle la plus chargée, par la statique ?",
  "Give the busiest slab a larger foot, or set the supports closer together.":
    "Donnez un pied plus grand à la dalle la plus chargée, ou rapprochez les appuis.",
}
