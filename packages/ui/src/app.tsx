import { type Component, createEffect, For, type JSX, on, onCleanup, Show, Suspense } from "solid-js"
import { Dynamic } from "solid-js/web"
import {
  ProvingContext,
  SessionContext,
  SheetContext,
  useSession,
  useWalk,
  WalkContext,
} from "./bridge/context.ts"
import { whenPainted } from "./bridge/painted.ts"
import { createProving, startProver } from "./bridge/proving.ts"
import type { Session } from "./bridge/session.ts"
import { createWalk, SCREENS, type Screen } from "./bridge/walk.ts"
import { DropFile } from "./parts/DropFile.tsx"
import { fetched } from "./parts/fetched.tsx"
import { MovedBar } from "./parts/MovedBar.tsx"
import { NoticeBar } from "./parts/NoticeBar.tsx"
import { Search } from "./parts/Search.tsx"
import { Trail } from "./parts/Trail.tsx"
import { UndoButtons } from "./parts/UndoButtons.tsx"
import { Start } from "./screens/start/Start.tsx"
import { SectionsButton } from "./screens/worksheet/SectionsButton.tsx"
import { Worksheet } from "./screens/worksheet/Worksheet.tsx"
import { windowClock } from "./storage/keeper.ts"
import { spoken } from "./text/spoken.ts"

/** Screens beside the worksheet, each fetched when first asked for. */
const FETCHED = {
  drawings: fetched(() => import("./screens/drawings/Drawings.tsx")),
  "cut-list": fetched(() => import("./screens/cut-list/CutList.tsx")),
  "buy-list": fetched(() => import("./screens/buy-list/BuyList.tsx")),
  "set-out": fetched(() => import("./screens/set-out/SetOut.tsx")),
  steps: fetched(() => import("./screens/steps/Steps.tsx")),
  "build-book": fetched(() => import("./screens/build-book/BuildBook.tsx")),
  compare: fetched(() => import("./screens/compare/Compare.tsx")),
  explore: fetched(() => import("./screens/explore/Explore.tsx")),
  changes: fetched(() => import("./screens/changes/Changes.tsx")),
} as const satisfies Partial<Record<Screen, Component>>

const fetchedOf = (screen: Screen): Component | undefined =>
  screen === "start" || screen === "worksheet" ? undefined : FETCHED[screen]

export function App(props: { readonly session: Session }) {
  const { session } = props
  const walk = createWalk((name) => session.sheet()?.has(name) ?? false)

  const proving = createProving(session.sheet, startProver, windowClock)
  createEffect(() => {
    const { look } = session.preferences()
    if (look === "device") delete document.documentElement.dataset.look
    else document.documentElement.dataset.look = look
  })
  createEffect(() => {
    document.title = `${session.title()} · ${spoken.product}`
  })
  // After the rows are made: effects come last.
  createEffect(
    on(session.current, (id, before) => {
      if (id === "") return
      if (before === undefined || before === "") walk.settle()
      else walk.reset()
    }),
  )

  return (
    <SessionContext.Provider value={session}>
      <WalkContext.Provider value={walk}>
        <ProvingContext.Provider value={proving}>
          <Page />
        </ProvingContext.Provider>
      </WalkContext.Provider>
    </SessionContext.Provider>
  )
}

/** Shown for the workbook that is open, and made anew for the next. */
function WithSheet(props: { readonly children: JSX.Element; readonly fallback?: JSX.Element }) {
  const session = useSession()
  return (
    <Show when={session.sheet()} keyed fallback={props.fallback}>
      {(sheet) => <SheetContext.Provider value={sheet}>{props.children}</SheetContext.Provider>}
    </Show>
  )
}

function Page() {
  const walk = useWalk()
  const session = useSession()
  return (
    <>
      <button type="button" class="skip small" onClick={() => document.getElementById("main")?.focus()}>
        {spoken.skip}
      </button>
      <div class="bar">
        <header class="top">
          <p class="product">{spoken.product}</p>
          <nav class="screens" aria-label={spoken.screens.label}>
            <For each={SCREENS}>{(screen) => <ScreenLink screen={screen} />}</For>
          </nav>
        </header>
        <Show when={walk.screen() !== "start"}>
          <div class="finder">
            <WithSheet>
              <Search />
              <UndoButtons />
              <Show when={walk.screen() === "worksheet"}>
                <SectionsButton />
              </Show>
            </WithSheet>
          </div>
        </Show>
      </div>
      <main id="main" tabindex={-1} aria-busy={session.sheet()?.settling() ? "true" : undefined}>
        <Show when={walk.screen() === "start"}>
          <Start />
        </Show>
        {/* Kept while another screen is shown, so that coming back is at once and where one was. */}
        <div hidden={walk.screen() !== "worksheet"}>
          <WithSheet fallback={<Opening />}>
            <Worksheet />
          </WithSheet>
        </div>
        <Show when={fetchedOf(walk.screen())}>
          {(screen) => (
            <WithSheet fallback={<Opening />}>
              <Suspense fallback={<Opening />}>
                <Dynamic component={screen()} />
              </Suspense>
            </WithSheet>
          )}
        </Show>
      </main>
      <DropFile />
      <div class="dock">
        <NoticeBar />
        <Show when={walk.screen() !== "start"}>
          <WithSheet>
            <Trail />
            <MovedBar />
          </WithSheet>
        </Show>
      </div>
    </>
  )
}

function Opening() {
  return (
    <p class="quiet" role="status" data-opening="">
      {spoken.opening}
    </p>
  )
}

function ScreenLink(props: { readonly screen: Screen }) {
  const walk = useWalk()
  let link: HTMLAnchorElement | undefined
  createEffect(() => {
    if (walk.screen() !== props.screen) return
    // After the frame: to ask where the link is before would lay out the whole sheet, rows out of sight too.
    onCleanup(whenPainted(() => link?.scrollIntoView({ block: "nearest", inline: "center" })))
  })
  return (
    <a
      ref={link}
      href={`#/${props.screen}`}
      aria-current={walk.screen() === props.screen ? "page" : undefined}
      onClick={(event) => {
        event.preventDefault()
        walk.show(props.screen)
      }}
    >
      {spoken.screens[props.screen]}
    </a>
  )
}
