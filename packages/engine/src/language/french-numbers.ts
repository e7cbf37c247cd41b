import type { MeasureId } from "../units/measure.ts"

const THIN = "\u202f"
const HARD = "\u00a0"

/** A kept unit, and how it is written in French; the longest first, since they are looked for in this order. */
const UNITS: readonly (readonly [kept: string, french: string])[] = [
  ["millionths per K", "millionièmes par K"],
  ["lb/cu ft", "lb/pi³"],
  ["per sq ft", "par pi²"],
  ["per m²", "par m²"],
  ["sq ft", "pi²"],
  ["sq in", "po²"],
  ["sq yd", "vg²"],
  ["cu ft", "pi³"],
  ["cu in", "po³"],
  ["cu yd", "vg³"],
  ["lb·ft", "lb·pi"],
  ["lb/ft", "lb/pi"],
  ["pieces", "pièces"],
  ["piece", "pièce"],
  ["each", "chacun"],
  ["days", "jours"],
  ["day", "jour"],
  ["psf", "lb/pi²"],
  ["psi", "lb/po²"],
  ["mph", "mi/h"],
  ["ft", "pi"],
  ["in", "po"],
  ["yd", "vg"],
]

/** Other spellings that are typed in French, and what they are kept as. */
const SPELLINGS: readonly (readonly [french: string, kept: string])[] = [
  ["livres par pied carré", "psf"],
  ["livres par pouce carré", "psi"],
  ["verges cubes", "cu yd"],
  ["verge cube", "cu yd"],
  ["pieds cubes", "cu ft"],
  ["pied cube", "cu ft"],
  ["pieds carrés", "sq ft"],
  ["pied carré", "sq ft"],
  ["pouces carrés", "sq in"],
  ["pouce carré", "sq in"],
  ["mètres carrés", "m²"],
  ["mètre carré", "m²"],
  ["mètres cubes", "m³"],
  ["mètre cube", "m³"],
  ["millimètres", "mm"],
  ["millimètre", "mm"],
  ["centimètres", "cm"],
  ["centimètre", "cm"],
  ["mètres", "m"],
  ["mètre", "m"],
  ["pieds", "ft"],
  ["pied", "ft"],
  ["pouces", "in"],
  ["pouce", "in"],
  ["verges", "yd"],
  ["verge", "yd"],
  ["livres", "lb"],
  ["livre", "lb"],
  ["kilogrammes", "kg"],
  ["kilogramme", "kg"],
  ["heures", "h"],
  ["heure", "h"],
  ["dollars", "$"],
  ["pi2", "sq ft"],
  ["pi3", "cu ft"],
  ["vg3", "cu yd"],
  ["po2", "sq in"],
]

/** Where a difference of temperatures is typed, the scale's own sign is read as well. */
const TO_FRENCH = translator([...UNITS, ["F deg", "°F"]])
const FROM_FRENCH = translator([
  ...UNITS.map(([kept, french]) => [french, kept] as const).sort(([a], [b]) => b.length - a.length),
  ...SPELLINGS,
])

/** Puts whole units in the place of others, in one pass, so that none is translated twice. */
function translator(pairs: readonly (readonly [from: string, to: string])[]): (text: string) => string {
  const known = new Map(pairs.map(([from, to]) => [from.toLowerCase(), to]))
  const any = [...known.keys()]
    .sort((a, b) => b.length - a.length)
    .map((unit) => unit.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&"))
  const pattern = new RegExp(`(?<![\\p{L}/·²³])(?:${any.join("|")})(?![\\p{L}/·²³])`, "giu")
  return (text) => text.replace(pattern, (unit) => known.get(unit.toLowerCase()) ?? unit)
}

/** `1,250.5 sq ft` is written `1 250,5 pi²`, and money `1 250,50 $`. */
export function frenchNumber(text: string, measure?: MeasureId): string {
  const number = TO_FRENCH(text)
    .replace(/(?<=\d),(?=\d{3}(?!\d))/g, THIN)
    // What is kept has no marks; numbers of four digits need none.
    .replace(/(?<![\d.,\p{L}])\d{5,}/gu, (digits) => digits.replace(/\B(?=(\d{3})+$)/g, THIN))
    .replace(/(?<=\d)\.(?=\d)/g, ",")
    .replace(/(?<=\d) (?=[\p{L}%°$µ])/gu, HARD)
  if (measure === "money" && /\d$/.test(number)) return `${number}${HARD}$`
  if (measure === "money_per_area") return number.replace(/(?<=\d)\s*par\s/u, `${HARD}$/`)
  return number
}

/** What was typed in French, as it is kept: `1 250,5 pi²` is kept as `1250.5 sq ft`. A point is read as well. */
export function keptNumber(typed: string): string {
  // With both marks, the comma can only mark thousands.
  const plain = /\d,\d{3}\.\d/.test(typed) ? typed.replace(/(?<=\d),(?=\d{3}(?!\d))/g, "") : typed
  const number = plain
    .replace(/(?<=\d)[\u202f\u00a0 ](?=\d{3}(?![\d/,.]|\s*\/))/g, "")
    .replace(/(?<=\d)[\u202f\u00a0](?=\d{3}[,.])/g, "")
    .replace(/(?<=\d) (?=\d{3}[,.]\d)/g, "")
    .replace(/(?<=\d),(?=\d)/g, ".")
    .replace(/\$\s*\/\s*(?=pi²|pi2|m²|m2)/g, "$ par ")
  return FROM_FRENCH(number)
    .replace(/\bpar\b/g, "per")
    .replace(/[\u202f\u00a0]/g, " ")
}
