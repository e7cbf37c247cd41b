import { createMemo, For, Show } from "solid-js"
import { useSheet, useWalk } from "../../bridge/context.ts"
import type { Lit } from "../../bridge/walk.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { isLit, keyOf, type Thing } from "./things.ts"

/** What is pointed at: its row, the values it was drawn from, and the way to the worksheet. */
export function PointedAt(props: {
  readonly things: readonly Thing[]
  readonly pointed: Lit | undefined
  readonly lit: Lit | undefined
  readonly nameOf: (of: Lit) => string
}) {
  const sheet = useSheet()
  const walk = useWalk()
  const thing = createMemo(() => {
    const { pointed, lit } = props
    if (lit !== undefined) return props.things.find((one) => isLit(one, lit))
    return pointed === undefined ? undefined : props.things.find((one) => one.key === keyOf(pointed))
  })
  const step = (by: number) => {
    const { things } = props
    const at = things.findIndex((one) => one.key === thing()?.key)
    const next = things[at < 0 ? (by > 0 ? 0 : things.length - 1) : (at + by + things.length) % things.length]
    if (next !== undefined)
      walk.light(next.row === undefined ? { name: next.name } : { name: next.name, row: next.row })
  }
  const target = (one: Thing) => {
    const column = one.reads.find((name) => name.startsWith(`${one.name}.`))
    return column ?? one.name
  }
  const textOf = (name: string, row: number | undefined) => {
    const view = sheet.entry(name)
    return view.readings === undefined ? view.reading?.text : view.readings[(row ?? 1) - 1]?.text
  }
  /** Its own row and plain entries; what other tables' rows were looked up in would be a wrong row here. */
  const shown = (one: Thing) =>
    one.reads.filter((name) => sheet.entry(name).shape === "one" || name.startsWith(`${one.name}.`))

  return (
    <section class="pointed" aria-labelledby="pointed-title">
      <h2 class="block-caption" id="pointed-title">
        {spoken.drawings.pointed}
      </h2>
      <div class="actions">
        <button type="button" class="small" data-thing="previous" onClick={() => step(-1)}>
          {spoken.drawings.previous}
        </button>
        <button type="button" class="small" data-thing="next" onClick={() => step(1)}>
          {spoken.drawings.next}
        </button>
        <Show when={props.lit !== undefined}>
          <button type="button" class="small" onClick={() => walk.light(undefined)}>
            {spoken.drawings.letGo}
          </button>
        </Show>
      </div>
      <Show when={thing()} fallback={<p class="quiet">{spoken.drawings.pointHint}</p>}>
        {(one) => (
          <>
            <p class="pointed-name" role="status" data-pointed={one().key}>
              <strong>{props.nameOf(one())}</strong>
            </p>
            <dl class="facts">
              <For each={shown(one())}>
                {(name) => (
                  <>
                    <dt>{sheet.entry(name).label}</dt>
                    <dd>{textOf(name, one().row) ?? spoken.row.noValue}</dd>
                  </>
                )}
              </For>
            </dl>
            <p>
              <EntryLink name={target(one())} row={one().row}>
                {spoken.drawings.toWorksheet}
              </EntryLink>
            </p>
          </>
        )}
      </Show>
    </section>
  )
}
