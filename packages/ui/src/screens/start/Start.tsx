import { type LanguageId, languageInForce, type UnitSystem } from "@pegbook/engine"
import { offers } from "@pegbook/templates"
import { For, Show } from "solid-js"
import { useSession, useWalk } from "../../bridge/context.ts"
import { spoken } from "../../text/spoken.ts"
import { Sketch } from "./Sketch.tsx"
import { Words } from "./Words.tsx"
import { WorkbookList } from "./WorkbookList.tsx"

const SYSTEMS: readonly UnitSystem[] = ["us", "metric"]
/** Each is called by its own name, so that who reads only one finds it. */
const LANGUAGES: readonly (readonly [id: LanguageId, name: string, tag: string])[] = [
  ["en", "English", "en"],
  ["fr", "Français", "fr-CA"],
]

/** Where a workbook is begun, or gone on with. */
export function Start() {
  const session = useSession()
  const walk = useWalk()

  async function begin(template: string): Promise<void> {
    if (await session.start(template)) walk.show("worksheet")
  }

  function toWorkbooks(): void {
    const title = document.getElementById("workbooks-title")
    title?.scrollIntoView({ block: "start" })
    title?.focus({ preventScroll: true })
  }

  return (
    <div class="start">
      <section class="start-kinds" aria-labelledby="start-title">
        <h1 id="start-title">{spoken.start.title}</h1>
        <p>{spoken.start.says}</p>
        <Show when={session.workbooks().length > 0}>
          <button type="button" class="plain to-workbooks" onClick={toWorkbooks}>
            {spoken.start.toWorkbooks(session.workbooks().length)}
          </button>
        </Show>
        <fieldset class="start-units" aria-describedby="start-units-say">
          <legend>{spoken.start.units}</legend>
          <div class="choices">
            <For each={SYSTEMS}>
              {(system) => (
                <label class="choice">
                  <input
                    type="radio"
                    name="start-units"
                    value={system}
                    checked={session.unitSystem() === system}
                    onChange={() => session.prefer({ unitSystem: system })}
                  />
                  <span>{spoken.systems[system]}</span>
                </label>
              )}
            </For>
          </div>
          <p class="quiet" id="start-units-say">
            {spoken.start.unitsSay}
          </p>
        </fieldset>
        <fieldset class="start-units">
          <legend>{spoken.start.language}</legend>
          <div class="choices">
            <For each={LANGUAGES}>
              {([id, name, tag]) => (
                <label class="choice">
                  <input
                    type="radio"
                    name="start-language"
                    value={id}
                    checked={languageInForce().id === id}
                    onChange={() => void session.speakIn(id)}
                  />
                  <span lang={tag}>{name}</span>
                </label>
              )}
            </For>
          </div>
        </fieldset>
        <ul class="offers" aria-label={spoken.start.choices}>
          <For each={offers()}>
            {(one) => (
              <li class="offer" data-template={one.id}>
                <Sketch template={one.id} />
                <div class="offer-says">
                  <h2>{one.title}</h2>
                  <p>{one.says}</p>
                  <button
                    type="button"
                    class="small main-action"
                    aria-label={spoken.start.beginSays(one.title)}
                    onClick={() => void begin(one.id)}
                  >
                    {spoken.start.begin}
                  </button>
                </div>
              </li>
            )}
          </For>
        </ul>
      </section>
      <WorkbookList />
      <Words />
    </div>
  )
}
