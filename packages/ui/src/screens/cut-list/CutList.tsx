import { createMemo, For, type JSX, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { HowGood, Verdict } from "../../parts/HowGood.tsx"
import { spoken } from "../../text/spoken.ts"
import { rowsOf } from "../set-out/set-out-model.ts"
import { Board } from "./Board.tsx"
import { boardGroups, offcutsOf } from "./cut-list-model.ts"
import "./cut-list.css"

const PLAN = "cut_plan"

/** What to cut from which board, how good the plan is, and what is left. */
export default function CutList() {
  const sheet = useSheet()
  return (
    <div class="cut-list">
      <header>
        <h1>{spoken.cutList.title}</h1>
        <p class="quiet">{spoken.cutList.says}</p>
      </header>
      <Show when={sheet.has(PLAN)} fallback={<p>{spoken.cutList.none}</p>}>
        <Plan />
      </Show>
    </div>
  )
}

function Plan() {
  const sheet = useSheet()
  const view = () => sheet.entry(PLAN)
  const column = (name: string) => sheet.entry(`${PLAN}.${name}`).readings ?? []
  const columns = createMemo(() => ({
    board: column("board"),
    size: column("size"),
    stock: column("stock"),
    own: column("own"),
    part: column("part"),
    mark: column("mark"),
    length: column("length"),
    left: column("left"),
  }))
  const kerf = () => Number(sheet.entry("saw_kerf").reading?.value ?? 0)
  const groups = createMemo(() => boardGroups(columns(), kerf()))
  const offcuts = createMemo(() => offcutsOf(columns()))
  return (
    <>
      <HowGood view={view()} proven={spoken.cutList.provenSays} />
      <Said title={spoken.cutList.unmet} sentences={view().report?.unmet ?? []} />
      <Said title={spoken.cutList.advice} sentences={view().report?.advice ?? []} />
      <p>
        <EntryLink name={PLAN}>{spoken.cutList.table}</EntryLink>
      </p>
      <For each={view().cautions}>{(caution) => <p class="cut-list-caution">{caution}</p>}</For>
      <Show when={groups().length > 0} fallback={<p>{spoken.cutList.empty}</p>}>
        <p class="quiet">{spoken.cutList.key}</p>
      </Show>
      <For each={groups()}>
        {(group) => (
          <Part title={spoken.cutList.boards(group.size)}>
            <For each={group.lengths}>
              {({ length, own, boards }) => (
                <>
                  <h3>
                    {own
                      ? spoken.cutList.ownLength(boards.length, length)
                      : spoken.cutList.ofLength(boards.length, length)}
                  </h3>
                  <ul class="cut-boards" data-boards={`${group.size} ${length}`}>
                    <For each={boards}>{(board) => <Board board={board} />}</For>
                  </ul>
                </>
              )}
            </For>
          </Part>
        )}
      </For>
      <Part title={spoken.cutList.leftOver}>
        <Show when={offcuts().length > 0} fallback={<p>{spoken.cutList.leftOverNone}</p>}>
          <p class="quiet">{spoken.cutList.leftOverSays}</p>
          <ul class="cut-offcuts" data-offcuts>
            <For each={offcuts()}>
              {({ size, length, count }) => (
                <li>
                  <strong>{spoken.cutList.offcut(count, length)}</strong> <span class="quiet">{size}</span>
                </li>
              )}
            </For>
          </ul>
        </Show>
      </Part>
      <Part title={spoken.cutList.own}>
        <p>
          <EntryLink name="offcuts_owned">{spoken.cutList.ownSays}</EntryLink>
        </p>
      </Part>
      <Joints />
      <Others />
    </>
  )
}

/** Where pieces of one line meet, table by table. */
function Joints() {
  const sheet = useSheet()
  const tables = () =>
    sheet.names().filter((name) => /^[a-z_]+_joints$/.test(name) && sheet.entry(name).shape === "table")
  const filled = () => tables().filter((name) => sheet.table(name).rowCount > 0)
  return (
    <Part title={spoken.cutList.joints}>
      <Show when={filled().length > 0} fallback={<p>{spoken.cutList.jointsNone}</p>}>
        <p class="quiet">{spoken.cutList.jointsSay}</p>
        <For each={filled()}>{(name) => <JointTable name={name} />}</For>
      </Show>
    </Part>
  )
}

function JointTable(props: { readonly name: string }) {
  const sheet = useSheet()
  const columns = () => sheet.table(props.name).columns.map(({ name }) => sheet.entry(name))
  const rows = createMemo(() => rowsOf(columns(), sheet.table(props.name).rowCount))
  const bare = (name: string) => name.slice(name.indexOf(".") + 1)
  return (
    <>
      <h3>
        <EntryLink name={props.name}>{sheet.entry(props.name).label}</EntryLink>
      </h3>
      <Verdict view={sheet.entry(props.name)} proven={spoken.cutList.provenSays} />
      <ul class="cut-joints" data-joints={props.name}>
        <For each={rows()}>
          {(row) => (
            <li>
              <For each={columns()}>
                {({ name, label }) => (
                  <span>
                    <span class="quiet">{label}</span> {row[bare(name)] ?? ""}
                  </span>
                )}
              </For>
            </li>
          )}
        </For>
      </ul>
    </>
  )
}

/** What else a search found, with how good it is: sheets, and lines of several pieces. */
function Others() {
  const sheet = useSheet()
  const tables = () =>
    sheet.names().filter((name) => {
      if (name === PLAN || name.includes(".") || name.endsWith("_joints")) return false
      const { kind, shape, reached } = sheet.entry(name)
      return kind === "solved" && shape === "table" && reached !== undefined
    })
  return (
    <Show when={tables().length > 0}>
      <Part title={spoken.cutList.others}>
        <For each={tables()}>
          {(name) => (
            <>
              <h3>
                <EntryLink name={name}>{sheet.entry(name).label}</EntryLink>
              </h3>
              <Verdict view={sheet.entry(name)} proven={spoken.cutList.provenSays} />
            </>
          )}
        </For>
      </Part>
    </Show>
  )
}

function Said(props: { readonly title: string; readonly sentences: readonly string[] }) {
  return (
    <Show when={props.sentences.length > 0}>
      <Part title={props.title}>
        <ul class="cut-said">
          <For each={props.sentences}>{(sentence) => <li>{sentence}</li>}</For>
        </ul>
      </Part>
    </Show>
  )
}

function Part(props: { readonly title: string; readonly children: JSX.Element }) {
  return (
    <section class="cut-list-part">
      <h2>{props.title}</h2>
      {props.children}
    </section>
  )
}
