import { type Drawing, type Problem, resolveDrawing } from "@pegbook/engine"
import { createEffect, createMemo, createSignal, For, Show } from "solid-js"
import { useSheet, useWalk } from "../../bridge/context.ts"
import type { Lit } from "../../bridge/walk.ts"
import { ProblemList } from "../../parts/ProblemList.tsx"
import { spoken } from "../../text/spoken.ts"
import { chooseDrawing, chooseShown, chosenDrawing, chosenShown } from "./chosen.ts"
import { DrawnList } from "./DrawnList.tsx"
import "./drawings.css"
import { Layers } from "./Layers.tsx"
import { MemberCurves } from "./MemberCurves.tsx"
import { Picture } from "./Picture.tsx"
import { PointedAt } from "./PointedAt.tsx"
import { isLit, thingsOf } from "./things.ts"

/** The drawings of the open workbook: one at a time, with its layers, and what is pointed at in it. */
export default function Drawings() {
  const sheet = useSheet()
  const drawings = () => sheet.definition.drawings ?? []
  const drawing = createMemo(
    () => drawings().find((one) => one.id === chosenDrawing(sheet.definition.id)) ?? drawings()[0],
  )
  return (
    <div class="drawings">
      <h1>{spoken.drawings.title}</h1>
      <Show when={drawing()} keyed fallback={<p>{spoken.drawings.none}</p>}>
        {(one) => (
          <>
            <Choice drawings={drawings()} chosen={one} />
            <OneDrawing drawing={one} drawings={drawings()} />
          </>
        )}
      </Show>
      <MemberCurves />
    </div>
  )
}

/** Side by side where there is room, in a list where there is not. */
function Choice(props: { readonly drawings: readonly Drawing[]; readonly chosen: Drawing }) {
  const sheet = useSheet()
  const choose = (id: string) => chooseDrawing(sheet.definition.id, id)
  return (
    <>
      <fieldset class="drawing-tabs">
        <legend class="hidden-text">{spoken.drawings.choose}</legend>
        <For each={props.drawings}>
          {(one) => (
            <button
              type="button"
              class="drawing-tab"
              aria-pressed={one.id === props.chosen.id}
              data-drawing={one.id}
              onClick={() => choose(one.id)}
            >
              {one.title}
            </button>
          )}
        </For>
      </fieldset>
      <label class="drawing-select">
        <span class="block-caption">{spoken.drawings.choose}</span>
        <select class="field" onChange={(event) => choose(event.currentTarget.value)}>
          <For each={props.drawings}>
            {(one) => (
              <option value={one.id} selected={one.id === props.chosen.id}>
                {one.title}
              </option>
            )}
          </For>
        </select>
      </label>
    </>
  )
}

function OneDrawing(props: { readonly drawing: Drawing; readonly drawings: readonly Drawing[] }) {
  const sheet = useSheet()
  const walk = useWalk()
  const [apart, setApart] = createSignal(true)
  const [pointed, setPointed] = createSignal<Lit>()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])

  const drawn = createMemo(() => resolveDrawing(props.drawing, sheet, { apart: apart() }))
  /** The outlines as they were before the last change, where they are not what they were. */
  const ghost = createMemo(() => {
    const outlines = new Set(props.drawing.layers.filter((one) => one.outline).map((one) => one.id))
    const before = sheet.before()
    if (before === undefined || outlines.size === 0) return []
    const shapes = props.drawing.shapes.filter((shape) => outlines.has(shape.layer))
    const was = resolveDrawing({ ...props.drawing, shapes }, before).shapes
    const is = drawn().shapes.filter((shape) => outlines.has(shape.layer))
    const points = (all: readonly object[]) =>
      JSON.stringify(all.map((shape) => ("points" in shape ? shape.points : [])))
    return points(was) === points(is) ? [] : was
  })

  const layerKey = (id: string) => `${sheet.definition.id}/${props.drawing.id}/${id}`
  const isShown = (id: string) =>
    chosenShown(layerKey(id)) ?? props.drawing.layers.find((layer) => layer.id === id)?.startsHidden !== true
  const things = createMemo(() => thingsOf(drawn().shapes))
  const lit = () => walk.lit()

  // Where something is to be shown that this drawing has not, another may have it.
  const [missing, setMissing] = createSignal<Lit>()
  createEffect(() => {
    const wanted = lit()
    setMissing(undefined)
    if (wanted === undefined) return
    const has = (drawing: Drawing) =>
      resolveDrawing(drawing, sheet).shapes.find((one) => isLit(one.of, wanted))
    const here = drawn().shapes.find((one) => isLit(one.of, wanted))
    if (here !== undefined) {
      if (!isShown(here.layer)) chooseShown(layerKey(here.layer), true)
      return
    }
    const other = props.drawings.find((one) => has(one) !== undefined)
    if (other === undefined) setMissing(wanted)
    else chooseDrawing(sheet.definition.id, other.id)
  })

  return (
    <>
      <p class="quiet drawing-says">{props.drawing.says}</p>
      <Show when={missing()}>{(one) => <p role="status">{spoken.drawings.notDrawn(nameOf(one()))}</p>}</Show>
      <Show
        when={drawn().bounds}
        fallback={<p class="drawing-empty">{props.drawing.empty ?? spoken.drawings.nothing}</p>}
      >
        {(bounds) => (
          <Picture
            drawing={props.drawing}
            drawn={drawn()}
            bounds={bounds()}
            ghost={ghost()}
            isShown={isShown}
            lit={lit()}
            pointed={pointed()}
            point={setPointed}
            choose={(one) => walk.light(one)}
            nameOf={nameOf}
            change={(name, typed) => {
              const { accepted, problems } = sheet.edit(name, typed)
              if (!accepted) sheet.endPreview()
              setProblems(problems)
            }}
            preview={(name, typed) => setProblems(sheet.preview(name, typed).problems)}
            endPreview={() => {
              sheet.endPreview()
              setProblems([])
            }}
          />
        )}
      </Show>
      <Show when={problems().length > 0}>
        <div role="alert">
          <ProblemList problems={problems()} />
        </div>
      </Show>
      <Show when={ghost().length > 0}>
        <p class="quiet" data-ghost-says>
          {spoken.drawings.before}
        </p>
      </Show>
      <div class="drawing-below">
        <PointedAt things={things()} pointed={pointed()} lit={lit()} nameOf={nameOf} />
        <Layers
          layers={props.drawing.layers}
          isShown={isShown}
          show={(id, shown) => chooseShown(layerKey(id), shown)}
          apart={props.drawing.look === "pictorial" ? apart() : undefined}
          pull={setApart}
        />
      </div>
      <DrawnList drawn={drawn()} drawing={props.drawing} things={things()} />
    </>
  )

  function nameOf({ name, row }: Lit): string {
    const label = sheet.label(name)
    return row === undefined ? label : spoken.drawings.row(label, row)
  }
}
