import type { Definition } from "@pegbook/engine"
import { boardwalk } from "./boardwalk/template.ts"
import { gameTablePlatform } from "./game-table-platform/template.ts"
import { greenhouseFloor } from "./greenhouse-floor/template.ts"
import { groundLevelDeck } from "./ground-level-deck/template.ts"
import { shedBase } from "./shed-base/template.ts"

/** Every template, in the order in which they are offered. */
export const TEMPLATES: readonly Definition[] = [
  gameTablePlatform,
  shedBase,
  boardwalk,
  groundLevelDeck,
  greenhouseFloor,
]

export function template(id: string): Definition | undefined {
  return TEMPLATES.find((one) => one.id === id)
}

/** The workbook that a newcomer sees first. */
export function demo(): Definition {
  return gameTablePlatform
}
