import type { Definition, UnitSystem } from "@pegbook/engine"
import { TEMPLATES } from "@pegbook/templates"
import { For, Show } from "solid-js"
import { useSession, useWalk } from "../../bridge/context.ts"
import { en } from "../../text/en.ts"
import { Sketch } from "./Sketch.tsx"
import { WorkbookList } from "./WorkbookList.tsx"

const SYSTEMS: readonly UnitSystem[] = ["us", "metric"]

/** Where a workbook is begun, or gone on with. */
export function Start() {
  const session = useSession()
  const walk = useWalk()

  async function begin(definition: Definition): Promise<void> {
    await session.start(definition)
    walk.show("worksheet")
  }

  function toWorkbooks(): void {
    const title = document.getElementById("workbooks-title")
    title?.scrollIntoView({ block: "start" })
    title?.focus({ preventScroll: true })
  }

  return (
    <div class="start">
      <section class="start-kinds" aria-labelledby="start-title">
        <h1 id="start-title">{en.start.title}</h1>
        <p>{en.start.says}</p>
        <Show when={session.workbooks().length > 0}>
          <button type="button" class="plain to-workbooks" onClick={toWorkbooks}>
            {en.start.toWorkbooks(session.workbooks().length)}
          </button>
        </Show>
        <fieldset class="start-units" aria-describedby="start-units-say">
          <legend>{en.start.units}</legend>
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
                  <span>{en.systems[system]}</span>
                </label>
              )}
            </For>
          </div>
          <p class="quiet" id="start-units-say">
            {en.start.unitsSay}
          </p>
        </fieldset>
        <ul class="offers" aria-label={en.start.choices}>
          <For each={TEMPLATES}>
            {(definition) => (
              <li class="offer" data-template={definition.id}>
                <Sketch template={definition.id} />
                <div class="offer-says">
                  <h2>{definition.title}</h2>
                  <p>{definition.says}</p>
                  <button
                    type="button"
                    class="small main-action"
                    aria-label={en.start.beginSays(definition.title)}
                    onClick={() => void begin(definition)}
                  >
                    {en.start.begin}
                  </button>
                </div>
              </li>
            )}
          </For>
        </ul>
      </section>
      <WorkbookList />
    </div>
  )
}
