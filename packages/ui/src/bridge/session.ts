import { type BookDocument, type Definition, inWords, type Problem, type UnitSystem } from "@pegbook/engine"
import { demo, TEMPLATES, template } from "@pegbook/templates"
import { type Accessor, batch, createSignal } from "solid-js"
import { createKeeper, type Keeper, type KeptState } from "../storage/keeper.ts"
import { freshTitle, type Shelved } from "../storage/kept-workbook.ts"
import { type Preferences, proposedUnits, readPreferences } from "../storage/preferences.ts"
import { createShelf } from "../storage/shelf.ts"
import { KEYS, refusalOf, type Stores } from "../storage/store.ts"
import { en } from "../text/en.ts"
import { refusalWords } from "../text/refusal-words.ts"
import type { Around } from "./around.ts"
import { mirror, type Sheet } from "./sheet.ts"

/** Something said once. With an undo, or when it `stays`, until dismissed; without, until the next change. */
export interface Notice {
  readonly text: string
  readonly undo?: () => void
  readonly stays?: true
}

/** What the screens share besides the workbook itself. */
export interface Session {
  /** The open workbook; nothing while it is being opened. Another object after starting again. */
  readonly sheet: Accessor<Sheet | undefined>
  /** The id of the open workbook. */
  readonly current: Accessor<string>
  readonly title: Accessor<string>
  /** Those kept in this browser, last changed first. The demonstration joins them once something in it is changed. */
  readonly workbooks: Accessor<readonly Shelved[]>
  titleOf(workbook: Shelved): string
  /** Makes a workbook of this kind and opens it. */
  start(definition: Definition): Promise<void>
  open(id: string): Promise<void>
  rename(id: string, title: string): Promise<void>
  /** Takes a workbook away; the notice can undo it. */
  remove(id: string): Promise<void>
  /** Puts the scenario back to the template's values; the notice can undo it. */
  startAgain(): void

  readonly notice: Accessor<Notice | undefined>
  say(text: string, undo?: () => void): void
  dismiss(): void
  /** Of the open workbook. */
  readonly kept: Accessor<KeptState>
  readonly preferences: Accessor<Preferences>
  prefer(change: Partial<Preferences>): void
  /** In which units a new workbook starts: as was chosen, or as the browser's language proposes. */
  readonly unitSystem: Accessor<UnitSystem>
  /** Saves what is not saved yet. */
  flush(): void
}

const NOTHING_KEPT: KeptState = { kind: "nothing" }

/** Reads what was kept, and opens the workbook that was open last, or the demonstration. */
export async function openSession(
  stores: Stores,
  around: Around,
): Promise<{ readonly session: Session; readonly opened: Promise<void> }> {
  const opening = import("./opening.ts")
  const shelf = createShelf(stores.workbooks, unknownTemplate)
  const refusal = await shelf.refresh([]).then(() => undefined, refusalOf)
  const [preferences, setPreferences] = createSignal(
    readPreferences(await stores.records.get(KEYS.preferences).catch(() => undefined)),
  )
  const unitSystem = () => preferences().unitSystem ?? proposedUnits(around.languages)
  const [workbooks, setWorkbooks] = createSignal(shelf.list())
  const [current, setCurrent] = createSignal("")
  const [sheet, setSheet] = createSignal<Sheet>()
  const [notice, setNotice] = createSignal<Notice>()
  const [states, setStates] = createSignal<ReadonlyMap<string, KeptState>>(new Map())
  const keepers = new Map<string, Keeper>()
  const preferencesKeeper = createKeeper(
    stores.records,
    KEYS.preferences,
    preferences,
    () => {},
    around.clock,
  )
  const tabs = around.tabs((word) => {
    if (word.saved === current()) setNotice({ text: en.kept.elsewhere, stays: true })
    else void refresh()
  })

  const showShelf = () => setWorkbooks(shelf.list())
  const unsaved = () =>
    [...states()].filter(([, { kind }]) => kind === "saving" || kind === "refused").map(([id]) => id)
  const titleOf = (workbook: Shelved): string =>
    workbook.title ??
    ("document" in workbook ? template(workbook.document.template)?.title : undefined) ??
    en.workbooks.untitled

  /** The open workbook counts as unsaved: what is on the screen is what is held. */
  async function refresh(): Promise<void> {
    await shelf.refresh([...unsaved(), current()]).catch(() => {})
    showShelf()
  }

  function tellKept(id: string, state: KeptState): void {
    setStates((was) => new Map(was).set(id, state))
    if (state.kind === "saving") return
    showShelf()
    if (state.kind === "saved") tabs.tell({ saved: id })
  }

  /** What is on the screen becomes what is held. */
  function holdOpen(): void {
    const open = sheet()
    if (open === undefined) return
    shelf.hold(current(), { changed: around.now().toISOString(), document: open.document() })
  }

  /** One keeper a workbook, for as long as the page: what a full store refused is tried again after the next opens. */
  function keeperOf(id: string): Keeper {
    const known = keepers.get(id)
    if (known !== undefined) return known
    const record = () => {
      if (id === current()) holdOpen()
      return shelf.record(id)
    }
    const keeper = createKeeper(stores.workbooks, id, record, (state) => tellKept(id, state), around.clock)
    keepers.set(id, keeper)
    return keeper
  }

  let unsubscribe = () => {}
  function lay(id: string, next: Sheet): void {
    if (unsaved().includes(current())) holdOpen()
    unsubscribe()
    unsubscribe = next.subscribe(() => {
      keeperOf(id).changed()
      setNotice((said) => (said?.undo === undefined && said?.stays === undefined ? undefined : said))
    })
    batch(() => {
      setCurrent(id)
      setSheet(next)
    })
    if (preferences().current !== id) prefer({ current: id })
  }

  async function openNew(definition: Definition, id: string): Promise<void> {
    const { openBook } = await opening
    lay(id, mirror(openBook(definition, { unitSystem: unitSystem() }).book))
  }

  async function openKept(id: string, document: BookDocument): Promise<void> {
    const { openBook } = await opening
    const { book, problems } = openBook(template(document.template) ?? demo(), { document })
    if (!states().has(id)) setStates((was) => new Map(was).set(id, { kind: "saved" }))
    lay(id, mirror(book))
    const [first] = problems
    if (first !== undefined) setNotice({ text: en.kept.notRead(says(first)), stays: true })
  }

  /** The one with this id, or else the last changed that can be opened, or else the demonstration. */
  async function openFirst(id: string | undefined): Promise<void> {
    const wanted = id === undefined ? undefined : shelf.find(id)
    const known = [...(wanted === undefined ? [] : [wanted]), ...shelf.list()].find(
      (one) => "document" in one,
    )
    if (known !== undefined && "document" in known) await openKept(known.id, known.document)
    else {
      const fresh = around.newId()
      if (refusal !== undefined) setStates((was) => new Map(was).set(fresh, { kind: "refused", refusal }))
      await openNew(demo(), fresh)
    }
  }

  /** One after the other: two presses in a row must not open two workbooks at once. */
  let turn: Promise<void> = Promise.resolve()
  function inTurn(act: () => Promise<void>): Promise<void> {
    turn = turn.then(act).catch((thrown) => {
      setNotice({ text: en.workbooks.refused(refusalWords(refusalOf(thrown))), stays: true })
    })
    return turn
  }

  /** Saves the open workbook, so that another may take its place. */
  async function putAway(): Promise<void> {
    const keeper = keepers.get(current())
    if (keeper !== undefined) await keeper.flush()
  }

  function prefer(change: Partial<Preferences>): void {
    setPreferences((was) => ({ ...was, ...change }))
    preferencesKeeper.changed()
  }

  function reopen(id: string, definition: Definition, document: BookDocument): void {
    void opening.then(({ openBook }) => {
      if (current() !== id) return
      lay(id, mirror(openBook(definition, { document }).book))
      keeperOf(id).changed()
    })
  }

  const asked = shelf.find(preferences().current ?? "")
  const missed = asked ?? (shelf.list().every(isUnreadable) ? shelf.list()[0] : undefined)
  if (missed !== undefined && "problem" in missed) {
    setNotice({ text: en.kept.unreadable(titleOf(missed), says(missed.problem)), stays: true })
  }
  const opened = inTurn(() => openFirst(preferences().current))

  const session: Session = {
    sheet,
    current,
    title() {
      const kept = workbooks().find((one) => one.id === current())
      return kept === undefined ? (sheet()?.definition.title ?? en.product) : titleOf(kept)
    },
    workbooks,
    titleOf,
    start: (definition) =>
      inTurn(async () => {
        await putAway()
        const id = around.newId()
        const title = freshTitle(definition.title, shelf.list().map(titleOf))
        await openNew(definition, id)
        shelf.hold(id, { title })
        const keeper = keeperOf(id)
        keeper.changed()
        await keeper.flush()
      }),
    open: (id) =>
      inTurn(async () => {
        if (id === current()) return
        await putAway()
        await refresh()
        const found = shelf.find(id)
        if (found !== undefined && "document" in found) await openKept(id, found.document)
      }),
    rename: (id, title) =>
      inTurn(async () => {
        if (id === current()) await putAway()
        await shelf.rename(id, title).finally(showShelf)
        tabs.tell({})
      }),
    remove: (id) =>
      inTurn(async () => {
        const wasOpen = id === current()
        if (wasOpen) await putAway()
        const kept = shelf.find(id)
        if (kept === undefined) return
        const title = titleOf(kept)
        const putBack = await shelf.remove(id)
        keepers.delete(id)
        setStates((was) => new Map([...was].filter(([one]) => one !== id)))
        if (wasOpen) await openFirst(undefined)
        showShelf()
        tabs.tell({})
        setNotice({
          text: en.workbooks.removed(title),
          undo: () =>
            void inTurn(async () => {
              await putBack().finally(showShelf)
              if (wasOpen) {
                await putAway()
                const back = shelf.find(id)
                if (back !== undefined && "document" in back) await openKept(id, back.document)
              }
              tabs.tell({})
              setNotice({ text: en.workbooks.backAgain(title) })
            }),
        })
      }),
    startAgain() {
      const id = current()
      const open = sheet()
      if (open === undefined) return
      const { definition } = open
      const before = open.document()
      reopen(id, definition, withoutTyped(before))
      session.say(en.startedAgain(open.scenario().title), () => reopen(id, definition, before))
    },
    notice,
    say(text, undo) {
      setNotice(undo === undefined ? { text } : { text, undo })
    },
    dismiss: () => setNotice(undefined),
    kept: () => states().get(current()) ?? NOTHING_KEPT,
    preferences,
    prefer,
    unitSystem,
    flush() {
      for (const keeper of keepers.values()) void keeper.flush()
      void preferencesKeeper.flush()
    },
  }
  return { session, opened }
}

function isUnreadable(workbook: Shelved): boolean {
  return "problem" in workbook
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

function unknownTemplate(document: BookDocument): Problem | undefined {
  if (template(document.template) !== undefined) return undefined
  const known = TEMPLATES.map((one) => one.id)
  return { code: "file_unknown_template", at: {}, template: document.template, known }
}

function says(problem: Problem, system: UnitSystem = "us"): string {
  return inWords(problem, system).says
}
