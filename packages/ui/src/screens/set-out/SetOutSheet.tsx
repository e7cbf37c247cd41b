import { createMemo, For, type JSX, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { en } from "../../text/en.ts"
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
                [en.setOut.along, row.x],
                [en.setOut.across, row.y],
                [en.setOut.straight, row.from_datum],
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
              <strong>{en.setOut.line(row.line ?? "")}</strong>
            </p>
            <Numbers
              pairs={[
                [en.setOut.nearFace, row.near_face],
                [en.setOut.centre, row.centre],
                [en.setOut.farFace, row.far_face],
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
                <strong>{en.setOut.line(row.line ?? "")}</strong>{" "}
                <span class="quiet">{en.setOut.place(row.x ?? "", row.y ?? "")}</span>
              </p>
              <Numbers
                pairs={[
                  [en.setOut.dig, row.dig],
                  [en.setOut.toHole, row.string_to_hole],
                  [en.setOut.toStone, row.string_to_stone],
                  [en.setOut.courses, row.courses],
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
