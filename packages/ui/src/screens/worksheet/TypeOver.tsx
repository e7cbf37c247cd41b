import type { MeasureId, Override } from "@pegbook/engine"
import { Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { Field } from "../../parts/Field.tsx"
import { spoken } from "../../text/spoken.ts"
import { Part } from "./Part.tsx"

/** A place for a value of one's own over a figure, a formula, or one cell of a table of figures; and the way back. */
export function TypeOver(props: {
  /** Of a cell: `table.column.row`. */
  readonly name: string
  readonly label: string
  /** What is in force, where the field is to show it. */
  readonly text: string
  readonly measure: MeasureId
  readonly over: Override | undefined
  /** What the value that was typed over is called. */
  readonly title: string
}) {
  const sheet = useSheet()
  const original = () => props.over?.original?.text ?? spoken.row.noValue
  return (
    <Part title={spoken.over.type}>
      <p class="quiet">{spoken.over.says}</p>
      <Field
        label={props.label}
        text={props.text}
        measure={props.measure}
        commit={(typed) => sheet.edit(props.name, typed)}
      />
      <Show when={props.over}>
        <p class="over-original">
          <span class="tag tag-own">{spoken.row.overridden}</span> {props.title}
          {spoken.colon}
          <strong>{original()}</strong>{" "}
          <button type="button" class="plain" onClick={() => sheet.restore(props.name)}>
            {spoken.over.putBack(original())}
          </button>
        </p>
      </Show>
    </Part>
  )
}
