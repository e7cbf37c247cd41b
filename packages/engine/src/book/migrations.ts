import type { Problem } from "../problems/problem.ts"

/** Turns a document of one version into the next. Must keep members that it does not know. */
export type Migration = (json: Readonly<Record<string, unknown>>) => Record<string, unknown>

/**
 * Brings a saved object up to the current version, one step at a time. `migrations[0]` leads from version 1 to 2.
 * An object of a later version is refused rather than half understood.
 */
export function migrate(
  json: unknown,
  format: string,
  current: number,
  migrations: readonly Migration[],
): { readonly json: unknown } | { readonly problem: Problem } {
  if (typeof json !== "object" || json === null || Array.isArray(json)) {
    return { problem: { code: "file_unreadable", at: {}, reason: "It does not hold one object." } }
  }
  let object = json as Record<string, unknown>
  if (object.format !== format) {
    return { problem: { code: "file_unreadable", at: {}, reason: `Its format is not "${format}".` } }
  }
  const version = object.version
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return { problem: { code: "file_unreadable", at: {}, reason: "It has no version number." } }
  }
  if (version > current) return { problem: { code: "file_from_future", at: {}, version, known: current } }
  for (let step = version; step < current; step++) {
    const migration = migrations[step - 1]
    if (migration === undefined) throw new Error(`no migration leads from version ${step}`)
    object = { ...migration(object), version: step + 1 }
  }
  return { json: object }
}
