import { shownAs } from "@pegbook/engine"
import { createUniqueId, For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"
import { choicesOf, type RangeFields } from "./explore-model.ts"

/** Which input, and which of its values to try. */
export function RangeForm(props: {
  readonly label: string
  readonly inputs: readonly string[]
  readonly fields: RangeFields
  /** It may be left out. */
  readonly optional?: boolean
  readonly set: (change: Partial<RangeFields>) => void
}) {
  const sheet = useSheet()
  const id = createUniqueId()
  const view = () => (props.fields.name === "" ? undefined : sheet.entry(props.fields.name))
  const choices = () => {
    const shown = view()
    return shown === undefined ? undefined : choicesOf(shown)
  }
  const begin = (name: string) =>
    props.set({
      name,
      from: name === "" ? "" : (sheet.entry(name).reading?.text ?? ""),
      to: "",
      step: "",
      chosen: [],
    })
  const toggle = (choice: string, on: boolean) => {
    const others = props.fields.chosen.filter((one) => one !== choice)
    props.set({ chosen: (choices() ?? []).filter((one) => (one === choice ? on : others.includes(one))) })
  }
  return (
    <div class="range-form">
      <label for={id}>{props.label}</label>
      <select id={id} class="field" onChange={(event) => begin(event.currentTarget.value)}>
        <Show when={props.optional}>
          <option value="">{spoken.explore.noSecond}</option>
        </Show>
        <For each={props.inputs}>
          {(name) => (
            <option value={name} selected={name === props.fields.name}>
              {sheet.label(name)}
            </option>
          )}
        </For>
      </select>
      <Show when={view()}>
        <Show
          when={choices()}
          fallback={
            <div class="range-texts">
              <For each={["from", "to", "step"] as const}>
                {(part) => (
                  <label>
                    <span>{spoken.explore[part]}</span>
                    <input
                      class="field"
                      type="text"
                      autocomplete="off"
                      value={props.fields[part]}
                      onInput={(event) => props.set({ [part]: event.currentTarget.value })}
                    />
                  </label>
                )}
              </For>
            </div>
          }
        >
          {(texts) => (
            <fieldset class="choices">
              <legend>{spoken.explore.choices}</legend>
              <For each={texts()}>
                {(choice) => (
                  <label class="choice">
                    <input
                      type="checkbox"
                      checked={props.fields.chosen.includes(choice)}
                      onChange={(event) => toggle(choice, event.currentTarget.checked)}
                    />
                    <span>{shownAs(choice, view()?.measure ?? "text")}</span>
                  </label>
                )}
              </For>
            </fieldset>
          )}
        </Show>
      </Show>
    </div>
  )
}
