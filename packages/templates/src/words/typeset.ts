/**
 * French typesetting: no-break spaces before high marks, percent signs and units and inside quotation marks, and
 * typographic apostrophes. By the usual rules of French in Canada, except that ; ! ? get their space as well.
 */
export function typeset(text: string): string {
  return text
    .replace(/ (?=[:;?!»%])/g, "\u00a0")
    .replace(/« /g, "«\u00a0")
    .replace(/(?<=\p{L})'(?=\p{L}|\{)/gu, "’")
    .replace(/(?<=\d) (?=(?:pi|po|vg|lb|kg|mm|cm|m|h|kPa|MPa|kN|°)(?![\p{L}]))/gu, "\u00a0")
}
