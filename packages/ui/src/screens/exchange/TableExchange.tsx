import { createSignal, Show, Suspense } from "solid-js"
import { useSession, useSheet } from "../../bridge/context.ts"
import { fetched } from "../../parts/fetched.tsx"
import { spoken } from "../../text/spoken.ts"

const BringIn = fetched(() => import("./BringIn.tsx"))

/** A table's ways out and in: as a CSV file, and for one that is entered, from CSV. */
export function TableExchange(props: { readonly name: string }) {
  const sheet = useSheet()
  const session = useSession()
  const [open, setOpen] = createSignal(false)
  let toggle: HTMLButtonElement | undefined
  const isEntered = () => sheet.entry(props.name).kind === "input"

  function close(): void {
    setOpen(false)
    toggle?.focus()
  }

  return (
    <>
      <p class="actions">
        <Show when={isEntered()}>
          <button
            type="button"
            class="small"
            ref={toggle}
            aria-expanded={open()}
            onClick={() => setOpen((was) => !was)}
          >
            {spoken.exchange.bringIn}
          </button>
        </Show>
        <button
          type="button"
          class="plain"
          onClick={() =>
            void import("./save.ts").then(
              ({ saveTable }) => saveTable(sheet, props.name),
              () => session.say(spoken.unfetched),
            )
          }
        >
          {spoken.exchange.saveCsv}
        </button>
      </p>
      <Show when={open()}>
        <Suspense fallback={<p class="quiet">{spoken.exchange.loading}</p>}>
          <BringIn name={props.name} close={close} />
        </Suspense>
      </Show>
    </>
  )
}
