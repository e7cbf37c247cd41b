import type { Texts } from "../dictionary.ts"

/** How a net's posts stand: in holes in the ground, or bolted to the frame. */
export const netFoot: Texts = {
  "From the top of the net to the foot of its hole, at the lowest ground; of a post that is bolted to the frame, to the underside of the rim.":
    "Du haut du filet au fond de son trou, au sol le plus bas ; d'un poteau boulonné au bâti, au dessous de la rive.",
  "One outwards, against the pull of the net and the wind from outside. Against the wind from inside only its foot holds it.":
    "Un vers l'extérieur, contre la traction du filet et le vent du dehors. Contre le vent du dedans, seul son pied le tient.",
  "Two through each post and the rim, one above the other. None for posts that stand in the ground.":
    "Deux à travers chaque poteau et la rive, l'un au-dessus de l'autre. Aucun pour des poteaux plantés dans le sol.",
  "Thickness of a bolt": "Grosseur d'un boulon",
  "Length of a bolt, at least": "Longueur d'un boulon, au moins",
  "Through post and rim, and as much as it is thick at either end for washer and nut. Take the next length sold.":
    "À travers le poteau et la rive, et sa propre grosseur à chaque bout pour la rondelle et l'écrou. Prenez la longueur vendue juste au-dessus.",
  "a bolt's own thickness for washer and nut": "la grosseur du boulon même pour la rondelle et l'écrou",
  "Holes for posts": "Trous de poteaux",
  "One a post.": "Un par poteau.",
  "Depth of a hole": "Profondeur d'un trou",
  "From the wind on the post and your soil; deeper where frost goes deeper.":
    "D'après le vent sur le poteau et votre sol ; plus profond là où le gel descend plus bas.",
  "Soil out of the holes, loose": "Terre sortie des trous, meuble",
  "As it lies in the heap.": "Telle qu'elle est en tas.",
  "Round the posts, the holes to the top.": "Autour des poteaux, les trous remplis jusqu'en haut.",
  "Bags of concrete": "Sacs de béton",
  "Counted up once, for all holes together.": "Arrondi une seule fois, pour tous les trous ensemble.",
  "Net posts stand in": "Les poteaux de filet sont plantés dans",
  "In holes in your soil, just outside the frame; or bolted to the outside of its rim, which holds a low net only: the rim is not deep enough to keep two bolts apart.":
    "Dans des trous de votre sol, juste hors du bâti ; ou boulonnés au dehors de sa rive, ce qui ne tient qu'un filet bas : la rive n'est pas assez haute pour écarter deux boulons.",
  "A bolt from the edge of the rim": "Un boulon depuis le bord de la rive",
  "The upper bolt below the rim's top, the lower one above its underside: nearer to the edge the wood splits.":
    "Le boulon du haut sous le dessus de la rive, celui du bas au-dessus de son dessous : plus près du bord, le bois fend.",
  "Filled with concrete to its full width. A wider one leans on more soil.":
    "Rempli de béton sur toute sa largeur. Un trou plus large s'appuie sur plus de sol.",
  "An 80 lb bag of concrete fills": "Un sac de béton de 80 lb remplit",
  "Mixed and poured.": "Gâché et coulé.",
  "In the ground it is bent most at this share of its depth":
    "Dans le sol, il plie le plus à cette part de sa profondeur",
  "At the ground it is not held yet: the soil takes the bending over little by little. Where the soil's pressure is counted, from memory.":
    "À fleur de sol il n'est pas encore tenu : le sol reprend la flexion peu à peu. Là où la pression du sol est comptée, de mémoire.",
  "a pole's bending grows to about a third of its depth":
    "la flexion d'un mât croît jusque vers le tiers de sa profondeur",
  "By one code, for poles that stand alone and may move half an inch at the ground, as these may. 1 for what may not.":
    "Selon un code, pour des mâts isolés qui peuvent bouger d'un demi-pouce au sol, comme ceux-ci. 1 pour ce qui ne le peut pas.",
  "Of a post that is bolted to the outside of the rim: as high on it as may be.":
    "D'un poteau boulonné au dehors de la rive : aussi haut sur elle que possible.",
  "The two bolts hold the post upright by pulling and pushing: the farther apart, the less each must hold. More than the rim is deep there is not.":
    "Les deux boulons tiennent le poteau debout en tirant et en poussant : plus ils sont écartés, moins chacun doit tenir. La hauteur de la rive n'en donne pas plus.",
  "With half a bay of the other net. It counts where a corner has fewer than two guy lines, one against each of its nets.":
    "Avec une demi-travée de l'autre filet. Elle compte là où un coin a moins de deux haubans, un contre chacun de ses filets.",
  "The worst of washer, steel, and how the joint yields when it is pushed sideways. 0 for posts that stand in the ground: they have none.":
    "Le pire de la rondelle, de l'acier, et de la façon dont le joint cède quand il est poussé de côté. 0 pour des poteaux plantés dans le sol : ils n'en ont pas.",
  "One foot down, in your soil. 0 for posts that stand in none.":
    "Un pied plus bas, dans votre sol. 0 pour des poteaux qui ne sont dans aucun.",
  "Depth of a post in the ground": "Profondeur d'un poteau dans le sol",
  "The last of the tries. 0 for posts that stand in no soil.":
    "Le dernier des essais. 0 pour des poteaux qui ne sont dans aucun sol.",
  "Bending of a post in the ground": "Flexion d'un poteau dans le sol",
  "Where it is bent most, a little below the ground.": "Là où il plie le plus, un peu sous le sol.",
  "Push of the soil on a post": "Poussée du sol sur un poteau",
  "The soil holds it at two heights that push against one another: more than the wind itself.":
    "Le sol le tient à deux hauteurs qui poussent l'une contre l'autre : plus que le vent même.",
  "For posts beside the platform that nothing holds at the ground; empty where they stand on the frame. The formula needs the depth to give the depth, so it is tried until the two agree: the last row counts.":
    "Pour des poteaux à côté de la plate-forme que rien ne tient au sol ; vide s'ils tiennent au bâti. La formule demande la profondeur pour donner la profondeur, on l'essaie donc jusqu'à ce que les deux s'accordent : la dernière ligne compte.",
  "Have buried cables and pipes marked before you dig. Where the ground freezes, the hole goes to the frost depth too. Cover an open hole.":
    "Faites marquer câbles et conduites enfouis avant de creuser. Là où le sol gèle, le trou va aussi jusqu'à la profondeur du gel. Couvrez un trou ouvert.",
  "Holes to dig for the posts, just outside the frame: {net_order.holes}, each {net_order.hole_depth} deep from the ground beside it. Stand the post plumb, brace it, and fill the hole with concrete to the top: {net_order.concrete} in all. On higher ground a post stands out more: saw it level with the others at its top and brush the cut. Where a hole meets the stone under a corner, tamp the stone again once the concrete is hard.":
    "Trous à creuser pour les poteaux, juste hors du bâti : {net_order.holes}, chacun de {net_order.hole_depth} de profondeur depuis le sol à côté. Dressez le poteau d'aplomb, étayez-le, et remplissez le trou de béton jusqu'en haut : {net_order.concrete} en tout. Là où le sol est plus haut, un poteau dépasse davantage : sciez-le en haut au niveau des autres et badigeonnez la coupe. Là où un trou touche la pierre sous un coin, damez la pierre de nouveau une fois le béton dur.",
  "Bolts through post and rim: {net_order.bolts}, {net_order.bolt_diameter} thick and at least {net_order.bolt_length} long, two to a post one above the other, a square washer at both ends of each.":
    "Boulons à travers poteau et rive : {net_order.bolts}, de {net_order.bolt_diameter} de grosseur et d'au moins {net_order.bolt_length} de longueur, deux par poteau l'un au-dessus de l'autre, une rondelle carrée à chaque bout.",
  "post-hole digger": "tarière ou pelle à trous",
  "mixing tub": "bac à gâcher",
  "Pegs of the guys and holes for posts go deeper than you dug: mind the marks of the locating service. Cover an open hole.":
    "Les piquets des haubans et les trous de poteaux vont plus bas que ce que vous avez creusé : suivez les marques du service de localisation. Couvrez un trou ouvert.",
  "80 lb bag of concrete": "sac de béton de 80 lb",
  "Concrete hardens for the days that its bag says before a net pulls at the posts.":
    "Le béton durcit le nombre de jours qu'indique son sac avant qu'un filet tire sur les poteaux.",
  "the frame, bolted": "le bâti, boulonnés",
  "Bolts through a rim hold a low net only: for a higher one set the posts in the ground.":
    "Des boulons à travers une rive ne tiennent qu'un filet bas : pour un plus haut, plantez les poteaux dans le sol.",
}
