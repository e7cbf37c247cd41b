import { type BookDocument, inWords, type LanguageId, type Problem, type UnitSystem } from "@pegbook/engine"
import { DEMO, offer } from "@pegbook/templates"
import { type Accessor, batch, createSignal } from "solid-js"
import { createKeeper, type Keeper, type KeptState } from "../storage/keeper.ts"
import { freshTitle, type Shelved } from "../storage/kept-workbook.ts"
import type { Photo, Photos } from "../storage/photos.ts"
import { type Preferences, proposedUnits, readPreferences } from "../storage/preferences.ts"
import { createShelf } from "../storage/shelf.ts"
import { KEYS, refusalOf, type Stores } from "../storage/store.ts"
import { type ChosenFile, LARGEST_FILE, readWorkbookFile, workbookFile } from "../storage/workbook-file.ts"
import { fileWords } from "../text/file-words.ts"
import { refusalWords } from "../text/refusal-words.ts"
import { spoken } from "../text/spoken.ts"
import type { Around } from "./around.ts"
import { carriedPhotos } from "./carried-photos.ts"
import { mirror, type Sheet } from "./sheet.ts"
import { templateOf, Unfetched, unknownTemplate } from "./template-of.ts"

/** Something said once. With an undo, or when it `stays`, until dismissed; without, until the next change. */
export interface Notice {
  readonly text: string
  readonly undo?: () => void
  /** What can be done about it; pressing one dismisses the notice. */
  readonly choices?: readonly { readonly text: string; readonly act: () => void }[]
  readonly stays?: true
  /** Its undo takes back the last step, and is gone with the next. */
  readonly ofLastStep?: true
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
  /** Makes a workbook of this kind and opens it; `false`, and a notice why, where that did not work. */
  start(template: string): Promise<boolean>
  /** `false`, and a notice why, where it could not be opened. */
  open(id: string): Promise<boolean>
  rename(id: string, title: string): Promise<void>
  /** Takes a workbook away; the notice can undo it. */
  remove(id: string): Promise<void>
  /** Puts the scenario back to the template's values; the notice can undo it. */
  startAgain(): void

  /** Those kept with the steps of all workbooks. */
  readonly photos: Photos
  /** Counts up when the open workbook was given photos that nobody added here. */
  readonly photosCame: Accessor<number>
  /** The open workbook as a file, with its photos; a notice says so where not all of them are in it. */
  file(): Promise<{ readonly name: string; readonly text: string } | undefined>
  /** Opens what is in a file as a workbook of its own; `false`, and a notice why, where it cannot be read. */
  openFile(file: ChosenFile): Promise<boolean>

  readonly notice: Accessor<Notice | undefined>
  /** Says something that stays, with what can be done about it. */
  offer(text: string, choices: NonNullable<Notice["choices"]>): void
  say(text: string, undo?: () => void): void
  /** Says what was done last in the open workbook; until the next change it can be taken back. */
  sayDone(text: string): void
  dismiss(): void
  /** Of the open workbook. */
  readonly kept: Accessor<KeptState>
  readonly preferences: Accessor<Preferences>
  prefer(change: Partial<Preferences>): void
  /** The language that the person reads first, as the browser names it. */
  readonly reads: string
  /** In which units a new workbook starts: as was chosen, or as the browser's language proposes. */
  readonly unitSystem: Accessor<UnitSystem>
  /** Saves everything and loads the page anew; says so, and stays, where not all could be saved. */
  reload(): Promise<void>
  /** Does so in another language. */
  speakIn(language: LanguageId): Promise<void>
  /** Saves what is not saved yet, for a page that goes away: at once, as far as the browser can. */
  flush(): void
  /** Saves what is not saved yet; whether all of it is. */
  saveAll(): Promise<boolean>
}

/** The section of the user's own entries. */
const ownHeading = () => ({ title: spoken.own.title, says: spoken.own.says })

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
  const [photosCame, setPhotosCame] = createSignal(0)
  const [states, setStates] = createSignal<ReadonlyMap<string, KeptState>>(new Map())
  const carried = carriedPhotos(stores.photos, around.smaller, (text) => setNotice({ text, stays: true }))
  const keepers = new Map<string, Keeper>()
  const preferencesKeeper = createKeeper(
    () => stores.records.put(KEYS.preferences, preferences()),
    () => {},
    around.clock,
  )
  /** Of these another tab has saved a later revision than is held here. */
  const behind = new Set<string>()
  const tabs = around.tabs((word) => {
    if ("saved" in word && word.saved === current()) fallBehind()
    else if ("removed" in word && word.removed === current())
      setNotice({ text: spoken.kept.removedElsewhere, stays: true })
    else void refresh()
  })

  const showShelf = () => setWorkbooks(shelf.list())
  const unsaved = () =>
    [...states()].filter(([, { kind }]) => kind === "saving" || kind === "refused").map(([id]) => id)
  const titleOf = (workbook: Shelved): string =>
    workbook.title ??
    ("document" in workbook ? offer(workbook.document.template)?.title : undefined) ??
    spoken.workbooks.untitled

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
    if (state.kind === "refused" && state.refusal.why === "overtaken" && id === current()) fallBehind()
  }

  /** Nothing is saved over what the other tab has; which of the two goes on is the person's choice. */
  function fallBehind(): void {
    behind.add(current())
    setNotice({
      text: spoken.kept.elsewhere,
      stays: true,
      choices: [
        { text: spoken.kept.takeOther, act: () => void inTurn(takeOther) },
        { text: spoken.kept.keepCopy, act: () => void inTurn(keepCopy) },
      ],
    })
  }

  /** Typed here, on top of a revision that is no longer the last. */
  const hasDiverged = () => behind.has(current()) && unsaved().includes(current())

  function letGo(id: string): void {
    keepers.get(id)?.drop()
    keepers.delete(id)
    behind.delete(id)
    setStates((was) => new Map([...was].filter(([one]) => one !== id)))
  }

  async function takeOther(): Promise<void> {
    const id = current()
    const open = sheet()
    if (open === undefined) return
    const title = session.title()
    const mine = open.document()
    const hadTyped = hasDiverged()
    await shelf.refresh(unsaved().filter((one) => one !== id))
    const found = shelf.find(id)
    if (found === undefined || !("document" in found)) {
      behind.delete(id)
      shelf.hold(id, { title, changed: around.now().toISOString(), document: mine })
      setNotice({ text: spoken.kept.removedElsewhere, stays: true })
      return
    }
    letGo(id)
    showShelf()
    await openKept(id, found.document)
    if (!hadTyped) return
    setNotice({
      text: spoken.kept.tookOther,
      undo: () =>
        void inTurn(async () => {
          await putAway()
          const copy = storeCopy(title, mine)
          await openKept(copy, mine)
          await copyPhotos(id, copy)
        }),
    })
  }

  /** Keeps a document under a new id and a title of its own; returns the id. */
  function storeCopy(title: string, document: BookDocument): string {
    const copy = around.newId()
    shelf.hold(copy, {
      title: freshTitle(title, shelf.list().map(titleOf)),
      changed: around.now().toISOString(),
      document,
    })
    keeperOf(copy).changed()
    void keeperOf(copy).flush()
    showShelf()
    return copy
  }

  /** What is open here goes on as a copy. All is begun at once, since the page may be going away; photos take a while. */
  function keepCopy(): Promise<void> {
    const open = sheet()
    if (open === undefined) return Promise.resolve()
    const [id, title] = [current(), session.title()]
    letGo(id)
    const copy = storeCopy(spoken.kept.copyTitle(title), open.document())
    lay(copy, open)
    void refresh()
    setNotice({ text: spoken.kept.keptCopy(session.title()), stays: true })
    return copyPhotos(id, copy)
  }

  /** For the open workbook, which is the copy. */
  async function copyPhotos(from: string, to: string): Promise<void> {
    try {
      if ((await stores.photos.copy(from, to)) > 0) setPhotosCame((times) => times + 1)
    } catch (thrown) {
      const text = spoken.kept.copyWithoutPhotos(session.title(), refusalWords(refusalOf(thrown)))
      setNotice({ text, stays: true })
    }
  }

  stores.onCleared(
    () =>
      void inTurn(async () => {
        const stored = await stores.workbooks.all()
        const lost = shelf.list().filter(({ id }) => !stored.has(id))
        if (lost.length === 0) return
        setStates((was) => {
          const refused = { kind: "refused", refusal: { why: "cleared" } } as const
          return new Map([...was, ...lost.map(({ id }) => [id, refused] as const)])
        })
        setNotice({ text: spoken.kept.savedAgain(lost.length), stays: true })
        preferencesKeeper.changed()
        for (const { id } of lost) keeperOf(id).changed()
      }),
  )

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
    const save = () => {
      if (id === current()) holdOpen()
      return shelf.save(id)
    }
    const keeper = createKeeper(save, (state) => tellKept(id, state), around.clock)
    keepers.set(id, keeper)
    return keeper
  }

  let unsubscribe = () => {}
  function lay(id: string, next: Sheet): void {
    if (unsaved().includes(current())) holdOpen()
    unsubscribe()
    unsubscribe = next.subscribe((change) => {
      // A better plan of the same things is nothing that is saved, and neither is an edit that is only shown.
      if (change !== "changed") return
      keeperOf(id).changed()
      setNotice((said) => (said?.stays || (said?.undo && !said.ofLastStep) ? said : undefined))
    })
    batch(() => {
      setCurrent(id)
      setSheet(next)
    })
    around.thisTab.opened(id)
    if (preferences().current !== id) prefer({ current: id })
  }

  async function openNew(template: string, id: string): Promise<void> {
    const [{ openBook }, definition] = await Promise.all([opening, templateOf(template)])
    lay(id, mirror(openBook(definition, { unitSystem: unitSystem(), own: ownHeading() }).book, around))
  }

  async function openKept(id: string, document: BookDocument): Promise<void> {
    const [{ openBook }, definition] = await Promise.all([opening, templateOf(document.template)])
    const { book, problems } = openBook(definition, {
      document,
      own: ownHeading(),
    })
    if (!states().has(id)) setStates((was) => new Map(was).set(id, { kind: "saved" }))
    lay(id, mirror(book, around))
    const [first, ...others] = problems
    if (first === undefined) return
    setNotice({ text: spoken.kept.notRead(says(first, book.unitSystem), others.length), stays: true })
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
      await openNew(DEMO, fresh)
    }
  }

  /** One after the other: two presses in a row must not open two workbooks at once. */
  let turn: Promise<unknown> = Promise.resolve()
  /** Whether it was done; a notice says why it was not. */
  function inTurn(act: () => Promise<void>): Promise<boolean> {
    const done = turn.then(act).then(
      () => true,
      (thrown) => {
        if (thrown instanceof Unfetched)
          session.offer(spoken.unfetched, [{ text: spoken.updates.reload, act: () => void session.reload() }])
        else setNotice({ text: spoken.workbooks.refused(refusalWords(refusalOf(thrown))), stays: true })
        return false
      },
    )
    turn = done
    return done
  }

  /** Saves the open workbook, so that another may take its place. */
  async function putAway(): Promise<void> {
    if (!hasDiverged()) await keepers.get(current())?.flush()
    if (!hasDiverged()) return
    await keepCopy()
    await keepers.get(current())?.flush()
  }

  /** A workbook and its photos, or neither; alone only where that was asked for. */
  async function takeAway(id: string, alone = false): Promise<void> {
    if (id === current()) await putAway()
    const wasOpen = id === current()
    const kept = shelf.find(id)
    if (kept === undefined) return
    const title = titleOf(kept)
    const putBack = await shelf.remove(id)
    let photos: readonly Photo[] = []
    try {
      if (!alone) photos = await stores.photos.removeAll(id)
    } catch {
      await putBack().finally(showShelf)
      setNotice({
        text: spoken.workbooks.photosStay(title),
        stays: true,
        choices: [
          { text: spoken.workbooks.tryAgain, act: () => void session.remove(id) },
          { text: spoken.workbooks.removeAlone, act: () => void inTurn(() => takeAway(id, true)) },
        ],
      })
      return
    }
    letGo(id)
    if (wasOpen) await openFirst(undefined)
    showShelf()
    tabs.tell({ removed: id })
    setNotice({
      text: spoken.workbooks.removed(title),
      undo: () =>
        void inTurn(async () => {
          await putBack().finally(showShelf)
          for (const photo of photos) await stores.photos.put(photo)
          if (wasOpen) {
            await putAway()
            const back = shelf.find(id)
            if (back !== undefined && "document" in back) await openKept(id, back.document)
          }
          tabs.tell({ saved: id })
          setNotice({ text: spoken.workbooks.backAgain(title) })
        }),
    })
  }

  function prefer(change: Partial<Preferences>): void {
    setPreferences((was) => ({ ...was, ...change }))
    preferencesKeeper.changed()
  }

  const wasOpen = around.thisTab.current() ?? preferences().current
  const asked = shelf.find(wasOpen ?? "")
  const missed = asked ?? (shelf.list().every(isUnreadable) ? shelf.list()[0] : undefined)
  if (missed !== undefined && "problem" in missed) {
    setNotice({ text: spoken.kept.unreadable(titleOf(missed), says(missed.problem)), stays: true })
  }
  const opened = inTurn(() => openFirst(wasOpen)).then(() => {})

  const session: Session = {
    sheet,
    current,
    title() {
      const kept = workbooks().find((one) => one.id === current())
      return kept === undefined ? (sheet()?.definition.title ?? spoken.product) : titleOf(kept)
    },
    workbooks,
    titleOf,
    start: (template) =>
      inTurn(async () => {
        await putAway()
        const id = around.newId()
        const title = freshTitle(
          offer(template)?.title ?? spoken.workbooks.untitled,
          shelf.list().map(titleOf),
        )
        await openNew(template, id)
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
    rename: async (id, title) => {
      await inTurn(async () => {
        await putAway()
        await refresh()
        shelf.hold(id, { title })
        await shelf.save(id).finally(showShelf)
        tabs.tell({ saved: id })
      })
    },
    remove: async (id) => {
      await inTurn(() => takeAway(id))
    },
    startAgain() {
      const open = sheet()
      if (open === undefined) return
      if (open.startAgain().accepted) session.sayDone(spoken.startedAgain(open.scenario().title))
      else session.say(spoken.seal.refused)
    },
    photos: stores.photos,
    photosCame,
    async file() {
      const open = sheet()
      if (open === undefined) return undefined
      const [title, document] = [session.title(), open.document()]
      const bare = workbookFile(title, document)
      const { size } = new Blob([bare.text])
      if (size > LARGEST_FILE) {
        setNotice({ text: spoken.files.tooLargeToOpen(size, LARGEST_FILE), stays: true })
        return bare
      }
      const packed = await carried.pack(current(), LARGEST_FILE - size)
      return packed === undefined ? bare : workbookFile(title, document, packed)
    },
    async openFile(file) {
      let opened = false
      await inTurn(async () => {
        const read = await readWorkbookFile(file, unknownTemplate)
        if ("refusal" in read) {
          const reason = fileWords(read.refusal, unitSystem())
          setNotice({ text: spoken.files.refused(file.name, reason), stays: true })
          return
        }
        await putAway()
        const { document } = read
        const id = storeCopy(read.title ?? offer(document.template)?.title ?? file.name, document)
        await openKept(id, document)
        opened = true
        await carried.take(id, read.photos)
        if (notice()?.stays === undefined) session.say(spoken.files.opened(session.title()))
      })
      return opened
    },
    notice,
    offer(text, choices) {
      setNotice({ text, choices, stays: true })
    },
    say(text, undo) {
      setNotice(undo === undefined ? { text } : { text, undo })
    },
    sayDone(text) {
      const open = sheet()
      setNotice({ text, undo: () => void open?.undo(), ofLastStep: true })
    },
    dismiss: () => setNotice(undefined),
    kept: () => states().get(current()) ?? NOTHING_KEPT,
    preferences,
    prefer,
    reads: around.languages[0] ?? "",
    unitSystem,
    async speakIn(language) {
      prefer({ language })
      await session.reload()
    },
    async reload() {
      if (await session.saveAll()) around.reload()
      else session.offer(spoken.updates.notSaved, [])
    },
    flush() {
      if (hasDiverged()) void keepCopy()
      for (const keeper of keepers.values()) void keeper.flush()
      void preferencesKeeper.flush()
    },
    async saveAll() {
      if (hasDiverged()) await keepCopy()
      await Promise.all([...[...keepers.values()].map((keeper) => keeper.flush()), preferencesKeeper.flush()])
      return unsaved().length === 0
    },
  }
  return { session, opened }
}

function isUnreadable(workbook: Shelved): boolean {
  return "problem" in workbook
}

function says(problem: Problem, system: UnitSystem = "us"): string {
  return inWords(problem, system).says
}
