import type { StageValue } from "@pegbook/engine"

/** A cell of a table whose one row stands for all of its kind, by the name of its column. */
const ofAll =
  (table: string, is: string) =>
  (name: string): StageValue => ({ column: `${table}.${name}`, where: `${table}.of`, is })

export const ofAllNets = ofAll("net_order", "all nets")
export const ofAllGuardPosts = ofAll("guard_post", "all sides")
