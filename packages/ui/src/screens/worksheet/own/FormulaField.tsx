import { createSignal, createUniqueId, For, onCleanup, Show } from "solid-js"
import { useSession, useSheet, useWalk } from "../../../bridge/context.ts"
import { spoken } from "../../../text/spoken.ts"
import { withName, wordBefore } from "./draft.ts"

const MOST = 8

/**
 * Where a formula is typed. A name that is begun can be chosen from those that fit: arrows choose, Enter or Tab puts it
 * in. While it has, or last had, the focus, "Use" beside any row puts that row's name at the caret.
 */
export function FormulaField(props: {
  readonly label: string
  readonly text: string
  /** In a table's column the columns of the same table are called by their bare names. */
  readonly table?: string | undefined
  readonly describedBy?: string | undefined
  readonly wrong: boolean
  readonly type: (text: string) => void
}) {
  const sheet = useSheet()
  const session = useSession()
  const walk = useWalk()
  const id = createUniqueId()
  const [names, setNames] = createSignal<readonly string[]>([])
  const [chosen, setChosen] = createSignal(0)
  let field: HTMLTextAreaElement | undefined
  const optionId = (place: number) => `${id}-option-${place}`
  const bare = (name: string) =>
    props.table !== undefined && name.startsWith(`${props.table}.`)
      ? name.slice(props.table.length + 1)
      : name

  function find(): void {
    setChosen(0)
    const { word } = wordBefore(field?.value ?? "", field?.selectionStart ?? 0)
    if (word === "") {
      setNames([])
      return
    }
    const ofTable = props.table === undefined ? [] : sheet.namesStartingWith(`${props.table}.${word}`)
    const found = new Set([...ofTable, ...sheet.namesStartingWith(word), ...sheet.search(word)])
    found.delete(word)
    setNames([...found].slice(0, MOST))
  }

  function put(name: string, start: number): void {
    if (field === undefined) return
    const { text, caret } = withName(field.value, start, field.selectionEnd, bare(name))
    field.value = text
    field.setSelectionRange(caret, caret)
    setNames([])
    props.type(text)
  }

  function complete(name: string | undefined): void {
    if (name === undefined || field === undefined) return
    put(name, wordBefore(field.value, field.selectionStart).start)
    field.focus()
  }

  /** A row was pointed at. */
  function use(name: string): void {
    if (field === undefined) return
    put(name, field.selectionStart)
    session.say(spoken.own.used(bare(name)))
  }
  const into = (name: string) => use(name)
  onCleanup(() => {
    if (walk.pointing() === into) walk.point(undefined)
  })

  function onKeyDown(event: KeyboardEvent): void {
    const count = names().length
    if (count === 0) return
    if (event.key === "Escape") setNames([])
    else if (event.key === "Enter" || event.key === "Tab") complete(names()[chosen()])
    else if (event.key === "ArrowDown") setChosen((place) => (place + 1) % count)
    else if (event.key === "ArrowUp") setChosen((place) => (place + count - 1) % count)
    else return
    event.preventDefault()
    event.stopPropagation()
  }

  return (
    <div class="formula-field">
      <label for={id}>{props.label}</label>
      <textarea
        ref={field}
        id={id}
        class="field formula"
        rows={2}
        role="combobox"
        aria-autocomplete="list"
        aria-expanded={names().length > 0}
        aria-controls={`${id}-list`}
        aria-activedescendant={names().length > 0 ? optionId(chosen()) : undefined}
        aria-invalid={props.wrong}
        aria-describedby={props.describedBy}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={props.text}
        onInput={(event) => {
          props.type(event.currentTarget.value)
          find()
        }}
        onFocus={() => walk.point(into)}
        onBlur={() => setNames([])}
        onKeyDown={onKeyDown}
      />
      <div
        class="name-list"
        id={`${id}-list`}
        role="listbox"
        aria-label={spoken.own.names}
        hidden={names().length === 0}
      >
        <For each={names()}>
          {(name, place) => (
            // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the field, as a combobox's does
            // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the field's
            <div
              id={optionId(place())}
              role="option"
              class="search-option"
              aria-selected={chosen() === place()}
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => complete(name)}
            >
              <code>{bare(name)}</code>
              <Show when={sheet.has(name)}>
                <span class="search-value">{sheet.entry(name).reading?.text ?? ""}</span>
                <span class="quiet">{sheet.label(name)}</span>
              </Show>
            </div>
          )}
        </For>
      </div>
    </div>
  )
}
