import { For } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"

/** What the engine calls the section of the user's own entries. */
export const OWN_SECTION = "own"

/** The sections in the order of the work, each a jump. */
export function SectionList(props: { readonly onJump?: () => void }) {
  const sheet = useSheet()
  const ofTemplate = sheet.definition.sections.map(({ id, title, entries }) => ({
    id,
    title,
    count: () => entries.length,
  }))
  const own = { id: OWN_SECTION, title: spoken.own.title, count: () => sheet.ownEntries().length }
  const places = () => [...ofTemplate, own]
  return (
    <ol class="section-list">
      <For each={places()}>
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
              <span class="quiet"> {spoken.entries(section.count())}</span>
            </a>
          </li>
        )}
      </For>
    </ol>
  )
}
