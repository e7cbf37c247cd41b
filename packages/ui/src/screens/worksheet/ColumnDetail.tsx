import { Show } from "solid-js"
import { useSheet, useWalk } from "../../bridge/context.ts"
import { Explained } from "../../parts/Explained.tsx"
import { ProblemList } from "../../parts/ProblemList.tsx"
import { ShowDrawn } from "../../parts/ShowDrawn.tsx"
import { SourceList } from "../../parts/SourceList.tsx"
import { kindWord } from "../../text/entry-words.ts"
import { spoken } from "../../text/spoken.ts"
import { HowItWasWorkedOut, Leaning } from "./HowItWasWorkedOut.tsx"
import { Part } from "./Part.tsx"
import { TypeOver } from "./TypeOver.tsx"
import { UseButton } from "./UseButton.tsx"

/** One column of a table: its formula, and how the chosen row was worked out. */
export function ColumnDetail(props: {
  readonly table: string
  readonly column: string
  readonly row: number
  readonly rowCount: number
  readonly close: () => void
}) {
  const sheet = useSheet()
  const walk = useWalk()
  const name = () => `${props.table}.${props.column}`
  const view = () => sheet.entry(name())
  const reading = () => view().readings?.[props.row - 1]
  const was = () => sheet.movedAt(name()).find((one) => one.row === props.row)
  const turn = (row: number) => walk.turnTo(props.table, row)

  return (
    <section class="column-detail" data-entry={name()} aria-label={view().label}>
      <header class="column-head">
        <h3 tabindex={-1} data-open>
          {view().label} <span class="kind">{kindWord(view().kind)}</span>
        </h3>
        <UseButton name={name()} />
        <button type="button" class="plain" onClick={() => props.close()}>
          {spoken.table.backToTable}
        </button>
      </header>
      <p class="why">
        <Explained text={view().why} />
      </p>
      <Show when={props.rowCount > 0}>
        <div class="row-turner">
          <button type="button" class="small" disabled={props.row <= 1} onClick={() => turn(props.row - 1)}>
            {spoken.table.previousRow}
          </button>
          <p aria-live="polite">
            {spoken.table.rowOf(props.row, props.rowCount)}:{" "}
            <span class="value" data-value={reading()?.text ?? ""}>
              {reading()?.text ?? spoken.row.noValue}
            </span>
            <Show when={was()}>
              {(moved) => (
                <span class="was">
                  {" "}
                  {spoken.moved.was}{" "}
                  <span data-was={moved().old?.text ?? ""}>{moved().old?.text ?? spoken.row.blank}</span>
                </span>
              )}
            </Show>
          </p>
          <button
            type="button"
            class="small"
            disabled={props.row >= props.rowCount}
            onClick={() => turn(props.row + 1)}
          >
            {spoken.table.nextRow}
          </button>
        </div>
      </Show>
      <Show when={view().kind === "figure" && view().formula === undefined && props.rowCount > 0}>
        <TypeOver
          name={`${name()}.${props.row}`}
          label={spoken.over.cellLabel(view().label, props.row)}
          text={reading()?.text ?? ""}
          measure={view().measure}
          over={view().overrides?.find((one) => one.row === props.row)}
          title={spoken.over.original}
        />
      </Show>
      <ShowDrawn name={props.table} row={props.row} />
      <Show when={view().problems.length > 0}>
        <Part title={spoken.detail.problems}>
          <ProblemList problems={view().problems} />
        </Part>
      </Show>
      <HowItWasWorkedOut name={name()} title={spoken.detail.formula} row={props.row} />
      <Leaning name={name()} row={props.row} />
      <Part title={spoken.detail.sources}>
        <SourceList sources={view().sources} />
      </Part>
      <p class="quiet detail-name">
        {spoken.detail.name} <code>{name()}</code>
      </p>
    </section>
  )
}
