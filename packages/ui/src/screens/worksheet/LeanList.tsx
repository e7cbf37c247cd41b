import { createSignal, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { spoken } from "../../text/spoken.ts"
import { rowModel } from "./row-model.ts"

const FIRST = 8

/** Entries to walk to, with what they say now. A long list shows its first until asked for all. */
export function LeanList(props: {
  readonly names: readonly string[]
  readonly from: string
  /** For a column: the row it is read in. */
  readonly row?: number | undefined
  readonly none: string
}) {
  const sheet = useSheet()
  const [all, setAll] = createSignal(false)
  const shown = () => (all() ? props.names : props.names.slice(0, FIRST))
  return (
    <Show when={props.names.length > 0} fallback={<p class="quiet">{props.none}</p>}>
      <ul class="lean-list">
        <For each={shown()}>
          {(name) => {
            const view = () => sheet.entry(name)
            const value = () => {
              if (view().shape !== "column") return view().shape === "one" ? rowModel(view()).value : ""
              const inTable = view().table === sheet.entry(props.from).table
              return props.row !== undefined && inTable ? (view().readings?.[props.row - 1]?.text ?? "") : ""
            }
            return (
              <li>
                <EntryLink name={name} from={props.from} row={props.row} class="lean">
                  <span>{sheet.label(name)}</span>
                  <Show when={value()}>
                    <span class="lean-value">{value()}</span>
                  </Show>
                </EntryLink>
              </li>
            )
          }}
        </For>
      </ul>
      <Show when={props.names.length > shown().length}>
        <button type="button" class="plain" onClick={() => setAll(true)}>
          {spoken.detail.showAll(props.names.length)}
        </button>
      </Show>
    </Show>
  )
}
