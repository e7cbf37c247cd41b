import type { Texts } from "../words/dictionary.ts"

/** What the command refuses, by its English; `{1}`, `{2}` stand for what differs. */
export const FRENCH_REFUSALS: Texts = {
  // Commands and options
  "{1} is no command. The commands are {2}. Try: pegbook help":
    "{1} n'est pas une commande. Les commandes sont {2}. Essayez : pegbook help --language fr",
  "{1} was given {2} names. Write: {3}": "{1} a reçu {2} noms. Écrivez : {3}",
  "Unknown option {1}. Write: {2}": "L'option {1} est inconnue. Écrivez : {2}",
  "Option {1} argument missing Write: {2}": "L'option {1} attend une valeur. Écrivez : {2}",
  "Option {1} argument is ambiguous. Write: {2}": "La valeur de l'option {1} est ambiguë. Écrivez : {2}",
  "Option {1} does not take an argument Write: {2}": "L'option {1} ne prend pas de valeur. Écrivez : {2}",
  "--{1} is of no use here. Write: {2}": "--{1} ne sert à rien ici. Écrivez : {2}",
  "--set: {1} is not name=value. Write for example --set platform_length={2}.":
    "--set : {1} n'est pas nom=valeur. Écrivez par exemple --set platform_length={2}.",
  "--seconds: {1} is not accepted. Write a number from 0 (nothing is proven) to {2}, such as --seconds 60.":
    "--seconds : {1} n'est pas accepté. Écrivez un nombre de 0 (rien n'est prouvé) à {2}, comme --seconds 60.",
  "--paper: {1} is not accepted. Write --paper a4 or --paper letter.":
    "--paper : {1} n'est pas accepté. Écrivez --paper a4 ou --paper letter.",
  "--units: {1} is not accepted. Write --units us or --units metric.":
    "--units : {1} n'est pas accepté. Écrivez --units us ou --units metric.",

  // Files
  "{1}: {2} holds {3} bytes, and at most {4} are read. Give a smaller file.":
    "{1} : {2} fait {3} octets, et {4} au plus sont lus. Donnez un fichier plus petit.",
  "{1}: {2} cannot be read ({3}). Give the path of a file that can be.":
    "{1} : {2} est illisible ({3}). Donnez le chemin d'un fichier lisible.",
  "{1}: {2} is not JSON ({3}). Give a file that holds one JSON object.":
    "{1} : {2} n'est pas du JSON ({3}). Donnez un fichier qui contient un seul objet JSON.",
  "{1}: {2} cannot be written ({3}). Give a path that can.":
    "{1} : {2} ne peut pas être écrit ({3}). Donnez un chemin où l'on peut écrire.",
  "--out: {1} ends with neither .html nor .pdf. Write for example --out build-book.pdf.":
    "--out : {1} ne finit ni par .html ni par .pdf. Écrivez par exemple --out cahier.pdf.",
  "--out: {1}. Write --out build-book.html, and print that file from a browser at full size.":
    "--out : {1}. Écrivez --out cahier.html, et imprimez ce fichier d'un navigateur en grandeur réelle.",
  "--out: no Chromium was found to make a PDF with. Install one ({1}), or set PEGBOOK_CHROMIUM to the path of its program, and run this again. Or write --out build-book.html, and print that file from any browser at full size.":
    "--out : aucun Chromium n'a été trouvé pour faire un PDF. Installez-en un ({1}), ou donnez à PEGBOOK_CHROMIUM le chemin de son programme, et recommencez. Ou écrivez --out cahier.html, et imprimez ce fichier de n'importe quel navigateur en grandeur réelle.",
  "--to: {1} does not end with .ods. Write for example --to workbook.ods.":
    "--to : {1} ne finit pas par .ods. Écrivez par exemple --to classeur.ods.",

  // Workbooks
  "{1} is neither a template ({2}) nor the path of a saved workbook. Try: pegbook list.":
    "{1} n'est ni un modèle ({2}) ni le chemin d'un classeur enregistré. Essayez : pegbook list.",
  "{1} is neither a template ({2}) nor the path of a saved workbook. Did you mean {3}?":
    "{1} n'est ni un modèle ({2}) ni le chemin d'un classeur enregistré. Vouliez-vous dire {3} ?",
  "saved workbook {1}: it holds no workbook.": "classeur enregistré {1} : il n'y a là aucun classeur.",
  "saved workbook {1}: {2}": "classeur enregistré {1} : {2}",
  "saved workbook": "classeur enregistré",
  "{1} is no entry of {2}. Did you mean {3}?": "{1} n'est pas une entrée de {2}. Vouliez-vous dire {3} ?",
  "{1} is no entry of {2}. Names are in the middle of each line of: pegbook calc.":
    "{1} n'est pas une entrée de {2}. Les noms sont au milieu de chaque ligne de : pegbook calc.",
  "compare needs two scenarios, and this workbook's are: {1}. Save a copy in the browser first, or name two.":
    "compare veut deux scénarios, et ce classeur a : {1}. Enregistrez d'abord une copie dans le navigateur, ou nommez-en deux.",
  "{1} is no scenario of this workbook. Its scenarios are: {2}.":
    "{1} n'est pas un scénario de ce classeur. Ses scénarios sont : {2}.",

  // Tables
  "export writes one thing at a time. Give one of --entries, --table <name>, --headings <table> or --to <file.ods>.":
    "export écrit une seule chose à la fois. Donnez --entries, --table <nom>, --headings <tableau> ou --to <fichier.ods>.",
  "there is no such table as {1} here. Did you mean {2}?":
    "il n'y a pas de tableau {1} ici. Vouliez-vous dire {2} ?",
  "there is no such table as {1} here. The tables are {2}.":
    "il n'y a pas de tableau {1} ici. Les tableaux sont {2}.",
  "--table {1}: no table of this workbook is called {2}. Name the file {3}.":
    "--table {1} : aucun tableau de ce classeur ne s'appelle {2}. Nommez le fichier {3}.",
  "--table: {1} does not hold one object. It should be like {2}.":
    "--table : {1} ne contient pas un seul objet. Il devrait ressembler à {2}.",
  "--table: {1} in {2} is not a list of rows. It should be like {3}.":
    "--table : {1} dans {2} n'est pas une liste de lignes. Ce devrait ressembler à {3}.",
  "--table: row {1} of {2} in {3} is not an object. Write one text for each column.":
    "--table : la ligne {1} de {2} dans {3} n'est pas un objet. Écrivez un texte pour chaque colonne.",
  "--table: row {1} of {2} in {3}: {4} is neither text nor a number. Write for example {5}.":
    "--table : ligne {1} de {2} dans {3} : {4} n'est ni un texte ni un nombre. Écrivez par exemple {5}.",

  // Cases to cut
  "cut: {1} has no list cases. Accepted: {2} with a list of cases. Next: write the cases so.":
    "cut : {1} n'a pas de liste « cases ». Accepté : {2} avec une liste de cas. Ensuite : écrivez les cas ainsi.",
  "cut: {1} has cases that are {2}. Accepted: {3} with a list of cases. Next: write the cases so.":
    "cut : dans {1}, « cases » est {2}. Accepté : {3} avec une liste de cas. Ensuite : écrivez les cas ainsi.",
  "cut: case {1}: id was given {2} twice. Accepted: an id that no other case has. Next: correct id and try again.":
    "cut : cas {1} : id a reçu {2} deux fois. Accepté : un id qu'aucun autre cas n'a. Ensuite : corrigez id et recommencez.",
  "cut: case {1}: the case was given {2}. Accepted: {3}. Next: write it so and try again.":
    "cut : cas {1} : le cas a reçu {2}. Accepté : {3}. Ensuite : écrivez-le ainsi et recommencez.",
  "cut: case {1}: {2} was given {3}. Accepted: {4}. Next: correct {5} and try again.":
    "cut : cas {1} : {2} a reçu {3}. Accepté : {4}. Ensuite : corrigez {5} et recommencez.",
  "cut: case {1}: {2} is missing. Accepted: {3}. Next: correct {4} and try again.":
    "cut : cas {1} : {2} manque. Accepté : {3}. Ensuite : corrigez {4} et recommencez.",
  "an object with id, kind and the fields of its kind": "un objet avec id, kind et les champs de sa sorte",
  "one of {1}": "l'un de {1}",
  "a whole number": "un nombre entier",
  "a number": "un nombre",
  "a string": "un texte",
  "an array": "une liste",
  "an object": "un objet",
  "a boolean": "true ou false",
  "a whole number no less than {1}": "un nombre entier d'au moins {1}",
  "a whole number no more than {1}": "un nombre entier d'au plus {1}",
  "a list with no less than {1}": "une liste d'au moins {1}",
  "a list with no more than {1}": "une liste d'au plus {1}",
  "a text with a length of no less than {1}": "un texte d'au moins {1} caractères",
  "a text with a length of no more than {1}": "un texte d'au plus {1} caractères",
  "a value of the kind that the help shows": "une valeur de la sorte que l'aide montre",
  "one bearing for each of the {1} supports": "un appui pour chacun des {1} supports",
  "heights that with their gaps fill {1}; these fill {2}":
    "des hauteurs qui, avec leurs jeux, remplissent {1} ; celles-ci remplissent {2}",
  "the id of a line": "l'id d'une ligne",
  "the id of a supplier": "l'id d'un fournisseur",
  "an id that no other one has": "un id qu'aucun autre n'a",
  "more than the one before it, {1}": "plus que le précédent, {1}",
}

/** The page of help, line by line, and how commands and options are written. */
export const FRENCH_HELP: Texts = {
  "Pegbook works out a timber platform on the ground: every number, its formula and where it comes from.":
    "Pegbook calcule une plateforme de bois posée au sol : chaque nombre, sa formule et d'où il vient.",
  "the templates, one a line": "les modèles, un par ligne",
  "every number of a workbook, in the order of the work":
    "tous les nombres d'un classeur, dans l'ordre des travaux",
  "why a number is what it is, down to what was entered":
    "pourquoi un nombre est ce qu'il est, jusqu'à ce qui a été saisi",
  "what differs between two scenarios of a saved workbook":
    "ce qui diffère entre deux scénarios d'un classeur enregistré",
  "a workbook in an open format: CSV of its entries or a table, headings to fill in, or OpenDocument":
    "un classeur dans un format ouvert : CSV de ses entrées ou d'un tableau, en-têtes à remplir, ou OpenDocument",
  "the build book as one HTML or PDF file: drawings to scale, set-out, cut list, buying list, steps, what it rests on":
    "le cahier de chantier en un fichier HTML ou PDF : dessins à l'échelle, implantation, liste de coupe, liste d'achats, étapes, ce sur quoi il repose",
  "every number worked out again by two other evaluators, and where they differ":
    "chaque nombre recalculé par deux autres évaluateurs, et où ils diffèrent",
  "the JSON schema of a saved workbook": "le schéma JSON d'un classeur enregistré",
  "the best plan, and the proof of it, for boards, spliced lines, sheets and orders of your own":
    "le meilleur plan, et sa preuve, pour des planches, des lignes aboutées, des panneaux et des commandes à vous",
  "this page": "cette page",
  '--set takes what a person would type, with its unit: --set platform_length="18 ft" --set joist_spacing=400mm':
    '--set prend ce qu\'on taperait, avec son unité : --set platform_length="18 pi" --set joist_spacing=400mm',
  '--table takes a JSON file: { "ground_levels": [ { "x": "0 ft", "y": "0 ft", "level": "-3 in" } ] }':
    '--table prend un fichier JSON : { "ground_levels": [ { "x": "0 ft", "y": "0 ft", "level": "-3 in" } ] }',
  "    or a CSV file with the columns in its first line, called like its table: ground_levels.csv":
    "    ou un fichier CSV avec les colonnes à sa première ligne, nommé comme son tableau : ground_levels.csv",
  "--language fr says everything in French, and reads what --set gives in French or English units; files are the same in both.":
    "--language fr dit tout en français, et lit ce que --set donne en unités françaises ou anglaises ; les fichiers sont les mêmes dans les deux langues.",
  "--seconds says how long a search for the best plan may take: 30 when absent, and with 0 the plan made at once stands.":
    "--seconds dit combien de temps peut durer la recherche du meilleur plan : 30 sinon, et avec 0 le plan fait tout de suite reste.",
  'cut takes { "cases": [ … ] }, each with its id and its kind (cut, splice, sheet or buy): README.md shows one.':
    'cut prend { "cases": [ … ] }, chacun avec son id et sa sorte (cut, splice, sheet ou buy) : README.md en montre un.',
  "Exit status: 0 when calculated, failing checks included; 2 when what was given cannot be used.":
    "Code de sortie : 0 quand c'est calculé, même si des vérifications échouent ; 2 quand ce qui est donné ne peut pas servir.",
  "<template-or-saved-file>": "<modèle-ou-fichier-enregistré>",
  "<template-or-saved-file> <name>": "<modèle-ou-fichier-enregistré> <nom>",
  "<saved-file> [scenario scenario]": "<fichier-enregistré> [scénario scénario]",
  "<template-or-saved-file> (--entries | --table name | --headings table | --to file.ods)":
    "<modèle-ou-fichier-enregistré> (--entries | --table nom | --headings tableau | --to fichier.ods)",
  "<file.json>": "<fichier.json>",
  "[--set name=value]...": "[--set nom=valeur]...",
  "[--table file.json]...": "[--table fichier.json]...",
  "[--seconds number]": "[--seconds nombre]",
  "[--headings table]": "[--headings tableau]",
  "[--to file.ods]": "[--to fichier.ods]",
  "[--out file.html|file.pdf]": "[--out fichier.html|fichier.pdf]",
}
