import type { Texts } from "../dictionary.ts"

/** Boards and sheets, worked out step by step. */
export const surfaces: Texts = {
  boards: "planches",
  sheets: "panneaux",
  nothing: "rien",
  "sheets: thinner than any that is rated here": "panneaux : plus minces que tous ceux qui ont une cote ici",
  "Of all members, and of what is worked out beside them, the one that is nearest to its limit, or furthest over it; before it, one that no table holds.":
    "De toutes les pièces, et de ce qui est calculé à côté, le plus proche de sa limite, ou le plus au-delà ; avant lui, la pièce qu'aucun tableau n'a.",
  "Sag of one load in the middle, share of P L³ ÷ (E I)":
    "Flèche d'une charge au milieu, part de P L³ ÷ (E I)",
  "Of one span on two supports.": "D'une seule portée sur deux appuis.",
  "Figures of sheets on joists": "Chiffres des panneaux sur solives",
  "Panel design specification, adjustments for moisture":
    "Spécification de calcul des panneaux, corrections pour l'humidité",
  "For panels at 16 % of moisture and more: 0.75 on strength, 0.85 on stiffness.":
    "Pour les panneaux à 16 % d'humidité et plus : 0,75 sur la résistance, 0,85 sur la rigidité.",
  "Published values are for a strip this wide.": "Les valeurs publiées sont pour une bande de cette largeur.",
  "A sheet bends a little over the edge of a joist too.":
    "Un panneau fléchit un peu aussi au-dessus du bord d'une solive.",
  "Damp sheets: strength times": "Panneaux humides : résistance multipliée par",
  "Sheets that stay damp lose strength.": "Les panneaux qui restent humides perdent de la résistance.",
  "Damp sheets: stiffness times": "Panneaux humides : rigidité multipliée par",
  "And sag more.": "Et fléchissent davantage.",
  "Weakest span rating sold in a thickness": "Cote de portée la plus faible vendue dans une épaisseur",
  "Your sheet has its rating stamped on it; until you have read it, the weakest that is sold this thick counts.":
    "La cote est estampillée sur votre panneau ; tant que vous ne l'avez pas lue, la plus faible vendue dans cette épaisseur compte.",
  "Nominal thickness.": "Épaisseur nominale.",
  "As stamped. Change it to your sheet's.": "Comme estampillée. Mettez celle de votre panneau.",
  "Strength of the sheets, step by step": "Résistance des panneaux, pas à pas",
  "One strip of the shortest piece from joist to joist, its stiff side across the joists. One row, a column a step.":
    "Une bande du morceau le plus court, de solive en solive, son côté raide en travers des solives. Une ligne, une colonne par étape.",
  "Even loads only: a wheel or the leg of a table presses in one place, and the stamped rating is for floors at home. Plywood's values are from memory: hold them against the maker's report, and your local code decides.":
    "Charges réparties seulement : une roue ou un pied de table appuie en un seul endroit, et la cote estampillée vaut pour les planchers d'une maison. Les valeurs du contreplaqué sont de mémoire : comparez-les au rapport du fabricant ; votre code local décide.",
  "No: thinner than any sheet that is rated here. Then nothing is guessed.":
    "Non : plus mince que tout panneau qui a une cote ici. Alors rien n'est deviné.",
  "By its thickness.": "Selon son épaisseur.",
  "Spans of the shortest piece": "Portées du morceau le plus court",
  "A piece on two joists bends more than one that runs on. More than three count as three.":
    "Un morceau sur deux solives fléchit plus qu'un morceau continu. Plus de trois comptent pour trois.",
  "Bending strength, published": "Résistance en flexion, publiée",
  "FbS of a strip, of strand board or plywood, whichever is less.":
    "FbS d'une bande, de panneau OSB ou de contreplaqué, la moindre des deux.",
  "Shear strength, published": "Résistance au cisaillement, publiée",
  "Fs(Ib/Q) of a strip, whichever is less.": "Fs(Ib/Q) d'une bande, la moindre des deux.",
  "EI of a strip over one inch, whichever is less.": "EI d'une bande sur un pouce, la moindre des deux.",
  "Load duration factor": "Coefficient de durée de la charge",
  "On strength, not on stiffness. By allowable stress, whichever method the timber goes by.":
    "Sur la résistance, pas sur la rigidité. Aux contraintes admissibles, quelle que soit la méthode prise pour le bois.",
  "Damp, on strength": "Humidité, sur la résistance",
  "Damp, on stiffness": "Humidité, sur la rigidité",
  "Bending it may bear": "Flexion qu'il peut porter",
  "The published value, times each factor.": "La valeur publiée, fois chaque coefficient.",
  "Shear it may bear": "Cisaillement qu'il peut porter",
  "The published value, times its factor.": "La valeur publiée, fois son coefficient.",
  "Load on a strip": "Charge sur une bande",
  "Platform, people and things.": "La plateforme, les gens et les choses.",
  "From centre to centre of the joists.": "De centre en centre des solives.",
  "The live load alone.": "La surcharge seule.",
  "Over 100 % it breaks.": "Au-dessus de 100 %, il casse.",
  "Over 100 % its layers roll over each other.": "Au-dessus de 100 %, ses couches roulent l'une sur l'autre.",
  "A sheet that spans too far sags between the joists and cracks what lies on it. The joist spacing over what the makers' table allows, or bending, shear and sag worked out: the harder of the two.":
    "Un panneau qui franchit trop loin fléchit entre les solives et fend ce qui est posé dessus. L'espacement des solives sur ce que permet le tableau des fabricants, ou flexion, cisaillement et flèche calculés : le plus sévère des deux.",
  "Set the joists closer together, or take thicker sheets. Worked out: {sheet_strength.says}.":
    "Rapprochez les solives, ou prenez des panneaux plus épais. Par le calcul : {sheet_strength.says}.",
  "Strength of a board, step by step": "Résistance d'une planche, pas à pas",
  "One board over one bay, as though it was cut over every stringer. No row where no strength is published for its size, as for boards an inch thick: then the table of spacings decides alone.":
    "Une planche sur une travée, comme si elle était coupée sur chaque longeron. Pas de ligne si aucune résistance n'est publiée pour sa grosseur, comme pour les planches d'un pouce : alors le tableau des espacements décide seul.",
  "One board over one bay, as though it was cut over every joist. No row where no strength is published for its size, as for boards an inch thick: then the table of spacings decides alone.":
    "Une planche sur une travée, comme si elle était coupée sur chaque solive. Pas de ligne si aucune résistance n'est publiée pour sa grosseur, comme pour les planches d'un pouce : alors le tableau des espacements décide seul.",
  "Boards that span too far bounce, and one day one of them breaks. Their spacing over what the table allows, or what one board bears where strengths are published for its size: the harder of the two.":
    "Des planches qui franchissent trop loin rebondissent, et un jour l'une casse. Leur espacement sur ce que permet le tableau, ou ce que porte une planche si des résistances sont publiées pour sa grosseur : le plus sévère des deux.",
  "Your local code decides, and where a crowd may stand a licensed designer does. The table is for the decks of houses.":
    "Votre code local décide, et là où une foule peut se tenir, un concepteur agréé. Le tableau vaut pour les terrasses de maisons.",
  "Boards are taken to be of the frame's species and grade. Boards of plastic go by their maker's evaluation report.":
    "Les planches sont prises de l'essence et de la qualité de la charpente. Celles de plastique suivent le rapport d'évaluation de leur fabricant.",
  "The table of a board's strength shows each step, and what gives first.":
    "Le tableau de la résistance d'une planche montre chaque étape, et ce qui cède d'abord.",
}
