import { For, Show } from "solid-js"
import { spoken } from "../../text/spoken.ts"

/** A number that is written in a drawing, and what it stands for. */
export interface KeyLine {
  readonly text: string
  readonly title: string
}

/** What the numbers in a drawing stand for; nothing where names stand in it themselves. */
export function Key(props: { readonly lines: readonly KeyLine[] }) {
  return (
    <Show when={props.lines.length > 0}>
      <ul class="drawing-key" aria-label={spoken.drawings.key}>
        <For each={props.lines}>
          {({ text, title }) => (
            <li>
              <strong>{text}</strong> {title}
            </li>
          )}
        </For>
      </ul>
    </Show>
  )
}
