import type { Texts } from "../dictionary.ts"

/** Texts that formulas and solvers put together; `{1}`, `{2}` are said in French themselves where they are known. */
export const patterns: Texts = {
  // Rows and pieces
  "line {1}": "ligne {1}",
  "line {1}, piece {2}": "ligne {1}, morceau {2}",
  "{1}, row {2}": "{1}, rangée {2}",
  "off-cuts of {1}": "chutes de {1}",
  "spare board of {1}": "planche de réserve de {1}",
  "own {1}": "à vous, {1}",
  "{1} (a-{2})": "{1} (a-{2})",
  "{1} (b-{2})": "{1} (b-{2})",
  "{1} oc": "{1} po c/c",

  // Strength and fixings
  "{1}: {2} takes {3} % of what is accepted": "{1} : {2}, {3} % de ce qui est accepté",
  "{1}: outside the tables: no published row for this species, grade and size, nothing holds it up, or it is too slim":
    "{1} : hors des tableaux : aucune ligne publiée pour cette essence, qualité et grosseur, rien ne la soutient, ou elle est trop élancée",
  "{1}: {2} are needed, {3} are there": "{1} : il en faut {2}, il y en a {3}",
  "{1} or better for the {2}: {3}": "{1} ou mieux ({2}) : {3}",
  "{1} | Select Structural | {2}": "{1} | Select Structural | {2}",

  // How good a plan is
  "{1}; not weighed: {2}": "{1} ; non pesés : {2}",
  "{1}; no price for {2}": "{1} ; sans prix pour {2}",
  "Not proven best: a plan may be up to {1} % cheaper, and not more.":
    "Non prouvé le meilleur : un plan peut être jusqu'à {1} % moins cher, pas plus.",
  "whole-number program over ways to cut a board ({1}), checked in whole numbers":
    "programme en nombres entiers sur les façons de couper une planche ({1}), vérifié en nombres entiers",
  "packs, breaks and orders in one whole-number program ({1}), checked in whole numbers":
    "paquets, paliers et commandes dans un programme en nombres entiers ({1}), vérifié en nombres entiers",

  // Lengths to buy
  "{1} × {2} of {3} does not come out of {4}: saw cuts and trimmed ends take {5}. {6}":
    "{1} × {2} de {3} ne sort pas de {4} : traits de scie et éboutage prennent {5}. {6}",
  "{1} gives them.": "{1} les donne.",
  "It takes a board of at least {1}.": "Il faut une planche d'au moins {1}.",
  "A {1} of {2} does not come out of the longest {3} to be had, {4}, with saw cuts and trimmed ends: add a length sold of at least {5}, or change what makes the piece so long.":
    "Un morceau ({1}) de {2} ne sort pas du plus long {3} disponible, {4}, avec traits de scie et éboutage : ajoutez une longueur vendue d'au moins {5}, ou changez ce qui rend le morceau si long.",
  "{1} of {2} does not come out of {3}": "{1} de {2} ne sort pas de {3}",
  "A joint needs {1} of bearing, {2} for each end, and the supports give {3}. Use longer blocks, or add a length of {4} or more.":
    "Un joint demande {1} d'appui, {2} pour chaque bout, et les appuis donnent {3}. Prenez des blocs plus longs, ou ajoutez une longueur de {4} ou plus.",
  "Every layout needs a piece shorter than {1}, the shortest allowed. Allow a shorter piece, or add a length longer than {2}.":
    "Toute disposition demande un morceau plus court que {1}, le plus court permis. Permettez un morceau plus court, ou ajoutez une longueur de plus de {2}.",
  "Joints of neighbouring lines are only {1} apart, not {2}: the lengths you can buy allow no more. Add a longer length, or ask for less stagger.":
    "Les joints de lignes voisines ne sont qu'à {1}, et non {2} : les longueurs vendues n'en permettent pas plus. Ajoutez une longueur plus longue, ou demandez moins de décalage.",
  "No length reaches from {1} to {2} along the line, the nearest two places for a joint: it needs {3} and the longest is {4}. Put the supports closer together, or add a longer length.":
    "Aucune longueur ne va de {1} à {2} sur la ligne, les deux endroits les plus proches pour un joint : il faut {3} et la plus longue fait {4}. Rapprochez les appuis, ou ajoutez une longueur plus longue.",
  "Surveyed points {1} and {2} stand at almost the same place. {3}":
    "Les points relevés {1} et {2} sont presque au même endroit. {3}",

  // Suppliers and what was bought
  "all from {1}": "tout chez {1}",
  "lacks {1}": "il manque {1}",
  "lacks {1}; and {2} more": "il manque {1} ; et {2} de plus",
  "not from {1}": "pas chez {1}",
  "pack of {1}": "paquet de {1}",
  "pack of {1} {2}": "paquet de {1} {2}",
  "price is {1} days old: ask again": "prix vieux de {1} jours : redemandez",
  "{1} takes orders from {2}, and no order reaches that; this one comes to {3}. Ask, or enter another supplier's prices.":
    "{1} accepte des commandes à partir de {2}, et aucune n'y arrive ; celle-ci fait {3}. Demandez, ou entrez les prix d'un autre fournisseur.",
  "{1} is counted by this workbook already: call your own line something else.":
    "{1} est déjà compté par ce classeur : donnez un autre nom à votre propre ligne.",
  "{1} is twice among your own things: the first is used. Write how many you need in one line.":
    "{1} figure deux fois parmi vos propres choses : la première vaut. Écrivez en une seule ligne combien il vous en faut.",
  'The price "{1}" of {2} cannot be read and is left out. Write an amount, as "12.50", or leave it empty.':
    "Le prix « {1} » de {2} est illisible et laissé de côté. Écrivez un montant, comme « 12,50 », ou laissez vide.",
  "{1} is in the suppliers twice: the first is used. Remove one.":
    "{1} est deux fois dans les fournisseurs : le premier sert. Retirez-en un.",
  "There are two prices for {1} at {2}: the first is used. Remove one.":
    "Il y a deux prix pour {1} chez {2} : le premier sert. Retirez-en un.",
  "There are two prices for {1}: the first is used. Remove one.":
    "Il y a deux prix pour {1} : le premier sert. Retirez-en un.",
  'Nobody called "{1}" is in your prices or suppliers: it is bought wherever it is cheapest. Write the name as it stands there.':
    "Personne du nom de « {1} » n'est dans vos prix ni vos fournisseurs : on achète là où c'est le moins cher. Écrivez le nom comme il y est.",
  'The day "{1}" cannot be read. Write it as year-month-day, "{2}".':
    "Le jour « {1} » est illisible. Écrivez-le année-mois-jour, « {2} ».",
  '"{1}" is no number of days: {2} are taken. Write a plain number.':
    "« {1} » n'est pas un nombre de jours : {2} est pris. Écrivez un simple nombre.",
  'The price of {1} is by "{2}", which this list does not count it by. Give it by {3}.':
    "Le prix de {1} est par « {2} », ce que cette liste ne compte pas. Donnez-le par {3}.",
  'The mass of {1} is by "{2}", which this list does not count it by. Give it by the piece or, for timber, by the length.':
    "Le poids de {1} est par « {2} », ce que cette liste ne compte pas. Donnez-le à la pièce ou, pour le bois, à la longueur.",
  'Line {1} of the prices has the {2} "{3}", which cannot be read. {4}':
    "La ligne {1} des prix a sous {2} « {3} », qui est illisible. {4}",
  'Line {1} of the suppliers has "{2}" under {3}, which cannot be read and is left out. Write an amount, as "{4}", or leave it empty.':
    "La ligne {1} des fournisseurs a « {2} » sous {3}, qui est illisible et laissé de côté. Écrivez un montant, comme « {4} », ou laissez vide.",
  'Line {1} of what was bought has "{2}" under {3}, which is no amount. Write a plain number, or leave it empty.':
    "La ligne {1} de ce qui est acheté a « {2} » sous {3}, qui n'est pas une quantité. Écrivez un simple nombre, ou laissez vide.",
  'Line {1} of what was bought has the length "{2}", which cannot be read. Write it with its unit, as "{3}".':
    "La ligne {1} de ce qui est acheté a la longueur « {2} », qui est illisible. Écrivez-la avec son unité, comme « {3} ».",
  'Write it as year-month-day, "{1}", or leave it empty.':
    "Écrivez-le année-mois-jour, « {1} », ou laissez vide.",
  'Write it with its unit, as "{1}", or leave it empty.':
    "Écrivez-le avec son unité, comme « {1} », ou laissez vide.",
  "{1} was noted in {2} and is listed in {3}: enter again how much you have.":
    "{1} a été noté en {2} et est listé en {3} : entrez de nouveau combien vous en avez.",
  "{1}: {2}. Look at the list and at the steps of the work.":
    "{1} : {2}. Regardez la liste et les étapes des travaux.",
}
