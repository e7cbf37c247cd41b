import type { UnitSystem } from "@pegbook/engine"
import { createMemo, createSignal, For, Show } from "solid-js"
import { useSession, useSheet, useWalk } from "../../bridge/context.ts"
import { EntryLink } from "../../parts/EntryLink.tsx"
import { OpenFileButton, SaveFileButton } from "../../parts/FileButtons.tsx"
import { KeptNote } from "../../parts/KeptNote.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { ScenarioBox } from "../../parts/ScenarioBox.tsx"
import type { Look } from "../../storage/preferences.ts"
import { spoken } from "../../text/spoken.ts"
import { nearestToLimit, standings } from "./standing.ts"

const LOOKS: readonly Look[] = ["device", "light", "dark"]
const SYSTEMS: readonly UnitSystem[] = ["us", "metric"]

/** What a drawing says in its corner: which work this is, in which state, in which units, and how it stands. */
export function TitleBlock() {
  const sheet = useSheet()
  const session = useSession()
  const walk = useWalk()
  const [all, setAll] = createSignal(false)
  function showIn(system: UnitSystem): void {
    sheet.showIn(system)
    session.prefer({ unitSystem: system })
  }
  function saveOpenDocument(): void {
    void import("../exchange/save.ts").then(
      (loaded) => loaded.saveOpenDocument(sheet, session.title()),
      () => session.say(spoken.unfetched),
    )
  }
  function showGuide(): void {
    session.prefer({ guideDismissed: false })
    const guide = document.querySelector<HTMLDetailsElement>("#guide")
    if (guide !== null) guide.open = true
    const title = document.getElementById("guide-title")
    title?.scrollIntoView({ block: "center" })
    title?.focus({ preventScroll: true })
  }

  return (
    <section class="title-block" classList={{ "title-block-all": all() }} aria-label={spoken.block.label}>
      <div class="block block-workbook">
        <p class="block-caption">{spoken.block.workbook}</p>
        <h1>{session.title()}</h1>
        <p class="quiet workbook-says">{sheet.definition.says}</p>
        <button type="button" class="small workbook-own" onClick={() => walk.show("start")}>
          {session.kept().kind === "nothing" ? spoken.start.own : spoken.start.another}
        </button>
      </div>
      <div class="block block-fold">
        <button type="button" class="plain" aria-expanded={all()} onClick={() => setAll((was) => !was)}>
          {spoken.block.more(sheet.scenario().title)}
        </button>
      </div>
      <div class="block block-scenario">
        <p class="block-caption">{spoken.block.scenario}</p>
        <ScenarioBox />
      </div>
      <fieldset class="block block-units">
        <legend class="block-caption">{spoken.block.shownIn}</legend>
        <div class="choices">
          <For each={SYSTEMS}>
            {(system) => (
              <label class="choice">
                <input
                  type="radio"
                  name="unit-system"
                  value={system}
                  checked={sheet.unitSystem() === system}
                  onChange={() => showIn(system)}
                />
                <span>{spoken.systems[system]}</span>
              </label>
            )}
          </For>
        </div>
        <LookChooser />
      </fieldset>
      <div class="block block-checks">
        <p class="block-caption">{spoken.block.checks}</p>
        <Checks />
      </div>
      <div class="block block-kept">
        <p class="block-caption">{spoken.block.kept}</p>
        <KeptNote />
        <p class="actions">
          <SaveFileButton class="plain" />
          <OpenFileButton class="plain" />
          <button type="button" class="plain" onClick={() => session.startAgain()}>
            {spoken.startAgain}
          </button>
          <button type="button" class="plain" onClick={saveOpenDocument}>
            {spoken.exchange.saveOpenDocument}
          </button>
          <button type="button" class="plain" onClick={showGuide}>
            {spoken.guide.show}
          </button>
        </p>
      </div>
    </section>
  )
}

/** How many checks stand how, each a way to the first of them; and what is still blank. */
function Checks() {
  const sheet = useSheet()
  const standing = createMemo(() => standings(sheet.checks().map(sheet.later.entry)))
  const nearest = createMemo(() =>
    nearestToLimit(sheet.checks().filter(sheet.hasRemedies).map(sheet.later.entry)),
  )
  const blank = createMemo(() =>
    sheet.inputs().filter((name) => sheet.later.entry(name).state === "needs_entry"),
  )
  return (
    <>
      <Show when={standing().length > 0} fallback={<p class="quiet">{spoken.noChecks}</p>}>
        <ul class="standing">
          <For each={standing()}>
            {(one) => (
              <Show when={one.names[0]}>
                {(first) => (
                  <li>
                    <EntryLink name={first()} class={`verdict verdict-${one.verdict}`}>
                      <Mark verdict={one.verdict} /> {spoken.checkCount(one.verdict, one.names.length)}
                      <span class="hidden-text">. {spoken.goToFirst(one.verdict)}</span>
                    </EntryLink>
                  </li>
                )}
              </Show>
            )}
          </For>
        </ul>
      </Show>
      <Show when={nearest()}>
        {(view) => (
          <p>
            {spoken.verdict.nearest}{" "}
            <EntryLink name={view().name}>
              {view().label} {view().reading?.text}
            </EntryLink>
          </p>
        )}
      </Show>
      <Show when={blank()[0]}>
        {(first) => (
          <p>
            <EntryLink name={first()}>{spoken.blankInputs(blank().length)}</EntryLink>
          </p>
        )}
      </Show>
    </>
  )
}

/** Light, dark, or as the device has it. */
function LookChooser() {
  const session = useSession()
  return (
    <label class="look">
      <span>{spoken.block.look}</span>
      <select onChange={(event) => session.prefer({ look: event.currentTarget.value as Look })}>
        <For each={LOOKS}>
          {(look) => (
            <option value={look} selected={session.preferences().look === look}>
              {spoken.look[look]}
            </option>
          )}
        </For>
      </select>
    </label>
  )
}
