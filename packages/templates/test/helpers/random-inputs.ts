import { type Definition, type InputEntry, measure, readValue } from "@pegbook/engine"
import fc from "fast-check"

/**
 * Legal texts for every input of a template: choices from what is offered, numbers between the least and the
 * greatest accepted (or a third to three times the default), in sixteenths of an inch or whole millimetres for lengths.
 */
export function legalInputs(definition: Definition): fc.Arbitrary<Record<string, string>> {
  const inputs = definition.sections.flatMap(({ entries }) =>
    entries.filter((entry): entry is InputEntry => entry.kind === "input"),
  )
  return fc.record(Object.fromEntries(inputs.map((entry) => [entry.name, legalText(entry)])))
}

function legalText(entry: InputEntry): fc.Arbitrary<string> {
  const original = entry.default ?? ""
  if (entry.choices !== undefined) return fc.constantFrom(...entry.choices)
  if (entry.measure === "yes_no") return fc.constantFrom("yes", "no")
  if (entry.measure === "text") return fc.constant(original)
  if (entry.list === true)
    return fc.subarray(original.split(", "), { minLength: 1 }).map((some) => some.join(", "))
  const start = si(entry, original) ?? si(entry, entry.least) ?? 0
  const least = si(entry, entry.least) ?? Math.min(start / 3, start * 3)
  const most = Math.min(si(entry, entry.most) ?? Number.POSITIVE_INFINITY, Math.max(start * 3, least))
  // A demo's own limits may span a garden and a field: most tries stay near what people build.
  if (entry.measure === "count")
    return fc.integer({ min: Math.ceil(least), max: Math.floor(most) }).map(String)
  if (entry.measure === "length") {
    const steps = (unit: number) => ({
      min: Math.ceil(least / unit),
      max: Math.max(Math.ceil(least / unit), Math.floor(most / unit)),
    })
    return fc.oneof(
      fc.integer(steps(0.0254 / 16)).map((sixteenths) => `${sixteenths}/16 in`),
      fc.integer(steps(0.001)).map((millimetres) => `${millimetres} mm`),
    )
  }
  // A bare share is read as a percentage.
  if (entry.measure === "share") {
    return fc
      .integer({ min: 1, max: 999 })
      .map((step) => `${Number((100 * (least + ((most - least) * step) / 1000)).toPrecision(6))} %`)
  }
  const unit = measure(entry.measure).si
  const suffix = unit === "1" || unit === "" ? "" : ` ${unit.replace(".", "·")}`
  // A thousandth inside the limits, so that six digits cannot round past them.
  return fc
    .integer({ min: 1, max: 999 })
    .map((step) => `${Number((least + ((most - least) * step) / 1000).toPrecision(6))}${suffix}`)
}

function si(entry: InputEntry, text: string | undefined): number | undefined {
  if (text === undefined || text === "") return undefined
  const outcome = readValue(text, entry.measure, "us")
  return "value" in outcome && typeof outcome.value === "object" ? outcome.value.si.toNumber() : undefined
}
