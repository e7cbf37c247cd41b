import type { Drawing, Drawn, DrawnDimension } from "@pegbook/engine"
import { createMemo, createSignal, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import type { Thing } from "./things.ts"

/** The same as the drawing, in words: every dimension, and every table that is drawn with the values it is drawn from. */
export function DrawnList(props: {
  readonly drawn: Drawn
  readonly drawing: Drawing
  readonly things: readonly Thing[]
}) {
  const sheet = useSheet()
  const [open, setOpen] = createSignal(false)
  const dimensions = createMemo(() =>
    props.drawn.shapes.filter((shape): shape is DrawnDimension => shape.kind === "dimension"),
  )
  const tables = createMemo(() => [
    ...new Set(props.things.flatMap(({ name, row }) => (row === undefined ? [] : [name]))),
  ])
  const rowsOf = (table: string) => props.things.filter((one) => one.name === table && one.row !== undefined)
  const columnsOf = (table: string) => [
    ...new Set(rowsOf(table).flatMap((one) => one.reads.filter((name) => name.startsWith(`${table}.`)))),
  ]
  const saysOf = (shape: DrawnDimension) =>
    shape.of.row === undefined ? shape.of.name : (shape.reads.at(-1) ?? shape.of.name)

  return (
    <details class="drawn-list" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{spoken.drawings.list}</summary>
      <Show when={open()}>
        <Show when={dimensions().length > 0}>
          <h3>{spoken.drawings.measured}</h3>
          <dl class="facts">
            <For each={dimensions()}>
              {(shape) => (
                <>
                  <dt>
                    <EntryLink name={saysOf(shape)} row={shape.of.row}>
                      {sheet.later.entry(saysOf(shape)).label}
                    </EntryLink>
                  </dt>
                  <dd>{shape.label}</dd>
                </>
              )}
            </For>
          </dl>
        </Show>
        <For each={tables()}>
          {(table) => (
            <section class="table-scroll" tabindex={0} aria-label={spoken.table.scroll(sheet.label(table))}>
              <table class="rows">
                <caption>
                  <EntryLink name={table}>{sheet.label(table)}</EntryLink>{" "}
                  <span class="quiet">{spoken.drawings.count(rowsOf(table).length)}</span>
                </caption>
                <thead>
                  <tr>
                    <th scope="col">{spoken.table.rowHead}</th>
                    <For each={columnsOf(table)}>
                      {(name) => <th scope="col">{sheet.later.entry(name).label}</th>}
                    </For>
                  </tr>
                </thead>
                <tbody>
                  <For each={rowsOf(table)}>
                    {(one) => (
                      <tr>
                        <th scope="row">{one.row}</th>
                        <For each={columnsOf(table)}>
                          {(name) => (
                            <td>{sheet.later.entry(name).readings?.[(one.row ?? 1) - 1]?.text ?? ""}</td>
                          )}
                        </For>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            </section>
          )}
        </For>
      </Show>
    </details>
  )
}
