import { createMemo, For, type JSX, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { rowsOf, type TableRow } from "./set-out-model.ts"
import "./set-out.css"

/** The tables of the set-out sheet; what is measured on the ground, if asked for, after those of the pegs. */
export function SetOutSheet(props: { readonly children?: JSX.Element }) {
  const sheet = useSheet()
  return (
    <>
      <Part table="set_out_points">
        {(row) => (
          <>
            <p class="set-out-name">
              <strong>{row.point}</strong> <span class="quiet">{row.marks}</span>
            </p>
            <Numbers
              pairs={[
                [spoken.setOut.along, row.x],
                [spoken.setOut.across, row.y],
                [spoken.setOut.straight, row.from_datum],
              ]}
            />
          </>
        )}
      </Part>
      <Part table="set_out_measures">{(row) => <Numbers pairs={[[row.from ?? "", row.distance]]} />}</Part>
      {props.children}
      <Part table="set_out_lines">
        {(row) => (
          <>
            <p class="set-out-name">
              <strong>{spoken.setOut.line(row.line ?? "")}</strong>
            </p>
            <Numbers
              pairs={[
                [spoken.setOut.nearFace, row.near_face],
                [spoken.setOut.centre, row.centre],
                [spoken.setOut.farFace, row.far_face],
              ]}
            />
          </>
        )}
      </Part>
      <Show when={sheet.has("set_out_heights")}>
        <Part table="set_out_heights">
          {(row) => (
            <>
              <p class="set-out-name">
                <strong>{spoken.setOut.line(row.line ?? "")}</strong>{" "}
                <span class="quiet">{spoken.setOut.place(row.x ?? "", row.y ?? "")}</span>
              </p>
              <Numbers
                pairs={[
                  [spoken.setOut.dig, row.dig],
                  [spoken.setOut.toHole, row.string_to_hole],
                  [spoken.setOut.toStone, row.string_to_stone],
                  [spoken.setOut.courses, row.courses],
                ]}
              />
            </>
          )}
        </Part>
      </Show>
    </>
  )
}

/** The rows of one table, each as a card. */
function Part(props: { readonly table: string; readonly children: (row: TableRow) => JSX.Element }) {
  const sheet = useSheet()
  const view = () => sheet.entry(props.table)
  const rows = createMemo(() => {
    const { columns, rowCount } = sheet.table(props.table)
    return rowsOf(
      columns.map(({ name }) => sheet.entry(name)),
      rowCount,
    )
  })
  return (
    <section class="set-out-part" aria-labelledby={`set-out-${props.table}`}>
      <h2 id={`set-out-${props.table}`}>
        <EntryLink name={props.table}>{view().label}</EntryLink>
      </h2>
      <p class="quiet">{view().why}</p>
      <For each={view().cautions}>{(caution) => <p class="set-out-caution">{caution}</p>}</For>
      <ul class="set-out-cards" data-set-out={props.table}>
        <For each={rows()}>{(row) => <li>{props.children(row)}</li>}</For>
      </ul>
    </section>
  )
}

export function Numbers(props: {
  readonly pairs: readonly (readonly [label: string, value: string | undefined])[]
}) {
  const known = () => props.pairs.filter(([, value]) => value !== undefined)
  return (
    <dl class="set-out-numbers">
      <For each={known()}>
        {([label, value]) => (
          <div>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        )}
      </For>
    </dl>
  )
}
