import { glossary, nameOf } from "@pegbook/templates"
import { For } from "solid-js"
import { spoken } from "../../text/spoken.ts"

/** The words of the trade that the workbooks use, explained. */
export function Words() {
  return (
    <details class="start-words">
      <summary>{spoken.start.words(glossary().length)}</summary>
      <dl>
        <For each={glossary()}>
          {(term) => (
            <div>
              <dt>{nameOf(term)}</dt>
              <dd>{term.means}</dd>
            </div>
          )}
        </For>
      </dl>
    </details>
  )
}
