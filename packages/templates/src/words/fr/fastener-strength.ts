import type { Texts } from "../dictionary.ts"

export const fastenerStrength: Texts = {
  "What the fasteners hold": "Ce que tiennent les attaches",
  "Screws pulled out, screws and nails pushed sideways, by a handbook's formulas, in the joints that lean on them.":
    "Vis arrachées, vis et clous poussés de côté, selon les formules d'un manuel, dans les joints qui s'y fient.",
  "Figures of screws and nails": "Données des vis et des clous",
  "Constant of the pull-out formula": "Constante de la formule d'arrachement",
  "Pounds for each inch of diameter and inch of thread, in wood as heavy as water.":
    "Livres par pouce de diamètre et par pouce de filet, dans un bois aussi lourd que l'eau.",
  "Constant of the force that pulls it out": "Constante de la force qui l'arrache",
  "What a test would show, on average. Nothing leans on it.":
    "Ce que montrerait un essai, en moyenne. Rien ne s'y appuie.",
  "A 16d common nail holds sideways": "Un clou ordinaire 16d tient de côté",
  "In Douglas fir-larch through a piece 1 1/2 in thick, driven deep. Lighter woods hold less.":
    "Dans du Douglas-mélèze à travers une pièce de 1 1/2 po, enfoncé profond. Des bois plus légers tiennent moins.",
  "Diameter of that nail": "Diamètre de ce clou",
  "Of a 16d common nail.": "D'un clou ordinaire 16d.",
  "Wood that its value is for, specific gravity": "Bois de cette valeur, densité relative",
  "Douglas fir-larch.": "Douglas-mélèze.",
  "Least penetration, in diameters": "Pénétration minimale, en diamètres",
  "A fastener that goes in less counts for nothing.": "Une attache moins enfoncée ne compte pas.",
  "Penetration for the full value, in diameters": "Pénétration pour la pleine valeur, en diamètres",
  "In between, the value falls with the penetration.":
    "Entre les deux, la valeur baisse avec la pénétration.",
  "Outdoors, wet": "Dehors, mouillé",
  "Wood that gets wet and dries lets go of its fasteners.":
    "Un bois qui se mouille et sèche lâche ses attaches.",
  "Against wind": "Contre le vent",
  "Wood bears a gust better than a load that stays.":
    "Le bois porte mieux une rafale qu'une charge qui reste.",
  "Under people": "Sous les gens",
  "The values are for such loads.": "Les valeurs sont pour de telles charges.",
  "Wood and what it holds": "Le bois et ce qu'il tient",
  "Two published properties of each wood that fasteners depend on. A species that is not here counts as the last, the weakest.":
    "Deux propriétés publiées de chaque bois, dont dépendent les attaches. Une essence absente compte comme la dernière, la plus faible.",
  "As on the stamp.": "Comme sur l'estampille.",
  "Weight of the dry wood against water.": "Poids du bois sec par rapport à l'eau.",
  "Sideways constant": "Constante latérale",
  "Of the handbook's group. Redwood and cedar are put in the weakest, as today's stands are lighter than the handbook's.":
    "Du groupe du manuel. Séquoia et cèdre sont mis dans le plus faible, car ceux d'aujourd'hui sont plus légers.",
  "Joints that carry a load": "Joints qui portent une charge",
  "One row a kind of joint, a column a step.": "Une sorte de joint par ligne, un pas par colonne.",
  "Values of one handbook for plain wood screws and nails. Where a life hangs on a joint (a guard, a high post), use fasteners with an evaluation report, and have a licensed engineer and your local code decide.":
    "Valeurs d'un manuel pour vis à bois et clous ordinaires. Si une vie tient à un joint (garde-corps, haut poteau), prenez des attaches avec un rapport d'évaluation, et laissez décider un ingénieur et votre code local.",
  "One kind of joint a row.": "Une sorte de joint par rangée.",
  Fastener: "Attache",
  "Screw or nail.": "Vis ou clou.",
  Loaded: "Chargée",
  "Pulled along it, or pushed across it. A nail is never counted on against being pulled: timber that dries lets go of it.":
    "Tirée le long, ou poussée de travers. On ne compte jamais sur un clou contre l'arrachement : un bois qui sèche le lâche.",
  Diameter: "Diamètre",
  "Of a screw over the thread: 0.164 in for No. 8, 0.19 in for No. 10, 0.216 in for No. 12.":
    "D'une vis, sur le filet : 0,164 po pour No. 8, 0,19 po pour No. 10, 0,216 po pour No. 12.",
  "In the timber that holds": "Dans le bois qui tient",
  "Of a screw the thread; of a nail its length less the piece nailed on and any gap.":
    "D'une vis, le filet ; d'un clou, sa longueur moins la pièce clouée et tout jeu.",
  "Into end grain": "En bois de bout",
  "Along the grain of the piece that holds. A screw there counts for nothing against being pulled out: use a bracket, or a block beside the joint.":
    "Le long du fil de la pièce qui tient. Une vis n'y compte pas contre l'arrachement : prenez un étrier, ou un bloc à côté du joint.",
  "Specific gravity of the wood": "Densité relative du bois",
  "Heavy wood holds better.": "Un bois lourd tient mieux.",
  "Share for the penetration": "Part due à la pénétration",
  "How much of the sideways value counts.": "Combien de la valeur latérale compte.",
  "Pulled out, one may carry": "Arrachée, une peut porter",
  "Of a screw: in dry wood, for loads that last years.":
    "D'une vis : en bois sec, pour des charges qui durent des années.",
  "Pushed sideways, one may carry": "Poussée de côté, une peut porter",
  "In dry wood, for loads that last years. Of a nail by its thickness and the weight of the wood, from the one that is published, and never more. Hard deck screws snap where soft nails bend: do not hang a joist on screws alone.":
    "En bois sec, pour des charges qui durent des années. D'un clou, selon son épaisseur et le poids du bois, d'après celui qui est publié, et jamais plus. Les vis de terrasse dures cassent là où des clous doux plient : ne pendez pas une solive aux vis seules.",
  "Pulled out in a test at about": "Arrachée dans un essai à environ",
  "Five and a half times what is allowed: wood varies, and loads last. Nothing leans on this.":
    "Cinq fois et demie ce qui est permis : le bois varie, et les charges durent. Rien ne s'y appuie.",
  "One may carry here": "Une peut porter ici",
  "Its value, outdoors, for as long as this load lasts.": "Sa valeur, dehors, pour la durée de cette charge.",
  "How many share the load": "Combien partagent la charge",
  "Shared alike.": "À parts égales.",
  "Force on all of them": "Force sur l'ensemble",
  "What the joint has to carry.": "Ce que le joint doit porter.",
  "Fasteners needed": "Attaches requises",
  "Force over what one may carry, counted up.": "La force sur ce qu'une peut porter, arrondi vers le haut.",
  "Of what they may carry": "De ce qu'elles peuvent porter",
  "Over 100 % the joint lets go. Where none are there and some are needed, far over.":
    "Au-dessus de 100 %, le joint lâche. S'il n'y en a pas et qu'il en faut, bien au-dessus.",
  "For the joint that is nearest to its limit.": "Pour le joint le plus près de sa limite.",
  "The joint that lets go first": "Le joint qui lâche en premier",
  "The one that is nearest to its limit, or furthest over it. One row.":
    "Celui qui est le plus près de sa limite, ou le plus au-delà. Une ligne.",
  "Do the fasteners hold?": "Les attaches tiennent-elles ?",
  "A joint is as strong as its fasteners, at best.": "Un joint est au mieux aussi fort que ses attaches.",
  "{loaded_joint_first.says}. Use more of them, thicker or longer ones, or a metal bracket made for it.":
    "{loaded_joint_first.says}. Mettez-en plus, de plus grosses ou de plus longues, ou un étrier de métal fait pour cela.",
}
