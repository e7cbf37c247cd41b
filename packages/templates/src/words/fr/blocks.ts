import type { Texts } from "../dictionary.ts"

export const blocks: Texts = {
  "How many blocks the sloping ground really takes, and how high they stand.":
    "Combien de blocs demande vraiment le sol en pente, et jusqu'à quelle hauteur ils montent.",
  "Length of a block": "Longueur d'un bloc",
  "Along the skid. Where two pieces of skid meet, each gets half of it.":
    "Le long du patin. Là où deux morceaux de patin se rejoignent, chacun en a la moitié.",
  "If you cut or grind a block, the dust scars the lungs: use a saw with a water feed, outdoors, wear a respirator, and keep others away.":
    "Si vous coupez ou meulez un bloc, la poussière marque les poumons : scie à l'eau, dehors, avec un respirateur, et les autres à distance.",
  "Width of a block": "Largeur d'un bloc",
  "Across the skid.": "En travers du patin.",
  "Height of a block": "Hauteur d'un bloc",
  "Solid blocks or slabs only: hollow ones laid on their side break.":
    "Blocs ou dalles pleins seulement : les creux couchés sur le côté cassent.",
  "Blocks side by side in one course": "Blocs côte à côte dans un rang",
  "Two narrow blocks side by side make a broader foot. Turn each course across the one below.":
    "Deux blocs étroits côte à côte font un pied plus large. Croisez chaque rang sur celui du dessous.",
  "Width of a course": "Largeur d'un rang",
  "Across the skid, all the blocks of one course together.":
    "En travers du patin, tous les blocs d'un rang ensemble.",
  "Face of a course": "Face d'un rang",
  "The area that stands on the stone. The load is shared over it.":
    "L'aire qui repose sur la pierre. La charge se partage dessus.",
  "Most blocks on top of one another": "Maximum de blocs l'un sur l'autre",
  "Where the ground lies lower than this many blocks reach, the bed of stone is built up instead.":
    "Là où le sol est plus bas que ne montent ces blocs, c'est le lit de pierre qu'on rehausse.",
  "The blocks of every stack, added up from its own ground.":
    "Les blocs de chaque pile, additionnés d'après son propre sol.",
  "Blocks that a flat list would miss": "Blocs qu'oublierait une liste à plat",
  "A list made without the fall takes every stack as the one at the high corner. The difference is the second trip to the yard, seen beforehand.":
    "Une liste faite sans le dénivelé prend chaque pile comme celle du coin haut. La différence est le deuxième voyage au magasin, vu d'avance.",
  "Tallest stack, in blocks": "Pile la plus haute, en blocs",
  "At the low side.": "Du côté bas.",
  "Height of a loose stack, times its width": "Hauteur d'une pile libre, en fois sa largeur",
  "Blocks that only lie on one another are kept this squat. A taller one wants mortar, filled cores or a post on a footing.":
    "Des blocs simplement posés l'un sur l'autre restent aussi trapus. Plus haut, il faut du mortier, des alvéoles remplies ou un poteau sur fondation.",
  "Tallest stack that stands safely": "Pile la plus haute qui tient sans danger",
  "So many times the narrow side of a course.": "Autant de fois le petit côté d'un rang.",
  "Are the stacks squat enough?": "Les piles sont-elles assez trapues ?",
  "Loose stacks hold by weight and width alone: a tall thin one tips when somebody jumps or the ground moves.":
    "Des piles libres ne tiennent que par leur poids et leur largeur : une pile haute et mince bascule quand quelqu'un saute ou que le sol bouge.",
  "Keep stacks under {stack_height_limit}: use broader blocks or two side by side, turn the platform along the slope, or have posts on footings designed for the low side.":
    "Gardez les piles sous {stack_height_limit} : prenez des blocs plus larges ou deux côte à côte, tournez la plateforme le long de la pente, ou faites concevoir des poteaux sur fondation pour le côté bas.",
  "Density of concrete": "Masse volumique du béton",
  "Solid concrete; hollow or light blocks weigh less.":
    "Béton plein ; les blocs creux ou légers pèsent moins.",
  "Weight of one block": "Poids d'un bloc",
  "What you lift, twice at least. Above about 50 lb it is a lift for two.":
    "Ce que vous soulevez, au moins deux fois. Au-dessus d'environ 50 lb, on le fait à deux.",
  "Lift with bent knees and a straight back, in gloves and toe-capped boots. Two people for anything heavier than about 50 lb (23 kg).":
    "Soulevez genoux pliés et dos droit, avec gants et bottes à embout. À deux pour tout ce qui dépasse environ 50 lb (23 kg).",
  "Weight of all the blocks": "Poids de tous les blocs",
  "It may be more than one load for the vehicle.": "Cela peut faire plus d'un chargement pour le véhicule.",
  Pads: "Dalles d'appui",
  "How many pads, how large their face is, and what they weigh.":
    "Combien de dalles d'appui, quelle face elles ont, et ce qu'elles pèsent.",
  "Length of a pad": "Longueur d'une dalle d'appui",
  "Along the beam. Where two planks meet end to end, each gets half of it.":
    "Le long de la poutre. Là où deux madriers se rejoignent bout à bout, chacun en a la moitié.",
  "Width of a pad": "Largeur d'une dalle d'appui",
  "Across the beam.": "En travers de la poutre.",
  "Thickness of a pad": "Épaisseur d'une dalle d'appui",
  "Solid paving slabs or cast pads. A thin one cracks over a soft spot.":
    "Dalles pleines ou coulées. Une mince fend sur un endroit mou.",
  "Pads side by side at one support": "Dalles d'appui côte à côte à un appui",
  "Two narrow pads side by side make a broader foot.":
    "Deux dalles étroites côte à côte font un pied plus large.",
  "Width of all of them": "Largeur de l'ensemble",
  "Across the beam, all the pads of one support together.":
    "En travers de la poutre, toutes les dalles d'un appui ensemble.",
  "Face on the stone": "Face sur la pierre",
  "Most pads on top of one another": "Maximum de dalles d'appui l'une sur l'autre",
  "One: the stone takes up the fall of the ground. More: pads are stacked before stone is built up.":
    "Une : la pierre rattrape le dénivelé. Plus : on empile des dalles avant de rehausser la pierre.",
  "The pads of every support, added up.": "Les dalles d'appui de chaque appui, additionnées.",
  "Pads on top of one another": "Dalles d'appui l'une sur l'autre",
  "Height of loose pads, times their width": "Hauteur de dalles libres, en fois leur largeur",
  "Pads that only lie on one another are kept this squat.":
    "Des dalles simplement posées l'une sur l'autre restent aussi trapues.",
  "Tallest support that stands safely": "Appui le plus haut qui tient sans danger",
  "Are the supports squat enough?": "Les appuis sont-ils assez trapus ?",
  "Weight of one pad": "Poids d'une dalle d'appui",
  "Weight of all the pads": "Poids de toutes les dalles d'appui",
  "How many slabs, how large their face is, and what they weigh.":
    "Combien de dalles, quelle face elles ont, et ce qu'elles pèsent.",
  "Length of a slab": "Longueur d'une dalle",
  "Along the bearer. Where two pieces of bearer meet, each gets half of it.":
    "Le long de la lambourde. Là où deux morceaux de lambourde se rejoignent, chacun en a la moitié.",
  "Across the bearer.": "En travers de la lambourde.",
  "Solid paving slabs. A thin one cracks over a soft spot.":
    "Dalles de pavage pleines. Une mince fend sur un endroit mou.",
  "Slabs side by side at one support": "Dalles côte à côte à un appui",
  "Two narrow slabs side by side make a broader foot.":
    "Deux dalles étroites côte à côte font un pied plus large sous la lambourde.",
  "Across the bearer, all the slabs of one support together.":
    "En travers de la lambourde, toutes les dalles d'un appui ensemble.",
  "Most slabs on top of one another": "Maximum de dalles l'une sur l'autre",
  "One: the stone takes up the fall of the ground. More: slabs are stacked before stone is built up.":
    "Une : la pierre rattrape le dénivelé du sol. Plus : on empile des dalles avant de rehausser la pierre.",
  "The slabs of every support, added up.": "Les dalles de chaque appui, additionnées.",
  "Slabs on top of one another": "Dalles l'une sur l'autre",
  "Height of loose slabs, times their width": "Hauteur de dalles libres, en fois leur largeur",
  "Slabs that only lie on one another are kept this squat.":
    "Des dalles simplement posées l'une sur l'autre restent aussi trapues.",
  "Weight of one slab": "Poids d'une dalle",
  "Weight of all the slabs": "Poids de toutes les dalles",
}
