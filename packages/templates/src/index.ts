import type { Definition } from "@pegbook/engine"
import { beamSpan } from "./beam-span/template.ts"
import { gameTablePlatform } from "./game-table-platform/template.ts"
import { joistSpan } from "./joist-span/template.ts"
import { panelSpan } from "./panel-span/template.ts"

/** Every template, in the order in which they are offered. */
export const TEMPLATES: readonly Definition[] = [gameTablePlatform]

/** Small templates that answer one question, such as how far a joist may span. */
export const QUICK_TEMPLATES: readonly Definition[] = [joistSpan, beamSpan, panelSpan]

/** A template, small or large, by its id. */
export function template(id: string): Definition | undefined {
  return [...TEMPLATES, ...QUICK_TEMPLATES].find((one) => one.id === id)
}

/** The workbook that a newcomer sees first. */
export function demo(): Definition {
  return gameTablePlatform
}
