import type { EntryView } from "@pegbook/engine"
import { Show } from "solid-js"
import { useProving } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"
import "./how-good.css"

interface Said {
  /** Of a table that was solved. */
  readonly view: EntryView
  /** What is said where nothing better is possible, of what was made least and what it came to. */
  readonly proven: (what: string, text: string) => string
}

/** How near to the best the plan is, in words, and whether a better one is being looked for. */
export function HowGood(props: Said) {
  const { state } = useProving()
  const notice = () => {
    switch (state()) {
      case "working":
        return spoken.cutList.working
      case "out of time":
        return spoken.cutList.outOfTime
      case "failed":
        return spoken.cutList.failed
      case "done":
        return undefined
    }
  }
  return (
    <div class="how-good" role="status" data-proving={state()}>
      <Verdict view={props.view} proven={props.proven} />
      <Show when={!isProven(props.view) && notice()}>{(said) => <p>{said()}</p>}</Show>
    </div>
  )
}

function isProven({ report }: EntryView): boolean {
  return report?.objective !== undefined && report.bound === report.objective.value
}

export function Verdict(props: Said) {
  const what = () => props.view.report?.objective?.says ?? ""
  const text = () => props.view.reached?.objective.text ?? ""
  return (
    <Show when={props.view.reached}>
      {(reached) => (
        <Show
          when={isProven(props.view)}
          fallback={
            <Show when={reached().gap} fallback={<p>{spoken.cutList.unknown}</p>}>
              {(gap) => (
                <>
                  <p>
                    <strong data-gap>{spoken.cutList.gap(gap().text)}</strong>
                  </p>
                  <p class="how-good-says">
                    {spoken.cutList.gapSays(what(), text(), reached().bound?.text ?? "")}
                  </p>
                </>
              )}
            </Show>
          }
        >
          <p>
            <strong data-proven>{spoken.cutList.proven}</strong>
          </p>
          <p class="how-good-says">{props.proven(what(), text())}</p>
        </Show>
      )}
    </Show>
  )
}
