import { For, Show } from "solid-js"
import { useSheet } from "../bridge/context.ts"
import { EntryLink } from "./EntryLink.tsx"
import { formulaParts } from "./formula-parts.ts"

/** A formula as written, each name in it a way to its entry. */
export function FormulaText(props: {
  readonly formula: string
  readonly from: string
  readonly table?: string | undefined
  readonly row?: number | undefined
}) {
  const sheet = useSheet()
  return (
    <code class="formula">
      <For each={formulaParts(props.formula, sheet.has, props.table)}>
        {(part) => (
          <Show when={part.name} fallback={part.text}>
            {(name) => (
              <EntryLink name={name()} from={props.from} row={props.row}>
                {part.text}
              </EntryLink>
            )}
          </Show>
        )}
      </For>
    </code>
  )
}
