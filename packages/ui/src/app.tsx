import { createEffect, Show } from "solid-js"
import { SessionContext, SheetContext, useWalk, WalkContext } from "./bridge/context.ts"
import type { Session } from "./bridge/session.ts"
import { createWalk, type Screen } from "./bridge/walk.ts"
import { MovedBar } from "./parts/MovedBar.tsx"
import { NoticeBar } from "./parts/NoticeBar.tsx"
import { Search } from "./parts/Search.tsx"
import { Trail } from "./parts/Trail.tsx"
import { Compare } from "./screens/compare/Compare.tsx"
import { SectionsButton } from "./screens/worksheet/SectionsButton.tsx"
import { Worksheet } from "./screens/worksheet/Worksheet.tsx"
import { en } from "./text/en.ts"

export function App(props: { readonly session: Session }) {
  const { session } = props
  const walk = createWalk((name) => session.sheet().has(name))

  createEffect(() => {
    const { look } = session.preferences()
    if (look === "device") delete document.documentElement.dataset.look
    else document.documentElement.dataset.look = look
  })
  createEffect(() => {
    document.title = `${session.sheet().definition.title} · ${en.product}`
  })

  return (
    <SessionContext.Provider value={session}>
      <WalkContext.Provider value={walk}>
        <Show when={session.sheet()} keyed>
          {(sheet) => (
            <SheetContext.Provider value={sheet}>
              <Page />
            </SheetContext.Provider>
          )}
        </Show>
      </WalkContext.Provider>
    </SessionContext.Provider>
  )
}

function Page() {
  const walk = useWalk()
  return (
    <>
      <button type="button" class="skip small" onClick={() => document.getElementById("main")?.focus()}>
        {en.skip}
      </button>
      <div class="bar">
        <header class="top">
          <p class="product">{en.product}</p>
          <nav class="screens" aria-label={en.screens.label}>
            <ScreenLink screen="worksheet" />
            <ScreenLink screen="compare" />
          </nav>
        </header>
        <div class="finder">
          <Search />
          <Show when={walk.screen() === "worksheet"}>
            <SectionsButton />
          </Show>
        </div>
      </div>
      <main id="main" tabindex={-1}>
        {/* Kept while another screen is shown, so that coming back is at once and where one was. */}
        <div hidden={walk.screen() !== "worksheet"}>
          <Worksheet />
        </div>
        <Show when={walk.screen() === "compare"}>
          <Compare />
        </Show>
      </main>
      <div class="dock">
        <NoticeBar />
        <Trail />
        <MovedBar />
      </div>
    </>
  )
}

function ScreenLink(props: { readonly screen: Screen }) {
  const walk = useWalk()
  return (
    <a
      href={`#/${props.screen}`}
      aria-current={walk.screen() === props.screen ? "page" : undefined}
      onClick={(event) => {
        event.preventDefault()
        walk.show(props.screen)
      }}
    >
      {en.screens[props.screen]}
    </a>
  )
}
