import { nameOf, type Term, withTerms } from "@pegbook/templates"
import { createSignal, For, Show } from "solid-js"
import { isServer } from "solid-js/web"
import "./explained.css"

/** A text whose words of the trade are explained: on hover, and below the text at a press. */
export function Explained(props: { readonly text: string }) {
  const [asked, setAsked] = createSignal<Term>()
  return (
    <>
      <For each={withTerms(props.text)}>
        {(piece) =>
          typeof piece === "string" ? (
            piece
          ) : isServer ? (
            <abbr title={piece.term.means}>{piece.shown}</abbr>
          ) : (
            <button
              type="button"
              class="term"
              title={piece.term.means}
              aria-expanded={asked() === piece.term}
              onClick={() => setAsked((was) => (was === piece.term ? undefined : piece.term))}
            >
              {piece.shown}
            </button>
          )
        }
      </For>
      <Show when={asked()}>
        {(term) => (
          <span class="term-means">
            <b>{nameOf(term())}</b> {term().means}
          </span>
        )}
      </Show>
    </>
  )
}
