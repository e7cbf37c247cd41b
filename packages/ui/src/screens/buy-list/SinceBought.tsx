import { createEffect, createMemo, createSignal, Index, on, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import type { SinceBought as Since } from "../../explore/asked.ts"
import { createQuestion } from "../../explore/question.ts"
import { spoken } from "../../text/spoken.ts"
import type { TableRow } from "../set-out/set-out-model.ts"
import { amountOf, lineName } from "./line-words.ts"
import "./since-bought.css"

/** What the open scenario asks for more or less than what was bought from: to buy, or to return. Nothing where nothing is sealed. */
export function SinceBought() {
  const sheet = useSheet()
  const bought = createMemo(() => sheet.scenarios().findLast(({ sealed }) => sealed))
  const [since, setSince] = createSignal<Since>()
  const question = createQuestion()
  createEffect(
    on([() => bought()?.id, () => sheet.scenario().id, sheet.moved, sheet.unitSystem], ([scenario]) => {
      question.stop()
      setSince(undefined)
      if (scenario === undefined || scenario === sheet.scenario().id || !sheet.has("still_to_buy")) return
      question.put({ kind: "since", scenario }, (answer) => {
        if (answer.kind === "since") setSince(answer.since)
      })
    }),
  )
  const isShown = () =>
    bought() !== undefined && bought()?.id !== sheet.scenario().id && sheet.has("still_to_buy")
  const nothing = (found: Since) =>
    [found.toBuy, found.toReturn, found.gone, found.recounted].every((rows) => rows.length === 0)

  return (
    <Show when={isShown() && bought()}>
      {(sealed) => (
        <section class="since-bought" aria-labelledby="since-bought">
          <h2 id="since-bought">{spoken.since.title(sealed().title)}</h2>
          <p class="quiet">{spoken.since.says}</p>
          <Show when={question.refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
          <div role="status">
            <Show
              when={since()}
              fallback={
                <Show when={question.refusal() === undefined}>
                  <p class="quiet">{spoken.compare.working}</p>
                </Show>
              }
            >
              {(found) => (
                <Show when={!nothing(found())} fallback={<p>{spoken.since.same}</p>}>
                  <Part title={spoken.since.toBuy} rows={found().toBuy} amount="short" />
                  <Part title={spoken.since.toReturn} rows={found().toReturn} amount="returns" />
                  <Part title={spoken.since.gone} rows={found().gone} amount="got" />
                  <Part title={spoken.since.recounted} rows={found().recounted} />
                </Show>
              )}
            </Show>
          </div>
        </section>
      )}
    </Show>
  )
}

function Part(props: {
  readonly title: string
  readonly rows: readonly TableRow[]
  readonly amount?: "short" | "returns" | "got"
}) {
  return (
    <Show when={props.rows.length > 0}>
      <h3>{props.title}</h3>
      <ul data-since={props.amount}>
        <Index each={props.rows}>
          {(row) => (
            <li>
              <span>{lineName(row())}</span>
              <Show when={props.amount}>
                {(amount) => <strong>{amountOf(row()[amount()], row().unit)}</strong>}
              </Show>
            </li>
          )}
        </Index>
      </ul>
    </Show>
  )
}
