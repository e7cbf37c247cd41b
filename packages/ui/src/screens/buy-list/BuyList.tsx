import { inLanguage, inWords, shownAs } from "@pegbook/engine"
import { createMemo, createSignal, For, Index, Show } from "solid-js"
import { useSession, useSheet } from "../../bridge/context.ts"
import type { TypedRow } from "../../bridge/sheet.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Field } from "../../parts/Field.tsx"
import { HowGood } from "../../parts/HowGood.tsx"
import { spoken } from "../../text/spoken.ts"
import { TableExchange } from "../exchange/TableExchange.tsx"
import { keptRowsOf, type TableRow } from "../set-out/set-out-model.ts"
import { nextStage } from "../steps/steps-model.ts"
import { InputTable } from "../worksheet/InputTable.tsx"
import {
  GROUPINGS,
  type Grouping,
  groupedBy,
  lineKey,
  shortFor,
  withBought,
  withNote,
} from "./buy-list-model.ts"
import { amountOf, lineName } from "./line-words.ts"
import { SinceBought } from "./SinceBought.tsx"
import "./buy-list.css"

/** Rows of a table as they are kept; none where the workbook has no such table. */
function useRows(table: string): () => readonly TableRow[] {
  const sheet = useSheet()
  return createMemo(() => {
    if (!sheet.has(table)) return []
    const { columns, rowCount } = sheet.table(table)
    return keptRowsOf(columns, rowCount)
  })
}

function money(text: string | undefined): string {
  return shownAs(text ?? "", "money")
}

function words(text: string | undefined): string {
  return inLanguage(text ?? "")
}

const NOTHING = /^0(\.0+)?( \$)?$/

/** What to buy, to be ticked off in the shop; whom to buy it from; and what it comes to. */
export default function BuyList() {
  const sheet = useSheet()
  return (
    <div class="buy">
      <header>
        <h1>{spoken.buyList.title}</h1>
        <p class="quiet">{spoken.buyList.says}</p>
      </header>
      <Show when={sheet.has("still_to_buy")} fallback={<p>{spoken.buyList.none}</p>}>
        <SinceBought />
        <Next />
        <Lines />
        <Own />
        <Plans />
        <Sums />
        <Gone />
        <section class="buy-prices" aria-labelledby="buy-prices">
          <h2 id="buy-prices">{spoken.buyList.prices}</h2>
          <p class="quiet">{spoken.buyList.pricesSay}</p>
          <p class="actions">
            <EntryLink name="prices">{sheet.label("prices")}</EntryLink>
            <EntryLink name="suppliers">{sheet.label("suppliers")}</EntryLink>
          </p>
          <TableExchange name="prices" />
        </section>
      </Show>
    </div>
  )
}

/** What the next step of the work is still short of. */
function Next() {
  const sheet = useSheet()
  const rows = useRows("still_to_buy")
  const next = createMemo(() => nextStage(sheet.stages(), sheet.progress()))
  return (
    <Show when={next()}>
      {(stage) => {
        const short = () => shortFor(rows(), stage())
        return (
          <section class="buy-next" aria-labelledby="buy-next">
            <h2 id="buy-next">{spoken.buyList.next(stage().title)}</h2>
            <Show when={short().length > 0} fallback={<p role="status">{spoken.buyList.nextReady}</p>}>
              <ul>
                <Index each={short()}>
                  {(row) => (
                    <li>
                      {lineName(row())}
                      {spoken.colon}
                      <strong>{amountOf(row().short, row().unit)}</strong>
                    </li>
                  )}
                </Index>
              </ul>
            </Show>
          </section>
        )
      }}
    </Show>
  )
}

function Lines() {
  const sheet = useSheet()
  const rows = useRows("buy_list")
  const still = useRows("still_to_buy")
  const [grouping, setGrouping] = createSignal<Grouping>("group")
  const groups = createMemo(() =>
    groupedBy(
      rows().map((row) => ({ ...row, [grouping()]: words(row[grouping()]) })),
      grouping(),
      grouping() === "stage" ? sheet.stages().map(({ title }) => title) : [],
    ),
  )
  const states = createMemo(
    () => new Map(still().map((row) => [lineKey(row.item ?? "", row.length ?? ""), row])),
  )
  const blank = () => (grouping() === "supplier" ? spoken.buyList.nobody : spoken.buyList.elsewhere)
  return (
    <section aria-labelledby="buy-lines">
      <h2 id="buy-lines" class="hidden-text">
        {spoken.buyList.lines}
      </h2>
      <fieldset class="choices buy-by">
        <legend>{spoken.buyList.by}</legend>
        <For each={GROUPINGS}>
          {(one) => (
            <label class="choice">
              <input
                type="radio"
                name="buy-by"
                checked={grouping() === one}
                onChange={() => setGrouping(one)}
              />
              <span>{spoken.buyList.groupings[one]}</span>
            </label>
          )}
        </For>
      </fieldset>
      <Index each={groups()}>
        {(group) => (
          <section class="buy-group" data-group={group().title}>
            <h3>{group().title === "" ? blank() : group().title}</h3>
            <ul>
              <Index each={group().rows}>
                {(row) => (
                  <Line row={row()} state={states().get(lineKey(row().item ?? "", row().length ?? ""))} />
                )}
              </Index>
            </ul>
          </section>
        )}
      </Index>
    </section>
  )
}

/** Types rows; where they are refused, as in a sealed scenario, says so and returns `false`: what is pressed here has no room for it. */
function usePut(): (table: string, rows: readonly TypedRow[]) => boolean {
  const sheet = useSheet()
  const session = useSession()
  return (table, rows) => {
    const [problem] = sheet.editTable(table, rows).problems
    if (problem === undefined) return true
    const { says, next } = inWords({ ...problem, at: {} }, sheet.unitSystem())
    session.say(`${says} ${next}`)
    return false
  }
}

function Line(props: { readonly row: TableRow; readonly state: TableRow | undefined }) {
  const sheet = useSheet()
  const put = usePut()
  const [open, setOpen] = createSignal(false)
  const finding = () => props.state?.finding ?? ""
  const isBought = () => finding() === "bought" || finding() === "more than is needed"
  const note = () => {
    const key = lineKey(props.row.item ?? "", props.row.length ?? "")
    return sheet.typedRows("purchases").find((one) => lineKey(one.item ?? "", one.length ?? "") === key)
  }
  const isPriced = () => props.row.price_unit !== "no price"
  const price = () => (isPriced() ? money(props.row.cost) : spoken.buyList.unpriced)
  return (
    <li class="buy-line" classList={{ "buy-bought": isBought() }} data-line={lineName(props.row)}>
      <label class="buy-tick">
        <input
          type="checkbox"
          checked={isBought()}
          aria-label={spoken.buyList.tick(lineName(props.row))}
          onChange={(event) => {
            const { checked } = event.currentTarget
            if (!put("purchases", withBought(sheet.typedRows("purchases"), props.row, checked)))
              event.currentTarget.checked = !checked
          }}
        />
        <span class="buy-take">{amountOf(props.row.take, props.row.take_unit)}</span>
        <span class="buy-name">{lineName(props.row)}</span>
      </label>
      <button
        type="button"
        class="buy-more"
        aria-expanded={open()}
        aria-label={spoken.buyList.more(price(), lineName(props.row))}
        onClick={() => setOpen((was) => !was)}
      >
        {price()}
      </button>
      <Show when={finding() === "not enough" || finding() === "more than is needed"}>
        <p class="buy-state">
          {finding() === "not enough"
            ? spoken.buyList.short(shownAs(props.state?.short ?? "", "ratio"), words(props.state?.unit))
            : spoken.buyList.back(shownAs(props.state?.returns ?? "", "ratio"), words(props.state?.unit))}
        </p>
      </Show>
      <Show when={isPriced() && props.row.finding !== "in order"}>
        <p class="buy-state">{words(props.row.finding)}</p>
      </Show>
      <Show when={open()}>
        <dl class="buy-facts">
          <Fact says={spoken.buyList.facts.supplier} text={words(props.row.supplier)} />
          <Fact
            says={spoken.buyList.facts.price}
            text={
              isPriced() ? spoken.buyList.priceOf(money(props.row.price), words(props.row.price_unit)) : ""
            }
          />
          <Fact says={spoken.buyList.facts.need} text={amountOf(props.row.quantity, props.row.unit)} />
          <Fact
            says={spoken.buyList.facts.left}
            text={props.row.left === "0" ? "" : amountOf(props.row.left, props.row.unit)}
          />
          <Fact says={spoken.buyList.facts.stages} text={words(props.row.stages)} />
          <Fact says={spoken.buyList.facts.lead} text={props.row.lead === "0" ? "" : props.row.lead} />
          <Fact says={spoken.buyList.facts.orderBy} text={words(props.row.order_by)} />
          <Fact says={spoken.buyList.facts.assumed} text={words(props.row.assumed)} />
        </dl>
        <Show when={note()} fallback={<p class="quiet">{spoken.buyList.tickFirst}</p>}>
          {(kept) => (
            <div class="buy-notes">
              <For each={["bought", "paid", "used"] as const}>
                {(column) => (
                  <div>
                    <span class="block-caption">{spoken.buyList.notes[column]}</span>
                    <Field
                      label={`${spoken.buyList.notes[column]}${spoken.colon}${lineName(props.row)}`}
                      text={shownAs(kept()[column] ?? "", "ratio")}
                      measure="ratio"
                      commit={(text) =>
                        sheet.editTable("purchases", [
                          ...withNote(sheet.typedRows("purchases"), props.row, column, text),
                        ])
                      }
                    />
                  </div>
                )}
              </For>
            </div>
          )}
        </Show>
      </Show>
    </li>
  )
}

function Fact(props: { readonly says: string; readonly text: string | undefined }) {
  return (
    <Show when={props.text}>
      <div>
        <dt>{props.says}</dt>
        <dd>{props.text}</dd>
      </div>
    </Show>
  )
}

/** What the user adds to the list, and what keeps a line from it. */
function Own() {
  const sheet = useSheet()
  return (
    <section class="buy-own" aria-labelledby="buy-own">
      <h2 id="buy-own">{spoken.buyList.own}</h2>
      <p class="quiet">{spoken.buyList.ownSays}</p>
      <InputTable name="own_things" />
      <div role="status">
        <ul class="field-problem">
          <For each={sheet.entry("buy_list").report?.unmet ?? []}>{(says) => <li>{says}</li>}</For>
        </ul>
      </div>
    </section>
  )
}

/** Suppliers mixed, or one alone. */
function Plans() {
  const sheet = useSheet()
  const rows = useRows("supplier_plans")
  const choices = () => rows().filter((row) => row.plan !== "one trip only")
  const trip = () => rows().find((row) => row.plan === "one trip only")
  function choose(from: string): void {
    const [rule] = sheet.typedRows("buying_rules")
    sheet.editTable("buying_rules", [{ today: "", price_age: "", start: "", ...rule, buy_from: from }])
  }
  return (
    <section class="buy-plans" aria-labelledby="buy-plans">
      <h2 id="buy-plans">{spoken.buyList.plans}</h2>
      <Show when={rows().length > 0} fallback={<p class="quiet">{spoken.buyList.noPlans}</p>}>
        <HowGood view={sheet.entry("supplier_choice")} proven={spoken.buyList.provenSays} />
        <fieldset class="buy-choices">
          <legend class="quiet">{spoken.buyList.plansSay}</legend>
          <Index each={choices()}>
            {(row) => (
              <label class="buy-plan" data-plan={row().plan}>
                <input
                  type="radio"
                  name="buy-from"
                  checked={row().chosen === "1"}
                  disabled={sheet.scenario().sealed}
                  onChange={() => choose(row().from ?? "")}
                />
                <span class="buy-plan-name">
                  <strong>{words(row().plan)}</strong>
                  <span class="quiet">{spoken.buyList.plan(words(row().finding), row().orders ?? "")}</span>
                  <Show when={!NOTHING.test(row().saving ?? "")}>
                    <span class="buy-saving">{spoken.buyList.saving(money(row().saving))}</span>
                  </Show>
                </span>
                <span class="buy-plan-sum">{money(row().total)}</span>
              </label>
            )}
          </Index>
        </fieldset>
        <Show when={trip()}>
          {(row) => (
            <p data-plan={row().plan}>
              {spoken.buyList.trip(words(row().finding), money(row().total), money(row().saving))}
            </p>
          )}
        </Show>
      </Show>
    </section>
  )
}

function Sums() {
  const sheet = useSheet()
  const orders = useRows("supplier_orders")
  const costs = useRows("cost_lines")
  const spent = useRows("spent")
  return (
    <section class="buy-sums" aria-labelledby="buy-sums">
      <h2 id="buy-sums">{spoken.buyList.sums}</h2>
      <dl>
        <Index each={orders()}>
          {(row) => (
            <div data-order={row().supplier}>
              <dt>
                {spoken.buyList.invoice(
                  row().supplier === "" ? spoken.buyList.nobody : words(row().supplier),
                )}
              </dt>
              <dd>{money(row().total)}</dd>
            </div>
          )}
        </Index>
        <Index each={costs()}>
          {(row) => (
            <div data-cost={row().line}>
              <dt>{spoken.buyList.costLine(words(row().line), row().lines ?? "")}</dt>
              <dd>{row().line === "without a price" ? "" : money(row().amount)}</dd>
            </div>
          )}
        </Index>
        <div class="buy-total">
          <dt>
            <EntryLink name="total_cost">{sheet.entry("total_cost").label}</EntryLink>
          </dt>
          <dd>{sheet.entry("total_cost").reading?.text}</dd>
        </div>
        <Index each={spent()}>
          {(row) => (
            <div data-spent={row().line}>
              <dt>{words(row().line)}</dt>
              <dd>{money(row().amount)}</dd>
            </div>
          )}
        </Index>
      </dl>
    </section>
  )
}

/** What was bought and is on the list no more. */
function Gone() {
  const still = useRows("still_to_buy")
  const gone = () => still().filter((row) => row.finding === "on the list no more")
  return (
    <Show when={gone().length > 0}>
      <section aria-labelledby="buy-gone">
        <h2 id="buy-gone">{spoken.buyList.gone}</h2>
        <ul>
          <Index each={gone()}>
            {(row) => (
              <li>
                {lineName(row())}
                {spoken.colon}
                {amountOf(row().got, row().unit)}
              </li>
            )}
          </Index>
        </ul>
      </section>
    </Show>
  )
}
