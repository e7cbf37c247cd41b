import type { EntryView, SolverReport } from "@pegbook/engine"
import { For, Show } from "solid-js"
import { spoken } from "../../text/spoken.ts"
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
        <dt>{spoken.detail.method}</dt>
        <dd>{props.report.method}</dd>
        <Show when={props.report.objective}>
          {(objective) => (
            <>
              <dt>{spoken.detail.objective}</dt>
              <dd>
                {objective().says}
                {spoken.colon}
                <strong>{props.reached?.objective.text}</strong>
              </dd>
            </>
          )}
        </Show>
        <Show when={props.reached?.bound}>
          {(bound) => (
            <>
              <dt>{spoken.detail.bound}</dt>
              <dd>
                <strong>{bound().text}</strong> <Show when={proven()}>{spoken.detail.provenBest}</Show>
              </dd>
            </>
          )}
        </Show>
      </dl>
      <Show when={props.report.unmet.length > 0}>
        <Part title={spoken.detail.unmet}>
          <ul class="problems">
            <For each={props.report.unmet}>{(unmet) => <li>{unmet}</li>}</For>
          </ul>
        </Part>
      </Show>
    </>
  )
}
