import type { StageTableView, StageView } from "@pegbook/engine"
import { For, Index, type JSX, Show } from "solid-js"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Explained } from "../../parts/Explained.tsx"
import { Mark } from "../../parts/Mark.tsx"
import "../../parts/plain-table.css"
import { verdictWord } from "../../text/entry-words.ts"
import { spoken } from "../../text/spoken.ts"

/** How long a stage takes, and how many people. */
export function StageRate(props: { readonly stage: StageView }) {
  return (
    <p class="step-rate quiet">
      <Show when={props.stage.hours}>{(hours) => hours().text}</Show>
      <Show when={props.stage.people}>{(people) => ` · ${spoken.steps.people(people().text)}`}</Show>
      <Show when={props.stage.safeStop !== undefined}>
        {" "}
        <span class="tag">{spoken.steps.safeStopMark}</span>
      </Show>
    </p>
  )
}

/** What a stage says, needs and warns of. */
export function StageBody(props: { readonly stage: StageView }) {
  return (
    <>
      <Texts texts={props.stage.says} class="step-says" />
      <Show when={props.stage.cautions.length > 0}>
        <Labelled title={spoken.steps.cautions} class="step-cautions">
          <Texts texts={props.stage.cautions} />
        </Labelled>
      </Show>
      <Show when={props.stage.needs.length > 0}>
        <Labelled title={spoken.steps.needs}>
          <ul class="steps-wanted">
            <Index each={props.stage.needs}>
              {(need) => (
                <li>
                  <EntryLink name={need().name}>{need().thing}</EntryLink>
                  <span class="steps-amounts">
                    <For each={need().amounts}>{(amount) => <span>{amount}</span>}</For>
                  </span>
                </li>
              )}
            </Index>
          </ul>
        </Labelled>
      </Show>
      <Labelled title={spoken.steps.tools}>
        <p>{props.stage.tools.join(" · ")}</p>
      </Labelled>
      <Index each={props.stage.tables}>{(table) => <StageTable table={table()} />}</Index>
      <Show when={props.stage.hold !== undefined || props.stage.checks.length > 0}>
        <Labelled title={spoken.steps.hold} class="step-hold">
          <Show when={props.stage.hold}>{(hold) => <p>{hold()}</p>}</Show>
          <ul>
            <Index each={props.stage.checks}>
              {(check) => (
                <li>
                  <span class={`verdict verdict-${check().verdict}`}>
                    <Mark verdict={check().verdict} /> {verdictWord(check().verdict)}
                  </span>{" "}
                  <EntryLink name={check().name}>{check().label}</EntryLink>
                </li>
              )}
            </Index>
          </ul>
        </Labelled>
      </Show>
      <Show when={props.stage.waits.length > 0}>
        <Labelled title={spoken.steps.waits}>
          <Texts texts={props.stage.waits} />
        </Labelled>
      </Show>
      <Show when={props.stage.weather}>
        {(weather) => (
          <Labelled title={spoken.steps.weather}>
            <p>{weather()}</p>
          </Labelled>
        )}
      </Show>
      <Show when={props.stage.safeStop}>
        {(stop) => (
          <Labelled title={spoken.steps.safeStop}>
            <p>{stop()}</p>
          </Labelled>
        )}
      </Show>
    </>
  )
}

function StageTable(props: { readonly table: StageTableView }) {
  return (
    <div class="step-part plain-table">
      <h3>
        <EntryLink name={props.table.name}>{props.table.label}</EntryLink>
      </h3>
      <table>
        <thead>
          <tr>
            <Index each={props.table.columns}>{(label) => <th scope="col">{label()}</th>}</Index>
          </tr>
        </thead>
        <tbody>
          <Index each={props.table.rows}>
            {(row) => (
              <tr>
                <Index each={row()}>{(text) => <td>{text()}</td>}</Index>
              </tr>
            )}
          </Index>
        </tbody>
      </table>
    </div>
  )
}

function Texts(props: { readonly texts: readonly string[]; readonly class?: string }) {
  return (
    <ul class={props.class ?? "step-texts"}>
      <Index each={props.texts}>
        {(text) => (
          <li>
            <Explained text={text()} />
          </li>
        )}
      </Index>
    </ul>
  )
}

function Labelled(props: {
  readonly title: string
  readonly class?: string
  readonly children: JSX.Element
}) {
  return (
    <section class={`step-part ${props.class ?? ""}`}>
      <h3>{props.title}</h3>
      {props.children}
    </section>
  )
}
