import { createMemo, For, Show } from "solid-js"
import { spoken } from "../../text/spoken.ts"
import type { Series } from "./explore-model.ts"
import { numbersOfLines } from "./line-numbers.ts"

const WIDE = 400
const HIGH = 220
/** Room for what is written around the lines. */
const LEFT = 14
const TOP = 26
const BOTTOM = 28
const SIZE = 4
/** Lines are told apart by how they are broken, not by colour. */
const DASHES = ["none", "7 4", "2 4", "10 3 2 3", "1 3", "14 5", "6 2 1 2 1 2", "3 2"]

/** About the width of a digit of the lines' numbers. */
const DIGIT = 7

const toPlace = (x: string, place: number): readonly [string, number] => [x, place]

/** Lines over values in even steps. A dot where every check passes, a cross where one fails. */
export function LineChart(props: { readonly says: string; readonly series: readonly Series[] }) {
  // Memos: every point asks for them, and a chart is drawn anew a few times a second while its rows come.
  const places = createMemo(
    () => new Map([...new Set(props.series.flatMap(({ points }) => points.map(({ x }) => x)))].map(toPlace)),
  )
  const ordered = createMemo(() => props.series.flatMap(({ points }) => points).toSorted((a, b) => a.y - b.y))
  const least = () => ordered()[0]
  const most = () => ordered().at(-1)
  const up = (y: number) => {
    const [low, high] = [least()?.y ?? 0, most()?.y ?? 0]
    const share = high > low ? (y - low) / (high - low) : 0.5
    return HIGH - BOTTOM - share * (HIGH - TOP - BOTTOM)
  }
  /** Of several lines each has a number at its beginning: broken lines that lie on one another are hard to tell. */
  const numbers = createMemo(() =>
    props.series.length > 1 ? numbersOfLines(props.series.map(({ points }) => up(points[0]?.y ?? 0))) : [],
  )
  const left = createMemo(() => {
    const longest = Math.max(0, ...numbers().map(({ says }) => says.length))
    return LEFT + (longest === 0 ? 0 : longest * DIGIT + SIZE)
  })
  const across = (x: string) =>
    left() + ((places().get(x) ?? 0) * (WIDE - LEFT - left())) / Math.max(1, places().size - 1)
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} role="img" aria-label={props.says}>
        <path
          class="chart-frame"
          d={`M${LEFT} ${up(most()?.y ?? 0)}H${WIDE - LEFT}M${LEFT} ${HIGH - BOTTOM}H${WIDE - LEFT}`}
        />
        <For each={props.series}>
          {(line, place) => (
            <>
              <polyline
                class="chart-line"
                stroke-dasharray={DASHES[place() % DASHES.length]}
                points={line.points.map(({ x, y }) => `${across(x)},${up(y)}`).join(" ")}
              />
              <For each={line.points}>
                {({ x, y, passes }) => (
                  <path
                    class={passes ? "chart-dot" : "chart-cross"}
                    d={
                      passes
                        ? `M${across(x) - SIZE} ${up(y)}a${SIZE} ${SIZE} 0 1 0 ${2 * SIZE} 0a${SIZE} ${SIZE} 0 1 0 ${-2 * SIZE} 0`
                        : `M${across(x) - SIZE} ${up(y) - SIZE}l${2 * SIZE} ${2 * SIZE}m0 ${-2 * SIZE}l${-2 * SIZE} ${2 * SIZE}`
                    }
                  />
                )}
              </For>
            </>
          )}
        </For>
        <For each={numbers()}>
          {({ at, says }) => (
            <text class="chart-number" x={left() - SIZE - 4} y={at + SIZE} text-anchor="end">
              {says}
            </text>
          )}
        </For>
        <text x={LEFT} y={16}>
          {most()?.text}
        </text>
        <Show when={least()?.text !== most()?.text}>
          <text x={LEFT} y={HIGH - BOTTOM - 6}>
            {least()?.text}
          </text>
        </Show>
        <text x={LEFT} y={HIGH - 8}>
          {[...places().keys()][0]}
        </text>
        <text x={WIDE - LEFT} y={HIGH - 8} text-anchor="end">
          {[...places().keys()].at(-1)}
        </text>
      </svg>
      <figcaption class="quiet">
        <span class="legend">● {spoken.explore.legendPasses}</span>{" "}
        <span class="legend">✕ {spoken.explore.legendFails}</span>
        <Show when={props.series.length > 1}>
          <For each={props.series}>
            {(line, place) => (
              <span class="legend">
                <svg viewBox="0 0 30 6" class="legend-line" aria-hidden="true">
                  <path class="chart-line" stroke-dasharray={DASHES[place() % DASHES.length]} d="M0 3H30" />
                </svg>{" "}
                <b>{place() + 1}</b> {line.title}
              </span>
            )}
          </For>
        </Show>
      </figcaption>
    </figure>
  )
}
