import { Show } from "solid-js"
import { spoken } from "../../text/spoken.ts"

/** Asks the form's question, and stops what is at work on it. */
export function AskButtons(props: {
  readonly ask: string
  readonly isWorking: boolean
  readonly stop: () => void
}) {
  return (
    <p class="actions">
      <button type="submit" class="small main-action" disabled={props.isWorking}>
        {props.ask}
      </button>
      <Show when={props.isWorking}>
        <button type="button" class="small" onClick={() => props.stop()}>
          {spoken.explore.cancel}
        </button>
      </Show>
    </p>
  )
}
