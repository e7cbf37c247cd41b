import type { EntryView, SolverReport } from "@pegbook/engine"
import { For, Show } from "solid-js"
import { en } from "../../text/en.ts"
import { Part } from "./Part.tsx"

/** How a solver found its rows, how good its answer is proven to be, and what it could not satisfy. */
export function SolverDetail(props: {
  readonly report: SolverReport
  readonly reached: EntryView["reached"]
}) {
  const proven = () =>
    props.report.bound !== undefined && props.report.bound === props.report.objective?.value
  return (
    <>
      <dl class="facts">
        <dt>{en.detail.method}</dt>
        <dd>{props.report.method}</dd>
        <Show when={props.report.objective}>
          {(objective) => (
            <>
              <dt>{en.detail.objective}</dt>
              <dd>
                {objective().says}: <strong>{props.reached?.objective.text}</strong>
              </dd>
            </>
          )}
        </Show>
        <Show when={props.reached?.bound}>
          {(bound) => (
            <>
              <dt>{en.detail.bound}</dt>
              <dd>
                <strong>{bound().text}</strong> <Show when={proven()}>{en.detail.provenBest}</Show>
              </dd>
            </>
          )}
        </Show>
      </dl>
      <Show when={props.report.unmet.length > 0}>
        <Part title={en.detail.unmet}>
          <ul class="problems">
            <For each={props.report.unmet}>{(unmet) => <li>{unmet}</li>}</For>
          </ul>
        </Part>
      </Show>
    </>
  )
}
