const NANOMETRES_PER_INCH = 25_400_000
const INCHES_PER_FOOT = 12
const NANOMETRES_PER_METRE = 1e9

/** A held length (nanometres) for a solver's sentence, in both systems: `14 ft 3 in (4.34 m)`. */
export function lengthInWords(nanometres: number): string {
  const hundredths = Math.round((nanometres / NANOMETRES_PER_INCH) * 100)
  const feet = Math.floor(hundredths / (INCHES_PER_FOOT * 100))
  const inches = (hundredths - feet * INCHES_PER_FOOT * 100) / 100
  const parts = [...(feet > 0 ? [`${feet} ft`] : []), ...(inches > 0 || feet === 0 ? [`${inches} in`] : [])]
  return `${parts.join(" ")} (${Number((nanometres / NANOMETRES_PER_METRE).toFixed(3))} m)`
}
