import type { StageNeedView, StageProgress, StageView } from "@pegbook/engine"

/** What is kept of every stage, by its id. */
export type Progress = Readonly<Record<string, StageProgress>>

export function isDone(progress: Progress, stage: string): boolean {
  return progress[stage]?.done ?? false
}

/** The first stage that is not ticked; nothing when all are. */
export function nextStage(stages: readonly StageView[], progress: Progress): StageView | undefined {
  return stages.find(({ id }) => !isDone(progress, id))
}

export function doneCount(stages: readonly StageView[], progress: Progress): number {
  return stages.filter(({ id }) => isDone(progress, id)).length
}

/** One line of what has to be at hand before a stage begins. */
export interface Wanted {
  readonly thing: string
  /** Absent for a tool. */
  readonly need?: StageNeedView
  readonly here: boolean
}

/** Things, then tools, each once. */
export function wantedFor(stage: StageView, progress: Progress): readonly Wanted[] {
  const here = new Set(progress[stage.id]?.here ?? [])
  const things = stage.needs.map((need) => ({ thing: need.thing, need, here: here.has(need.thing) }))
  const tools = stage.tools
    .filter((tool) => !things.some(({ thing }) => thing === tool))
    .map((thing) => ({ thing, here: here.has(thing) }))
  return [...things, ...tools]
}

/** The list of what is at hand, with one thing put in or taken out. */
export function withHere(progress: Progress, stage: string, thing: string, here: boolean): readonly string[] {
  const others = (progress[stage]?.here ?? []).filter((one) => one !== thing)
  return here ? [...others, thing] : others
}
