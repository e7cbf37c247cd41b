import { inWords, keptAs, type Problem, shownAs } from "@pegbook/engine"
import { createEffect, createMemo, createSignal, createUniqueId, For, Index, on, Show } from "solid-js"
import { createStore } from "solid-js/store"
import { useSheet } from "../../bridge/context.ts"
import type { TypedRow } from "../../bridge/sheet.ts"
import { spoken } from "../../text/spoken.ts"
import { firstUnfinished, rowsToCommit } from "./draft-rows.ts"

/** A table whose rows a person types. Rows in the making are kept here until they are whole. */
export function InputTable(props: { readonly name: string }) {
  const sheet = useSheet()
  const id = createUniqueId()
  const [rows, setRows] = createStore<Record<string, string>[]>([])
  const [refusal, setRefusal] = createSignal<{ readonly problem: Problem; readonly place: number }>()
  let body: HTMLTableSectionElement | undefined

  const columns = createMemo(() =>
    sheet.table(props.name).columns.filter((column) => column.kind === "input"),
  )
  const bare = (name: string) => name.slice(props.name.length + 1)
  const names = () => columns().map((column) => bare(column.name))
  const texts = () =>
    columns()
      .filter((column) => column.measure === "text")
      .map((column) => bare(column.name))
  const unfinished = () => firstUnfinished(rows, names(), texts())
  const measureOf = (column: string) => columns().find((one) => bare(one.name) === column)?.measure ?? "text"
  const shown = (row: Readonly<Record<string, string>>, column: string) =>
    shownAs(row[column] ?? "", measureOf(column))
  const labelOf = (column: string) => columns().find((one) => bare(one.name) === column)?.label ?? column

  const inForce = createMemo(() => sheet.typedRows(props.name), [], { equals: sameRows })

  function showInForce(): void {
    setRefusal(undefined)
    setRows(inForce().map((row) => ({ ...row })))
  }
  // Only when these rows change: an edit elsewhere must not take away a row in the making.
  createEffect(on(inForce, showInForce))

  function commit(): void {
    if (unfinished() !== undefined) return
    const wanted = rowsToCommit(rows, names())
    if (sameRows(wanted.rows, inForce())) {
      setRefusal(undefined)
      return
    }
    const { accepted, problems } = sheet.editTable(props.name, wanted.rows)
    const [problem] = problems
    if (accepted || problem === undefined) setRefusal(undefined)
    else setRefusal({ problem, place: wanted.places[(problem.at.row ?? 1) - 1] ?? 0 })
  }

  function add(): void {
    setRows(rows.length, {})
    body?.lastElementChild?.querySelector<HTMLElement>("input")?.focus()
  }

  function removeRow(place: number): void {
    setRows((was) => was.filter((_, index) => index !== place))
    commit()
    const next = body?.children[Math.min(place, rows.length - 1)]
    next?.querySelector<HTMLElement>("input")?.focus()
  }

  const isRefused = (place: number, column: string) => {
    const refused = refusal()
    if (refused === undefined || refused.place !== place) return false
    const { entry } = refused.problem.at
    return entry === undefined || !entry.includes(".") || bare(entry) === column
  }

  return (
    <div class="input-table">
      <section
        class="table-scroll"
        tabindex={0}
        aria-label={spoken.table.scroll(sheet.entry(props.name).label)}
      >
        <table class="rows">
          <caption class="hidden-text">{sheet.entry(props.name).label}</caption>
          <thead>
            <tr>
              <th scope="col">{spoken.table.rowHead}</th>
              <For each={columns()}>
                {(column) => (
                  <th scope="col" title={column.why}>
                    {column.label}
                  </th>
                )}
              </For>
              <td />
            </tr>
          </thead>
          <tbody ref={body}>
            <Index each={rows}>
              {(row, place) => (
                <tr>
                  <th scope="row">{place + 1}</th>
                  <For each={names()}>
                    {(column) => {
                      // Only where the text differs: a proof that arrives must not take away what is being typed.
                      const text = createMemo(() => shown(row(), column))
                      return (
                        <td>
                          <input
                            class="field"
                            classList={{ "field-refused": isRefused(place, column) }}
                            type="text"
                            enterkeyhint="done"
                            autocomplete="off"
                            autocapitalize="off"
                            spellcheck={false}
                            aria-label={spoken.table.cellLabel(labelOf(column), place + 1)}
                            aria-invalid={isRefused(place, column)}
                            aria-describedby={`${id}-says`}
                            data-value={text()}
                            value={text()}
                            onFocus={(event) => event.currentTarget.select()}
                            onChange={(event) => {
                              setRows(place, column, keptAs(event.currentTarget.value, measureOf(column)))
                              commit()
                            }}
                            onKeyDown={(event) => {
                              if (event.key !== "Escape") return
                              event.currentTarget.value = text()
                              if (refusal() !== undefined) showInForce()
                            }}
                          />
                        </td>
                      )
                    }}
                  </For>
                  <td>
                    <button
                      type="button"
                      class="small"
                      aria-label={spoken.table.remove(place + 1)}
                      onClick={() => removeRow(place)}
                    >
                      {spoken.table.removeShort}
                    </button>
                  </td>
                </tr>
              )}
            </Index>
          </tbody>
        </table>
      </section>
      <Show when={rows.length === 0}>
        <p class="quiet">{spoken.table.noneYet}</p>
      </Show>
      <div id={`${id}-says`} aria-live="polite">
        <Show when={unfinished()}>
          {(wants) => (
            <p class="quiet">{spoken.table.unfinished(wants().row, wants().missing.map(labelOf))}</p>
          )}
        </Show>
        <Show when={refusal()}>
          {(refused) => {
            const words = () => inWords({ ...refused().problem, at: {} }, sheet.unitSystem())
            return (
              <p class="field-problem">
                <strong>
                  {spoken.table.rowHead} {refused().place + 1}
                  {spoken.colon}
                  {words().says}
                </strong>{" "}
                {words().next} {spoken.table.rowsInForce}
              </p>
            )
          }}
        </Show>
      </div>
      <p class="actions">
        <button type="button" class="small" onClick={add}>
          {spoken.table.add}
        </button>
        <Show when={refusal() ?? unfinished()}>
          <button type="button" class="plain" onClick={showInForce}>
            {spoken.field.revert}
          </button>
        </Show>
        <Show when={!sameRows(inForce(), sheet.originalRows(props.name))}>
          <button type="button" class="plain" onClick={() => sheet.restore(props.name)}>
            {spoken.table.putBack}
          </button>
        </Show>
      </p>
    </div>
  )
}

function sameRows(a: readonly TypedRow[], b: readonly TypedRow[]): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}
