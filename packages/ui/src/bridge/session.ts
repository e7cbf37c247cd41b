import {
  type Book,
  type BookDocument,
  type Definition,
  inWords,
  openBook,
  type Problem,
  type UnitSystem,
} from "@pegbook/engine"
import { demo, TEMPLATES, template } from "@pegbook/templates"
import { type Accessor, createSignal } from "solid-js"
import { createKeeper, type Keeper, type KeptState, windowClock } from "../storage/keeper.ts"
import { type Loaded, loadWorkbook } from "../storage/load.ts"
import { otherTabs } from "../storage/other-tabs.ts"
import { type Preferences, readPreferences } from "../storage/preferences.ts"
import { KEYS, type RecordStore } from "../storage/store.ts"
import { en } from "../text/en.ts"
import { mirror, type Sheet } from "./sheet.ts"

/** Something said once. With an undo, or when it `stays`, until dismissed; without, until the next change. */
export interface Notice {
  readonly text: string
  readonly undo?: () => void
  readonly stays?: true
}

/** What the screens share besides the workbook itself. */
export interface Session {
  /** The open workbook; another one after starting again. */
  readonly sheet: Accessor<Sheet>
  /** Puts the scenario back to the template's values; the notice can undo it. */
  startAgain(): void
  readonly notice: Accessor<Notice | undefined>
  say(text: string, undo?: () => void): void
  dismiss(): void
  readonly kept: Accessor<KeptState>
  /** Why nothing may be saved, when a record that cannot be read stands in the way. */
  readonly stuck: Accessor<string | undefined>
  readonly preferences: Accessor<Preferences>
  prefer(change: Partial<Preferences>): void
  /** Saves what is not saved yet. */
  flush(): void
}

/** Opens what was kept, or the demonstration, and keeps it from then on. */
export async function openSession(store: RecordStore): Promise<Session> {
  const loaded = await loadWorkbook(store, () => new Date(), unknownTemplate)
  const [preferences, setPreferences] = createSignal(
    readPreferences(await store.get(KEYS.preferences).catch(() => undefined)),
  )
  const opened = openLoaded(loaded)
  const [sheet, setSheet] = createSignal(mirror(opened.book))
  const [notice, setNotice] = createSignal<Notice | undefined>(noticeOf(loaded, opened.problems))
  const [kept, setKept] = createSignal<KeptState>(
    loaded.kind === "refused"
      ? { kind: "refused", refusal: loaded.refusal }
      : { kind: loaded.kind === "opened" ? "saved" : "nothing" },
  )
  const tabs = otherTabs(() => setNotice({ text: en.kept.elsewhere, stays: true }))
  function tellKept(state: KeptState): void {
    setKept(state)
    if (state.kind === "saved") tabs.saved()
  }
  const stuck = loaded.kind === "stuck" ? en.kept.unreadableStays(says(loaded.problem)) : undefined

  const keeper: Keeper | undefined =
    stuck === undefined
      ? createKeeper(store, KEYS.workbook, () => sheet().document(), tellKept, windowClock)
      : undefined
  const preferencesKeeper = createKeeper(store, KEYS.preferences, preferences, () => {}, windowClock)
  function onChange(): void {
    keeper?.changed()
    setNotice((said) => (said?.undo === undefined && said?.stays === undefined ? undefined : said))
  }
  let unsubscribe = sheet().subscribe(onChange)

  function reopen(document: BookDocument): void {
    unsubscribe()
    const { book } = openBook(sheet().definition, { document })
    const next = mirror(book)
    unsubscribe = next.subscribe(onChange)
    setSheet(next)
    keeper?.changed()
  }

  function say(text: string, undo?: () => void): void {
    setNotice(undo === undefined ? { text } : { text, undo })
  }

  return {
    sheet,
    startAgain() {
      const before = sheet().document()
      reopen(withoutTyped(before))
      say(en.startedAgain(sheet().scenario().title), () => reopen(before))
    },
    notice,
    say,
    dismiss: () => setNotice(undefined),
    kept,
    stuck: () => stuck,
    preferences,
    prefer(change) {
      setPreferences((was) => ({ ...was, ...change }))
      preferencesKeeper.changed()
    },
    flush() {
      void keeper?.flush()
      void preferencesKeeper.flush()
    },
  }
}

/** The same document, its open scenario without anything typed. */
function withoutTyped(document: BookDocument): BookDocument {
  return {
    ...document,
    scenarios: document.scenarios.map((scenario) =>
      scenario.id === document.current ? { ...scenario, typed: {}, tables: {} } : scenario,
    ),
  }
}

function openLoaded(loaded: Loaded): { readonly book: Book; readonly problems: readonly Problem[] } {
  const definition: Definition =
    (loaded.kind === "opened" ? template(loaded.document.template) : undefined) ?? demo()
  return loaded.kind === "opened" ? openBook(definition, { document: loaded.document }) : openBook(definition)
}

function unknownTemplate(document: BookDocument): Problem | undefined {
  if (template(document.template) !== undefined) return undefined
  const known = TEMPLATES.map((one) => one.id)
  return { code: "file_unknown_template", at: {}, template: document.template, known }
}

function says(problem: Problem, system: UnitSystem = "us"): string {
  return inWords(problem, system).says
}

function noticeOf(loaded: Loaded, problems: readonly Problem[]): Notice | undefined {
  if (loaded.kind === "set_aside")
    return { text: en.kept.unreadable(says(loaded.problem), loaded.keptUnder), stays: true }
  const [first] = problems
  if (loaded.kind === "opened" && first !== undefined)
    return { text: en.kept.notRead(says(first)), stays: true }
  return undefined
}
