import { createSignal, createUniqueId, Show, untrack } from "solid-js"
import { spoken } from "../text/spoken.ts"

const LONGEST = 200

/** Asks for a title: of a scenario, or of a workbook. Escape leaves it as it was. */
export function TitleForm(props: {
  readonly label: string
  /** What comes of it, where that is not plain. */
  readonly says?: string | undefined
  readonly suggestion: string
  readonly answer: (title: string) => void
  readonly cancel: () => void
}) {
  const id = createUniqueId()
  const [wrong, setWrong] = createSignal(false)
  return (
    <form
      class="title-form"
      onSubmit={(event) => {
        event.preventDefault()
        const title = String(new FormData(event.currentTarget).get("title") ?? "").trim()
        if (title === "" || title.length > LONGEST) setWrong(true)
        else props.answer(title)
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") props.cancel()
      }}
    >
      <Show when={props.says}>
        <p class="quiet">{props.says}</p>
      </Show>
      <label for={id}>{props.label}</label>
      <input
        ref={(field) =>
          queueMicrotask(() => {
            field.focus()
            field.select()
          })
        }
        id={id}
        name="title"
        class="field"
        type="text"
        autocomplete="off"
        // Once: a number that moves meanwhile must not take away what is being typed.
        value={untrack(() => props.suggestion)}
        aria-invalid={wrong()}
        aria-describedby={wrong() ? `${id}-wrong` : undefined}
      />
      <Show when={wrong()}>
        <p class="field-problem" id={`${id}-wrong`} role="alert">
          {spoken.scenario.tooLong}
        </p>
      </Show>
      <p class="actions">
        <button type="submit" class="small main-action">
          {spoken.scenario.save}
        </button>
        <button type="button" class="small" onClick={() => props.cancel()}>
          {spoken.scenario.cancel}
        </button>
      </p>
    </form>
  )
}
