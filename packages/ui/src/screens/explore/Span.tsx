import { type SweepRow, shownAs } from "@pegbook/engine"
import { batch, createMemo, createSignal, createUniqueId, For, onCleanup, Show } from "solid-js"
import { createStore } from "solid-js/store"
import { useSheet } from "../../bridge/context.ts"
import { ask } from "../../explore/ask.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { AskButtons } from "./AskButtons.tsx"
import {
  firstResult,
  isAllNothing,
  type RangeFields,
  rangeOf,
  seriesOf,
  triableInputs,
} from "./explore-model.ts"
import { LineChart } from "./LineChart.tsx"
import { Outcome } from "./Outcome.tsx"
import { RangeForm } from "./RangeForm.tsx"
import { ReadyCharts } from "./ReadyCharts.tsx"
import { useTaking } from "./taking.ts"

/** Rows of the table that are drawn; the chart has all. */
const ROWS_DRAWN = 200
/** Milliseconds. */
const BETWEEN_DRAWINGS = 250
const MOST_RESULTS = 4

const NONE: RangeFields = { name: "", from: "", to: "", step: "", chosen: [] }

/** What was asked when the rows were made; the form may have been changed since. */
interface Asked {
  readonly inputs: readonly string[]
  readonly results: readonly string[]
}

/** Tries one input, or two together, over many values. */
export function Span() {
  const sheet = useSheet()
  const takeIntoCopy = useTaking()
  const id = createUniqueId()
  const inputs = createMemo(() => triableInputs(sheet))
  const start = inputs()[0] ?? ""
  const [first, setFirst] = createStore<RangeFields>({
    ...NONE,
    name: start,
    from: start === "" ? "" : (sheet.entry(start).reading?.text ?? ""),
  })
  const [second, setSecond] = createStore<RangeFields>({ ...NONE })
  const [picked, setPicked] = createSignal<readonly string[]>([])
  const [rows, setRows] = createStore<SweepRow[]>([])
  const [asked, setAsked] = createSignal<Asked>()
  const [of, setOf] = createSignal(0)
  const [state, setState] = createSignal<"idle" | "working" | "stopped">("idle")
  const [refusal, setRefusal] = createSignal<string>()
  let come: HTMLParagraphElement | undefined
  let stop = () => {}
  onCleanup(() => {
    stop()
    clearTimeout(due)
  })

  const results = () => {
    if (picked().length > 0) return picked()
    const found = first.name === "" ? undefined : firstResult(first.name, sheet)
    return found === undefined ? [] : [found]
  }
  const readable = createMemo(() =>
    sheet
      .sections()
      .map(({ title, entries }) => ({
        title,
        names: entries
          .filter(({ kind }) => kind === "formula" || kind === "check")
          .map(({ name }) => name)
          .filter((name) => sheet.entry(name).shape === "one"),
      }))
      .filter(({ names }) => names.length > 0),
  )

  /** Rows that have come and are not shown yet: shown one by one they would come faster than a page can draw. */
  let waiting: SweepRow[] = []
  let due: ReturnType<typeof setTimeout> | undefined
  function showWaiting(): void {
    clearTimeout(due)
    due = undefined
    const come = waiting
    waiting = []
    batch(() => {
      for (const row of come) setRows(rows.length, row)
    })
  }

  /** Fills in the form, so that the question can be changed from there, and asks it. */
  function askReady(fields: RangeFields, shown: readonly string[]): void {
    setFirst(fields)
    setSecond({ ...NONE })
    setPicked(shown)
    run()
    come?.scrollIntoView()
  }

  function run(): void {
    stop()
    showWaiting()
    const used = [first, second].filter(({ name }) => name !== "")
    setAsked({ inputs: used.map(({ name }) => name), results: results() })
    setRows([])
    setOf(0)
    setRefusal(undefined)
    setState("working")
    const ranges = used.map((fields) => rangeOf({ ...fields }, sheet.entry(fields.name)))
    const plain = ranges.map((range) => ("values" in range ? { ...range, values: [...range.values] } : range))
    stop = ask(sheet, { kind: "sweep", inputs: plain, results: [...results()] }, (answer) => {
      if (answer.kind === "sweep") {
        waiting.push(answer.row)
        setOf(answer.of)
        due ??= setTimeout(showWaiting, BETWEEN_DRAWINGS)
      } else {
        showWaiting()
        if (answer.kind === "refused") setRefusal(`${answer.says} ${answer.next}`)
        setState("idle")
      }
    })
  }

  function halt(): void {
    stop()
    showWaiting()
    setState("stopped")
  }

  const shownOf = (typed: string, place: number) => {
    const name = asked()?.inputs[place]
    return name === undefined ? typed : shownAs(typed, sheet.entry(name).measure)
  }
  const saysOf = (row: SweepRow) =>
    row.typed
      .map((text, place) => `${sheet.label(asked()?.inputs[place] ?? "")} ${shownOf(text, place)}`)
      .join(", ")

  function take(row: SweepRow): void {
    const names = asked()?.inputs ?? []
    const texts = Object.fromEntries(row.typed.map((text, place) => [names[place] ?? "", text]))
    takeIntoCopy(saysOf(row), texts)
  }

  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{spoken.explore.span}</h2>
      <p class="quiet">{spoken.explore.spanSays}</p>
      <ReadyCharts ask={askReady} />
      <form
        class="explore-form"
        onSubmit={(event) => {
          event.preventDefault()
          run()
        }}
      >
        <RangeForm
          label={spoken.explore.input}
          inputs={inputs()}
          fields={first}
          set={(change) => setFirst(change)}
        />
        <RangeForm
          label={spoken.explore.second}
          inputs={inputs().filter((name) => name !== first.name)}
          fields={second}
          optional
          set={(change) => setSecond(change)}
        />
        <div class="range-form">
          <label for={`${id}-result`}>{spoken.explore.result}</label>
          <select
            id={`${id}-result`}
            class="field"
            disabled={results().length >= MOST_RESULTS}
            onChange={(event) => {
              const name = event.currentTarget.value
              if (name !== "") setPicked([...new Set([...picked(), name])])
              event.currentTarget.value = ""
            }}
          >
            <option value="">{spoken.field.choose}</option>
            <For each={readable()}>
              {(group) => (
                <optgroup label={group.title}>
                  <For each={group.names}>{(name) => <option value={name}>{sheet.label(name)}</option>}</For>
                </optgroup>
              )}
            </For>
          </select>
          <ul class="picked" aria-label={spoken.explore.results}>
            <For each={results()}>
              {(name) => (
                <li>
                  {sheet.label(name)}{" "}
                  <Show when={picked().includes(name)}>
                    <button
                      type="button"
                      class="plain"
                      onClick={() => setPicked(picked().filter((one) => one !== name))}
                    >
                      {spoken.explore.leaveOut}
                      <span class="hidden-text">: {sheet.label(name)}</span>
                    </button>
                  </Show>
                </li>
              )}
            </For>
          </ul>
        </div>
        <AskButtons ask={spoken.explore.run} isWorking={state() === "working"} stop={halt} />
      </form>
      <Show when={state() === "working"}>
        <progress max={of() || 1} value={rows.length} aria-label={spoken.explore.run} />
      </Show>
      <p role="status" data-progress ref={come}>
        {state() === "working"
          ? of() === 0
            ? spoken.explore.workingFirst
            : spoken.explore.working(rows.length, of())
          : state() === "stopped"
            ? spoken.explore.stopped
            : ""}
      </p>
      <Show when={refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
      <Show when={rows.length > 0 && asked()}>
        {(about) => (
          <>
            <For each={about().results}>
              {(name, place) => {
                // Once for each time that rows come: all of the chart asks for it.
                const series = createMemo(() => seriesOf(rows, place(), shownOf))
                return (
                  <Show when={series().length > 0}>
                    <h3>{spoken.explore.chart(sheet.label(name), sheet.label(about().inputs[0] ?? ""))}</h3>
                    <LineChart
                      says={spoken.explore.chartSays(
                        sheet.label(name),
                        sheet.label(about().inputs[0] ?? ""),
                        rows.length,
                      )}
                      series={series()}
                    />
                    <Show when={sheet.entry(name).measure === "money" && isAllNothing(rows, place())}>
                      <p class="quiet">
                        {spoken.explore.unpriced}{" "}
                        <EntryLink name={name}>{spoken.explore.unpricedWhere(sheet.label(name))}</EntryLink>
                      </p>
                    </Show>
                  </Show>
                )
              }}
            </For>
            <h3>{spoken.explore.table}</h3>
            <section class="table-scroll" tabindex={0} aria-label={spoken.table.scroll(spoken.explore.table)}>
              <table class="rows tried">
                <thead>
                  <tr>
                    <For each={[...about().inputs, ...about().results]}>
                      {(name) => <th scope="col">{sheet.label(name)}</th>}
                    </For>
                    <th scope="col">{spoken.block.checks}</th>
                    <td />
                  </tr>
                </thead>
                <tbody>
                  <For each={rows.slice(0, ROWS_DRAWN)}>
                    {(row) => (
                      <tr data-tried>
                        <For each={row.typed}>
                          {(text, place) => <th scope="row">{shownOf(text, place())}</th>}
                        </For>
                        <For each={row.values}>{(value) => <td>{value?.text ?? spoken.row.noValue}</td>}</For>
                        <td class="tried-checks">
                          <Outcome failing={row.failing} isRefused={row.problem !== undefined} />
                        </td>
                        <td>
                          <Show when={row.problem === undefined}>
                            <button
                              type="button"
                              class="small"
                              aria-label={spoken.explore.takeSays(saysOf(row))}
                              onClick={() => take(row)}
                            >
                              {spoken.explore.take}
                            </button>
                          </Show>
                        </td>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            </section>
            <Show when={rows.length > ROWS_DRAWN}>
              <p class="quiet">{spoken.compare.rowsMore(rows.length - ROWS_DRAWN)}</p>
            </Show>
          </>
        )}
      </Show>
    </section>
  )
}
