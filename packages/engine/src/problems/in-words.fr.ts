import { FORMULA_END } from "../formula/formula-end.ts"
import type { ValueType } from "../formula/value-type.ts"
import { frenchNumber } from "../language/french-numbers.ts"
import { inLanguage } from "../language/in-force.ts"
import type { Words } from "../language/language.ts"
import {
  BASE_DIMENSIONS,
  type BaseDimension,
  type Dimension,
  isPlain,
  sameDimension,
} from "../quantity/dimension.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { MEASURES } from "../units/measures.ts"
import { isUnit } from "../units/registry.ts"
import type { Place, Problem } from "./problem.ts"

/** "a length", "an area", in French. */
type Measured = Readonly<Record<MeasureId, string>>

/** The French sentences for a problem, with no-break spaces where French sets them. */
export function inFrench(problem: Problem, system: UnitSystem, measured: Measured): Words {
  const { says, next } = sentences(problem, system, measured)
  return { says: spaced(placed(problem.at, says)), next: spaced(next) }
}

/** A no-break space before the high marks and inside quotation marks. */
function spaced(text: string): string {
  return text.replace(/ (?=[:;?!»%])/g, "\u00a0").replace(/« /g, "«\u00a0")
}

function typeInFrench(type: ValueType, measured: Measured): string {
  switch (type.kind) {
    case "zero":
      return "zéro"
    case "text":
      return measured.text
    case "yes_no":
      return measured.yes_no
    case "number":
      return dimensionInFrench(type.dimension, measured)
  }
}

function dimensionInFrench(dimension: Dimension, measured: Measured): string {
  if (isPlain(dimension)) return measured.ratio
  const says = Object.values(MEASURES)
    .filter((measure) => measure.dimension && sameDimension(measure.dimension, dimension))
    .map(({ id }) => measured[id])
  return says.length > 0 ? oneOf([...new Set(says)]) : `un nombre en ${baseUnits(dimension)}`
}

const BASE_UNITS: Readonly<Record<BaseDimension, string>> = {
  mass: "kg",
  length: "m",
  time: "s",
  temperature: "K",
  money: "argent",
}

function baseUnits({ exponents }: Dimension): string {
  return BASE_DIMENSIONS.flatMap((base) => {
    const exponent = exponents[base] ?? 0
    if (exponent === 0) return []
    return exponent === 1 ? [BASE_UNITS[base]] : [`${BASE_UNITS[base]}^${exponent}`]
  }).join("·")
}

function withExample(type: ValueType, system: UnitSystem, measured: Measured): string {
  const words = typeInFrench(type, measured)
  if (type.kind !== "number" || isPlain(type.dimension)) return words
  const example = Object.values(MEASURES).find(
    (measure) => measure.dimension && sameDimension(measure.dimension, type.dimension),
  )?.example[system]
  return example === undefined ? words : `${words} (comme ${frenchNumber(example)})`
}

function placed(at: Place, says: string): string {
  const row = at.row === undefined ? [] : [`rangée ${at.row}`]
  const line = at.line === undefined ? [] : [`ligne ${at.line}`]
  const character = at.span === undefined ? [] : [`au caractère ${at.span.start + 1} de la formule`]
  const where = [...(at.entry === undefined ? [] : [at.entry]), ...row, ...line, ...character].join(", ")
  return where === "" ? says.charAt(0).toUpperCase() + says.slice(1) : `${where} : ${says}`
}

function oneOf(options: readonly string[]): string {
  const last = options.at(-1) ?? ""
  return options.length < 2 ? last : `${options.slice(0, -1).join(", ")} ou ${last}`
}

function count(number: number, one: string, several = `${one}s`): string {
  return `${number.toLocaleString("fr")} ${Math.abs(number) < 2 ? one : several}`
}

function didYouMean(near: readonly string[], otherwise: string): string {
  return near.length > 0 ? `Vouliez-vous dire ${oneOf(near)} ? Vérifiez l’orthographe.` : otherwise
}

function argumentsAccepted(least: number, most: number): string {
  if (least === most) return count(least, "valeur")
  return Number.isFinite(most)
    ? `de ${least} à ${count(most, "valeur")}`
    : `au moins ${count(least, "valeur")}`
}

/** What the reader of formulas says of itself, in noun phrases. */
const PHRASES: Readonly<Record<string, string>> = {
  "an operator or the end of the formula": "un opérateur ou la fin de la formule",
  "a name, a number, a function or a parenthesis": "un nom, un nombre, une fonction ou une parenthèse",
  "an operator or )": "un opérateur ou )",
  "an operator, ; or )": "un opérateur, ; ou )",
  "a value that needs no row": "une valeur qui ne dépend d’aucune ligne",
  "a number below 1e308": "un nombre inférieur à 1e308",
  'a text that ends with "': 'un texte qui finit par "',
  "a name, a number, an operator or a text in quotes":
    "un nom, un nombre, un opérateur ou un texte entre guillemets",
  "the end": "la fin",
  "the end of the formula": "la fin de la formule",
  "a plain number": "un nombre sans unité",
  "a yes or no": "un oui ou un non",
  "a column of the same table": "une colonne du même tableau",
  'a value like those in the column, or a text such as ">0"':
    'une valeur comme celles de la colonne, ou un texte comme ">0"',
  'a value like those in the column: a number in quotes has no unit, except ">0"':
    'une valeur comme celles de la colonne : un nombre entre guillemets n’a pas d’unité, sauf ">0"',
  numbers: "des nombres",
  "a number": "un nombre",
  "a column": "une colonne",
  "one value": "une seule valeur",
  "differences, not points on a scale": "des écarts, et non des points d’une échelle",
  "0, 1 or -1, written out": "0, 1 ou -1, écrit tel quel",
  "a column of numbers in order; texts are matched with MATCH and 0":
    "une colonne de nombres en ordre ; les textes se cherchent avec MATCH et 0",
  "a whole number of digits": "un nombre entier de chiffres",
  "a text or a plain number": "un texte ou un nombre sans unité",
  "a number written out, because it changes what the result measures":
    "un nombre écrit tel quel, car il change ce que mesure le résultat",
  "a whole number or a half": "un nombre entier ou un demi",
  // Why an entry or a file cannot be taken
  "it has no label.": "elle n’a pas d’intitulé.",
  "it does not say where the figure is from.": "elle ne dit pas d’où vient la donnée.",
  "only a text has choices.": "seul un texte a des choix.",
  "only a number has limits.": "seul un nombre a des limites.",
  "it does not say what it measures.": "elle ne dit pas ce qu’elle mesure.",
  "It does not hold one object.": "Il ne contient pas un seul objet.",
  "It has no version number.": "Il n’a pas de numéro de version.",
  "Its members cannot be read.": "Ses membres sont illisibles.",
  "It is not a workbook.": "Ce n’est pas un classeur.",
  "It holds too many values.": "Il contient trop de valeurs.",
  "Its parts lie too deep in each other.": "Ses parties sont trop imbriquées.",
  "It is no text.": "Ce n’est pas un texte.",
  "It is no number.": "Ce n’est pas un nombre.",
  "It is no whole number.": "Ce n’est pas un nombre entier.",
  "It is neither true nor false.": "Ce n’est ni vrai ni faux.",
  "It is no list.": "Ce n’est pas une liste.",
  "It is no object.": "Ce n’est pas un objet.",
  "It is empty.": "C’est vide.",
  "A name in it is too long.": "Un nom y est trop long.",
  "It is not as it is saved here.": "Ce n’est pas tel qu’on l’enregistre ici.",
}

/** The same, with something put in. */
const PATTERNS: readonly (readonly [english: RegExp, french: (put: string) => string])[] = [
  [/^Its format is not "(.*)"\.$/, (put) => `Son format n’est pas « ${put} ».`],
  [
    /^It holds a text of (\d+) characters\.$/,
    (put) => `Il contient un texte de ${count(Number(put), "caractère")}.`,
  ],
  [/^It holds a member called "(.*)"\.$/, (put) => `Il contient un membre nommé « ${put} ».`],
  [/^It holds a (bigint|function|symbol)\.$/, (put) => `Il contient une valeur de type ${put}.`],
  [/^It has more than ([\d,]+) parts\.$/, (put) => `Il y a plus de ${count(whole(put), "partie")}.`],
  [/^It has more than ([\d,]+) characters\.$/, (put) => `Il y a plus de ${count(whole(put), "caractère")}.`],
  [/^It is more than ([\d,]+)\.$/, (put) => `C’est plus que ${whole(put).toLocaleString("fr")}.`],
  [/^It is less than ([\d,]+)\.$/, (put) => `C’est moins que ${whole(put).toLocaleString("fr")}.`],
  [/^It is none of: (.*)\.$/, (put) => `Ce n’est aucun de ceux-ci : ${put}.`],
]

const whole = (english: string) => Number(english.replaceAll(",", ""))

function phrase(english: string): string {
  const known = PHRASES[english]
  if (known !== undefined) return known
  for (const [pattern, french] of PATTERNS) {
    const put = pattern.exec(english)?.[1]
    if (put !== undefined) return french(put)
  }
  return english
}

const within = ({ part, reason }: { readonly part?: string; readonly reason: string }) =>
  part === undefined ? phrase(reason) : `${part} : ${phrase(reason)}`

const KINDS: Readonly<Record<string, string>> = {
  input: "une entrée",
  figure: "une donnée",
  formula: "une formule",
  column: "une colonne",
  solved: "un résultat de recherche",
  check: "une vérification",
}

function sentences(problem: Problem, system: UnitSystem, measured: Measured): Words {
  const typed = (type: ValueType): string => withExample(type, system, measured)
  switch (problem.code) {
    case "formula_empty":
      return { says: "la formule est vide.", next: "Écrivez une formule, par exemple 2 * 3." }
    case "formula_too_long":
      return {
        says: `la formule compte ${count(problem.length, "caractère")}.`,
        next: `Au plus ${count(problem.most, "caractère")} sont acceptés. Répartissez-la en plusieurs entrées.`,
      }
    case "formula_too_deep":
      return {
        says: `la formule a plus de ${problem.most} parenthèses ou fonctions imbriquées.`,
        next: `Au plus ${problem.most} sont acceptées, l’une dans l’autre. Répartissez-la en plusieurs entrées.`,
      }
    case "unexpected":
      return {
        says: `la formule est illisible : elle contient ${phrase(problem.found)} là où il faudrait ${phrase(problem.expected)}.`,
        next: unexpectedNext(problem),
      }
    case "unknown_name":
      return {
        says: `rien ne s’appelle « ${problem.name} ».`,
        next: didYouMean(problem.near, "Utilisez le nom d’une entrée, ou ajoutez une entrée de ce nom."),
      }
    case "unknown_function":
      return {
        says: `il n’y a pas de fonction « ${problem.name} ».`,
        next: didYouMean(problem.near, "Utilisez une fonction de la liste, comme SUM, ROUNDUP ou IF."),
      }
    case "wrong_argument_count":
      return {
        says: `${problem.function} a reçu ${count(problem.given, "valeur")}.`,
        next: `Il lui faut ${argumentsAccepted(problem.least, problem.most)}, séparées par « ; ».`,
      }
    case "dimension_mismatch":
      return {
        says: `${problem.doing} a ${typed(problem.left)} d’un côté et ${typed(problem.right)} de l’autre.`,
        next: "Les deux côtés doivent être de même nature. Vérifiez que chaque nom est bien celui que vous vouliez.",
      }
    case "wrong_argument":
      return {
        says: `la valeur ${problem.position} de ${problem.function} est ${typed(problem.given)}.`,
        next: `${problem.function} y accepte ${phrase(problem.accepted)}. Vérifiez que le nom est bien celui que vous vouliez.`,
      }
    case "column_where_one_value":
      return {
        says: `« ${problem.name} » est une colonne entière, et il faut une seule valeur.`,
        next: `Tirez-en une valeur, par exemple SUM(${problem.name}), MAX(${problem.name}) ou INDEX(${problem.name}; 1).`,
      }
    case "result_mismatch":
      return {
        says: `la formule donne ${typed(problem.given)}, et l’entrée est ${typed(problem.wanted)}.`,
        next: "Changez la formule, ou ce que l’entrée mesure, pour qu’elles s’accordent.",
      }
    case "cycle":
      return {
        says: `ces entrées s’attendent l’une l’autre en boucle : ${[...problem.ring, ...problem.ring.slice(0, 1)].join(" → ")}.`,
        next: "Changez l’une de leurs formules pour qu’elle ne s’appuie plus sur la suivante de la boucle.",
      }
    case "leans_on_problem":
      return {
        says: `le calcul est impossible, car il s’appuie sur ${problem.on.join(", ")}.`,
        next: "Corrigez ce qui ne va pas là-bas ; le reste suit.",
      }
    case "needs_entry":
      return {
        says: `il manque une valeur pour ${problem.inputs.join(", ")}.`,
        next: `Entrez ${problem.inputs.join(", ")}.`,
      }
    case "division_by_zero":
      return {
        says: "le calcul divise par zéro.",
        next: "Cherchez dans le calcul la valeur qui vaut 0, et entrez-en une autre.",
      }
    case "not_a_number":
      return {
        says: "le calcul ne donne pas un nombre : racine carrée d’un nombre négatif, par exemple, ou nombre trop grand.",
        next: "Cherchez dans le calcul une valeur bien trop grande, trop petite ou négative, et changez-la.",
      }
    case "not_found":
      return {
        says: "le calcul cherche une valeur que le tableau n’a pas.",
        next: "Choisissez une valeur du tableau, ou ajoutez une ligne au tableau.",
      }
    case "text_for_number":
      return {
        says: "il y a un texte là où il faut un nombre.",
        next: "Cherchez le texte dans le calcul, et entrez un nombre à sa place.",
      }
    case "too_many_rows":
      return {
        says: `le tableau aurait ${count(problem.wanted, "ligne")}.`,
        next: `Au plus ${count(problem.most, "ligne")} sont acceptées. Augmentez un espacement, ou réduisez une dimension.`,
      }
    case "bad_row_count":
      return {
        says: `le nombre de lignes serait de ${problem.wanted}.`,
        next: "Il doit être un nombre entier, 0 ou plus. Vérifiez les dimensions dont il découle.",
      }
    case "unmet":
      return {
        says: `aucune solution ne respecte toutes les limites. ${problem.says.map(inLanguage).join(" ")}`.trim(),
        next: "Changez l’une des limites nommées, et la recherche reprend.",
      }
    case "input_empty":
      return {
        says: "rien n’a été entré.",
        next: `Entrez une valeur, par exemple ${frenchNumber(problem.example)}.`,
      }
    case "input_unreadable":
      return {
        says: `« ${frenchNumber(problem.given)} » est illisible.`,
        next: `Écrivez plutôt : ${frenchNumber(problem.example)}.`,
      }
    case "input_wrong_unit":
      return {
        says: `« ${frenchNumber(problem.given)} » porte l’unité « ${frenchNumber(problem.unit)} », qui mesure autre chose.`,
        next: `Accepté ici : ${acceptedUnits(problem.accepted)}.`,
      }
    case "input_unknown_unit":
      return {
        says: `« ${frenchNumber(problem.given)} » a « ${problem.unit} » à la place d’une unité, et aucune unité ne s’écrit ainsi.`,
        next: `Accepté ici : ${acceptedUnits(problem.accepted)}.`,
      }
    case "input_below":
      return {
        says: `${frenchNumber(problem.given)} est trop petit.`,
        next: `Entrez ${frenchNumber(problem.least)} ou plus.`,
      }
    case "input_above":
      return {
        says: `${frenchNumber(problem.given)} est trop grand.`,
        next: `Entrez ${frenchNumber(problem.most)} ou moins.`,
      }
    case "input_not_whole":
      return {
        says: `${frenchNumber(problem.given)} n’est pas un nombre entier.`,
        next: "Entrez un nombre entier, par exemple 12.",
      }
    case "input_not_a_choice":
      return {
        says: `« ${inLanguage(problem.given)} » n’est pas l’un des choix.`,
        next: `Choisissez ${oneOf(problem.choices.map(inLanguage))}.`,
      }
    case "input_too_long":
      return {
        says: `le texte entré compte ${count(problem.length, "caractère")}.`,
        next: `Au plus ${count(problem.most, "caractère")} sont acceptés. Raccourcissez-le.`,
      }
    case "no_such_entry":
      return {
        says: `aucune entrée ne s’appelle « ${problem.name} ».`,
        next: didYouMean(problem.near, "Utilisez le nom d’une entrée de ce classeur."),
      }
    case "not_an_input":
      return {
        says: `« ${problem.name} » est ${KINDS[problem.kind] ?? problem.kind}, qui est calculée et ne peut pas être remplacée.`,
        next: "Changez une entrée ou une donnée sur laquelle elle s’appuie.",
      }
    case "no_such_column":
      return {
        says: `le tableau « ${problem.table} » n’a pas de colonne « ${problem.column} » à remplir.`,
        next: `Utilisez ${oneOf(problem.columns)}.`,
      }
    case "table_too_long":
      return {
        says: `${count(problem.given, "ligne")} ont été données.`,
        next: `Au plus ${count(problem.most, "ligne")} sont acceptées. Retirez-en.`,
      }
    case "csv_empty":
      return {
        says: "il n’y a rien dedans.",
        next: `Écrivez ${problem.columns.join(", ")} sur la première ligne, puis une ligne pour chaque élément.`,
      }
    case "csv_open_quote":
      return {
        says: "un guillemet ouvre une cellule et n’est jamais fermé ; la suite n’a pas été lue.",
        next: 'Fermez-le avant le prochain séparateur, ou doublez-le ("") s’il fait partie du texte.',
      }
    case "csv_no_column":
      return {
        says: `aucun en-tête ne s’appelle ${oneOf(problem.missing)}.`,
        next: `En-têtes acceptés sur la première ligne : ${problem.columns.join(", ")}, séparés par des virgules, des points-virgules ou des tabulations.`,
      }
    case "csv_column_twice":
      return {
        says: `deux en-têtes s’appellent ${problem.column}.`,
        next: "Donnez un autre nom à l’un d’eux, ou retirez sa colonne.",
      }
    case "csv_too_many_cells":
      return {
        says: `il y a ${count(problem.given, "cellule")}, et ${count(problem.most, "en-tête")} sur la première ligne.`,
        next: "Mettez entre guillemets un texte qui contient le séparateur, ou retirez les cellules de trop.",
      }
    case "scenario_sealed":
      return {
        says: `« ${problem.title} » est scellé, pour rester ce qu’il était.`,
        next: "Enregistrez-en une copie, et changez la copie.",
      }
    case "bad_name":
      return {
        says: `« ${problem.name} » ne peut pas servir de nom.`,
        next: "Utilisez des minuscules sans accent, des chiffres et « _ » entre les mots, une lettre d’abord, par exemple gate_width.",
      }
    case "name_taken":
      return {
        says: `une entrée s’appelle déjà « ${problem.name} ».`,
        next: "Choisissez un autre nom.",
      }
    case "not_own":
      return {
        says: `« ${problem.name} » n’est pas une entrée que vous avez ajoutée.`,
        next: "Seule une entrée à vous peut être changée, renommée ou retirée. Tapez plutôt une valeur par-dessus.",
      }
    case "no_measure":
      return {
        says: `la formule donne ${typed(problem.given)}, qu’aucune entrée ne mesure.`,
        next: "Changez la formule pour qu’elle donne quelque chose qui se mesure ici, comme une longueur ou une aire.",
      }
    case "leaned_on":
      return {
        says: `« ${problem.name} » sert à ${problem.by.join(", ")}.`,
        next: "Changez d’abord celles-là, ou retirez-la quand même : elles diront alors qu’elle manque.",
      }
    case "bad_entry":
      return {
        says: `l’entrée ne peut pas être ajoutée : ${within(problem)}`,
        next: "Corrigez cette partie de l’entrée, et ajoutez-la de nouveau.",
      }
    case "too_many_values":
      return {
        says: `d’un bout à l’autre, avec ce pas, il y a ${count(problem.given, "valeur")}.`,
        next: `Au plus ${problem.most.toLocaleString("fr")} sont essayées. Prenez un pas plus grand, ou rapprochez les bouts.`,
      }
    case "too_many_entries":
      return {
        says: `il y aurait ${count(problem.given, "entrée")} à vous.`,
        next: `Au plus ${problem.most.toLocaleString("fr")} sont acceptées. Retirez-en.`,
      }
    case "file_unreadable":
      return {
        says: `le classeur enregistré est illisible : ${within(problem)}`,
        next: "Choisissez un fichier enregistré ici et qui n’a pas été modifié à la main.",
      }
    case "file_from_future":
      return {
        says: `le fichier a été enregistré dans la version ${problem.version} du format, et cette copie connaît jusqu’à la version ${problem.known}.`,
        next: "Ouvrez-le avec une copie plus récente.",
      }
    case "file_unknown_template":
      return {
        says: `le fichier est fait pour le modèle « ${problem.template} », qui n’est pas ici.`,
        next: `Ouvrez un fichier pour ${oneOf(problem.known)}.`,
      }
  }
}

function acceptedUnits(accepted: readonly string[]): string {
  const units = accepted.map((unit) => frenchNumber(unit))
  return units.length > 0 ? `un nombre avec ${oneOf(units)}` : "un nombre sans unité"
}

function unexpectedNext({ found, expected }: Problem & { readonly code: "unexpected" }): string {
  if (isUnit(found))
    return "Une formule ne contient pas d’unités : faites de la quantité un chiffre ou une entrée à elle, avec son unité, et mettez ici son nom."
  if (found === ",")
    return "Les décimales s’écrivent avec un point, 1.5, et les valeurs d’une fonction se séparent par un point-virgule : MIN(a; b)."
  if (found === FORMULA_END) return `Mettez ${phrase(expected)} à la fin.`
  return `Mettez-y ${phrase(expected)}, ou retirez ${phrase(found)}.`
}
