import type { Texts } from "../dictionary.ts"

/** Posts: bolts of a net's posts, and what a post carries straight down. */
export const posts: Texts = {
  "Its fastening, of what that may bear": "Sa fixation, sur ce qu'elle peut porter",
  "Over 100 % its bolts, or the wood round them, let go. 0 where a joint has a table of its own.":
    "Au-dessus de 100 %, ses boulons, ou le bois autour, lâchent. 0 là où un joint a son propre tableau.",
  "The worst of bending, shear and its fastening, of what timber and bolts may bear.":
    "Le pire de la flexion, du cisaillement et de sa fixation, sur ce que bois et boulons peuvent porter.",
  "Push along the rim at the upper bolt": "Poussée le long de la rive au boulon du haut",
  "Wind the other way, on the post itself: its bolts are pushed sideways then, through the same lever.":
    "Le vent dans l'autre sens, sur le poteau même : ses boulons sont alors poussés de côté, par le même levier.",
  "The same at a corner that nothing else holds": "La même à un coin que rien d'autre ne tient",
  "Hold every corner with a guy line or a brace against each of its nets.":
    "Tenez chaque coin par un hauban ou une contrefiche contre chacun de ses filets.",
  "Its bolts, of what they may bear": "Ses boulons, sur ce qu'ils peuvent porter",
  "its fastening": "sa fixation",
  "net post on its two bolts, pushed along the rim":
    "poteau de filet sur ses deux boulons, poussé le long de la rive",
  "What the guard posts' fastening takes": "Ce que prend la fixation des poteaux de garde-corps",
  "The harder of the two loads, to set it beside the members. One row.":
    "La plus dure des deux charges, pour la mettre à côté des pièces. Une ligne.",
  "The worse of washer and bolt; 0 where no guard is counted, or where nothing can be said.":
    "Le pire de la rondelle et du boulon ; 0 si aucun garde-corps n'est compté, ou si rien ne peut être dit.",
  "Post height": "Hauteur d'un poteau",
  "What a post of your height carries straight down before it bows out sideways, by allowable stress, with every step in sight.":
    "Ce qu'un poteau de votre hauteur porte à la verticale avant de flamber de côté, aux contraintes admissibles, avec chaque étape visible.",
  "The load is straight down in the middle of the post, which is whole and held sideways at both ends. A post that is notched, leans, carries a beam at its side, or is pushed as by a guard or by wind carries less: that is for a designer.":
    "La charge descend droit au milieu du poteau, qui est entier et tenu de côté aux deux bouts. Un poteau entaillé, penché, qui porte une poutre sur son côté, ou que pousse un garde-corps ou le vent porte moins : cela revient à un concepteur.",
  "The post and its load": "Le poteau et sa charge",
  "Which post it is, how tall, and what stands on it.":
    "Quel poteau, quelle hauteur, et ce qui repose dessus.",
  "Post size": "Grosseur du poteau",
  "Height between what holds it": "Hauteur entre ce qui le tient",
  "From where its foot is held sideways to where its head is.":
    "D'où son pied est tenu de côté jusqu'où sa tête l'est.",
  "Load on the post": "Charge sur le poteau",
  "What the beam on it hands down: the floor that it carries, times dead and live load.":
    "Ce que la poutre dessus transmet : le plancher qu'elle porte, fois charge permanente et surcharge.",
  "Length that counts, over the height": "Longueur qui compte, sur la hauteur",
  "Ke. 1 where both ends are held sideways but can turn, as on a post base and under a beam.":
    "Ke. 1 si les deux bouts sont tenus de côté mais peuvent tourner, comme sur un pied de poteau et sous une poutre.",
  "3.7.1, column stability": "3.7.1, stabilité des poteaux",
  "Held against a published worked example, which was read (record worked_examples, WE8).":
    "Comparé à un exemple publié, qui a été lu (fiche worked_examples, WE8).",
  "Stiffness over slenderness squared, times": "Rigidité sur élancement au carré, fois",
  "FcE = 0.822 E′min ÷ slenderness².": "FcE = 0,822 E′min ÷ élancement².",
  "Shape of the rule: c": "Forme de la règle : c",
  "Of sawn timber.": "Du bois de sciage.",
  "Slenderness at most": "Élancement au plus",
  "The post, step by step": "Le poteau, pas à pas",
  "From the published strength to the load it may carry, in one row.":
    "De la résistance publiée à la charge qu'il peut porter, en une ligne.",
  "Narrow side": "Côté étroit",
  "As it is planed. It bows out this way.": "Tel que raboté. Il flambe dans ce sens.",
  "That bears the load.": "Qui porte la charge.",
  "Timbers of 5 in and more are graded by other rules.":
    "Les bois de 5 po et plus sont classés selon d'autres règles.",
  "Where a species is published by width or shape.":
    "Là où une essence est publiée par largeur ou par forme.",
  "Compression, published: Fc": "Compression, publiée : Fc",
  "Along the grain, before any factor.": "Dans le fil, avant tout coefficient.",
  "Low stiffness, published: Emin": "Rigidité basse, publiée : Emin",
  "For bowing out, before any factor.": "Pour le flambement, avant tout coefficient.",
  "On strength, not on stiffness.": "Sur la résistance, pas sur la rigidité.",
  "On compression. 1 where the size is inside the published value.":
    "Sur la compression. 1 si la grosseur est déjà dans la valeur publiée.",
  "Wet service factor on compression": "Coefficient d'humidité sur la compression",
  "Only a species that needs it.": "Seulement pour une essence qui en a besoin.",
  "Compression before bowing out: Fc*": "Compression avant flambement : Fc*",
  "The published value with every factor but the last.":
    "La valeur publiée avec tous les coefficients sauf le dernier.",
  "Low stiffness in use": "Rigidité basse utilisée",
  "The published value with its factors.": "La valeur publiée avec ses coefficients.",
  "Length that counts": "Longueur qui compte",
  "By how its ends are held.": "Selon la façon dont ses bouts sont tenus.",
  Slenderness: "Élancement",
  "That length over the narrow side.": "Cette longueur sur le côté étroit.",
  "Stress at which it bows out: FcE": "Contrainte où il flambe : FcE",
  "Twice the height, a quarter of it.": "Deux fois la hauteur, le quart.",
  "FcE over Fc*": "FcE sur Fc*",
  "Below 1 it bows out before it is crushed.": "Sous 1, il flambe avant de s'écraser.",
  "Half sum of the rule": "Demi-somme de la règle",
  "A step of the rule for CP.": "Une étape de la règle de CP.",
  "Column stability factor, CP": "Coefficient de stabilité du poteau, CP",
  "1 for a short block; the taller and slimmer, the less is left.":
    "1 pour un bloc court ; plus il est haut et mince, moins il en reste.",
  "Compression it may bear": "Compression qu'il peut porter",
  "All factors in.": "Tous coefficients compris.",
  "Compression under your load": "Compression sous votre charge",
  "Load over area.": "Charge sur aire.",
  "Load it may carry": "Charge qu'il peut porter",
  "Straight down.": "À la verticale.",
  "Of what it may bear": "Sur ce qu'il peut porter",
  "Over 100 % it bows out or is crushed.": "Au-dessus de 100 %, il flambe ou s'écrase.",
  "Load that the post may carry": "Charge que le poteau peut porter",
  "The answer. Beams are often crushed across the grain where they sit on it before that: check their seat as well.":
    "La réponse. Les poutres s'écrasent souvent avant, en travers du fil, là où elles y reposent : vérifiez aussi leur siège.",
  "Does the post carry its load?": "Le poteau porte-t-il sa charge ?",
  "A tall, slim post bows out sideways long before it is crushed.":
    "Un poteau haut et mince flambe de côté bien avant de s'écraser.",
  "Take a thicker post, a shorter one, or more of them: {post_load} stand on one that may carry {post_load_allowed}.":
    "Prenez un poteau plus gros, plus court, ou plusieurs : {post_load} reposent sur un poteau qui peut porter {post_load_allowed}.",
  "Is the post stout enough for the rule?": "Le poteau est-il assez trapu pour la règle ?",
  "A post slimmer than this must not be used at all, however small its load.":
    "Un poteau plus élancé ne doit pas servir du tout, si petite que soit sa charge.",
  "Take a thicker post, or hold it sideways half way up.":
    "Prenez un poteau plus gros, ou tenez-le de côté à mi-hauteur.",
}
