import { For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"

/** Which checks do not pass with a value that was tried, each a way to it. */
export function Outcome(props: { readonly failing: readonly string[]; readonly isRefused?: boolean }) {
  const sheet = useSheet()
  return (
    <Show when={!props.isRefused} fallback={spoken.explore.refusedRow}>
      <Show when={props.failing.length > 0} fallback={<span>{spoken.explore.passes}</span>}>
        <details>
          <summary>{spoken.explore.fails(props.failing.length)}</summary>
          <ul>
            <For each={props.failing}>
              {(name) => (
                <li>
                  <EntryLink name={name}>{sheet.label(name)}</EntryLink>
                </li>
              )}
            </For>
          </ul>
        </details>
      </Show>
    </Show>
  )
}
