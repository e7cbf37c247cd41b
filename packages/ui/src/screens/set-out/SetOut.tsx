import { createMemo, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Field } from "../../parts/Field.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { verdictWord } from "../../text/entry-words.ts"
import { spoken } from "../../text/spoken.ts"
import { SetOutPicture } from "./SetOutPicture.tsx"
import { Numbers, SetOutSheet } from "./SetOutSheet.tsx"
import { rowsOf } from "./set-out-model.ts"
import "./set-out.css"

const MEASURED = ["diagonal_measured_1", "diagonal_measured_2", "end_measured_1", "end_measured_2"] as const
const CHECKS = ["square_check", "corners_check"] as const

/** What a person needs at the string line, in numbers that can be read from a step away. */
export default function SetOut() {
  const sheet = useSheet()
  return (
    <div class="set-out">
      <header>
        <h1>{spoken.setOut.title}</h1>
        <p class="quiet">{spoken.setOut.says}</p>
      </header>
      <Show when={sheet.has("set_out_points")} fallback={<p>{spoken.setOut.none}</p>}>
        <SetOutPicture />
        <SetOutSheet>
          <Measured />
        </SetOutSheet>
      </Show>
    </div>
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
      <h2 id="set-out-measured">{spoken.setOut.measured}</h2>
      <p class="quiet">{spoken.setOut.measuredSays}</p>
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
                  <Mark verdict={verdict()} /> {verdictWord(verdict())}
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
                  <strong>{spoken.setOut.push(row.corner ?? "")}</strong>
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
        <Show when={farSide()}>{(text) => <p>{spoken.setOut.farSide(text())}</p>}</Show>
      </div>
    </section>
  )
}
