import { For } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { en } from "../../text/en.ts"

/** The sections in the order of the work, each a jump. */
export function SectionList(props: { readonly onJump?: () => void }) {
  const sheet = useSheet()
  return (
    <ol class="section-list">
      <For each={sheet.definition.sections}>
        {(section) => (
          <li>
            <a
              href={`#section-${section.id}`}
              onClick={(event) => {
                // The address belongs to the walk; a jump only moves the page.
                event.preventDefault()
                props.onJump?.()
                const title = document.getElementById(`section-${section.id}`)
                title?.scrollIntoView({ block: "start" })
                title?.focus({ preventScroll: true })
              }}
            >
              {section.title}
              <span class="quiet"> {en.entries(section.entries.length)}</span>
            </a>
          </li>
        )}
      </For>
    </ol>
  )
}
