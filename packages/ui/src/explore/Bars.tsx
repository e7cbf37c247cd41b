import { For } from "solid-js"
import { spoken } from "../text/spoken.ts"

/** One bar of a chart: what it stands for, its value as shown, and how long it is drawn. */
export interface Bar {
  readonly title: string
  readonly text: string
  readonly value: number
}

const WIDE = 400
const HIGH = 18

/** Horizontal bars from zero, the longest as wide as there is room. */
export function Bars(props: { readonly label: string; readonly bars: readonly Bar[] }) {
  const least = () => Math.min(0, ...props.bars.map(({ value }) => value))
  const most = () => Math.max(0, ...props.bars.map(({ value }) => value))
  const scale = () => (most() > least() ? WIDE / (most() - least()) : 0)
  return (
    <ul class="bars" aria-label={props.label}>
      <For each={props.bars}>
        {(bar) => (
          <li>
            <span class="bar-title">
              {bar.title}
              {spoken.colon}
              <strong>{bar.text}</strong>
            </span>
            <svg
              viewBox={`0 0 ${WIDE} ${HIGH}`}
              preserveAspectRatio="none"
              class="bar-drawn"
              aria-hidden="true"
            >
              <rect
                x={(Math.min(bar.value, 0) - least()) * scale()}
                y="1"
                width={Math.max(1, Math.abs(bar.value) * scale())}
                height={HIGH - 2}
              />
            </svg>
          </li>
        )}
      </For>
    </ul>
  )
}
