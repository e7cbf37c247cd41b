import type { Texts } from "../dictionary.ts"

export const stonePad: Texts = {
  "Stone pad": "Assise de pierre",
  "A level pad of tamped stone under the whole frame: on a slope it is a wedge, and the low side needs much more than a flat list says.":
    "Une assise de niveau en pierre compactée sous tout le cadre : dans une pente, c'est un coin, et le côté bas en demande bien plus que ne le dit une liste à plat.",
  "Bottom of the pad": "Fond de l'assise",
  "Following the ground digs least: turf and topsoil come off, and stone makes up the slope. Level digs into the high side until the bottom is flat: the stone is of one thickness and cannot creep downhill, and there is more of both.":
    "Suivre le sol creuse le moins : gazon et terre végétale s'enlèvent, et la pierre rattrape la pente. De niveau, on creuse le côté haut jusqu'à un fond plat : la pierre a une seule épaisseur et ne peut pas glisser, et il y a plus des deux.",
  "follows the ground": "suit le sol",
  "Level of a flat bottom": "Niveau d'un fond plat",
  "As high as it can be with enough stone everywhere, and out of the topsoil at the lowest place.":
    "Aussi haut que possible avec assez de pierre partout, et hors de la terre végétale au plus bas.",
  "Deepest dig": "Creusage le plus profond",
  "Shallowest dig": "Creusage le moins profond",
  "Even here turf and topsoil come off.": "Même ici, gazon et terre végétale s'enlèvent.",
  "All that comes out, turf and topsoil included.": "Tout ce qui sort, gazon et terre végétale compris.",
  "The depths of stone, each times the area of its point.":
    "Les épaisseurs de pierre, chacune fois l'aire de son point.",
  "A plate compactor crushes feet and deafens: wear boots with steel caps and ear protection, and keep children away.":
    "Une plaque vibrante écrase les pieds et assourdit : bottes à embout d'acier et protection d'oreilles, et les enfants loin.",
  "Thickest layer to tamp": "Couche la plus épaisse à compacter",
  "A hand-guided plate reaches no deeper; stone below stays loose and sinks later.":
    "Une plaque guidée à la main n'agit pas plus creux ; la pierre dessous reste lâche et s'enfonce plus tard.",
  "Layers at the thickest place": "Couches à l'endroit le plus épais",
  "Spread, tamp, and only then the next.": "Étendez, compactez, et seulement ensuite la suivante.",
  "At the lowest place of the pad's edge. It must be held by an edging this high, or it walks away from under the timber.":
    "Au plus bas du bord de l'assise. Une bordure de cette hauteur doit la retenir, sinon elle fuit de sous le bois.",
  "Highest edging on stakes": "Plus haute bordure sur piquets",
  "Stone pushes outwards. What is higher is a retaining wall and wants to be built as one.":
    "La pierre pousse vers l'extérieur. Plus haut, c'est un mur de soutènement et cela se construit comme tel.",
  "Is the edging low enough?": "La bordure est-elle assez basse ?",
  "An edging that gives way takes the stone, and then the corner of the frame, with it.":
    "Une bordure qui cède emporte la pierre, puis le coin du cadre avec elle.",
  "The stone stands {stone_edge_height_max} high at the low side. Lower the underside clearance, cut into the high side, turn the platform along the slope, or have a retaining wall designed.":
    "La pierre a {stone_edge_height_max} de haut du côté bas. Réduisez le dégagement dessous, entaillez le côté haut, tournez la plateforme le long de la pente, ou faites concevoir un mur de soutènement.",
  "Edging, all the way round": "Bordure, tout le tour",
  "Round the outside of the stone.": "Autour de l'extérieur de la pierre.",
  "Edging let into the ground": "Bordure enfoncée dans le sol",
  "So that stone does not run out below it.": "Pour que la pierre ne fuie pas dessous.",
  "Stakes at most apart": "Piquets au plus à",
  "The edging bows out between two stakes that stand too far apart.":
    "La bordure se bombe entre deux piquets trop écartés.",
  "Stake in the ground, at least": "Piquet dans le sol, au moins",
  "And never less than stands above it.": "Et jamais moins que ce qui dépasse.",
  "Edging at the low side, and its stakes": "Bordure du côté bas, et ses piquets",
  "How high the edging is at its highest place, and the stakes that hold it. One row.":
    "Quelle hauteur a la bordure au plus haut, et les piquets qui la tiennent. Une ligne.",
  "A stake driven in is digging too: have buried lines marked first.":
    "Planter un piquet, c'est aussi creuser : faites d'abord repérer les lignes enfouies.",
  "Height of the edging": "Hauteur de la bordure",
  "What stands above the ground, and what is let in.": "Ce qui dépasse du sol, et ce qui est enfoncé.",
  Stakes: "Piquets",
  "Evenly along each side, with one at every corner.":
    "Également le long de chaque côté, avec un à chaque coin.",
  "Length of a stake": "Longueur d'un piquet",
  "As far into the ground as it stands above it, or further.":
    "Aussi loin dans le sol que ce qui dépasse, ou plus.",
}
