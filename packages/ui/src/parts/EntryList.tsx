import { For } from "solid-js"
import { useSheet } from "../bridge/context.ts"
import { EntryLink } from "./EntryLink.tsx"

/** Entries by their labels, each a way to it. */
export function EntryList(props: { readonly names: readonly string[]; readonly class?: string }) {
  const sheet = useSheet()
  return (
    <ul class={props.class}>
      <For each={props.names}>
        {(name) => (
          <li>
            <EntryLink name={name}>{sheet.label(name)}</EntryLink>
          </li>
        )}
      </For>
    </ul>
  )
}
