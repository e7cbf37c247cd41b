import {
  createEffect,
  createMemo,
  createSignal,
  createUniqueId,
  For,
  onCleanup,
  onMount,
  Show,
} from "solid-js"
import { useSheet, useWalk } from "../bridge/context.ts"
import { rowModel } from "../screens/worksheet/row-model.ts"
import { kindWord } from "../text/entry-words.ts"
import { spoken } from "../text/spoken.ts"

const MOST = 12
/** As in the styles: there the undo buttons and the sections leave the field little room. */
const NARROW = "(max-width: 30rem)"

/** Finds an entry by its name or label. `/` comes here from anywhere, arrows choose, Enter goes. */
export function Search() {
  const sheet = useSheet()
  const walk = useWalk()
  const id = createUniqueId()
  const [words, setWords] = createSignal("")
  const [chosen, setChosen] = createSignal(0)
  let field: HTMLInputElement | undefined

  const width = matchMedia(NARROW)
  const [narrow, setNarrow] = createSignal(width.matches)
  const follow = () => setNarrow(width.matches)
  width.addEventListener("change", follow)
  onCleanup(() => width.removeEventListener("change", follow))

  const found = createMemo(() => (words().trim() === "" ? [] : sheet.search(words()).slice(0, MOST)))
  const open = () => words().trim() !== ""
  const optionId = (place: number) => `${id}-option-${place}`

  createEffect(() => {
    found()
    setChosen(0)
  })

  function go(name: string | undefined): void {
    if (name === undefined) return
    setWords("")
    walk.go(name)
  }

  function focusHere(event: KeyboardEvent): void {
    const target = event.target as HTMLElement
    if (event.key !== "/" || event.ctrlKey || event.metaKey || event.altKey) return
    if (target.closest("input, select, textarea, [contenteditable]") !== null) return
    event.preventDefault()
    field?.focus()
  }
  onMount(() => document.addEventListener("keydown", focusHere))
  onCleanup(() => document.removeEventListener("keydown", focusHere))

  function onKeyDown(event: KeyboardEvent): void {
    const count = found().length
    if (event.key === "Escape") setWords("")
    else if (event.key === "Enter") go(found()[chosen()])
    else if (count > 0 && event.key === "ArrowDown") setChosen((place) => (place + 1) % count)
    else if (count > 0 && event.key === "ArrowUp") setChosen((place) => (place + count - 1) % count)
    else return
    event.preventDefault()
    document.getElementById(optionId(chosen()))?.scrollIntoView({ block: "nearest" })
  }

  return (
    <search class="search">
      <input
        ref={field}
        class="search-field"
        type="text"
        role="combobox"
        aria-label={spoken.search.label}
        aria-expanded={open()}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={found().length > 0 ? optionId(chosen()) : undefined}
        aria-keyshortcuts="/"
        title={spoken.search.hint}
        placeholder={narrow() ? spoken.search.placeholderShort : spoken.search.placeholder}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        enterkeyhint="go"
        value={words()}
        onInput={(event) => setWords(event.currentTarget.value)}
        onKeyDown={onKeyDown}
        onBlur={() => setWords("")}
      />
      <p class="hidden-text" role="status">
        {open() ? spoken.search.found(found().length) : ""}
      </p>
      <div class="search-list" hidden={!open()}>
        <div id={`${id}-list`} role="listbox" aria-label={spoken.search.label}>
          <For each={found()}>
            {(name, place) => {
              const view = () => sheet.entry(name)
              return (
                // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the field, as a combobox's does
                // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the field's
                <div
                  id={optionId(place())}
                  role="option"
                  class="search-option"
                  aria-selected={chosen() === place()}
                  // Before the field loses the focus, and the list with it.
                  onMouseDown={(event) => event.preventDefault()}
                  onClick={() => go(name)}
                >
                  <span>
                    {sheet.label(name)} <span class="kind">{kindWord(view().kind)}</span>
                  </span>
                  <span class="search-value">{view().shape === "one" ? rowModel(view()).value : ""}</span>
                  <code class="quiet">{name}</code>
                </div>
              )
            }}
          </For>
        </div>
        <Show when={found().length === 0 && open()}>
          <p class="quiet search-none">{spoken.search.none(words().trim())}</p>
        </Show>
      </div>
    </search>
  )
}
