import type { Texts } from "../words/dictionary.ts"

/** How `cut` found a plan, and what stands in the way of one, by its English; `{1}`, `{2}` stand for what differs. */
export const FRENCH_CUTS: Texts = {
  // How it was found
  "limits compared": "limites comparées",
  "needs compared with what is offered": "besoins comparés à ce qui est offert",
  "joint layouts compared": "dispositions de joints comparées",
  "best fit, longest first": "au plus juste, le plus long d'abord",
  "two joint layouts in turn, then best fit, longest first":
    "deux dispositions de joints en alternance, puis au plus juste, le plus long d'abord",
  "two joint layouts in turn, then sheets filled longest first":
    "deux dispositions de joints en alternance, puis panneaux remplis, le plus long d'abord",
  "the cheapest offer for each line, over every set of suppliers":
    "l'offre la moins chère pour chaque ligne, sur tous les groupes de fournisseurs",
  "all patterns listed, whole-number program ({1})":
    "toutes les façons de couper énumérées, programme en nombres entiers ({1})",
  "patterns generated as needed, whole-number program ({1})":
    "façons de couper engendrées au besoin, programme en nombres entiers ({1})",
  "paths over the joists and all patterns, whole-number program ({1})":
    "chemins sur les solives et toutes les façons de couper, programme en nombres entiers ({1})",
  "paths over the supports and all patterns, whole-number program ({1})":
    "chemins sur les appuis et toutes les façons de couper, programme en nombres entiers ({1})",
  "packs, breaks and orders in one whole-number program ({1})":
    "paquets, paliers et commandes dans un programme en nombres entiers ({1})",
  "There are too many ways to cut these boards to list them all.":
    "Il y a trop de façons de couper ces planches pour les énumérer toutes.",
  "There are too many ways to cut these sheets to list them all.":
    "Il y a trop de façons de couper ces panneaux pour les énumérer toutes.",
  "No plan was found at once with the boards that are available; an exact search may find one.":
    "Aucun plan n'a été trouvé tout de suite avec les planches disponibles ; une recherche exacte en trouvera peut-être un.",
  "No order was found at once; an exact search may find one.":
    "Aucune commande n'a été trouvée tout de suite ; une recherche exacte en trouvera peut-être une.",
  "No order was found in the time given. Give it longer.":
    "Aucune commande n'a été trouvée dans le temps donné. Donnez plus de temps.",
  "No plan was found in the time given. Give it longer, or more boards.":
    "Aucun plan n'a été trouvé dans le temps donné. Donnez plus de temps, ou plus de planches.",
  "The exact solver could not be used ({1}): this is the best plan before it failed.":
    "Le solveur exact n'a pas pu servir ({1}) : voici le meilleur plan d'avant.",
  "The exact solver could not be used ({1}): this is the plan made at once, with the simple bound.":
    "Le solveur exact n'a pas pu servir ({1}) : voici le plan fait tout de suite, avec la borne simple.",
  "The search was ended after {1} s: this is the best plan that it had.":
    "La recherche a été arrêtée après {1} s : voici le meilleur plan qu'elle avait.",

  // What stands in the way
  "{1} is {2} long and there is no board to buy. {3}":
    "{1} fait {2} de long, et il n'y a aucune planche à acheter. {3}",
  "{1} is {2} long and the longest board gives {3}. {4}":
    "{1} fait {2} de long, et la plus longue planche donne {3}. {4}",
  "Too few boards are available for these pieces ({1}). {2}":
    "Trop peu de planches sont disponibles pour ces morceaux ({1}). {2}",
  "Too few boards are available for these lines ({1}). {2}":
    "Trop peu de planches sont disponibles pour ces lignes ({1}). {2}",
  "{1} of {2} are needed and nobody offers it. {3}": "Il faut {1} de {2}, et personne n'en offre. {3}",
  "{1} of {2} are needed and only {3} can be had. {4}": "Il faut {1} de {2}, et il n'y en a que {3}. {4}",
  "No order keeps to {1} together. {2}": "Aucune commande ne respecte à la fois {1}. {2}",
  "one supplier for each line, {1}": "un seul fournisseur par ligne, {1}",
  "the minimum orders, {1}": "les commandes minimales, {1}",
  "what is available": "ce qui est disponible",
  "Course {1} is {2} high and a sheet is {3} wide. {4}":
    "La rangée {1} fait {2} de haut, et un panneau {3} de large. {4}",
  "Course {1} is {2} high, and strips under {3} are not cut. {4}":
    "La rangée {1} fait {2} de haut, et les bandes de moins de {3} ne se coupent pas. {4}",
  "No layout keeps to every limit (sheets {1} long, least bays for a piece {2}, joints {3} apart). {4}":
    "Aucune disposition ne respecte toutes les limites (panneaux de {1} de long, au moins {2} travées par morceau, joints décalés de {3}). {4}",
  "No way to join pieces over these supports keeps to every limit (least bays for a piece {1}, joints {2} apart, bearing {3} under each piece, boards up to {4}). {5}":
    "Aucune façon de joindre les morceaux sur ces appuis ne respecte toutes les limites (au moins {1} travées par morceau, joints décalés de {2}, appui de {3} sous chaque morceau, planches jusqu'à {4}). {5}",
  "No single change was found that makes a plan possible.":
    "Aucun changement à lui seul n'a été trouvé qui rende un plan possible.",
  "Smallest change that makes a plan possible: {1}.":
    "Plus petit changement qui rend un plan possible : {1}.",
  "{1}; or {2}": "{1} ; ou {2}",
  "a board of {1} or longer to buy": "une planche de {1} ou plus à acheter",
  "{1} no longer than {2}, or made of two pieces": "{1} d'au plus {2}, ou fait de deux morceaux",
  "piece {1}": "morceau {1}",
  "no more than {1} trimmed off each end": "au plus {1} d'éboutage à chaque bout",
  "{1} of {2} to be had": "{1} de {2} disponibles",
  "{1} of {2} to be had instead of {3}": "{1} de {2} disponibles au lieu de {3}",
  "{1} of {2} instead of {3}, with the others named here":
    "{1} de {2} au lieu de {3}, avec les autres nommés ici",
  "{1} of {2} instead of {3}": "{1} de {2} au lieu de {3}",
  "{1} packs of {2} at {3} instead of {4}": "{1} paquets de {2} chez {3} au lieu de {4}",
  "lines that may be bought from more than one supplier":
    "des lignes qui peuvent s'acheter chez plus d'un fournisseur",
  "a minimum order of {1} at {2} instead of {3}": "une commande minimale de {1} chez {2} au lieu de {3}",
  "course {1} no higher than {2}": "rangée {1} d'au plus {2} de haut",
  "course {1} at least {2} high": "rangée {1} d'au moins {2} de haut",
  "sheets {1} wide": "panneaux de {1} de large",
  "sheets {1} long": "panneaux de {1} de long",
  "strips of {1} allowed": "bandes de {1} permises",
  "joints of neighbouring courses {1} apart": "joints de rangées voisines décalés de {1}",
  "joints of neighbouring lines {1} apart": "joints de lignes voisines décalés de {1}",
  "pieces that span 1 bay": "morceaux d'une travée",
  "pieces that span {1} bays": "morceaux de {1} travées",
  "joints that may lie {1} off the centre of a joist": "joints jusqu'à {1} du milieu d'une solive",
  "{1} of bearing under each piece at a joint": "{1} d'appui sous chaque morceau à un joint",
}
