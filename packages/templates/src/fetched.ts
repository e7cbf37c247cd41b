import { type Definition, inLanguage } from "@pegbook/engine"
import { OFFERS, type Offer, type TemplateId } from "./offers.ts"
import { spokenTemplate } from "./words/speak.ts"

// For a page: each template is a file of its own there, and only the one that is opened is fetched.

const FETCH: Readonly<Record<TemplateId, () => Promise<Definition>>> = {
  "game-table-platform": async () => (await import("./game-table-platform/template.ts")).gameTablePlatform,
  "shed-base": async () => (await import("./shed-base/template.ts")).shedBase,
  boardwalk: async () => (await import("./boardwalk/template.ts")).boardwalk,
  "ground-level-deck": async () => (await import("./ground-level-deck/template.ts")).groundLevelDeck,
  "greenhouse-floor": async () => (await import("./greenhouse-floor/template.ts")).greenhouseFloor,
  "joist-span": async () => (await import("./joist-span/template.ts")).joistSpan,
  "beam-span": async () => (await import("./beam-span/template.ts")).beamSpan,
  "panel-span": async () => (await import("./panel-span/template.ts")).panelSpan,
  "post-height": async () => (await import("./post-height/template.ts")).postHeight,
}

const ids = Object.keys(OFFERS) as readonly TemplateId[]
/** Not offered on the first screen: each gives one answer, not a whole job. */
const QUICK: ReadonlySet<TemplateId> = new Set(["joist-span", "beam-span", "panel-span", "post-height"])

/** What a newcomer sees first. */
export const DEMO: TemplateId = "game-table-platform"

/** The ids of whole jobs, in the order in which they are offered. */
export const OFFERED: readonly TemplateId[] = ids.filter((id) => !QUICK.has(id))

/** A template's title and when it fits, in the language in force. */
export function offer(id: string): Offer | undefined {
  const known = ids.find((one) => one === id)
  if (known === undefined) return undefined
  const { title, says } = OFFERS[known]
  return { id: known, title: inLanguage(title), says: inLanguage(says) }
}

/** The templates of whole jobs as they are offered, in the language in force. */
export const offers = (): readonly Offer[] => OFFERED.flatMap((id) => offer(id) ?? [])

/** A template by its id, in the language in force, fetched when it is first asked for. */
export async function fetchTemplate(id: string): Promise<Definition | undefined> {
  const known = ids.find((one) => one === id)
  return known === undefined ? undefined : spokenTemplate(await FETCH[known]())
}
