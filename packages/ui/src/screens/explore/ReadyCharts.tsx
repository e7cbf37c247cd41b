import { createMemo, createUniqueId, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"
import { type RangeFields, readyOf } from "./explore-model.ts"

/** The questions that the template has ready: each fills in the form and asks at one press. */
export function ReadyCharts(props: {
  readonly ask: (fields: RangeFields, results: readonly string[]) => void
}) {
  const sheet = useSheet()
  const id = createUniqueId()
  const ready = createMemo(() =>
    (sheet.definition.explorations ?? []).flatMap((exploration) => readyOf(exploration, sheet)),
  )
  return (
    <Show when={ready().length > 0}>
      <h3 id={id}>{spoken.explore.ready}</h3>
      <ul class="ready-charts" aria-labelledby={id}>
        <For each={ready()}>
          {({ fields, results }) => (
            <li>
              <button type="button" onClick={() => props.ask(fields, results)}>
                <strong>
                  {sheet.label(fields.name)}{" "}
                  <span class="ready-range">{spoken.explore.readyRange(fields.from, fields.to)}</span>
                </strong>{" "}
                <span class="ready-results">{results.map((name) => sheet.label(name)).join(" · ")}</span>
              </button>
            </li>
          )}
        </For>
      </ul>
    </Show>
  )
}
