import { inLanguage, languageInForce, type Source } from "@pegbook/engine"
import { For, Show } from "solid-js"
import { sourceKindWord } from "../text/entry-words.ts"
import { spoken } from "../text/spoken.ts"

/** All that is known of where a number comes from. */
export function SourceList(props: { readonly sources: readonly Source[] }) {
  return (
    <ul class="sources">
      <For each={props.sources}>
        {(source) => (
          <li>
            <span class="tag">{sourceKindWord(source.kind)}</span>{" "}
            <Show when={source.origin === "memory" && source.kind !== "memory"}>
              <span class="tag tag-memory">{languageInForce().entries.sourceKinds.memory}</span>{" "}
            </Show>
            <span>
              {[
                inLanguage(source.title),
                source.edition === undefined ? "" : spoken.detail.edition(source.edition),
                source.place ?? "",
              ]
                .filter((text) => text !== "")
                .join(", ")}
            </span>
            <Show when={source.note}>{(note) => <p class="quiet">{note()}</p>}</Show>
          </li>
        )}
      </For>
    </ul>
  )
}
