import type { EntryView } from "@pegbook/engine"
import { createMemo, For, Index, Show } from "solid-js"
import { useSheet } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"
import "./plain-table.css"

/** A table as it would be printed: its columns' titles and its rows' values, nothing to press. */
export function PlainTable(props: {
  readonly name: string
  /** Bare names; without them, every column. */
  readonly columns?: readonly string[]
  /** Bare names of columns in which nothing is the same as none: a peg has no length. */
  readonly noneIfNothing?: readonly string[]
  /** A box to tick before each row. */
  readonly boxes?: true
}) {
  const sheet = useSheet()
  const view = () => sheet.table(props.name)
  const bare = (name: string) => name.slice(name.indexOf(".") + 1)
  const columns = createMemo(() => {
    const all = view().columns.map(({ name }) => sheet.entry(name))
    return props.columns === undefined
      ? all
      : props.columns.flatMap((wanted) => all.find(({ name }) => bare(name) === wanted) ?? [])
  })
  const textOf = ({ name, readings }: EntryView, row: number) => {
    const reading = readings?.[row]
    const isNone = reading?.value === 0 && props.noneIfNothing?.includes(bare(name))
    return isNone ? "—" : (reading?.text ?? "—")
  }
  const rows = createMemo(() => Array.from({ length: view().rowCount }, (_, row) => row))
  return (
    <div data-plain-table={props.name}>
      <h3 id={`plain-${props.name}`}>{sheet.entry(props.name).label}</h3>
      <p class="quiet">{sheet.entry(props.name).why}</p>
      <Show when={rows().length > 0} fallback={<p>{spoken.table.empty}</p>}>
        <section
          class="plain-table"
          tabindex={0}
          aria-label={spoken.table.scroll(sheet.entry(props.name).label)}
        >
          <table aria-labelledby={`plain-${props.name}`}>
            <thead>
              <tr>
                <Show when={props.boxes}>
                  <th scope="col" class="tick-cell">
                    <span class="hidden-text">{spoken.buildBook.tick}</span>
                  </th>
                </Show>
                <Index each={columns()}>
                  {(column) => (
                    <th scope="col" classList={{ words: column().measure === "text" }}>
                      {column().label}
                    </th>
                  )}
                </Index>
              </tr>
            </thead>
            <tbody>
              <For each={rows()}>
                {(row) => (
                  <tr>
                    <Show when={props.boxes}>
                      <td class="tick-cell">
                        <span class="tick-box" />
                      </td>
                    </Show>
                    <Index each={columns()}>
                      {(column) => (
                        <td classList={{ words: column().measure === "text" }}>{textOf(column(), row)}</td>
                      )}
                    </Index>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </section>
      </Show>
    </div>
  )
}
