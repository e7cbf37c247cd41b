import { For, Show } from "solid-js"
import { spoken } from "../../text/spoken.ts"
import type { DrawnBoard } from "./cut-list-model.ts"

/** The drawing's own units: it is stretched to the width that there is. */
const WIDTH = 1000
const HEIGHT = 40

/** A board from end to end: its pieces in the order of the cuts, and what is left. */
export function Board(props: { readonly board: DrawnBoard }) {
  const board = () => props.board
  const name = (at: number) => {
    const piece = board().pieces[at]
    return piece === undefined ? "" : `${spoken.cutList.piece(piece.part, piece.mark)}, ${piece.length}`
  }
  const left = () => {
    const { left } = board()
    return left === undefined ? spoken.cutList.nothingLeft : spoken.cutList.left(left)
  }
  const said = () =>
    spoken.cutList.drawn(
      board().number,
      board().length,
      board()
        .pieces.map((_, at) => name(at))
        .join("; "),
      left(),
    )
  return (
    <li data-board={board().number}>
      <p class="cut-board-name">
        <strong>{spoken.cutList.board(board().number)}</strong> <span class="quiet">{left()}</span>
      </p>
      <div class="cut-bar" style={{ width: `${board().share * 100}%` }}>
        <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" role="img" aria-label={said()}>
          <For each={board().pieces}>
            {({ from, width }) => (
              <rect class="cut-piece" x={from * WIDTH} y={0} width={width * WIDTH} height={HEIGHT} />
            )}
          </For>
        </svg>
        <For each={board().pieces}>
          {({ from, width }, at) => (
            <span
              class="cut-number"
              aria-hidden="true"
              style={{ left: `${from * 100}%`, width: `${width * 100}%` }}
            >
              {at() + 1}
            </span>
          )}
        </For>
      </div>
      <ol class="cut-pieces">
        <For each={board().pieces}>
          {({ part, mark, length }) => (
            <li>
              {spoken.cutList.piece(part, mark)} <strong>{length}</strong>
            </li>
          )}
        </For>
      </ol>
      <Show when={board().own}>
        <p class="quiet">{spoken.cutList.own}</p>
      </Show>
    </li>
  )
}
