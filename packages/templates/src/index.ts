import type { Definition } from "@pegbook/engine"
import { beamSpan } from "./beam-span/template.ts"
import { boardwalk } from "./boardwalk/template.ts"
import { gameTablePlatform } from "./game-table-platform/template.ts"
import { greenhouseFloor } from "./greenhouse-floor/template.ts"
import { groundLevelDeck } from "./ground-level-deck/template.ts"
import { joistSpan } from "./joist-span/template.ts"
import { panelSpan } from "./panel-span/template.ts"
import { postHeight } from "./post-height/template.ts"
import { shedBase } from "./shed-base/template.ts"
import { spokenTemplate } from "./words/speak.ts"

export { DEMO, fetchTemplate, OFFERED, offer, offers } from "./fetched.ts"
export { glossary, nameOf, type Term, withTerms } from "./glossary/index.ts"
export type { Offer } from "./offers.ts"
export { speak } from "./words/speak.ts"
export { translateDefinition } from "./words/translate-definition.ts"
export { typeset } from "./words/typeset.ts"

/** Every template of a whole job, in the order in which they are offered. */
export const TEMPLATES: readonly Definition[] = [
  gameTablePlatform,
  shedBase,
  boardwalk,
  groundLevelDeck,
  greenhouseFloor,
]

/** Small templates for a person who wants one answer, not a whole job. */
export const QUICK_TEMPLATES: readonly Definition[] = [joistSpan, beamSpan, panelSpan, postHeight]

/** The templates of whole jobs, in the language in force. */
export function templates(): readonly Definition[] {
  return TEMPLATES.map(spokenTemplate)
}

/** A template of either list by its id, in the language in force. */
export function template(id: string): Definition | undefined {
  const found = [...TEMPLATES, ...QUICK_TEMPLATES].find((one) => one.id === id)
  return found === undefined ? undefined : spokenTemplate(found)
}

/** The workbook that a newcomer sees first. */
export function demo(): Definition {
  return spokenTemplate(gameTablePlatform)
}
