import { Show } from "solid-js"
import { EntryList } from "../../parts/EntryList.tsx"
import { spoken } from "../../text/spoken.ts"

/** Which checks do not pass with a value that was tried, each a way to it. */
export function Outcome(props: { readonly failing: readonly string[]; readonly isRefused?: boolean }) {
  return (
    <Show when={!props.isRefused} fallback={spoken.explore.refusedRow}>
      <Show when={props.failing.length > 0} fallback={<span>{spoken.explore.passes}</span>}>
        <details>
          <summary>{spoken.explore.fails(props.failing.length)}</summary>
          <EntryList names={props.failing} />
        </details>
      </Show>
    </Show>
  )
}
