import type { Definition } from "@pegbook/engine"
import { gameTablePlatform } from "./game-table-platform/template.ts"

/** Every template, in the order in which they are offered. */
export const TEMPLATES: readonly Definition[] = [gameTablePlatform]

export function template(id: string): Definition | undefined {
  return TEMPLATES.find((one) => one.id === id)
}

/** The workbook that a newcomer sees first. */
export function demo(): Definition {
  return gameTablePlatform
}
