import type { CheckView, Reading } from "@pegbook/engine"
import { For, Show } from "solid-js"
import { Mark } from "../../parts/Mark.tsx"
import { en } from "../../text/en.ts"
import { Part } from "./Part.tsx"

/** The verdict with the numbers behind it, and what could be changed. */
export function CheckDetail(props: { readonly check: CheckView; readonly reading: Reading | undefined }) {
  return (
    <>
      <dl class="facts facts-check">
        <dt>{en.detail.verdict}</dt>
        <dd class={`verdict verdict-${props.check.verdict}`}>
          <Mark verdict={props.check.verdict} /> {en.verdicts[props.check.verdict]}
        </dd>
        <dt>{en.detail.demand}</dt>
        <dd>{props.check.demand?.text ?? en.row.noValue}</dd>
        <dt>{en.detail.limit}</dt>
        <dd>
          {props.check.limit?.text ?? en.row.noValue}
          <span class="quiet">
            {" "}
            ({props.check.sense === "at_least" ? en.detail.atLeast : en.detail.atMost})
          </span>
        </dd>
        <dt>{en.detail.ratio}</dt>
        <dd>{props.reading?.text ?? en.row.noValue}</dd>
      </dl>
      <Show when={props.check.advice.length > 0}>
        <Part title={en.detail.advice}>
          <ul class="advice">
            <For each={props.check.advice}>{(advice) => <li>{advice}</li>}</For>
          </ul>
        </Part>
      </Show>
    </>
  )
}
