import type { Texts } from "../dictionary.ts"

/** How joints yield that are pushed sideways. */
export const jointYields: Texts = {
  "Screws pulled out, screws and nails pushed sideways, by a handbook's formulas and by how a joint yields, in the joints that lean on them.":
    "Vis arrachées, vis et clous poussés de côté, par les formules d'un manuel et par la façon dont un joint cède, dans les joints qui s'y fient.",
  "Figures of how a joint yields": "Chiffres de la façon dont un joint cède",
  "tables 12.3.1A and B, 12.3.3: yield modes of dowel-type fasteners, single shear":
    "tableaux 12.3.1A et B, 12.3.3 : modes de rupture des fixations de type goujon, cisaillement simple",
  "held against three values read elsewhere or recalled: 141 lb of a 16d nail, 105 lb of a 10d nail, 480 lb of a 1/2 in bolt":
    "comparé à trois valeurs lues ailleurs ou rappelées : 141 lb d'un clou 16d, 105 lb d'un clou 10d, 480 lb d'un boulon de 1/2 po",
  "A fastener is thick from": "Une fixation est grosse à partir de",
  "Round a thick one the direction of the grain counts.": "Autour d'une grosse, le sens du fil compte.",
  "Bearing under thin ones": "Portance sous les minces",
  "Times the wood's specific gravity to the power beside it.":
    "Fois la densité relative du bois, à la puissance donnée à côté.",
  "Power of the gravity, thin": "Puissance de la densité, minces",
  "Bearing along the grain, thick": "Portance dans le sens du fil, grosses",
  "Times the wood's specific gravity.": "Fois la densité relative du bois.",
  "Bearing across the grain, thick": "Portance en travers du fil, grosses",
  "Of a bolt as thick as the length beside it; a thicker one splits the wood sooner.":
    "D'un boulon aussi gros que la longueur donnée à côté ; un plus gros fend le bois plus tôt.",
  "Power of the gravity, across": "Puissance de la densité, en travers",
  "Thickness that it is for": "Grosseur à laquelle elle vaut",
  "The bearing falls with the root of the thickness over this.":
    "La portance baisse avec la racine de la grosseur sur celle-ci.",
  "Bearing of thin steel": "Portance de l'acier mince",
  "Of the sheet that ties and hangers are bent from.": "De la tôle dont sont pliés attaches et étriers.",
  "appendix I: bending yield strength of nails, screws and bolts":
    "annexe I : limite d'élasticité en flexion des clous, vis et boulons",
  "Reduction where wood is crushed": "Réduction là où le bois s'écrase",
  "Modes Im and Is, thick fasteners. Larger for the same safety, as wood differs from board to board.":
    "Modes Im et Is, grosses fixations. Plus grande pour la même sécurité, car le bois diffère d'une pièce à l'autre.",
  "Reduction where it turns": "Réduction là où elle tourne",
  "Of mode II, as published.": "Du mode II, telle que publiée.",
  "Reduction where it bends": "Réduction là où elle plie",
  "Modes III and IV.": "Modes III et IV.",
  "Reduction across the grain, times": "Réduction en travers du fil, fois",
  "Where either piece is loaded across its grain.":
    "Là où l'une des pièces est chargée en travers de son fil.",
  "Reduction of thin ones, at least": "Réduction des minces, au moins",
  "All modes of nails and screws.": "Tous les modes des clous et vis.",
  "It grows by one with each": "Elle croît de un à chaque",
  "Of thickness: thicker nails and screws lose more.": "De grosseur : clous et vis plus gros y perdent plus.",
  "And begins at": "Et commence à",
  "Added to it.": "Ajouté à elle.",
  "A screw's core over its thread": "Noyau d'une vis sur son filet",
  "Between the threads it is this much as thick, and there it bends. The least of the usual sizes.":
    "Entre les filets elle n'a que cette part de sa grosseur, et c'est là qu'elle plie. La moindre des grosseurs courantes.",
  "appendix L: root diameters of wood screws, 0.152 in of No. 10 (0.19 in)":
    "annexe L : diamètres de noyau des vis à bois, 0,152 po pour le no 10 (0,19 po)",
  "Steel of nails and screws, by thickness": "Acier des clous et vis, selon la grosseur",
  "Thin wire is drawn harder, so it bends less easily for its thickness. Bolts are the last row.":
    "Un fil mince est étiré plus dur : il plie moins facilement pour sa grosseur. Les boulons sont la dernière rangée.",
  "Thicker than": "Plus gros que",
  "Of the core.": "Du noyau.",
  "Bends at": "Plie à",
  "Fyb of the standard.": "Fyb de la norme.",
  "Screw, nail or bolt.": "Vis, clou ou boulon.",
  "Through a piece of": "À travers une pièce de",
  "The piece that is fastened on.": "La pièce qu'on fixe.",
  "Of steel": "En acier",
  "A metal connector bears the fastener better than wood of the same thickness.":
    "Une ferrure porte mieux la fixation que du bois de même épaisseur.",
  "Across the grain of what holds": "En travers du fil de ce qui tient",
  "Which way the joint pushes. It counts for thick fasteners.":
    "Dans quel sens le joint pousse. Cela compte pour les grosses fixations.",
  "Across the grain of the other": "En travers du fil de l'autre",
  "Pushed sideways, by the older formula": "Poussée de côté, par l'ancienne formule",
  "Of a screw or nail driven deep. Of a nail by its thickness and the weight of the wood, from the one that is published, and never more.":
    "D'une vis ou d'un clou bien enfoncé. D'un clou, selon sa grosseur et le poids du bois, à partir de celui qui est publié, et jamais plus.",
  "Pushed sideways, by how it yields": "Poussée de côté, par la façon dont il cède",
  "From the table of how each joint yields.": "Du tableau de la façon dont chaque joint cède.",
  "The lesser of the two; of a bolt, which goes right through, the yield modes alone. In dry wood, for loads that last years. Hard deck screws snap where soft nails bend: do not hang a joist on screws alone.":
    "La moindre des deux ; d'un boulon, qui traverse tout, les modes de rupture seuls. Dans du bois sec, pour des charges qui durent des années. Les vis dures cassent là où des clous mous plient : ne suspendez pas une solive à des vis seules.",
  "How each joint yields": "Comment chaque joint cède",
  "Pushed sideways, a joint gives way by crushed wood or a bent fastener, in one of six manners. Each is worked out, and the easiest counts.":
    "Poussé de côté, un joint cède par du bois écrasé ou une fixation pliée, d'une de six manières. Chacune est calculée, et la plus facile compte.",
  "As in the joints that carry a load.": "Comme dans les joints qui portent une charge.",
  "Through the other piece": "À travers l'autre pièce",
  "As thick as it is.": "De son épaisseur.",
  "In the piece that holds": "Dans la pièce qui tient",
  "As in the joints.": "Comme dans les joints.",
  "Of both pieces.": "Des deux pièces.",
  "Thickness that bends": "Grosseur qui plie",
  "Of a screw between its threads; of a bolt its shank: buy it long enough that no thread lies in the joint.":
    "D'une vis, entre ses filets ; d'un boulon, sa tige : achetez-le assez long pour qu'aucun filet ne soit dans le joint.",
  "Its steel bends at": "Son acier plie à",
  "Wood that holds bears": "Le bois qui tient porte",
  "Fem: under the fastener, in the piece that holds.": "Fem : sous la fixation, dans la pièce qui tient.",
  "The other piece bears": "L'autre pièce porte",
  "Fes: under the fastener, in the other piece.": "Fes : sous la fixation, dans l'autre pièce.",
  "One strength over the other": "Une résistance sur l'autre",
  "Re: 1 where both are loaded alike.": "Re : 1 si les deux sont chargées pareil.",
  "One length over the other": "Une longueur sur l'autre",
  "Rt of the standard.": "Rt de la norme.",
  "Reduction, thin": "Réduction, minces",
  "KD: what a test shows, over what is allowed.": "KD : ce que montre un essai, sur ce qui est permis.",
  "Reduction for the grain": "Réduction pour le fil",
  "Of thick fasteners only.": "Des grosses fixations seulement.",
  "Coefficient of turning": "Coefficient de rotation",
  "k1 of the standard.": "k1 de la norme.",
  "Coefficient of bending in the piece that holds": "Coefficient de flexion dans la pièce qui tient",
  "k2 of the standard.": "k2 de la norme.",
  "Coefficient of bending in the other": "Coefficient de flexion dans l'autre",
  "k3 of the standard.": "k3 de la norme.",
  "Im: wood that holds is crushed": "Im : le bois qui tient s'écrase",
  "The fastener stays straight.": "La fixation reste droite.",
  "Is: the other piece is crushed": "Is : l'autre pièce s'écrase",
  "II: it turns in both": "II : elle tourne dans les deux",
  "Straight, but aslant.": "Droite, mais de travers.",
  "IIIm: it bends in the other piece": "IIIm : elle plie dans l'autre pièce",
  "And crushes the piece that holds.": "Et écrase la pièce qui tient.",
  "IIIs: it bends in the piece that holds": "IIIs : elle plie dans la pièce qui tient",
  "And crushes the other.": "Et écrase l'autre.",
  "IV: it bends in both": "IV : elle plie dans les deux",
  "At the seam between the two.": "À la jonction des deux.",
  "Least of the six": "La moindre des six",
  "The joint gives way in the easiest manner.": "Le joint cède de la manière la plus facile.",
  "In this manner": "De cette manière",
  "Thicker pieces help against I, II and III; only a thicker fastener or heavier wood helps against IV.":
    "Des pièces plus épaisses aident contre I, II et III ; seule une fixation plus grosse ou un bois plus lourd aide contre IV.",
  bolt: "boulon",
}
