import { type DecimalMark, inWords, measure, type Problem, type TableText } from "@pegbook/engine"
import { createEffect, createMemo, createSignal, createUniqueId, For, onCleanup, Show } from "solid-js"
import { useSession, useSheet } from "../../bridge/context.ts"
import { ProblemList } from "../../parts/ProblemList.tsx"
import { createTableReader } from "../../reading/table-reader.ts"
import { spoken } from "../../text/spoken.ts"

/** Rows and lines drawn at most; the counts say how many there are. */
const MOST_SHOWN = 50

/** Rows for an entered table from a CSV file or pasted text: first what would come of it, then all in one edit. */
export default function BringIn(props: { readonly name: string; readonly close: () => void }) {
  const sheet = useSheet()
  const session = useSession()
  const id = createUniqueId()
  const [text, setText] = createSignal("")
  const [mark, setMark] = createSignal<DecimalMark>()
  const [behind, setBehind] = createSignal(false)
  const [refusal, setRefusal] = createSignal<Problem>()

  const columns = createMemo(() =>
    sheet
      .table(props.name)
      .columns.filter((column) => column.kind === "input")
      .map((column) => ({ ...column, name: column.name.slice(props.name.length + 1) })),
  )
  const withUnit = () =>
    columns()
      .map(({ name, measure: id }) => ({ name, unit: measure(id).usual[sheet.unitSystem()] }))
      .find(({ unit }) => unit !== "" && unit !== "1")
  const there = () => sheet.typedRows(props.name)
  const [read, setRead] = createSignal<TableText>()
  const [reading, setReading] = createSignal(false)
  const reader = createTableReader()
  onCleanup(() => reader.stop())
  createEffect(() => {
    if (text().trim() === "") {
      setRead(undefined)
      setReading(false)
      return
    }
    const decimalMark = mark()
    const options = { columns: columns(), system: sheet.unitSystem() }
    setReading(true)
    reader.read(
      { text: text(), options: decimalMark === undefined ? options : { ...options, decimalMark } },
      (found) => {
        if (text().trim() === "") return
        setRead(found)
        setReading(false)
      },
    )
  })

  function take(next: string): void {
    setMark(undefined)
    setRefusal(undefined)
    setText(next)
  }

  function putIn(from: TableText): void {
    const before = there()
    const rows = from.good.map(({ row }) => row)
    const { accepted, problems } = sheet.editTable(props.name, behind() ? [...before, ...rows] : rows)
    if (!accepted) {
      setRefusal(problems[0])
      return
    }
    session.say(spoken.exchange.wasPutIn(rows.length, sheet.label(props.name)), () =>
      sheet.editTable(props.name, before),
    )
    props.close()
  }

  return (
    <section class="bring-in" aria-label={spoken.exchange.bringIn}>
      <p class="quiet">
        {spoken.exchange.headings(columns().map(({ name }) => name))}{" "}
        <Show when={withUnit()}>{(one) => spoken.exchange.headingUnit(one().name, one().unit)}</Show>
      </p>
      <label class="bring-in-file">
        <span>{spoken.exchange.file}</span>
        <input
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onChange={(event) => void event.currentTarget.files?.[0]?.text().then(take)}
        />
      </label>
      <label>
        <span>{spoken.exchange.paste}</span>
        <textarea
          class="field"
          rows={6}
          spellcheck={false}
          autocapitalize="off"
          value={text()}
          onInput={(event) => take(event.currentTarget.value)}
        />
      </label>
      <Show when={reading()}>
        <p class="quiet">{spoken.exchange.reading}</p>
      </Show>
      <Show when={read()}>
        {(from) => (
          <div class="bring-in-found">
            <p role="status">{spoken.exchange.found(from().good.length, from().bad.length)}</p>
            <ProblemList problems={from().problems} />
            <Show when={from().bad.length > 0}>
              <h4>{spoken.exchange.bad}</h4>
              <ul class="bad-rows">
                <For each={from().bad.slice(0, MOST_SHOWN)}>
                  {(row) => (
                    <li data-line={row.line}>
                      <For each={row.problems}>
                        {(problem) => <BadRow problem={problem} cells={row.cells} />}
                      </For>
                    </li>
                  )}
                </For>
              </ul>
              <Show when={from().bad.length > MOST_SHOWN}>
                <p class="quiet">{spoken.exchange.more(from().bad.length - MOST_SHOWN)}</p>
              </Show>
            </Show>
            <ul class="quiet">
              <For each={from().duplicates.slice(0, MOST_SHOWN)}>
                {({ line, first }) => <li>{spoken.exchange.duplicate(line, first)}</li>}
              </For>
              <For each={from().formulas.slice(0, MOST_SHOWN)}>
                {({ line, column }) => <li>{spoken.exchange.formula(line, column)}</li>}
              </For>
              <Show when={from().unknownColumns.length > 0}>
                <li>{spoken.exchange.unknown(from().unknownColumns)}</li>
              </Show>
            </ul>
            <label class="bring-in-mark">
              <span>{spoken.exchange.mark}</span>
              <select onChange={(event) => setMark(event.currentTarget.value as DecimalMark)}>
                <For each={["point", "comma"] as const}>
                  {(one) => (
                    <option value={one} selected={from().decimalMark === one}>
                      {spoken.exchange.marks[one]}
                    </option>
                  )}
                </For>
              </select>
            </label>
            <Show when={from().good.length > 0}>
              <GoodRows from={from()} />
              <Show when={there().length > 0}>
                <fieldset class="choices">
                  <legend class="quiet">{spoken.exchange.thereAre(there().length)}</legend>
                  <For each={[false, true]}>
                    {(one) => (
                      <label class="choice">
                        <input
                          type="radio"
                          name={`${id}-where`}
                          checked={behind() === one}
                          onChange={() => setBehind(one)}
                        />
                        <span>{one ? spoken.exchange.behind : spoken.exchange.instead}</span>
                      </label>
                    )}
                  </For>
                </fieldset>
              </Show>
            </Show>
            <Show when={refusal()}>{(problem) => <ProblemList problems={[problem()]} />}</Show>
          </div>
        )}
      </Show>
      <p class="actions">
        <Show when={read()}>
          {(from) => (
            <button
              type="button"
              class="small main-action"
              disabled={reading() || from().good.length === 0}
              onClick={() => putIn(from())}
            >
              {spoken.exchange.putIn(from().good.length)}
            </button>
          )}
        </Show>
        <button type="button" class="plain" onClick={() => props.close()}>
          {spoken.scenario.cancel}
        </button>
      </p>
    </section>
  )

  function BadRow(bad: { readonly problem: Problem; readonly cells: readonly string[] }) {
    const words = () => inWords(bad.problem, sheet.unitSystem())
    return (
      <p>
        <strong>{words().says}</strong> {words().next} <code>{bad.cells.join(" · ")}</code>
      </p>
    )
  }

  function GoodRows(good: { readonly from: TableText }) {
    return (
      <section class="table-scroll" aria-label={spoken.table.scroll(spoken.exchange.good)}>
        <table class="rows">
          <caption class="hidden-text">{spoken.exchange.good}</caption>
          <thead>
            <tr>
              <th scope="col">{spoken.exchange.line}</th>
              <For each={columns()}>{(column) => <th scope="col">{column.label}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={good.from.good.slice(0, MOST_SHOWN)}>
              {({ line, row }) => (
                <tr>
                  <th scope="row">{line}</th>
                  <For each={columns()}>{(column) => <td>{row[column.name]}</td>}</For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <Show when={good.from.good.length > MOST_SHOWN}>
          <p class="quiet">{spoken.exchange.more(good.from.good.length - MOST_SHOWN)}</p>
        </Show>
      </section>
    )
  }
}
