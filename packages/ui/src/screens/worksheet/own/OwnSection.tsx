import { type OwnEntry, ownName, type Problem } from "@pegbook/engine"
import { createEffect, createMemo, createSignal, For, on, Show } from "solid-js"
import { useSession, useSheet, useWalk } from "../../../bridge/context.ts"
import { EntryLink } from "../../../parts/EntryLink.tsx"
import { EntryList } from "../../../parts/EntryList.tsx"
import { ProblemList } from "../../../parts/ProblemList.tsx"
import { TitleForm } from "../../../parts/TitleForm.tsx"
import { kindWord } from "../../../text/entry-words.ts"
import { spoken } from "../../../text/spoken.ts"
import { Row } from "../Row.tsx"
import { OWN_SECTION } from "../SectionList.tsx"
import { OwnForm } from "./OwnForm.tsx"
import { UnfitList } from "./UnfitList.tsx"
import "./own.css"

/** Rows drawn at once; there may be ten thousand. */
const ON_A_PAGE = 50
/** Of those that lean on an entry, as many are named. */
const LEANING_NAMED = 12

/** The user's own entries, at the end of the worksheet. */
export default function OwnSection() {
  const sheet = useSheet()
  const session = useSession()
  const walk = useWalk()
  const [adding, setAdding] = createSignal(false)
  const [page, setPage] = createSignal(0)
  let addButton: HTMLButtonElement | undefined

  const fit = () => sheet.ownEntries().filter((entry) => !sheet.unfitEntries().has(entry))
  const byName = createMemo(() => new Map(fit().map((entry) => [ownName(entry), entry])))
  const names = createMemo(() => [...byName().keys()])
  const places = createMemo(() => new Map(names().map((name, place) => [name, place])))
  const lastPage = () => Math.max(0, Math.ceil(names().length / ON_A_PAGE) - 1)
  const start = () => Math.min(page(), lastPage()) * ON_A_PAGE
  const shown = () => names().slice(start(), start() + ON_A_PAGE)

  const show = (name: string) => {
    const place = places().get(name)
    if (place !== undefined) setPage(Math.floor(place / ON_A_PAGE))
  }
  createEffect(
    on(walk.at, (name) => {
      if (name !== undefined) show(name)
    }),
  )

  function added(label: string): void {
    setAdding(false)
    setPage(lastPage())
    session.say(spoken.own.added(label))
    addButton?.focus()
  }

  return (
    <section class="section own-section" aria-labelledby={`section-${OWN_SECTION}`}>
      <header class="section-head">
        <h2 id={`section-${OWN_SECTION}`} tabindex={-1}>
          {spoken.own.title}
        </h2>
        <p class="quiet">{spoken.own.says}</p>
      </header>
      <Show when={names().length > 0}>
        <ul class="row-list">
          <For each={shown()}>
            {(name) => (
              <Show when={byName().get(name)}>{(entry) => <OwnRow name={name} entry={entry()} />}</Show>
            )}
          </For>
        </ul>
        <Show when={names().length > ON_A_PAGE}>
          <p class="actions own-pages">
            <button
              type="button"
              class="small"
              disabled={start() === 0}
              onClick={() => setPage(start() / ON_A_PAGE - 1)}
            >
              {spoken.own.previousPage}
            </button>
            <span aria-live="polite">
              {spoken.own.page(start() + 1, start() + shown().length, names().length)}
            </span>
            <button
              type="button"
              class="small"
              disabled={start() / ON_A_PAGE >= lastPage()}
              onClick={() => setPage(start() / ON_A_PAGE + 1)}
            >
              {spoken.own.nextPage}
            </button>
          </p>
        </Show>
      </Show>
      <Show when={sheet.unfitEntries().size > 0}>
        <UnfitList />
      </Show>
      {/* While something is being added there is no second press that could throw it away. */}
      <Show
        when={adding()}
        fallback={
          <p class="actions own-add">
            <button ref={addButton} type="button" class="small main-action" onClick={() => setAdding(true)}>
              {spoken.own.add}
            </button>
          </p>
        }
      >
        <OwnForm
          done={added}
          cancel={() => {
            setAdding(false)
            addButton?.focus()
          }}
        />
      </Show>
    </section>
  )
}

/** One own entry: its row, or for a column the way to it; and what can be done with it. */
function OwnRow(props: { readonly name: string; readonly entry: OwnEntry }) {
  const sheet = useSheet()
  const session = useSession()
  const [doing, setDoing] = createSignal<"change" | "rename" | "remove">()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const leaning = () => sheet.leanedOnBy(props.name)
  const end = () => {
    setDoing(undefined)
    setProblems([])
  }

  function rename(to: string): void {
    const result = sheet.renameEntry(props.name, to)
    // Accepted: this row has made way for the one with the new name.
    if (!result.accepted) setProblems(result.problems)
  }

  function remove(evenIfUsed: boolean): void {
    const { label } = props.entry
    if (!evenIfUsed && leaning().length > 0) {
      setDoing("remove")
      return
    }
    const { accepted, problems: found } = sheet.removeEntry(props.name, evenIfUsed)
    if (accepted) session.sayDone(spoken.own.removed(label))
    else setProblems(found)
  }

  return (
    <>
      <Show
        when={props.entry.kind !== "column"}
        fallback={
          <li class="own-column">
            <EntryLink name={props.name}>{sheet.label(props.name)}</EntryLink>{" "}
            <span class="kind">{kindWord("column")}</span>
          </li>
        }
      >
        <Row name={props.name} />
      </Show>
      <li class="own-does" data-own={props.name}>
        <Show
          when={doing()}
          fallback={
            <p class="actions">
              <span class="tag tag-own">{spoken.own.tag}</span> <code class="quiet">{props.name}</code>
              <button
                type="button"
                class="plain"
                aria-label={spoken.own.changeSays(props.entry.label)}
                onClick={() => setDoing("change")}
              >
                {spoken.own.change}
              </button>
              <button
                type="button"
                class="plain"
                aria-label={spoken.own.renameSays(props.entry.label)}
                onClick={() => setDoing("rename")}
              >
                {spoken.own.rename}
              </button>
              <button
                type="button"
                class="plain"
                aria-label={spoken.own.removeSays(props.entry.label)}
                onClick={() => remove(false)}
              >
                {spoken.own.remove}
              </button>
            </p>
          }
        >
          <Show when={doing() === "change"}>
            <OwnForm
              entry={props.entry}
              done={(label) => {
                end()
                session.say(spoken.own.changed(label))
              }}
              cancel={end}
            />
          </Show>
          <Show when={doing() === "rename"}>
            <TitleForm
              label={spoken.own.newName}
              says={spoken.own.nameHint}
              suggestion={props.entry.name}
              answer={rename}
              cancel={end}
            />
          </Show>
          <Show when={doing() === "remove"}>
            <p>{spoken.own.leaning(leaning().length)}</p>
            <EntryList class="own-leaning" names={leaning().slice(0, LEANING_NAMED)} />
            <p class="actions">
              <button type="button" class="small" onClick={() => remove(true)}>
                {spoken.own.evenSo}
              </button>
              <button type="button" class="small main-action" onClick={end}>
                {spoken.own.keep}
              </button>
            </p>
          </Show>
        </Show>
        <div role="alert">
          <Show when={problems().length > 0}>
            <ProblemList problems={problems()} />
          </Show>
        </div>
      </li>
    </>
  )
}
