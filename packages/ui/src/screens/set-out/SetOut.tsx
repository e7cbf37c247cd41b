import { createMemo, For, type JSX, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Field } from "../../parts/Field.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { en } from "../../text/en.ts"
import { rowsOf, type TableRow } from "./set-out-model.ts"
import "./set-out.css"

const MEASURED = ["diagonal_measured_1", "diagonal_measured_2", "end_measured_1", "end_measured_2"] as const
const CHECKS = ["square_check", "corners_check"] as const

/** What a person needs at the string line, in numbers that can be read from a step away. */
export default function SetOut() {
  const sheet = useSheet()
  return (
    <div class="set-out">
      <header>
        <h1>{en.setOut.title}</h1>
        <p class="quiet">{en.setOut.says}</p>
      </header>
      <Show when={sheet.has("set_out_points")} fallback={<p>{en.setOut.none}</p>}>
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
        <Measured />
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
      </Show>
    </div>
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

function Numbers(props: {
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

/** What the tape says, and which way to push. */
function Measured() {
  const sheet = useSheet()
  const corrections = createMemo(() => {
    const { columns, rowCount } = sheet.table("set_out_corrections")
    return rowsOf(
      columns.map(({ name }) => sheet.entry(name)),
      rowCount,
    ).filter((row) => row.push_length !== undefined && row.push_width !== undefined)
  })
  const farSide = () => sheet.entry("set_out_error.far_side").readings?.[0]?.text
  return (
    <section class="set-out-part" aria-labelledby="set-out-measured">
      <h2 id="set-out-measured">{en.setOut.measured}</h2>
      <p class="quiet">{en.setOut.measuredSays}</p>
      <div class="set-out-fields">
        <For each={MEASURED}>
          {(name) => {
            const view = () => sheet.entry(name)
            return (
              <div>
                <p>{view().label}</p>
                <Field
                  label={view().label}
                  text={view().reading?.text ?? ""}
                  measure={view().measure}
                  blank={view().blank}
                  commit={(typed) => sheet.edit(name, typed)}
                />
              </div>
            )
          }}
        </For>
      </div>
      <ul class="set-out-verdicts">
        <For each={CHECKS}>
          {(name) => {
            const verdict = () => sheet.entry(name).check?.verdict ?? "no_verdict"
            return (
              <li>
                <span class={`verdict verdict-${verdict()}`}>
                  <Mark verdict={verdict()} /> {en.verdicts[verdict()]}
                </span>{" "}
                <EntryLink name={name}>{sheet.entry(name).label}</EntryLink>
              </li>
            )
          }}
        </For>
      </ul>
      <div role="status">
        <ul class="set-out-cards" data-set-out="corrections">
          <For each={corrections()}>
            {(row) => (
              <li>
                <p class="set-out-name">
                  <strong>{en.setOut.push(row.corner ?? "")}</strong>
                </p>
                <Numbers
                  pairs={[
                    [row.way_length ?? "", row.push_length],
                    [row.way_width ?? "", row.push_width],
                  ]}
                />
              </li>
            )}
          </For>
        </ul>
        <Show when={farSide()}>{(text) => <p>{en.setOut.farSide(text())}</p>}</Show>
      </div>
    </section>
  )
}
