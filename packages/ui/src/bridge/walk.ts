import { createSignal } from "solid-js"
import { createStore } from "solid-js/store"

/** The screens, in the order that they are used in: each is a word in the address. */
export const SCREENS = [
  "start",
  "worksheet",
  "drawings",
  "cut-list",
  "buy-list",
  "set-out",
  "steps",
  "build-book",
  "compare",
  "explore",
  "changes",
] as const
export type Screen = (typeof SCREENS)[number]

/** Which column of a table is open, and in which row, from 1. */
export interface OpenColumn {
  readonly column: string
  readonly row: number
}

/** An entry, or a row of a table, to be shown in a drawing. */
export interface Lit {
  readonly name: string
  readonly row?: number
}

/** Where the reader is in the workbook, and how they came there. The browser's own Back walks it as well. */
export interface Walk {
  screen(): Screen
  show(screen: Screen): void
  /** Follows the address; for when the rows are there to be shown. */
  settle(): void
  /** For another workbook: nothing is open in it, and nothing was passed on the way. */
  reset(): void
  /** The entry last gone to. */
  at(): string | undefined
  /** The entries passed on the way, oldest first. */
  trail(): readonly string[]
  /** Opens an entry (a column: in its table) and brings it into view. `from` joins the trail. */
  go(name: string, from?: string, row?: number): void
  /** Brings an entry into view in passing: neither the focus nor the trail follows. */
  pass(name: string): void
  /** Back to the entry at this place of the trail; without one, to the last. */
  back(place?: number): void
  forget(): void
  /** The entry whose field was entered last: what it asks for is drawn there. */
  typingIn(): string | undefined
  typeIn(name: string): void
  isOpen(name: string): boolean
  toggle(name: string): void
  columnOpen(table: string): OpenColumn | undefined
  /** Opens a column at a row and goes to it, without a step of the trail. */
  openColumn(table: string, column: string, row: number): void
  /** Another row of the column that is open. */
  turnTo(table: string, row: number): void
  closeColumn(table: string): void
  /** Shows an entry, or a row of a table, in the drawings. */
  showDrawn(lit: Lit): void
  /** What is to be shown in the drawings, if anything. */
  lit(): Lit | undefined
  light(lit: Lit | undefined): void
  /** Where the name of a row goes whose "Use" is pressed; nothing while no formula is being written. */
  pointing(): ((name: string) => void) | undefined
  point(into: ((name: string) => void) | undefined): void
}

interface Step {
  readonly screen: Screen
  readonly at?: string
  readonly trail: readonly string[]
}

/** The address of a step: `#/worksheet/joist_count`. */
export function addressOf(step: { readonly screen: Screen; readonly at?: string | undefined }): string {
  return `#/${step.screen}${step.at === undefined ? "" : `/${step.at}`}`
}

/** Reads an address; one that is not understood leads to the worksheet. */
export function readAddress(hash: string): { readonly screen: Screen; readonly at?: string } {
  const [, word, at] = /^#\/([a-z-]+)(?:\/([a-z0-9_.]+))?$/.exec(hash) ?? []
  const screen = SCREENS.find((one) => one === word) ?? "worksheet"
  if (screen !== "worksheet") return { screen }
  return at === undefined ? { screen: "worksheet" } : { screen: "worksheet", at }
}

/** A table's name and the bare column's, for `table.column`; an entry's own name otherwise. */
export function tableAndColumn(name: string): { readonly table: string; readonly column?: string } {
  const dot = name.indexOf(".")
  return dot < 0 ? { table: name } : { table: name.slice(0, dot), column: name.slice(dot + 1) }
}

/** The column of a cell's name such as `prices.price.3`; any other name as it is. */
export function withoutRow(name: string): string {
  return name.replace(/^(\w+\.\w+)\.\d+$/, "$1")
}

/** The row in a cell's name, from 1. */
export function rowIn(name: string): number | undefined {
  const digits = /^\w+\.\w+\.(\d+)$/.exec(name)?.[1]
  return digits === undefined ? undefined : Number(digits)
}

export function createWalk(has: (name: string) => boolean): Walk {
  const [step, setStep] = createSignal<Step>({ screen: readAddress(location.hash).screen, trail: [] })
  const [open, setOpen] = createStore<Record<string, boolean | undefined>>({})
  const [columns, setColumns] = createStore<Record<string, OpenColumn | undefined>>({})
  const [lit, setLit] = createSignal<Lit>()
  const [typingIn, setTypingIn] = createSignal<string>()
  const [pointing, setPointing] = createSignal<(name: string) => void>()
  const scrolled = new Map<Screen, number>()

  function reveal(name: string, row?: number): void {
    const { table, column } = tableAndColumn(name)
    setOpen(table, true)
    if (column !== undefined && (row !== undefined || columns[table]?.column !== column)) {
      setColumns(table, { column, row: row ?? 1 })
    }
    const element = document.querySelector<HTMLElement>(`[data-entry="${CSS.escape(name)}"]`)
    element?.scrollIntoView({ block: "start" })
    element?.querySelector<HTMLElement>("[data-open]")?.focus({ preventScroll: true })
  }

  function arrive(next: Step, row?: number): void {
    const before = step()
    if (before.screen !== next.screen) scrolled.set(before.screen, window.scrollY)
    setStep(next)
    if (next.at !== undefined) reveal(next.at, row)
    else if (before.screen !== next.screen) window.scrollTo(0, scrolled.get(next.screen) ?? 0)
  }

  function push(next: Step, row?: number): void {
    history.pushState({ trail: next.trail }, "", addressOf(next))
    arrive(next, row)
  }

  function replace(next: Step): void {
    history.replaceState({ trail: next.trail }, "", addressOf(next))
    setStep(next)
  }

  function fromAddress(state: unknown): Step {
    const address = readAddress(location.hash)
    const kept = (state as { readonly trail?: unknown } | null)?.trail
    const trail = Array.isArray(kept) ? kept.filter((name): name is string => has(String(name))) : []
    if (address.at !== undefined && !has(address.at)) return { screen: address.screen, trail }
    return { ...address, trail }
  }

  window.addEventListener("popstate", (event) => arrive(fromAddress(event.state)))

  return {
    screen: () => step().screen,
    show(screen) {
      if (screen !== step().screen) push({ screen, trail: [] })
    },
    settle: () => arrive(fromAddress(history.state)),
    reset() {
      for (const name of Object.keys(open)) setOpen(name, undefined)
      for (const name of Object.keys(columns)) setColumns(name, undefined)
      setLit(undefined)
      setTypingIn(undefined)
      setPointing(undefined)
      scrolled.clear()
      replace({ screen: step().screen, trail: [] })
    },
    at: () => step().at,
    trail: () => step().trail,
    go(name, from, row) {
      const trail = from === undefined || from === name ? [] : [...step().trail, from]
      push({ screen: "worksheet", at: name, trail }, row)
    },
    pass(name) {
      const { table, column } = tableAndColumn(name)
      if (column !== undefined) setOpen(table, true)
      setStep((was) => ({ ...was, at: table }))
      document.querySelector(`[data-entry="${CSS.escape(table)}"]`)?.scrollIntoView({ block: "center" })
    },
    back(place) {
      const { trail } = step()
      const to = trail[place ?? trail.length - 1]
      if (to === undefined) return
      push({ screen: "worksheet", at: to, trail: trail.slice(0, place ?? trail.length - 1) })
    },
    forget: () => {
      const { screen, at } = step()
      replace(at === undefined ? { screen, trail: [] } : { screen, at, trail: [] })
    },
    typingIn,
    typeIn: setTypingIn,
    isOpen: (name) => open[name] ?? false,
    toggle: (name) => setOpen(name, (was) => !was),
    columnOpen: (table) => columns[table],
    openColumn: (table, column, row) => reveal(`${table}.${column}`, row),
    turnTo: (table, row) => setColumns(table, (open) => (open === undefined ? open : { ...open, row })),
    closeColumn: (table) => setColumns(table, undefined),
    showDrawn(wanted) {
      setLit(wanted)
      push({ screen: "drawings", trail: [] })
    },
    lit,
    light: setLit,
    pointing,
    point: (into) => setPointing(() => into),
  }
}
