import type { EntryView } from "@pegbook/engine"
import { createMemo, createSignal, For, Show } from "solid-js"
import { useSheet, useWalk } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"
import { TableExchange } from "../exchange/TableExchange.tsx"
import { ColumnDetail } from "./ColumnDetail.tsx"
import { InputTable } from "./InputTable.tsx"
import { stepCell, stopAtCell } from "./step-cell.ts"

/** Rows drawn at first; more only when asked for. */
const FIRST_ROWS = 100

/** A table opened: its rows, and below them the column that is open. */
export function TableDetail(props: { readonly name: string }) {
  const sheet = useSheet()
  const walk = useWalk()
  const view = () => sheet.entry(props.name)
  const table = () => sheet.table(props.name)
  const hasFormulas = () => table().columns.some((column) => column.kind !== "input")
  const open = () => walk.columnOpen(props.name)

  function close(): void {
    const was = open()
    walk.closeColumn(props.name)
    if (was === undefined) return
    const row = document.getElementById(`row-${props.name}-${was.row}-${was.column}`)
    row?.focus()
  }

  return (
    <>
      <Show when={view().kind === "input"}>
        <InputTable name={props.name} />
      </Show>
      <Show when={view().kind !== "input" || (table().rowCount > 0 && hasFormulas())}>
        <Show when={table().rowCount > 0} fallback={<p class="quiet">{spoken.table.empty}</p>}>
          <p class="quiet">{spoken.table.hint}</p>
          <ReadTable name={props.name} />
        </Show>
      </Show>
      <TableExchange name={props.name} />
      <Show when={open()}>
        {(column) => (
          <ColumnDetail
            table={props.name}
            column={column().column}
            row={column().row}
            rowCount={table().rowCount}
            close={close}
          />
        )}
      </Show>
    </>
  )
}

/** A table to be read: a press on a title or a value opens its column. */
function ReadTable(props: { readonly name: string }) {
  const sheet = useSheet()
  const walk = useWalk()
  const label = () => sheet.entry(props.name).label
  const [all, setAll] = createSignal(false)
  const count = () => sheet.table(props.name).rowCount
  const columns = createMemo(() => sheet.table(props.name).columns.map((column) => column.name), [], {
    equals: (a, b) => a.length === b.length && a.every((name, place) => name === b[place]),
  })
  const rows = () =>
    Array.from({ length: all() ? count() : Math.min(count(), FIRST_ROWS) }, (_, index) => index + 1)

  return (
    <>
      <section class="table-scroll" tabindex={0} aria-label={spoken.table.scroll(label())}>
        {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table is what a grid is made of. */}
        <table class="rows" role="grid" onKeyDown={stepCell} onFocusIn={stopAtCell}>
          <caption class="hidden-text">{label()}</caption>
          <thead>
            <tr>
              <th scope="col">{spoken.table.rowHead}</th>
              <For each={columns()}>{(name) => <ColumnTitle table={props.name} name={name} />}</For>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr>
                  <th scope="row">{row}</th>
                  <For each={columns()}>
                    {(name, place) => (
                      <Cell table={props.name} name={name} row={row} first={row === 1 && place() === 0} />
                    )}
                  </For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </section>
      <Show when={rows().length < count()}>
        <button type="button" class="plain" onClick={() => setAll(true)}>
          {spoken.table.showAllRows(count())}
        </button>
      </Show>
    </>
  )

  function ColumnTitle(title: { readonly table: string; readonly name: string }) {
    const view = (): EntryView => sheet.entry(title.name)
    const bare = () => title.name.slice(title.table.length + 1)
    const isOpen = () => walk.columnOpen(title.table)?.column === bare()
    return (
      <th scope="col">
        <button
          type="button"
          class="column-title"
          tabindex={-1}
          aria-expanded={isOpen()}
          title={spoken.table.openColumn(view().label)}
          onClick={() => (isOpen() ? walk.closeColumn(title.table) : walk.openColumn(title.table, bare(), 1))}
        >
          {view().label}
        </button>
      </th>
    )
  }

  function Cell(cell: {
    readonly table: string
    readonly name: string
    readonly row: number
    readonly first: boolean
  }) {
    const bare = () => cell.name.slice(cell.table.length + 1)
    const text = () => sheet.entry(cell.name).readings?.[cell.row - 1]?.text ?? spoken.row.noValue
    const was = () => sheet.movedAt(cell.name).find((one) => one.row === cell.row)
    const over = () => sheet.entry(cell.name).overrides?.find((one) => one.row === cell.row)
    const isOpen = () => {
      const open = walk.columnOpen(cell.table)
      return open?.column === bare() && open.row === cell.row
    }
    return (
      <td classList={{ "cell-open": isOpen(), "cell-moved": was() !== undefined }}>
        <button
          type="button"
          class="cell"
          id={`row-${cell.table}-${cell.row}-${bare()}`}
          tabindex={cell.first ? 0 : -1}
          data-row={cell.row}
          data-column={bare()}
          onClick={() => walk.openColumn(cell.table, bare(), cell.row)}
        >
          <span data-value={text()}>{text()}</span>
          <Show when={text() === ""}>
            <span class="hidden-text">{spoken.row.blank}</span>
          </Show>
          <Show when={over()}>
            {(typed) => (
              <>
                {" "}
                <span class="tag tag-own" aria-hidden="true">
                  {spoken.over.mark}
                </span>
                <span class="hidden-text">
                  {spoken.over.inTable(typed().original?.text ?? spoken.row.noValue)}
                </span>
              </>
            )}
          </Show>
          <Show when={was()}>
            {(moved) => (
              <span class="was">
                {" "}
                {spoken.moved.was}{" "}
                <span data-was={moved().old?.text ?? ""}>{moved().old?.text ?? spoken.row.blank}</span>
              </span>
            )}
          </Show>
        </button>
      </td>
    )
  }
}
