import { inWords } from "@pegbook/engine"
import { offer } from "@pegbook/templates"
import { createSignal, For, Show } from "solid-js"
import { useSession, useWalk } from "../../bridge/context.ts"
import { OpenFileButton } from "../../parts/FileButtons.tsx"
import { TitleForm } from "../../parts/TitleForm.tsx"
import type { Shelved } from "../../storage/kept-workbook.ts"
import { printMoment } from "../../text/dates.ts"
import { spoken } from "../../text/spoken.ts"

/** The workbooks kept in this browser, last changed first. */
export function WorkbookList() {
  const session = useSession()
  return (
    <section class="workbooks" aria-labelledby="workbooks-title">
      <h2 id="workbooks-title" tabindex={-1}>
        {spoken.workbooks.title}
      </h2>
      <p class="actions">
        <OpenFileButton class="small" />
      </p>
      <Show when={session.workbooks().length > 0} fallback={<p class="quiet">{spoken.workbooks.none}</p>}>
        <p class="quiet">{spoken.workbooks.where}</p>
        <ul aria-labelledby="workbooks-title">
          {/* By id, so that a form that is open stays open while others are saved. */}
          <For each={session.workbooks().map(({ id }) => id)}>
            {(id) => (
              <Show when={session.workbooks().find((one) => one.id === id)}>
                {(workbook) => <Line workbook={workbook()} />}
              </Show>
            )}
          </For>
        </ul>
      </Show>
    </section>
  )
}

function Line(props: { readonly workbook: Shelved }) {
  const session = useSession()
  const walk = useWalk()
  const [renaming, setRenaming] = createSignal(false)
  let renameButton: HTMLButtonElement | undefined
  const title = () => session.titleOf(props.workbook)
  const isHere = () => props.workbook.id === session.current()
  const readable = () => "document" in props.workbook
  const kind = () => {
    const { workbook } = props
    return "document" in workbook ? offer(workbook.document.template)?.title : undefined
  }

  async function open(): Promise<void> {
    if (await session.open(props.workbook.id)) walk.show("worksheet")
  }

  function closeForm(): void {
    setRenaming(false)
    renameButton?.focus()
  }

  return (
    <li class="workbook" aria-label={title()} data-here={isHere()}>
      <h3>
        {title()}{" "}
        <Show when={isHere()}>
          <span class="tag tag-own">{spoken.workbooks.here}</span>
        </Show>
      </h3>
      <p class="quiet">
        <Show when={kind() !== title() && kind()}>{(other) => <>{spoken.workbooks.kind(other())} · </>}</Show>
        <Changed moment={props.workbook.changed} />
      </p>
      <Show when={"problem" in props.workbook && props.workbook.problem}>
        {(problem) => (
          <p class="workbook-unreadable">
            {spoken.workbooks.unreadable(inWords(problem(), session.unitSystem()).says)}
          </p>
        )}
      </Show>
      <Show when={renaming()}>
        <TitleForm
          label={spoken.workbooks.newTitle}
          suggestion={title()}
          answer={(answered) => {
            closeForm()
            void session.rename(props.workbook.id, answered)
          }}
          cancel={closeForm}
        />
      </Show>
      <p class="actions" hidden={renaming()}>
        <Show when={readable()}>
          <button
            type="button"
            class="small"
            aria-label={isHere() ? spoken.workbooks.back(title()) : spoken.workbooks.openSays(title())}
            onClick={() => void open()}
          >
            {isHere() ? spoken.workbooks.goOn : spoken.workbooks.open}
          </button>
          <button
            ref={renameButton}
            type="button"
            class="small"
            aria-label={spoken.workbooks.renameSays(title())}
            onClick={() => setRenaming(true)}
          >
            {spoken.workbooks.rename}
          </button>
        </Show>
        <button
          type="button"
          class="small"
          aria-label={spoken.workbooks.removeSays(title())}
          onClick={() => {
            void session.remove(props.workbook.id)
            // The button goes with its line; the list's title is what stays.
            document.getElementById("workbooks-title")?.focus({ preventScroll: true })
          }}
        >
          {spoken.workbooks.remove}
        </button>
      </p>
    </li>
  )
}

/** When it was last changed. */
function Changed(props: { readonly moment: string | undefined }) {
  return (
    <Show when={props.moment} fallback={spoken.workbooks.changedUnknown}>
      {(moment) => (
        <time datetime={moment()}>{spoken.workbooks.changed(printMoment(new Date(moment())))}</time>
      )}
    </Show>
  )
}
