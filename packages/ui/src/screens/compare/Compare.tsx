import type { CheckView, Reading } from "@pegbook/engine"
import { createMemo, createSignal, For, type JSX, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { ScenarioBox } from "../../parts/ScenarioBox.tsx"
import { en } from "../../text/en.ts"
import { checkWords, firstPair, isSame } from "./compare-model.ts"

/** Two scenarios side by side: what differs, in the order of the work, then how much does not. */
export default function Compare() {
  const sheet = useSheet()
  const start = firstPair(sheet.scenarios(), sheet.scenario().id)
  const [left, setLeft] = createSignal(start.left)
  const [right, setRight] = createSignal(start.right)
  const known = (id: string, otherwise: string) =>
    sheet.scenarios().some((one) => one.id === id) ? id : otherwise
  const pair = () => {
    const first = firstPair(sheet.scenarios(), sheet.scenario().id)
    return { left: known(left(), first.left), right: known(right(), first.right) }
  }
  const comparison = createMemo(() => sheet.compare(pair().left, pair().right))

  return (
    <div class="compare">
      <h1>{en.compare.title}</h1>
      <Show
        when={sheet.scenarios().length > 1}
        fallback={
          <>
            <p>{en.compare.onlyOne}</p>
            <ScenarioBox />
          </>
        }
      >
        <div class="pair">
          <Chooser label={en.compare.left} chosen={pair().left} choose={setLeft} />
          <Chooser label={en.compare.right} chosen={pair().right} choose={setRight} />
        </div>
        <Show when={pair().left !== pair().right} fallback={<p>{en.compare.sameScenario}</p>}>
          <Show when={isSame(comparison())}>
            <p>{en.compare.noDifference}</p>
          </Show>
          <Differences title={en.compare.inputs} any={comparison().inputs.length > 0} by>
            <For each={comparison().inputs}>
              {(one) => (
                <Line name={one.name} left={said(one.left)} right={said(one.right)} by={one.by ?? ""} />
              )}
            </For>
          </Differences>
          <Differences title={en.compare.checks} any={comparison().checks.length > 0}>
            <For each={comparison().checks}>
              {(one) => (
                <Line
                  name={one.name}
                  left={<Verdict check={one.left} />}
                  right={<Verdict check={one.right} />}
                />
              )}
            </For>
          </Differences>
          <Differences title={en.compare.results} any={comparison().results.length > 0} by>
            <For each={comparison().results}>
              {(one) => (
                <Line name={one.name} left={said(one.left)} right={said(one.right)} by={one.by ?? ""} />
              )}
            </For>
          </Differences>
          <Differences title={en.compare.tables} any={comparison().tables.length > 0}>
            <For each={comparison().tables}>
              {(one) => (
                <Line name={one.name} left={en.compare.rows(one.left)} right={en.compare.rows(one.right)} />
              )}
            </For>
          </Differences>
          <p class="same" data-same={comparison().same}>
            {en.compare.same(comparison().same)}
          </p>
        </Show>
      </Show>
    </div>
  )

  function Differences(part: {
    readonly title: string
    readonly any: boolean
    readonly by?: boolean
    readonly children: JSX.Element
  }) {
    return (
      <Show when={part.any}>
        <section class="differences">
          <h2>{part.title}</h2>
          <table classList={{ "with-by": part.by ?? false }}>
            <thead>
              <tr>
                <th scope="col">{en.compare.what}</th>
                <th scope="col">{comparison().left.title}</th>
                <th scope="col">{comparison().right.title}</th>
                <Show when={part.by}>
                  <th scope="col">{en.compare.by}</th>
                </Show>
              </tr>
            </thead>
            <tbody>{part.children}</tbody>
          </table>
        </section>
      </Show>
    )
  }

  function Line(line: {
    readonly name: string
    readonly left: JSX.Element
    readonly right: JSX.Element
    readonly by?: string
  }) {
    return (
      <tr data-difference={line.name}>
        <th scope="row">
          <EntryLink name={line.name}>{sheet.label(line.name)}</EntryLink>
        </th>
        <td data-side="left">{line.left}</td>
        <td data-side="right">{line.right}</td>
        <Show when={line.by !== undefined}>
          <td data-side="by">{line.by}</td>
        </Show>
      </tr>
    )
  }
}

function Chooser(props: {
  readonly label: string
  readonly chosen: string
  readonly choose: (id: string) => void
}) {
  const sheet = useSheet()
  return (
    <label class="chooser">
      <span class="block-caption">{props.label}</span>
      <select class="field" onChange={(event) => props.choose(event.currentTarget.value)}>
        <For each={sheet.scenarios()}>
          {(one) => (
            <option value={one.id} selected={one.id === props.chosen}>
              {one.title}
            </option>
          )}
        </For>
      </select>
    </label>
  )
}

function Verdict(props: { readonly check: CheckView }) {
  return (
    <>
      <span class={`verdict verdict-${props.check.verdict}`}>
        <Mark verdict={props.check.verdict} /> {en.verdicts[props.check.verdict]}
      </span>
      <span class="quiet verdict-rest">{checkWords(props.check)}</span>
    </>
  )
}

function said(reading: Reading | null): string {
  return reading?.text ?? en.row.blank
}
