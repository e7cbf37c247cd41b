import type { CheckView } from "@pegbook/engine"
import { createEffect, createMemo, createSignal, For, type JSX, on, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import type { Stand } from "../../explore/asked.ts"
import { Bars } from "../../explore/Bars.tsx"
import { createQuestion } from "../../explore/question.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { ScenarioBox, scenarioTitle } from "../../parts/ScenarioBox.tsx"
import { verdictWord } from "../../text/entry-words.ts"
import { spoken } from "../../text/spoken.ts"
import { SinceBought } from "../buy-list/SinceBought.tsx"
import { checkLines, checkWords, firstPair, type Line, linesOf, rowLines } from "./compare-model.ts"

/** Rows of one table that are listed; the rest are in the table itself. */
const ROWS_LISTED = 40

/** Scenarios side by side: what differs from the first of them, in the order of the work, then how much does not. */
export default function Compare() {
  const sheet = useSheet()
  const [wanted, setWanted] = createSignal<ReadonlySet<string>>(
    new Set(firstPair(sheet.scenarios(), sheet.scenario().id)),
  )
  const [stands, setStands] = createSignal<readonly Stand[]>([])
  const question = createQuestion()
  const chosen = () => {
    const ids = sheet.scenarios().map(({ id }) => id)
    const known = ids.filter((id) => wanted().has(id))
    return known.length > 0 || ids.length < 2 ? known : firstPair(sheet.scenarios(), sheet.scenario().id)
  }

  createEffect(
    on([chosen, sheet.moved, sheet.unitSystem], ([ids]) => {
      question.stop()
      if (ids.length < 2) {
        setStands([])
        return
      }
      const came: Stand[] = []
      question.put({ kind: "compare", scenarios: ids }, (answer) => {
        if (answer.kind === "compare") came.push(answer.stand)
        if (answer.kind === "done") setStands(came)
      })
    }),
  )

  function choose(id: string, on: boolean): void {
    const next = new Set(chosen())
    if (on) next.add(id)
    else next.delete(id)
    setWanted(next)
  }

  return (
    <div class="compare">
      <h1>{spoken.compare.title}</h1>
      <Show
        when={sheet.scenarios().length > 1}
        fallback={
          <>
            <p>{spoken.compare.onlyOne}</p>
            <ScenarioBox />
          </>
        }
      >
        <fieldset class="sides-chosen">
          <legend>{spoken.compare.choose}</legend>
          <p class="quiet">{spoken.compare.chooseSays}</p>
          <div class="choices">
            <For each={sheet.scenarios()}>
              {(one) => (
                <label class="choice">
                  <input
                    type="checkbox"
                    checked={chosen().includes(one.id)}
                    onChange={(event) => choose(one.id, event.currentTarget.checked)}
                  />
                  <span>{scenarioTitle(one)}</span>
                </label>
              )}
            </For>
          </div>
        </fieldset>
        <p role="status" class="quiet">
          {question.isWorking()
            ? spoken.compare.working
            : chosen().length < 2
              ? spoken.compare.sameScenario
              : ""}
        </p>
        <Show when={question.refusal()}>{(says) => <p class="field-problem">{says()}</p>}</Show>
        <SinceBought />
        <Show when={stands().length > 1 && stands()} keyed>
          {(sides) => <SideBySide sides={sides} />}
        </Show>
      </Show>
    </div>
  )
}

function SideBySide(props: { readonly sides: readonly Stand[] }) {
  const sheet = useSheet()
  const names = () => sheet.names()
  const inputs = createMemo(() => linesOf("inputs", props.sides, names()))
  const all = createMemo(() => linesOf("results", props.sides, names()))
  const isMoney = ({ name }: Line) => sheet.has(name) && sheet.entry(name).measure === "money"
  const cost = createMemo(() => all().filter(isMoney))
  const results = createMemo(() => all().filter((line) => !isMoney(line)))
  const checks = createMemo(() => checkLines(props.sides, names()))
  const tables = createMemo(() =>
    names().flatMap((name) => {
      const rows = props.sides.map((side) => side.tables[name])
      if (rows.some((side) => side === undefined) || !sheet.has(name)) return []
      const { columns } = sheet.table(name)
      const lines = rowLines(
        rows.map((side) => side ?? []),
        {
          labels: columns.map((column) => column.label.toLowerCase()),
          texts: columns.map(({ measure }) => measure === "text"),
        },
      )
      return lines.length === 0 ? [] : [{ name, lines }]
    }),
  )
  const same = () =>
    Math.min(...props.sides.flatMap(({ against }) => (against === undefined ? [] : [against.same])))
  const nothing = () => inputs().length + all().length + checks().length + tables().length === 0

  return (
    <>
      <Show when={nothing()}>
        <p>{spoken.compare.noDifference}</p>
      </Show>
      <Differences title={spoken.compare.inputs} any={inputs().length > 0}>
        <For each={inputs()}>{(line) => <TextLine line={line} />}</For>
      </Differences>
      <Differences title={spoken.compare.cost} any={cost().length > 0}>
        <For each={cost()}>{(line) => <TextLine line={line} />}</For>
      </Differences>
      <ResultBars sides={props.sides} lines={[...cost(), ...results()]} />
      <Differences title={spoken.compare.checks} any={checks().length > 0}>
        <For each={checks()}>
          {(line) => (
            <Cells name={line.name}>
              <For each={line.checks}>
                {(check, side) => (
                  <Side side={side()}>
                    <Show when={check} fallback={spoken.row.noValue}>
                      {(one) => <Verdict check={one()} />}
                    </Show>
                  </Side>
                )}
              </For>
            </Cells>
          )}
        </For>
      </Differences>
      <Differences title={spoken.compare.results} any={results().length > 0}>
        <For each={results()}>{(line) => <TextLine line={line} />}</For>
      </Differences>
      <Show when={tables().length > 0}>
        <section class="differences">
          <h2>{spoken.compare.lists}</h2>
          <For each={tables()}>
            {({ name, lines }) => (
              <details class="list-differs" data-table={name}>
                <summary>
                  {sheet.label(name)} <span class="quiet">{spoken.compare.rows(lines.length)}</span>
                </summary>
                <Table>
                  <For each={lines.slice(0, ROWS_LISTED)}>
                    {(line) => (
                      <tr>
                        <th scope="row">{line.what}</th>
                        <For each={line.cells}>
                          {(text, side) => (
                            <Side side={side()}>{text === "" ? spoken.compare.notThere : text}</Side>
                          )}
                        </For>
                      </tr>
                    )}
                  </For>
                </Table>
                <p>
                  <EntryLink name={name}>{sheet.label(name)}</EntryLink>{" "}
                  <Show when={lines.length > ROWS_LISTED}>
                    <span class="quiet">{spoken.compare.rowsMore(lines.length - ROWS_LISTED)}</span>
                  </Show>
                </p>
              </details>
            )}
          </For>
        </section>
      </Show>
      <p class="same" data-same={same()}>
        {spoken.compare.same(same())}
      </p>
    </>
  )

  function Differences(part: {
    readonly title: string
    readonly any: boolean
    readonly children: JSX.Element
  }) {
    return (
      <Show when={part.any}>
        <section class="differences">
          <h2>{part.title}</h2>
          <Table>{part.children}</Table>
        </section>
      </Show>
    )
  }

  function Table(table: { readonly children: JSX.Element }) {
    return (
      <table style={{ "--sides": String(props.sides.length) }}>
        <thead>
          <tr>
            <th scope="col">{spoken.compare.what}</th>
            <For each={props.sides}>{(side) => <th scope="col">{side.title}</th>}</For>
          </tr>
        </thead>
        <tbody>{table.children}</tbody>
      </table>
    )
  }

  function TextLine(props: { readonly line: Line }) {
    return (
      <Cells name={props.line.name}>
        <For each={props.line.cells}>
          {(cell, side) => (
            <Side side={side()}>
              <span data-says>{cell.text}</span>
              <Show when={cell.by}>{(by) => <span class="quiet by"> ({by()})</span>}</Show>
            </Side>
          )}
        </For>
      </Cells>
    )
  }

  function Cells(line: { readonly name: string; readonly children: JSX.Element }) {
    return (
      <tr data-difference={line.name}>
        <th scope="row">
          <EntryLink name={line.name}>{sheet.label(line.name)}</EntryLink>
        </th>
        {line.children}
      </tr>
    )
  }

  /** One scenario's cell. Where there is no room for columns its title stands in it. */
  function Side(cell: { readonly side: number; readonly children: JSX.Element }) {
    return (
      <td data-side={cell.side}>
        <span class="side-title" aria-hidden="true">
          {props.sides[cell.side]?.title}
        </span>
        {cell.children}
      </td>
    )
  }
}

/** A chosen result of all scenarios, drawn as bars. */
function ResultBars(props: { readonly sides: readonly Stand[]; readonly lines: readonly Line[] }) {
  const sheet = useSheet()
  const [chosen, setChosen] = createSignal<string>()
  const numbers = createMemo(() =>
    props.lines
      .map(({ name }) => name)
      .filter((name) => props.sides.every((side) => side.numbers[name] !== undefined)),
  )
  const shown = () => {
    const name = chosen()
    return name !== undefined && numbers().includes(name) ? name : numbers()[0]
  }
  return (
    <Show when={shown()}>
      {(name) => (
        <section class="differences">
          <h2>{spoken.compare.bars}</h2>
          <label class="chooser">
            <span class="block-caption">{spoken.compare.barsFor}</span>
            <select class="field" onChange={(event) => setChosen(event.currentTarget.value)}>
              <For each={numbers()}>
                {(one) => (
                  <option value={one} selected={one === name()}>
                    {sheet.label(one)}
                  </option>
                )}
              </For>
            </select>
          </label>
          <Bars
            label={spoken.compare.barsSay(sheet.label(name()))}
            bars={props.sides.map((side) => ({
              title: side.title,
              text: side.numbers[name()]?.text ?? "",
              value: side.numbers[name()]?.value ?? 0,
            }))}
          />
        </section>
      )}
    </Show>
  )
}

function Verdict(props: { readonly check: CheckView }) {
  return (
    <>
      <span class={`verdict verdict-${props.check.verdict}`}>
        <Mark verdict={props.check.verdict} /> {verdictWord(props.check.verdict)}
      </span>
      <span class="quiet verdict-rest">{checkWords(props.check)}</span>
    </>
  )
}
