import { type EditResult, type MeasureId, type OwnEntry, ownName, type Problem } from "@pegbook/engine"
import {
  createEffect,
  createMemo,
  createSignal,
  createUniqueId,
  For,
  type JSX,
  on,
  onCleanup,
  Show,
} from "solid-js"
import { createStore } from "solid-js/store"
import { useSheet } from "../../../bridge/context.ts"
import { ask } from "../../../explore/ask.ts"
import { ProblemList } from "../../../parts/ProblemList.tsx"
import { spoken } from "../../../text/spoken.ts"
import { draftOf, EMPTY, type Fields, fieldsOf, nameFrom, OWN_KINDS, type OwnKind } from "./draft.ts"
import { FormulaField } from "./FormulaField.tsx"

/** How long typing pauses before a formula is tried, in milliseconds. */
const PAUSE = 500

const measures = () => Object.entries(spoken.own.measures) as [MeasureId, string][]
const SENSES = ["at_most", "at_least"] as const

/** Adds an entry of the user's own, or changes one. A formula is tried beside the page while it is typed. */
export function OwnForm(props: {
  /** The one to be changed. */
  readonly entry?: OwnEntry | undefined
  readonly done: (label: string) => void
  readonly cancel: () => void
}) {
  const sheet = useSheet()
  const id = createUniqueId()
  const [fields, setFields] = createStore<Fields>(
    props.entry === undefined ? { ...EMPTY } : fieldsOf(props.entry),
  )
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [tried, setTried] = createSignal<{ readonly good: boolean; readonly says: string }>()
  const set = (change: Partial<Fields>) => setFields(change)
  const isWorkedOut = () => fields.kind === "formula" || fields.kind === "column" || fields.kind === "check"
  const tables = createMemo(() => sheet.names().filter((name) => sheet.entry(name).shape === "table"))
  const formulas = () => (fields.kind === "check" ? [fields.demand, fields.limit] : [fields.formula])

  const isFormulaWrong = () => tried()?.good === false || problems().some(({ at }) => at.span !== undefined)

  let timer: ReturnType<typeof setTimeout> | undefined
  let stop = () => {}
  function halt(): void {
    clearTimeout(timer)
    stop()
  }
  onCleanup(halt)

  function tryIt(): void {
    setTried({ good: true, says: spoken.own.trying })
    const draft = draftOf({
      ...fields,
      label: fields.label || "x",
      name: fields.name || nameFrom(fields.label) || "x",
    })
    const replacing = props.entry === undefined ? {} : { replacing: ownName(props.entry) }
    stop = ask(sheet, { kind: "draft", draft, ...replacing }, (answer) => {
      if (answer.kind === "draft")
        setTried({ good: true, says: spoken.own.gives(spoken.own.measures[answer.measure], answer.text) })
      if (answer.kind === "refused") setTried({ good: false, says: `${answer.says} ${answer.next}` })
    })
  }

  createEffect(
    on([formulas, () => fields.table, () => fields.kind], () => {
      halt()
      setTried(undefined)
      setProblems([])
      if (isWorkedOut() && formulas().every((text) => text.trim() !== "")) timer = setTimeout(tryIt, PAUSE)
    }),
  )

  function commit(event: Event): void {
    event.preventDefault()
    const draft = draftOf(fields)
    const { entry } = props
    const result: EditResult =
      entry === undefined ? sheet.addEntry(draft) : sheet.changeEntry(ownName(entry), draft)
    if (result.accepted) props.done(draft.label)
    else {
      // What is wrong with the formula is among them.
      halt()
      setTried(undefined)
      setProblems(result.problems)
    }
  }

  return (
    <form class="own-form" onSubmit={commit}>
      <Show when={props.entry === undefined}>
        <Labelled label={spoken.own.kind} hint={spoken.own.kindSays[fields.kind]}>
          {(at) => (
            <select
              id={at}
              class="field"
              ref={(field) => queueMicrotask(() => field.focus())}
              onChange={(event) => set({ kind: event.currentTarget.value as OwnKind })}
            >
              <For each={OWN_KINDS}>
                {(kind) => (
                  <option value={kind} selected={kind === fields.kind}>
                    {spoken.own.kinds[kind]}
                  </option>
                )}
              </For>
            </select>
          )}
        </Labelled>
      </Show>
      <Labelled label={spoken.own.label} hint={spoken.own.labelHint}>
        {(at) => <Text id={at} value={fields.label} type={(label) => set({ label })} />}
      </Labelled>
      <Show when={props.entry === undefined}>
        <Labelled label={spoken.own.name} hint={spoken.own.nameHint}>
          {(at) => (
            <Text id={at} value={fields.name} shown={nameFrom(fields.label)} type={(name) => set({ name })} />
          )}
        </Labelled>
      </Show>
      <Show when={fields.kind === "column" && props.entry === undefined}>
        <Labelled label={spoken.own.table}>
          {(at) => (
            <select id={at} class="field" onChange={(event) => set({ table: event.currentTarget.value })}>
              <option value="">{spoken.field.choose}</option>
              <For each={tables()}>{(name) => <option value={name}>{sheet.label(name)}</option>}</For>
            </select>
          )}
        </Labelled>
      </Show>
      <Show when={fields.kind === "input" || fields.kind === "figure"}>
        <Labelled label={spoken.own.measure}>
          {(at) => (
            <select
              id={at}
              class="field"
              onChange={(event) => set({ measure: event.currentTarget.value as MeasureId })}
            >
              <For each={measures()}>
                {([measure, says]) => (
                  <option value={measure} selected={measure === fields.measure}>
                    {says}
                  </option>
                )}
              </For>
            </select>
          )}
        </Labelled>
        <Labelled label={fields.kind === "input" ? spoken.own.blankValue : spoken.own.value}>
          {(at) => <Text id={at} value={fields.value} type={(value) => set({ value })} />}
        </Labelled>
      </Show>
      <Show when={fields.kind === "figure"}>
        <Labelled label={spoken.own.source} hint={spoken.own.sourceHint}>
          {(at) => <Text id={at} value={fields.source} type={(source) => set({ source })} />}
        </Labelled>
      </Show>
      <Show when={isWorkedOut()}>
        <p class="quiet">{spoken.own.formulaHint}</p>
      </Show>
      <Show when={fields.kind === "formula" || fields.kind === "column"}>
        <FormulaField
          label={spoken.own.formula}
          text={fields.formula}
          table={fields.kind === "column" ? fields.table : undefined}
          describedBy={`${id}-tried`}
          wrong={isFormulaWrong()}
          type={(formula) => set({ formula })}
        />
      </Show>
      <Show when={fields.kind === "check"}>
        <FormulaField
          label={spoken.own.demand}
          text={fields.demand}
          describedBy={`${id}-tried`}
          wrong={isFormulaWrong()}
          type={(demand) => set({ demand })}
        />
        <Labelled label={spoken.own.sense}>
          {(at) => (
            <select
              id={at}
              class="field"
              onChange={(event) => set({ sense: event.currentTarget.value as Fields["sense"] })}
            >
              <For each={SENSES}>
                {(sense) => (
                  <option value={sense} selected={sense === fields.sense}>
                    {spoken.own.senses[sense]}
                  </option>
                )}
              </For>
            </select>
          )}
        </Labelled>
        <FormulaField
          label={spoken.own.limit}
          text={fields.limit}
          describedBy={`${id}-tried`}
          wrong={isFormulaWrong()}
          type={(limit) => set({ limit })}
        />
      </Show>
      <Show when={isWorkedOut()}>
        <p
          id={`${id}-tried`}
          role="status"
          data-tried
          class={tried()?.good === false ? "field-problem" : "quiet"}
        >
          {tried()?.says ?? ""}
        </p>
      </Show>
      <Labelled label={spoken.own.why}>
        {(at) => <Text id={at} value={fields.why} type={(why) => set({ why })} />}
      </Labelled>
      <div role="alert">
        <Show when={problems().length > 0}>
          <ProblemList problems={problems()} />
        </Show>
      </div>
      <p class="actions">
        <button type="submit" class="small main-action">
          {props.entry === undefined ? spoken.own.save : spoken.own.saveChange}
        </button>
        <button type="button" class="small" onClick={() => props.cancel()}>
          {spoken.own.cancel}
        </button>
      </p>
    </form>
  )
}

function Labelled(props: {
  readonly label: string
  readonly hint?: string
  readonly children: (id: string) => JSX.Element
}) {
  const id = createUniqueId()
  return (
    <div class="own-field">
      <label for={id}>{props.label}</label>
      {props.children(id)}
      <Show when={props.hint}>
        <p class="quiet">{props.hint}</p>
      </Show>
    </div>
  )
}

function Text(props: {
  readonly id: string
  readonly value: string
  /** Shown while it is empty: what holds then. */
  readonly shown?: string
  readonly type: (text: string) => void
}) {
  return (
    <input
      id={props.id}
      class="field"
      type="text"
      autocomplete="off"
      autocapitalize="off"
      placeholder={props.shown}
      value={props.value}
      onInput={(event) => props.type(event.currentTarget.value)}
    />
  )
}
