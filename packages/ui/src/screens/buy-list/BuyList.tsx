import { createMemo, createSignal, For, Index, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { Field } from "../../parts/Field.tsx"
import { HowGood } from "../../parts/HowGood.tsx"
import { en } from "../../text/en.ts"
import { TableExchange } from "../exchange/TableExchange.tsx"
import { rowsOf, type TableRow } from "../set-out/set-out-model.ts"
import { nextStage } from "../steps/steps-model.ts"
import {
  GROUPINGS,
  type Grouping,
  groupedBy,
  lengthTyped,
  lineKey,
  shortFor,
  withBought,
  withNote,
} from "./buy-list-model.ts"
import "./buy-list.css"

/** Rows of a table as texts; none where the workbook has no such table. */
function useRows(table: string): () => readonly TableRow[] {
  const sheet = useSheet()
  return createMemo(() => {
    if (!sheet.has(table)) return []
    const { columns, rowCount } = sheet.table(table)
    return rowsOf(columns, rowCount)
  })
}

/** What to buy, to be ticked off in the shop; whom to buy it from; and what it comes to. */
export default function BuyList() {
  const sheet = useSheet()
  return (
    <div class="buy">
      <header>
        <h1>{en.buyList.title}</h1>
        <p class="quiet">{en.buyList.says}</p>
      </header>
      <Show when={sheet.has("still_to_buy")} fallback={<p>{en.buyList.none}</p>}>
        <Next />
        <Lines />
        <Plans />
        <Sums />
        <Gone />
        <section class="buy-prices" aria-labelledby="buy-prices">
          <h2 id="buy-prices">{en.buyList.prices}</h2>
          <p class="quiet">{en.buyList.pricesSay}</p>
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
            <h2 id="buy-next">{en.buyList.next(stage().title)}</h2>
            <Show when={short().length > 0} fallback={<p role="status">{en.buyList.nextReady}</p>}>
              <ul>
                <Index each={short()}>
                  {(row) => (
                    <li>
                      {name(row())}: <strong>{en.buyList.amount(row().short ?? "", row().unit ?? "")}</strong>
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

function name(row: TableRow): string {
  return [row.item, lengthTyped(row.length)].filter((text) => text !== "").join(", ")
}

function Lines() {
  const sheet = useSheet()
  const rows = useRows("buy_list")
  const still = useRows("still_to_buy")
  const [grouping, setGrouping] = createSignal<Grouping>("group")
  const groups = createMemo(() =>
    groupedBy(rows(), grouping(), grouping() === "stage" ? sheet.stages().map(({ title }) => title) : []),
  )
  const states = createMemo(
    () => new Map(still().map((row) => [lineKey(row.item ?? "", row.length ?? ""), row])),
  )
  const blank = () => (grouping() === "supplier" ? en.buyList.nobody : en.buyList.elsewhere)
  return (
    <section aria-labelledby="buy-lines">
      <h2 id="buy-lines" class="hidden-text">
        {en.buyList.lines}
      </h2>
      <fieldset class="choices buy-by">
        <legend>{en.buyList.by}</legend>
        <For each={GROUPINGS}>
          {(one) => (
            <label class="choice">
              <input
                type="radio"
                name="buy-by"
                checked={grouping() === one}
                onChange={() => setGrouping(one)}
              />
              <span>{en.buyList.groupings[one]}</span>
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

function Line(props: { readonly row: TableRow; readonly state: TableRow | undefined }) {
  const sheet = useSheet()
  const [open, setOpen] = createSignal(false)
  const finding = () => props.state?.finding ?? ""
  const isBought = () => finding() === "bought" || finding() === "more than is needed"
  const note = () => {
    const key = lineKey(props.row.item ?? "", props.row.length ?? "")
    return sheet.typedRows("purchases").find((one) => lineKey(one.item ?? "", one.length ?? "") === key)
  }
  const isPriced = () => props.row.price_unit !== "no price"
  const price = () => (isPriced() ? (props.row.cost ?? "") : en.buyList.unpriced)
  return (
    <li class="buy-line" classList={{ "buy-bought": isBought() }} data-line={name(props.row)}>
      <label class="buy-tick">
        <input
          type="checkbox"
          checked={isBought()}
          aria-label={en.buyList.tick(name(props.row))}
          onChange={(event) =>
            sheet.editTable("purchases", [
              ...withBought(sheet.typedRows("purchases"), props.row, event.currentTarget.checked),
            ])
          }
        />
        <span class="buy-take">{en.buyList.amount(props.row.take ?? "", props.row.take_unit ?? "")}</span>
        <span class="buy-name">{name(props.row)}</span>
      </label>
      <button
        type="button"
        class="buy-more"
        aria-expanded={open()}
        aria-label={en.buyList.more(price(), name(props.row))}
        onClick={() => setOpen((was) => !was)}
      >
        {price()}
      </button>
      <Show when={finding() === "not enough" || finding() === "more than is needed"}>
        <p class="buy-state">
          {finding() === "not enough"
            ? en.buyList.short(props.state?.short ?? "", props.state?.unit ?? "")
            : en.buyList.back(props.state?.returns ?? "", props.state?.unit ?? "")}
        </p>
      </Show>
      <Show when={isPriced() && props.row.finding !== "in order"}>
        <p class="buy-state">{props.row.finding}</p>
      </Show>
      <Show when={open()}>
        <dl class="buy-facts">
          <Fact says={en.buyList.facts.supplier} text={props.row.supplier} />
          <Fact
            says={en.buyList.facts.price}
            text={isPriced() ? en.buyList.priceOf(props.row.price ?? "", props.row.price_unit ?? "") : ""}
          />
          <Fact
            says={en.buyList.facts.need}
            text={en.buyList.amount(props.row.quantity ?? "", props.row.unit ?? "")}
          />
          <Fact
            says={en.buyList.facts.left}
            text={props.row.left === "0" ? "" : en.buyList.amount(props.row.left ?? "", props.row.unit ?? "")}
          />
          <Fact says={en.buyList.facts.stages} text={props.row.stages} />
          <Fact says={en.buyList.facts.lead} text={props.row.lead === "0" ? "" : props.row.lead} />
          <Fact says={en.buyList.facts.orderBy} text={props.row.order_by} />
          <Fact says={en.buyList.facts.assumed} text={props.row.assumed} />
        </dl>
        <Show when={note()} fallback={<p class="quiet">{en.buyList.tickFirst}</p>}>
          {(kept) => (
            <div class="buy-notes">
              <For each={["bought", "paid", "used"] as const}>
                {(column) => (
                  <div>
                    <span class="block-caption">{en.buyList.notes[column]}</span>
                    <Field
                      label={`${en.buyList.notes[column]}: ${name(props.row)}`}
                      text={kept()[column] ?? ""}
                      measure={column === "bought" ? "ratio" : "text"}
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
      <h2 id="buy-plans">{en.buyList.plans}</h2>
      <Show when={rows().length > 0} fallback={<p class="quiet">{en.buyList.noPlans}</p>}>
        <HowGood view={sheet.entry("supplier_choice")} proven={en.buyList.provenSays} />
        <fieldset class="buy-choices">
          <legend class="quiet">{en.buyList.plansSay}</legend>
          <Index each={choices()}>
            {(row) => (
              <label class="buy-plan" data-plan={row().plan}>
                <input
                  type="radio"
                  name="buy-from"
                  checked={row().chosen === "1"}
                  onChange={() => choose(row().from ?? "")}
                />
                <span class="buy-plan-name">
                  <strong>{row().plan}</strong>
                  <span class="quiet">
                    {row().finding}; {en.buyList.orders(row().orders ?? "")}
                  </span>
                  <Show when={row().saving !== "0.00"}>
                    <span class="buy-saving">{en.buyList.saving(row().saving ?? "")}</span>
                  </Show>
                </span>
                <span class="buy-plan-sum">{row().total}</span>
              </label>
            )}
          </Index>
        </fieldset>
        <Show when={trip()}>
          {(row) => (
            <p data-plan={row().plan}>
              {en.buyList.trip(row().finding ?? "", row().total ?? "", row().saving ?? "")}
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
      <h2 id="buy-sums">{en.buyList.sums}</h2>
      <dl>
        <Index each={orders()}>
          {(row) => (
            <div data-order={row().supplier}>
              <dt>
                {en.buyList.invoice(row().supplier === "" ? en.buyList.nobody : (row().supplier ?? ""))}
              </dt>
              <dd>{row().total}</dd>
            </div>
          )}
        </Index>
        <Index each={costs()}>
          {(row) => (
            <div data-cost={row().line}>
              <dt>{en.buyList.costLine(row().line ?? "", row().lines ?? "")}</dt>
              <dd>{row().line === "without a price" ? "" : row().amount}</dd>
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
              <dt>{row().line}</dt>
              <dd>{row().amount}</dd>
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
        <h2 id="buy-gone">{en.buyList.gone}</h2>
        <ul>
          <Index each={gone()}>
            {(row) => (
              <li>
                {name(row())}: {en.buyList.amount(row().got ?? "", row().unit ?? "")}
              </li>
            )}
          </Index>
        </ul>
      </section>
    </Show>
  )
}
