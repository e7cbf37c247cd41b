import { type HistoryStep, shownAs } from "@pegbook/engine"
import { createMemo, createSignal, For, Show } from "solid-js"
import { useSession, useSheet, useWalk } from "../../bridge/context.ts"
import { rowIn, withoutRow } from "../../bridge/walk.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { printMoment } from "../../text/dates.ts"
import { spoken } from "../../text/spoken.ts"
import { labelOf, scenarioOf, stepWords } from "./step-words.ts"
import "./changes.css"

/** Steps drawn at first, and more at each press. */
const SHOWN_AT_ONCE = 50

/** What was typed over, and step by step what was done. */
export default function Changes() {
  return (
    <div class="changes">
      <h1>{spoken.changes.title}</h1>
      <TypedOver />
      <StepByStep />
    </div>
  )
}

function TypedOver() {
  const sheet = useSheet()
  return (
    <section aria-labelledby="typed-over">
      <h2 id="typed-over">{spoken.over.title}</h2>
      <Show when={sheet.typedOver().length > 0} fallback={<p class="quiet">{spoken.over.none}</p>}>
        <ul class="change-list">
          <For each={sheet.typedOver()}>{(name) => <Typed name={name} />}</For>
        </ul>
      </Show>
    </section>
  )
}

function Typed(props: { readonly name: string }) {
  const sheet = useSheet()
  const session = useSession()
  const view = () => sheet.entry(withoutRow(props.name))
  const over = () => view().overrides?.find((one) => one.row === rowIn(props.name))
  const original = () => over()?.original?.text ?? spoken.row.noValue
  function restore(): void {
    const { problems } = sheet.restore(props.name)
    if (problems.length > 0) session.say(spoken.seal.refused)
  }
  return (
    <li data-typed-over={props.name}>
      <p>
        <EntryLink name={withoutRow(props.name)} row={rowIn(props.name)}>
          {labelOf(props.name, sheet)}
        </EntryLink>
      </p>
      <p>
        {spoken.over.yours}
        {spoken.colon}
        <strong>{shownAs(over()?.typed ?? "", view().measure)}</strong>{" "}
        <span class="quiet">
          {view().kind === "formula" ? spoken.over.originalNow : spoken.over.original}
          {spoken.colon}
          {original()}
        </span>
      </p>
      <button type="button" class="small" onClick={restore}>
        {spoken.over.putBack(original())}
        <span class="hidden-text">: {labelOf(props.name, sheet)}</span>
      </button>
    </li>
  )
}

function StepByStep() {
  const sheet = useSheet()
  const [most, setMost] = createSignal(SHOWN_AT_ONCE)
  const steps = createMemo(() => [...sheet.history()].reverse())
  return (
    <section aria-labelledby="step-by-step">
      <h2 id="step-by-step">{spoken.changes.history}</h2>
      <Show when={steps().length > 0} fallback={<p class="quiet">{spoken.changes.none}</p>}>
        <p class="quiet">{spoken.changes.says}</p>
        <ol class="change-list">
          <For each={steps().slice(0, most())}>{(step) => <Step step={step} />}</For>
        </ol>
      </Show>
      <Show when={steps().length > most()}>
        <button type="button" class="plain" onClick={() => setMost((was) => was + SHOWN_AT_ONCE)}>
          {spoken.changes.more(Math.min(SHOWN_AT_ONCE, steps().length - most()))}
        </button>
      </Show>
    </section>
  )
}

function Step(props: { readonly step: HistoryStep }) {
  const sheet = useSheet()
  const session = useSession()
  const walk = useWalk()
  const at = () => printMoment(new Date(props.step.at))
  const scenario = () => {
    const id = scenarioOf(props.step)
    return sheet.scenarios().find((one) => one.id === id)?.title
  }
  function copy(): void {
    const made = sheet.copyAt(props.step.number, spoken.changes.copyTitle(sheet.scenario().title, at()))
    session.say(spoken.changes.copied(made.title))
    walk.show("worksheet")
  }
  return (
    <li data-step={props.step.number} classList={{ "step-undone": props.step.undone }}>
      <p>
        <span class="change-says">{stepWords(props.step, sheet)}</span>
        <Show when={props.step.undone}>
          {" "}
          <span class="tag">{spoken.changes.undone}</span>
        </Show>
      </p>
      <p class="quiet">
        <time dateTime={new Date(props.step.at).toISOString()}>{at()}</time>
        <Show when={scenario()}>{(title) => <> {spoken.changes.inScenario(title())}</>}</Show>
      </p>
      <button
        type="button"
        class="small"
        aria-label={spoken.changes.copyAtSays(props.step.number)}
        onClick={copy}
      >
        {spoken.changes.copyAt}
      </button>
    </li>
  )
}
