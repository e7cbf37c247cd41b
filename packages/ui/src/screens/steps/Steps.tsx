import type { StageView } from "@pegbook/engine"
import { createMemo, createSignal, createUniqueId, For, Index, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { Calendar } from "./Calendar.tsx"
import { StageBody, StageRate } from "./StageBody.tsx"
import { StagePhotos } from "./StagePhotos.tsx"
import { doneCount, isDone, nextStage, wantedFor, withHere } from "./steps-model.ts"
import "./steps.css"

/** The stages of the work in order, to be ticked off beside the work. */
export default function Steps() {
  const sheet = useSheet()
  const stages = createMemo(() => sheet.stages())
  const next = createMemo(() => nextStage(stages(), sheet.progress()))
  /** Those opened and closed by hand; the next one is open by itself. */
  const [byHand, setByHand] = createSignal<Readonly<Record<string, boolean>>>({})
  const isOpen = (id: string) => byHand()[id] ?? next()?.id === id
  const done = () => doneCount(stages(), sheet.progress())

  return (
    <div class="steps">
      <header>
        <h1>{spoken.steps.title}</h1>
        <p class="quiet">{spoken.steps.says}</p>
      </header>
      <Show when={stages().length > 0} fallback={<p>{spoken.steps.none}</p>}>
        <p class="steps-done" role="status" data-steps-done={done()}>
          {spoken.steps.done(done(), stages().length)}
        </p>
        <Show when={next()} fallback={<p>{spoken.steps.allDone}</p>}>
          {(stage) => <Ready stage={stage()} />}
        </Show>
        <ol class="steps-list">
          {/* By place, so that a field keeps its focus while the numbers around it change. */}
          <Index each={stages()}>
            {(stage, at) => (
              <Step
                stage={stage()}
                number={at + 1}
                next={next()?.id === stage().id}
                open={isOpen(stage().id)}
                toggle={() => setByHand((was) => ({ ...was, [stage().id]: !isOpen(stage().id) }))}
              />
            )}
          </Index>
        </ol>
        <Calendar stages={stages()} />
      </Show>
    </div>
  )
}

/** Is everything for the next step here? */
function Ready(props: { readonly stage: StageView }) {
  const sheet = useSheet()
  const wanted = createMemo(() => wantedFor(props.stage, sheet.progress()))
  const here = () => wanted().filter((one) => one.here).length
  return (
    <section class="steps-ready" aria-labelledby="steps-ready">
      <h2 id="steps-ready">{spoken.steps.ready}</h2>
      <p>
        {spoken.steps.readyFor(props.stage.title)}{" "}
        <span class="quiet" role="status">
          {spoken.steps.readyCount(here(), wanted().length)}
        </span>
      </p>
      <ul class="steps-wanted">
        <Index each={wanted()}>
          {(one) => (
            <li>
              <label class="steps-tick">
                <input
                  type="checkbox"
                  checked={one().here}
                  onChange={(event) =>
                    sheet.note(props.stage.id, {
                      here: [
                        ...withHere(
                          sheet.progress(),
                          props.stage.id,
                          one().thing,
                          event.currentTarget.checked,
                        ),
                      ],
                    })
                  }
                />
                <span>{one().thing}</span>
              </label>
              <Show when={one().need}>
                {(need) => (
                  <EntryLink name={need().name} class="steps-amounts">
                    <For each={need().amounts}>{(amount) => <span>{amount}</span>}</For>
                  </EntryLink>
                )}
              </Show>
            </li>
          )}
        </Index>
      </ul>
    </section>
  )
}

interface StepProps {
  readonly stage: StageView
  readonly number: number
  readonly next: boolean
  readonly open: boolean
  readonly toggle: () => void
}

function Step(props: StepProps) {
  const sheet = useSheet()
  const id = createUniqueId()
  const kept = () => sheet.progress()[props.stage.id]
  // Only where the kept note differs: a proof that arrives must not take away what is being typed.
  const note = createMemo(() => kept()?.note ?? "")
  const done = () => isDone(sheet.progress(), props.stage.id)
  return (
    <li
      class="step"
      classList={{ "step-done": done(), "step-next": props.next }}
      data-step={props.stage.id}
      aria-current={props.next ? "step" : undefined}
    >
      <div class="step-head">
        <label class="steps-tick step-tick">
          <input
            type="checkbox"
            checked={done()}
            aria-label={spoken.steps.tick(props.stage.title)}
            onChange={(event) => sheet.note(props.stage.id, { done: event.currentTarget.checked })}
          />
        </label>
        <h2>
          <button
            type="button"
            class="step-open"
            aria-expanded={props.open}
            aria-controls={id}
            onClick={() => props.toggle()}
          >
            <span class="step-number">{props.number}</span> {props.stage.title}
          </button>
        </h2>
        <StageRate stage={props.stage} />
      </div>
      <div id={id} class="step-body" hidden={!props.open}>
        <StageBody stage={props.stage} />
        <Show when={props.open}>
          <StagePhotos stage={props.stage.id} title={props.stage.title} />
        </Show>
        <label class="step-note">
          <span class="block-caption">{spoken.steps.note}</span>
          <textarea
            class="field"
            rows="2"
            maxlength="4000"
            aria-label={spoken.steps.noteSays(props.stage.title)}
            value={note()}
            onChange={(event) => sheet.note(props.stage.id, { note: event.currentTarget.value })}
          />
        </label>
      </div>
    </li>
  )
}
