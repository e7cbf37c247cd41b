import { createEffect, createMemo, createSignal, For, on, Show } from "solid-js"
import { useSheet, useWalk } from "../bridge/context.ts"
import { movedLines } from "../screens/worksheet/moved-model.ts"
import { spoken } from "../text/spoken.ts"
import { EntryLink } from "./EntryLink.tsx"

/** Cells of one column shown in the list; the rest are in its table. */
const CELLS_LISTED = 4

/** How many numbers the last change moved, and the way to each of them. Said aloud when it changes. */
export function MovedBar() {
  const sheet = useSheet()
  const walk = useWalk()
  const [listed, setListed] = createSignal(false)
  const [place, setPlace] = createSignal<number>()
  const lines = createMemo(() => movedLines(sheet.moved(), sheet.label))
  const count = () => sheet.moved().length

  createEffect(
    on(sheet.moved, () => {
      setListed(false)
      setPlace(undefined)
    }),
  )

  function step(by: 1 | -1): void {
    const before = place()
    const first = by === 1 ? 0 : lines().length - 1
    const next = before === undefined ? first : (before + by + lines().length) % lines().length
    const line = lines()[next]
    if (line === undefined) return
    setPlace(next)
    walk.show("worksheet")
    walk.pass(line.name)
  }

  const at = () => {
    const index = place()
    const line = index === undefined ? undefined : lines()[index]
    return index === undefined || line === undefined ? undefined : { number: index + 1, line }
  }

  return (
    <div class="moved-bar" classList={{ "moved-none": count() === 0 }} data-moved-count={count()}>
      <p class="moved-says" role="status">
        {/* Keyed, so that the same count after another edit is said again. */}
        <Show when={count() > 0 && sheet.moved()} keyed>
          {(moved) => <strong>{spoken.moved.count(moved.length)}</strong>}
        </Show>
        <Show when={at()}>
          {(here) => (
            <>
              {" "}
              <span class="moved-at">{spoken.moved.at(here().number, lines().length)}</span>
              <span class="moved-where">
                {spoken.colon}
                {here().line.label}, {here().line.cells[0]?.now}
              </span>
            </>
          )}
        </Show>
      </p>
      <Show when={count() > 0}>
        <div class="moved-actions">
          <button
            type="button"
            class="small"
            aria-expanded={listed()}
            onClick={() => setListed((was) => !was)}
          >
            {listed() ? spoken.moved.hideList : spoken.moved.list}
          </button>
          <button
            type="button"
            class="small moved-previous"
            aria-label={spoken.moved.previousSays}
            onClick={() => step(-1)}
          >
            {spoken.moved.previous}
          </button>
          <button type="button" class="small" aria-label={spoken.moved.nextSays} onClick={() => step(1)}>
            {spoken.moved.next}
          </button>
        </div>
      </Show>
      <Show when={listed()}>
        <section class="moved-list" aria-label={spoken.moved.title}>
          <ul>
            <For each={lines()}>
              {(line) => (
                <li>
                  <EntryLink name={line.name} row={line.cells[0]?.row} class="moved-line">
                    <span>{line.label}</span>
                    <span class="moved-texts">
                      <For each={line.cells.slice(0, CELLS_LISTED)}>
                        {(cell) => (
                          <span class="moved-pair">
                            <Show when={cell.row}>
                              {(row) => <span class="quiet">{spoken.moved.row(row())} </span>}
                            </Show>
                            <span class="hidden-text">{spoken.moved.was} </span>
                            <s>{cell.old}</s> <span aria-hidden="true">→</span>{" "}
                            <span class="hidden-text">{spoken.moved.nowSays} </span>
                            <b>{cell.now}</b>
                          </span>
                        )}
                      </For>
                      <Show when={line.cells.length > CELLS_LISTED}>
                        <span class="quiet">{spoken.row.moreSources(line.cells.length - CELLS_LISTED)}</span>
                      </Show>
                    </span>
                  </EntryLink>
                </li>
              )}
            </For>
          </ul>
        </section>
      </Show>
    </div>
  )
}
