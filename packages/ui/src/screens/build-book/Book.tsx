import { shownAs } from "@pegbook/engine"
import { type ComponentProps, createMemo, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { PlainTable } from "../../parts/PlainTable.tsx"
import { SourceList } from "../../parts/SourceList.tsx"
import { printDay } from "../../text/dates.ts"
import { verdictWord } from "../../text/entry-words.ts"
import { spoken } from "../../text/spoken.ts"
import { SetOutSheet } from "../set-out/SetOutSheet.tsx"
import { StageBody, StageRate } from "../steps/StageBody.tsx"
import "../steps/steps.css"
import { assumptionsOf } from "./assumptions.ts"
import "./build-book.css"
import { PrintedDrawing } from "./PrintedDrawing.tsx"
import type { Paper } from "./to-scale.ts"

/** Tables of the cut list and of the buying list, as far as a workbook has them; the columns that paper has room for. */
const CUT_TABLES = [
  { name: "timber_pieces", columns: ["part", "size", "length", "count"] },
  { name: "cut_plan", noneIfNothing: ["own"] },
  { name: "sheet_cuts" },
] as const
const BUY_TABLES = [
  { name: "stock_to_buy", columns: ["size", "length", "count", "volume"] },
  {
    name: "buy_list",
    columns: ["item", "length", "quantity", "unit", "packs", "bought", "cost"],
    noneIfNothing: ["length", "packs", "bought", "cost"],
  },
  { name: "haul_list", columns: ["item", "length", "quantity", "unit", "mass"], noneIfNothing: ["length"] },
  { name: "consumables", columns: ["item", "to_buy"] },
  { name: "fixings", columns: ["joint", "size", "number", "length", "coating"] },
  { name: "hardware" },
] as const

/** The whole workbook for paper, without anything to press. */
export function Book(props: { readonly title: string; readonly paper: Paper }) {
  const sheet = useSheet()
  return (
    <>
      <Summary title={props.title} />
      <Drawings paper={props.paper} />
      <Show when={sheet.has("set_out_points")}>
        <section class="book-part book-set-out">
          <h2>{spoken.setOut.title}</h2>
          <p class="quiet">{spoken.setOut.says}</p>
          <SetOutSheet />
        </section>
      </Show>
      <Tables title={spoken.buildBook.cutList} tables={CUT_TABLES} />
      <Tables title={spoken.buildBook.buyList} tables={BUY_TABLES} />
      <Steps />
      <Assumptions />
      <Cautions />
    </>
  )
}

/** What it is, whether it passes, and what can hurt. */
function Summary(props: { readonly title: string }) {
  const sheet = useSheet()
  const sizes = createMemo(() =>
    (sheet.definition.sections.find(({ id }) => id === "size")?.entries ?? [])
      .map(({ name }) => sheet.entry(name))
      .filter(({ kind, shape, reading }) => kind !== "figure" && shape === "one" && reading !== undefined),
  )
  const changed = createMemo(() =>
    sheet
      .inputs()
      .map((name) => sheet.entry(name))
      .filter((one) => one.changed),
  )
  return (
    <section class="book-part">
      <h1>{spoken.buildBook.title(props.title)}</h1>
      <p>
        {sheet.definition.title} · {sheet.scenario().title} · {printDay(new Date())}
      </p>
      <p class="quiet">{sheet.definition.says}</p>
      <h2>{spoken.buildBook.size}</h2>
      <dl class="book-facts" data-book-size>
        <For each={sizes()}>
          {(one) => (
            <div>
              <dt>{one.label}</dt>
              <dd>{one.reading?.text}</dd>
            </div>
          )}
        </For>
      </dl>
      <Show when={changed().length > 0}>
        <h3>{spoken.buildBook.changed}</h3>
        <dl class="book-facts">
          <For each={changed()}>
            {(one) => (
              <div>
                <dt>{one.label}</dt>
                <dd>{one.reading?.text ?? shownAs(one.typed ?? "", one.measure)}</dd>
              </div>
            )}
          </For>
        </dl>
      </Show>
      <h2>{spoken.buildBook.cautions}</h2>
      <ul class="book-texts">
        <For each={sheet.definition.cautions}>{(caution) => <li>{caution}</li>}</For>
      </ul>
      <h2>{spoken.compare.checks}</h2>
      <Checks />
    </section>
  )
}

function Checks() {
  const sheet = useSheet()
  return (
    <ul class="book-checks">
      <For each={sheet.checks()}>
        {(name) => {
          const view = () => sheet.entry(name)
          const check = () => view().check
          const verdict = () => check()?.verdict ?? "no_verdict"
          return (
            <li>
              <span class={`verdict verdict-${verdict()}`}>
                <Mark verdict={verdict()} /> {verdictWord(verdict())}
              </span>
              <div>
                <EntryLink name={name}>{view().label}</EntryLink>
                <Show when={check()?.demand !== undefined && check()?.limit !== undefined && check()}>
                  {(held) => (
                    <span class="quiet">
                      {" "}
                      {spoken.row.against(held().demand?.text ?? "", held().limit?.text ?? "", held().sense)}
                    </span>
                  )}
                </Show>
                <For each={check()?.advice}>{(advice) => <p>{advice}</p>}</For>
              </div>
            </li>
          )
        }}
      </For>
    </ul>
  )
}

function Drawings(props: { readonly paper: Paper }) {
  const sheet = useSheet()
  return (
    <Show when={sheet.definition.drawings?.length}>
      <section class="book-part">
        <h2>{spoken.drawings.title}</h2>
        <p class="quiet">{spoken.buildBook.scaleSays}</p>
        <For each={sheet.definition.drawings}>
          {(drawing) => <PrintedDrawing drawing={drawing} paper={props.paper} />}
        </For>
      </section>
    </Show>
  )
}

function Tables(props: {
  readonly title: string
  readonly tables: readonly Omit<ComponentProps<typeof PlainTable>, "boxes">[]
}) {
  const sheet = useSheet()
  const known = () => props.tables.filter(({ name }) => sheet.has(name))
  return (
    <Show when={known().length > 0}>
      <section class="book-part">
        <h2>{props.title}</h2>
        <For each={known()}>{(table) => <PlainTable {...table} boxes />}</For>
      </section>
    </Show>
  )
}

function Steps() {
  const sheet = useSheet()
  return (
    <Show when={sheet.stages().length > 0}>
      <section class="book-part">
        <h2>{spoken.steps.title}</h2>
        <ol>
          <For each={sheet.stages()}>
            {(stage, at) => (
              <li class="book-step">
                <div class="book-step-head">
                  <h3>
                    <span class="tick-box" /> {at() + 1} {stage.title}
                  </h3>
                  <StageRate stage={stage} />
                </div>
                <StageBody stage={stage} />
                <Show when={sheet.progress()[stage.id]?.note}>
                  {(note) => (
                    <p class="book-note">
                      {spoken.steps.note}
                      {spoken.colon}
                      {note()}
                    </p>
                  )}
                </Show>
              </li>
            )}
          </For>
        </ol>
      </section>
    </Show>
  )
}

function Assumptions() {
  const sheet = useSheet()
  const all = createMemo(() => assumptionsOf(sheet))
  return (
    <section class="book-part">
      <h2>{spoken.buildBook.assumptions}</h2>
      <p class="quiet">{spoken.buildBook.assumptionsSay}</p>
      <For each={all().sections}>
        {(section) => (
          <section class="plain-table">
            <h3>{section.title}</h3>
            <table>
              <thead class="hidden-text">
                <tr>
                  <th scope="col">{spoken.columns.what}</th>
                  <th scope="col">{spoken.columns.value}</th>
                  <th scope="col">{spoken.columns.from}</th>
                </tr>
              </thead>
              <tbody>
                <For each={section.rows}>
                  {(row) => (
                    <tr>
                      <td class="words">
                        <EntryLink name={row.name}>{row.label}</EntryLink>
                        <Show when={row.changed}> · {spoken.row.overridden}</Show>
                      </td>
                      <td>
                        {row.text ?? (row.shape === "table" ? spoken.buildBook.inTable : spoken.row.blank)}
                      </td>
                      <td class="book-places">{row.sources.join(", ")}</td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </section>
        )}
      </For>
      <h3>{spoken.detail.sources}</h3>
      <ol class="book-sources">
        <For each={all().sources}>
          {(source) => (
            <li>
              <SourceList sources={[source]} />
            </li>
          )}
        </For>
      </ol>
    </section>
  )
}

/** What the entries warn of; the steps have their own. */
function Cautions() {
  const sheet = useSheet()
  const warned = createMemo(() => {
    const said = new Set<string>()
    return sheet.definition.sections
      .flatMap(({ entries }) => entries.map(({ name }) => sheet.entry(name)))
      .map(({ label, cautions }) => ({
        label,
        cautions: cautions.filter((one) => !said.has(one) && said.add(one)),
      }))
      .filter(({ cautions }) => cautions.length > 0)
  })
  return (
    <section class="book-part">
      <h2>{spoken.detail.cautions}</h2>
      <ul class="book-texts">
        <For each={warned()}>
          {(one) => (
            <li>
              <strong>{one.label}.</strong> {one.cautions.join(" ")}
            </li>
          )}
        </For>
      </ul>
    </section>
  )
}
