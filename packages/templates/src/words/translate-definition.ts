import type { CheckEntry, Column, Definition, Drawing, Entry, Section, Source, Stage } from "@pegbook/engine"

/** Says a text in another language. */
export type Say = (english: string) => string

/**
 * A definition whose every text that is only read is said in another language. Names, formulas, values and choices stay:
 * formulas compare them, and saved workbooks hold them.
 */
export function translateDefinition(definition: Definition, say: Say): Definition {
  const { stages, drawings } = definition
  return {
    ...definition,
    title: say(definition.title),
    says: say(definition.says),
    cautions: definition.cautions.map(say),
    sections: definition.sections.map((section) => translateSection(section, say)),
    ...(stages === undefined ? {} : { stages: stages.map((stage) => translateStage(stage, say)) }),
    ...(drawings === undefined
      ? {}
      : { drawings: drawings.map((drawing) => translateDrawing(drawing, say)) }),
  }
}

function translateSection(section: Section, say: Say): Section {
  return {
    ...section,
    title: say(section.title),
    says: say(section.says),
    entries: section.entries.map((entry) => translateEntry(entry, say)),
  }
}

function translateEntry(entry: Entry, say: Say): Entry {
  const described = translateDescribed(entry, say)
  switch (described.kind) {
    case "input":
      return described.blank === undefined ? described : { ...described, blank: say(described.blank) }
    case "check":
      return translateCheck(described, say)
    case "table":
      return { ...described, columns: described.columns.map((column) => translateDescribed(column, say)) }
    case "figure":
    case "formula":
      return described
  }
}

function translateCheck(check: CheckEntry, say: Say): CheckEntry {
  return { ...check, advice: check.advice.map(say) }
}

function translateDescribed<T extends Entry | Column>(described: T, say: Say): T {
  const { label, why, sources, cautions } = described
  return {
    ...described,
    label: say(label),
    why: say(why),
    sources: sources.map((source) => translateSource(source, say)),
    ...(cautions === undefined ? {} : { cautions: cautions.map(say) }),
  }
}

function translateSource(source: Source, say: Say): Source {
  const { title, edition, place, note } = source
  return {
    ...source,
    title: say(title),
    ...(edition === undefined ? {} : { edition: say(edition) }),
    ...(place === undefined ? {} : { place: say(place) }),
    ...(note === undefined ? {} : { note: say(note) }),
  }
}

function translateStage(stage: Stage, say: Say): Stage {
  const { hold, waits, weather, safeStop } = stage
  return {
    ...stage,
    title: say(stage.title),
    says: stage.says.map(say),
    tools: stage.tools.map(say),
    cautions: stage.cautions.map(say),
    needs: stage.needs.map((need) => ({ ...need, thing: say(need.thing) })),
    ...(hold === undefined ? {} : { hold: say(hold) }),
    ...(waits === undefined ? {} : { waits: waits.map(say) }),
    ...(weather === undefined ? {} : { weather: say(weather) }),
    ...(safeStop === undefined ? {} : { safeStop: say(safeStop) }),
  }
}

function translateDrawing(drawing: Drawing, say: Say): Drawing {
  const { empty } = drawing
  return {
    ...drawing,
    title: say(drawing.title),
    says: say(drawing.says),
    ...(empty === undefined ? {} : { empty: say(empty) }),
    layers: drawing.layers.map((layer) => ({ ...layer, title: say(layer.title) })),
  }
}
