import { createSignal, For } from "solid-js"
import { useSession, useSheet } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"
import { Book } from "./Book.tsx"
import { PAPERS, type Paper, usualPaper } from "./to-scale.ts"

/** The paper last chosen. */
const [chosenPaper, choosePaper] = createSignal<Paper>()

/** The whole workbook as a book for paper, with a choice of the paper, and the way to the printer. */
export default function BuildBook() {
  const session = useSession()
  const sheet = useSheet()
  const paper = (): Paper => chosenPaper() ?? usualPaper(sheet.unitSystem(), session.reads)
  return (
    <div class="book" data-paper={paper()}>
      <header class="book-controls">
        <p>{spoken.buildBook.says}</p>
        <div class="actions">
          <fieldset class="book-paper">
            <legend>{spoken.buildBook.paper}</legend>
            <For each={Object.keys(PAPERS) as readonly Paper[]}>
              {(one) => (
                <label>
                  <input
                    type="radio"
                    name="paper"
                    checked={paper() === one}
                    onChange={() => choosePaper(one)}
                  />{" "}
                  {spoken.buildBook.papers[one]}
                </label>
              )}
            </For>
          </fieldset>
          <button type="button" class="small main-action" onClick={() => window.print()}>
            {spoken.buildBook.print}
          </button>
        </div>
        <p class="quiet">{spoken.buildBook.fullSize}</p>
      </header>
      <Book title={session.title()} paper={paper()} />
    </div>
  )
}
