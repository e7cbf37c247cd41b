import type { Texts } from "../dictionary.ts"

export const stoneBeds: Texts = {
  "Stone beds": "Lits de pierre",
  "Crushed stone under every stack: how much in place, and how much to order loose.":
    "Pierre concassée sous chaque pile : combien en place, et combien commander en vrac.",
  "Length of a bed": "Longueur d'un lit",
  "Along the skid. A little longer than the block, so that the edge of the stone does not crumble away under it.":
    "Le long du patin. Un peu plus long que le bloc, pour que le bord de la pierre ne s'effrite pas dessous.",
  "Width of a bed": "Largeur d'un lit",
  "Across the skid, a little wider than the block.": "En travers du patin, un peu plus large que le bloc.",
  "Least thickness of the stone, tamped": "Épaisseur minimale de pierre, compactée",
  "Stone drains, spreads the load and can be levelled to a hair. Tamp it in layers of 3 to 4 in.":
    "La pierre draine, étale la charge et se règle au cheveu. Compactez-la en couches de 3 à 4 po.",
  "Use crushed stone that locks together. Round pea gravel rolls, however hard it is tamped.":
    "Prenez de la pierre concassée qui s'imbrique. Le gravier rond roule, si fort qu'on le compacte.",
  "Least stone beyond the block": "Minimum de pierre au-delà du bloc",
  "So that the block stands on stone that is held, not on its edge.":
    "Pour que le bloc repose sur une pierre tenue, et non sur son bord.",
  "Is the bed bigger than the block?": "Le lit est-il plus grand que le bloc ?",
  "A block at the edge of its bed tips. On the narrower side, each way.":
    "Un bloc au bord de son lit bascule. Du côté le plus étroit, dans chaque sens.",
  "Make the bed at least {stone_bed_margin_least} bigger than the block on every side.":
    "Faites le lit d'au moins {stone_bed_margin_least} plus grand que le bloc de chaque côté.",
  "0 where every stack's foot is in the ground. Stone that stands proud must be held by an edging this high.":
    "0 quand le pied de chaque pile est dans le sol. Une pierre qui dépasse doit être retenue par une bordure de cette hauteur.",
  "Stone in place, tamped": "Pierre en place, compactée",
  "All beds together, each with its own thickness.": "Tous les lits ensemble, chacun avec son épaisseur.",
  "Loose stone for one of tamped": "Pierre en vrac pour une compactée",
  "Stone arrives loose and shrinks under the tamper. A rule for road base is a quarter more; a textbook's weights of sand and gravel give a little above that.":
    "La pierre arrive en vrac et se tasse sous la plaque. Une règle de fondation de route est un quart de plus ; les poids de sable et gravier d'un manuel donnent un peu plus.",
  "Loose stone spread under the frame": "Pierre en vrac étendue sous le cadre",
  "A thin layer over the whole ground keeps weeds and splashing mud down; 0 for none. It is not tamped, so it is ordered as it lies.":
    "Une couche mince sur tout le sol retient mauvaises herbes et éclaboussures ; 0 pour aucune. Elle n'est pas compactée : on la commande telle quelle.",
  "Stone, loose": "Pierre, en vrac",
  "What is tamped in place and the cover, as it comes off the lorry.":
    "Ce qui est compacté en place et la couverture, tel que cela sort du camion.",
  "Stone is sold in steps of": "La pierre se vend par pas de",
  "Yards sell by the half or the whole; bags are smaller steps.":
    "Les carrières vendent à la demie ou à l'unité ; les sacs sont des pas plus petits.",
  "Stone to order": "Pierre à commander",
  "Rounded up once, to the step it is sold in. Keep what is left over for levelling again in spring.":
    "Arrondie une fois vers le haut, au pas de vente. Gardez le reste pour remettre de niveau au printemps.",
  "Density of tamped stone": "Masse volumique de la pierre compactée",
  "Dense graded crushed stone. Your quarry's ticket says what yours weighs.":
    "Pierre concassée bien graduée. Le billet de la carrière dit ce que pèse la vôtre.",
  "Weight of the stone in place": "Poids de la pierre en place",
  "Heavy enough to bog a lorry or break a small trailer: think how it gets to the site.":
    "Assez lourd pour enliser un camion ou briser une petite remorque : pensez à comment l'amener.",
  "Barrow loads of stone": "Brouettées de pierre",
  "All of it goes to the holes by barrow.": "Tout va aux trous en brouette.",
  "Stone that a flat list would miss": "Pierre qu'oublierait une liste à plat",
  "Where the ground is low the bed gets thicker than planned.":
    "Là où le sol est bas, le lit devient plus épais que prévu.",
  "Crushed stone under every pad: how much in place, and how much to order loose.":
    "Pierre concassée sous chaque dalle d'appui : combien en place, et combien commander en vrac.",
  "Along the beam. A little longer than the pad, so that the edge of the stone does not crumble away under it.":
    "Le long de la poutre. Un peu plus long que la dalle d'appui, pour que le bord de la pierre ne s'effrite pas dessous.",
  "Across the beam, a little wider than the pad.":
    "En travers de la poutre, un peu plus large que la dalle d'appui.",
  "Least stone beyond the pad": "Minimum de pierre au-delà de la dalle d'appui",
  "So that the pad stands on stone that is held, not on its edge.":
    "Pour que la dalle d'appui repose sur une pierre tenue, et non sur son bord.",
  "Is the bed bigger than the pad?": "Le lit est-il plus grand que la dalle d'appui ?",
  "A pad at the edge of its bed tips.": "Une dalle d'appui au bord de son lit bascule.",
  "The pads' undersides are all at one level, so on the low side the stone stands proud of the ground. An edging this high has to hold it there.":
    "Les dessous des dalles d'appui sont tous au même niveau ; du côté bas, la pierre dépasse donc du sol. Une bordure de cette hauteur doit l'y retenir.",
  "Crushed stone under every slab, and a loose layer under the floor: how much in place, and how much to order.":
    "Pierre concassée sous chaque dalle, et une couche en vrac sous le plancher : combien en place, et combien commander.",
  "Along the bearer. A little longer than the slab, so that the edge of the stone does not crumble away under it.":
    "Le long de la lambourde. Un peu plus long que la dalle, pour que le bord de la pierre ne s'effrite pas dessous.",
  "Across the bearer, a little wider than the slab.":
    "En travers de la lambourde, un peu plus large que la dalle.",
  "Least stone beyond the slab": "Minimum de pierre au-delà de la dalle",
  "So that the slab stands on stone that is held, not on its edge.":
    "Pour que la dalle repose sur une pierre tenue, et non sur son bord.",
  "Is the bed bigger than the slab?": "Le lit est-il plus grand que la dalle ?",
  "A slab at the edge of its bed tips.": "Une dalle au bord de son lit bascule.",
  "The slabs' undersides are all at one level, so on the low side the stone stands proud of the ground. An edging this high has to hold it there.":
    "Les dessous des dalles sont tous au même niveau ; du côté bas, la pierre dépasse donc du sol. Une bordure de cette hauteur doit l'y retenir.",
  "Loose drainage stone under the floor": "Pierre drainante en vrac sous le plancher",
  "Plants are watered here: what runs through the boards has to sink away below, not stand in mud.":
    "Ici on arrose des plantes : ce qui passe entre les planches doit s'infiltrer dessous, et non stagner en boue.",
}
