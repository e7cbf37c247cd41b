import type { EntryView } from "@pegbook/engine"
import { For, Show, Suspense } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { Explained } from "../../parts/Explained.tsx"
import { fetched } from "../../parts/fetched.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { verdictWord } from "../../text/entry-words.ts"
import { spoken } from "../../text/spoken.ts"
import { Part } from "./Part.tsx"

const Remedies = fetched(() => import("./Remedies.tsx"))

/** The verdict in words and with the numbers behind it, who has the last word, and what could be changed. */
export function CheckDetail(props: {
  readonly view: EntryView
  readonly check: NonNullable<EntryView["check"]>
}) {
  const sheet = useSheet()
  const isHeld = () => ["passes", "near", "fails"].includes(props.check.verdict)
  return (
    <>
      <div class="verdict-says">
        <p class={`verdict verdict-${props.check.verdict}`}>
          <Mark verdict={props.check.verdict} /> {verdictWord(props.check.verdict)}
        </p>
        <Show when={props.check.verdict === "outside_table"}>
          <p>{spoken.verdict.outside}</p>
        </Show>
        <Show when={isHeld() && props.check.demand}>
          {(demand) => (
            <p>
              {spoken.verdict.says(
                props.check.verdict,
                props.view.label.replace(/\?$/, ""),
                demand().text,
                props.check.limit?.text ?? spoken.row.noValue,
                props.check.sense,
              )}{" "}
              <Show when={props.view.reading}>
                {(ratio) => <span class="quiet">{spoken.verdict.howNear(ratio().text)}</span>}
              </Show>
            </p>
          )}
        </Show>
        <Show when={props.view.cautions.length > 0}>
          <ul class="cautions">
            <For each={props.view.cautions}>{(caution) => <li>{caution}</li>}</For>
            <li>{spoken.verdict.defer}</li>
          </ul>
        </Show>
      </div>
      <Show when={props.check.advice.length > 0}>
        <Part title={spoken.detail.advice}>
          <ul class="advice">
            <For each={props.check.advice}>
              {(advice) => (
                <li>
                  <Explained text={advice} />
                </li>
              )}
            </For>
          </ul>
        </Part>
      </Show>
      <Show
        when={
          sheet.hasRemedies(props.view.name) &&
          (props.check.verdict === "fails" || props.check.verdict === "outside_table")
        }
      >
        <Suspense>
          <Remedies check={props.view.name} />
        </Suspense>
      </Show>
      <dl class="facts facts-check">
        <dt>{spoken.detail.demand}</dt>
        <dd>{props.check.demand?.text ?? spoken.row.noValue}</dd>
        <dt>{spoken.detail.limit}</dt>
        <dd>
          {props.check.limit?.text ?? spoken.row.noValue}
          <span class="quiet">
            {" "}
            ({props.check.sense === "at_least" ? spoken.detail.atLeast : spoken.detail.atMost})
          </span>
        </dd>
        <dt>{spoken.detail.ratio}</dt>
        <dd>{props.view.reading?.text ?? spoken.row.noValue}</dd>
      </dl>
    </>
  )
}
