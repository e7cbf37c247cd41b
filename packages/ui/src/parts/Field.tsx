import { type EditResult, inWords, keptAs, type MeasureId, type Problem, shownAs } from "@pegbook/engine"
import { createEffect, createMemo, createSignal, createUniqueId, For, on, Show } from "solid-js"
import { useSheet } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

interface FieldProps {
  readonly label: string
  /** What is in force, as shown; empty while blank. */
  readonly text: string
  readonly measure: MeasureId
  /** Several values, typed one after another. */
  readonly list?: boolean | undefined
  readonly choices?: readonly string[] | undefined
  /** What it means to leave it blank, where that is allowed. */
  readonly blank?: string | undefined
  readonly describedBy?: string | undefined
  /** Called when the focus comes into the field. */
  readonly entered?: ((field: HTMLElement) => void) | undefined
  /** What was typed, as it is kept. */
  readonly commit: (typed: string) => EditResult
}

/** A yes or no, as it is kept. */
export const YES_NO: readonly string[] = ["yes", "no"]

/** Where a value is typed in place: Enter or leaving the field puts it in force, Escape takes it back. */
export function Field(props: FieldProps) {
  const choices = () => (props.measure === "yes_no" ? YES_NO : props.choices)
  return (
    <Show when={choices()} fallback={<TextField {...props} />}>
      {(texts) => <ChoiceField {...props} choices={texts()} />}
    </Show>
  )
}

/** What is in force, moving only when it is another text: a proof reads entries anew, and takes nothing from a field that is typed in. */
function inForce(props: FieldProps): () => string {
  return createMemo(() => props.text)
}

function TextField(props: FieldProps) {
  const id = createUniqueId()
  const [problem, setProblem] = createSignal<Problem>()
  let field: HTMLInputElement | undefined
  /** What was last refused, so that leaving the field does not refuse it a second time. */
  let refused: string | undefined

  const inputMode = () => {
    if (props.list) return "text"
    return props.measure === "count" ? "numeric" : props.measure === "money" ? "decimal" : "text"
  }

  function showInForce(): void {
    refused = undefined
    setProblem(undefined)
    if (field !== undefined) field.value = props.text
  }

  function commit(): void {
    if (field === undefined || field.value === refused) return
    if (field.value === props.text) {
      showInForce()
      return
    }
    const { accepted, problems } = props.commit(keptAs(field.value, props.measure, props.list))
    if (accepted) showInForce()
    else {
      refused = field.value
      setProblem(problems[0])
    }
  }

  createEffect(on(inForce(props), showInForce))

  return (
    <>
      <input
        ref={field}
        class="field"
        classList={{ "field-refused": problem() !== undefined }}
        type="text"
        inputmode={inputMode()}
        enterkeyhint="done"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        data-value={props.text}
        placeholder={props.blank === undefined ? undefined : spoken.row.blankMeans(props.blank)}
        aria-label={props.label}
        aria-invalid={problem() !== undefined}
        aria-describedby={problem() === undefined ? props.describedBy : `${id}-problem`}
        onFocus={(event) => {
          props.entered?.(event.currentTarget)
          event.currentTarget.select()
        }}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.isComposing) return
          if (event.key === "Enter") commit()
          if (event.key === "Escape") showInForce()
        }}
      />
      <Show when={problem()}>
        {(wrong) => (
          <FieldProblem id={`${id}-problem`} problem={wrong()} text={props.text} revert={showInForce} />
        )}
      </Show>
    </>
  )
}

function ChoiceField(props: FieldProps & { readonly choices: readonly string[] }) {
  const [problem, setProblem] = createSignal<Problem>()
  const id = createUniqueId()
  let field: HTMLSelectElement | undefined
  const shown = (choice: string) => shownAs(choice, props.measure)
  const blankChoice = () =>
    props.blank === undefined ? spoken.field.choose : spoken.row.blankMeans(props.blank)

  function showInForce(): void {
    setProblem(undefined)
    if (field !== undefined) field.value = props.text
  }

  /** Of the choices themselves, since two texts of a template may read alike. */
  const keptOf = (text: string) => props.choices.find((choice) => shown(choice) === text) ?? text

  createEffect(on(inForce(props), showInForce))

  return (
    <>
      <select
        ref={field}
        class="field"
        data-value={props.text}
        aria-label={props.label}
        aria-invalid={problem() !== undefined}
        aria-describedby={problem() === undefined ? props.describedBy : `${id}-problem`}
        onFocus={(event) => props.entered?.(event.currentTarget)}
        onChange={(event) => {
          const { accepted, problems } = props.commit(keptOf(event.currentTarget.value))
          if (accepted) setProblem(undefined)
          else setProblem(problems[0])
        }}
      >
        <Show when={!props.choices.map(shown).includes(props.text)}>
          <option value={props.text}>{props.text === "" ? blankChoice() : props.text}</option>
        </Show>
        <For each={props.choices.map(shown)}>{(text) => <option value={text}>{text}</option>}</For>
      </select>
      <Show when={problem()}>
        {(wrong) => (
          <FieldProblem id={`${id}-problem`} problem={wrong()} text={props.text} revert={showInForce} />
        )}
      </Show>
    </>
  )
}

function FieldProblem(props: {
  readonly id: string
  readonly problem: Problem
  readonly text: string
  readonly revert: () => void
}) {
  const sheet = useSheet()
  // Where it is wrong is in plain sight.
  const words = () => inWords({ ...props.problem, at: {} }, sheet.unitSystem())
  return (
    <div class="field-problem">
      <p id={props.id} role="alert">
        <strong>{words().says}</strong> {words().next}{" "}
        {props.text === "" ? spoken.field.inForceBlank : spoken.field.inForce(props.text)}
      </p>
      <button type="button" class="plain" onClick={() => props.revert()}>
        {spoken.field.revert}
      </button>
    </div>
  )
}
