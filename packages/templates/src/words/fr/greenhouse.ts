import type { Texts } from "../dictionary.ts"

export const greenhouse: Texts = {
  "The greenhouse on it": "La serre dessus",
  "Whether the greenhouse fits the floor, whether its weight is allowed for, and how its water gets out.":
    "Si la serre tient sur le plancher, si son poids est prévu, et comment son eau s'en va.",
  "Length of the greenhouse's base": "Longueur de la base de la serre",
  "Outside to outside, as it stands on the floor. It is in the greenhouse's papers.":
    "D'extérieur à extérieur, telle que posée sur le plancher. C'est dans ses papiers.",
  "Width of the greenhouse's base": "Largeur de la base de la serre",
  "Outside to outside.": "D'extérieur à extérieur.",
  "Least floor beyond the base": "Moindre plancher au-delà de la base",
  "The base has to lie on the rim and the joists, with room for a bolt that does not split the edge.":
    "La base doit reposer sur la solive de rive et les solives, avec place pour un boulon qui ne fende pas le bord.",
  "Does the greenhouse fit?": "La serre tient-elle dessus ?",
  "A base that hangs over the edge rocks, and its glass cracks. The narrower of the two directions counts, each side.":
    "Une base qui dépasse du bord bascule, et son vitrage fend. Le plus étroit des deux sens compte, de chaque côté.",
  "Make the floor at least {floor_length_wanted} by {floor_width_wanted}.":
    "Faites le plancher d'au moins {floor_length_wanted} sur {floor_width_wanted}.",
  "Length that the greenhouse asks for": "Longueur que demande la serre",
  "The base and the least margin at both ends.": "La base et la moindre marge aux deux bouts.",
  "Width that the greenhouse asks for": "Largeur que demande la serre",
  "The base and the least margin on both sides.": "La base et la moindre marge des deux côtés.",
  "Weight of the greenhouse, with benches": "Poids de la serre, avec ses tablettes",
  "Frame, glass and benches full of pots. Wet soil is heavy: a tray of pots weighs more than the glass above it.":
    "Cadre, vitrage et tablettes pleines de pots. La terre mouillée est lourde : un plateau de pots pèse plus que le vitrage au-dessus.",
  "A greenhouse is light and catches much wind. It has to be anchored, and so has this floor: how is for its maker, your code or a designer to say. The section on wind says roughly how much has to be held.":
    "Une serre est légère et prend beaucoup de vent. Il faut l'ancrer, et ce plancher aussi : comment, c'est à son fabricant, à votre code ou à un concepteur de le dire. La section sur le vent dit à peu près combien retenir.",
  "Glass breaks into blades: wear gloves and goggles when you carry panes, and use toughened glass where children are.":
    "Le verre se brise en lames : portez gants et lunettes pour porter les vitres, et prenez du verre trempé là où il y a des enfants.",
  "Weight of the floor itself": "Poids du plancher lui-même",
  "Boards, joists and bearers, spread over the area.":
    "Planches, solives et lambourdes, répartis sur l'aire.",
  "Weight that always lies there": "Poids toujours là",
  "The floor, and the greenhouse spread evenly over it. Under the walls it is more: keep a joist or a bearer below them.":
    "Le plancher, et la serre répartie également dessus. Sous les murs, c'est plus : gardez une solive ou une lambourde dessous.",
  "Is the greenhouse's weight allowed for?": "Le poids de la serre est-il prévu ?",
  "The loads on the slabs go by the weight that you entered.":
    "Les charges sur les dalles suivent le poids que vous avez entré.",
  "Enter at least {dead_load_needed} as the floor's own weight.":
    "Entrez au moins {dead_load_needed} comme poids propre du plancher.",
  "Part of the floor that is gap": "Part du plancher qui est du jeu",
  "Water and soil fall through. What is swept over a gap does not come back.":
    "Eau et terre tombent au travers. Ce qu'on balaie sur un jeu ne revient pas.",
  "Water given on a dry day": "Eau donnée un jour sec",
  "A can or a hose: part of it runs through the boards.":
    "À l'arrosoir ou au boyau : une part passe entre les planches.",
  "Part that runs through": "Part qui passe au travers",
  "Pots and beds drink most of it; trays catch some.":
    "Pots et plates-bandes en boivent l'essentiel ; des plateaux en retiennent.",
  "As a layer of water under the floor": "En couche d'eau sous le plancher",
  "What the ground has to take each day. Clay takes a few millimetres a day; if this is more, lead the water away.":
    "Ce que le sol doit prendre chaque jour. L'argile prend quelques millimètres par jour ; si c'est plus, éloignez l'eau.",
}
