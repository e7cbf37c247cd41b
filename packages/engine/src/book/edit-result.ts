import type { Problem } from "../problems/problem.ts"
import type { MovedSince } from "./moved-since.ts"
import type { EditResult } from "./views.ts"

export function accepted(moved: MovedSince | undefined, mayHaveMoved: (name: string) => boolean): EditResult {
  return {
    accepted: true,
    problems: [],
    mayHaveMoved,
    get moved() {
      return moved?.all() ?? []
    },
  }
}

export function refused(...problems: readonly Problem[]): EditResult {
  return { accepted: false, problems, moved: [], mayHaveMoved: () => false }
}
