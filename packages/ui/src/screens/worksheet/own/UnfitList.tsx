import { inWords, ownName } from "@pegbook/engine"
import { For, Show } from "solid-js"
import { useSession, useSheet } from "../../../bridge/context.ts"
import { spoken } from "../../../text/spoken.ts"

/** Of those that take no part, as many are shown. */
const SHOWN = 50

/** Own entries of the saved workbook that take no part in this one, why, and what can be done about it. */
export function UnfitList() {
  const sheet = useSheet()
  const session = useSession()
  const unfit = () => [...sheet.unfitEntries()].map(([entry, problem]) => ({ entry, problem }))
  /** A name goes with all that have it, so one that another entry needs stays. */
  const mayGo = (name: string) => sheet.ownEntries().filter((entry) => ownName(entry) === name).length === 1

  function remove(name: string, label: string): void {
    if (sheet.removeEntry(name, true).accepted) session.sayDone(spoken.own.removed(label))
  }

  return (
    <section class="own-unfit" aria-labelledby="own-unfit">
      <h3 id="own-unfit">{spoken.own.unfit(unfit().length)}</h3>
      <p class="quiet">{spoken.own.unfitSays}</p>
      <ul class="problems">
        <For each={unfit().slice(0, SHOWN)}>
          {({ entry, problem }) => (
            <li>
              <strong>{entry.label}</strong> <code class="quiet">{ownName(entry)}</code>
              <p>{inWords(problem, sheet.unitSystem()).says}</p>
              <Show when={mayGo(ownName(entry))}>
                <button
                  type="button"
                  class="small"
                  aria-label={spoken.own.removeSays(entry.label)}
                  onClick={() => remove(ownName(entry), entry.label)}
                >
                  {spoken.own.remove}
                </button>
              </Show>
            </li>
          )}
        </For>
      </ul>
    </section>
  )
}
