import { type EntryView, languageInForce } from "@pegbook/engine"
import { createMemo, Show, Suspense } from "solid-js"
import { useSheet, useWalk } from "../../bridge/context.ts"
import { Field } from "../../parts/Field.tsx"
import { fetched } from "../../parts/fetched.tsx"
import { Mark } from "../../parts/Mark.tsx"
import { spoken } from "../../text/spoken.ts"
import { Detail } from "./Detail.tsx"
import { fieldText, isField, rowModel, wasText } from "./row-model.ts"
import { createSight } from "./sight.ts"
import { UseButton } from "./UseButton.tsx"

const AskedPicture = fetched(() => import("../../pictures/AskedPicture.tsx"), { missed: false })

/** One entry of the sheet: one line, and its details while it is open. */
export function Row(props: { readonly name: string }) {
  const sheet = useSheet()
  const walk = useWalk()
  const open = () => walk.isOpen(props.name)
  const typing = () => walk.typingIn() === props.name
  let row!: HTMLLIElement
  const inSight = createSight(() => row)
  /** Some hundred rows follow an edit when it has been painted: only those in sight follow at once. */
  const seen = createMemo(() => walk.screen() === "worksheet" && (inSight() || open() || typing()))
  const reads = () => (seen() ? sheet : sheet.later)
  const view = createMemo(() => reads().entry(props.name))
  const model = createMemo(() => rowModel(view()))
  const moved = createMemo(() => reads().movedAt(props.name))

  /** The picture at another entry goes, and the field under the finger stays where it is. */
  function entered(field: HTMLElement): void {
    if (typing()) return
    const before = field.getBoundingClientRect().top
    walk.typeIn(props.name)
    window.scrollBy({ top: field.getBoundingClientRect().top - before, behavior: "instant" })
  }

  return (
    <li
      ref={row}
      class="row"
      classList={{
        "row-open": open(),
        "row-moved": moved().length > 0,
        "row-here": walk.at() === props.name,
      }}
      data-entry={props.name}
      data-kind={view().kind}
      data-state={view().state}
      data-verdict={view().check?.verdict}
    >
      <div class="row-line">
        <div class="row-what">
          <button
            type="button"
            class="row-toggle"
            data-open
            id={`open-${props.name}`}
            aria-expanded={open()}
            aria-controls={open() ? `detail-${props.name}` : undefined}
            onClick={() => walk.toggle(props.name)}
          >
            <span class="row-chevron" aria-hidden="true" />
            <span>{view().label}</span>
          </button>
          <span class="kind" title={spoken.kindSays[view().kind]}>
            {model().kind}
          </span>
          <UseButton name={props.name} />
        </div>

        <div class="row-value">
          <Show
            when={isField(view())}
            fallback={<Value view={view()} text={model().value} missing={model().missing} />}
          >
            <Field
              label={view().label}
              text={fieldText(view())}
              measure={view().measure}
              list={view().shape === "list"}
              choices={view().choices}
              blank={view().blank}
              describedBy={`how-${props.name}`}
              entered={entered}
              commit={(typed) => sheet.edit(props.name, typed)}
            />
          </Show>
          <Was view={view()} moved={moved()} />
        </div>

        <Show when={model().changed}>
          {(changed) => (
            <p class="row-changed">
              <span class="tag tag-own">{changed().says}</span>{" "}
              <button type="button" class="plain" onClick={() => sheet.restore(props.name)}>
                {changed().putBack}
              </button>
            </p>
          )}
        </Show>

        <div class="row-how" id={`how-${props.name}`}>
          <span classList={{ formula: model().how.formula }}>{model().how.text}</span>
        </div>

        <div class="row-from">
          <span>{model().from}</span>
          <Show when={model().memory}>
            {" "}
            <span class="tag tag-memory">{languageInForce().entries.sourceKinds.memory}</span>
          </Show>
        </div>
      </div>

      <Show when={typing() || open()}>
        <div class="row-picture">
          <Suspense>
            <AskedPicture name={props.name} label={view().label} />
          </Suspense>
        </div>
      </Show>

      <Show when={open()}>
        <div class="row-detail" id={`detail-${props.name}`}>
          <Detail name={props.name} />
        </div>
      </Show>
    </li>
  )
}

function Value(props: { readonly view: EntryView; readonly text: string; readonly missing: string }) {
  return (
    <Show
      when={props.view.check}
      fallback={
        <Show
          when={props.text !== ""}
          fallback={
            <span class="missing" data-value="">
              {props.missing}
            </span>
          }
        >
          <span class="value" data-value={props.text}>
            {props.text}
          </span>
        </Show>
      }
    >
      {(check) => (
        <span class={`verdict verdict-${check().verdict}`}>
          <Mark verdict={check().verdict} /> <span data-value={props.text}>{props.text}</span>
          <Show when={props.view.reading}>
            {(ratio) => (
              <span class="ratio" data-ratio={ratio().text}>
                {spoken.detail.ratio.toLowerCase()} {ratio().text}
              </span>
            )}
          </Show>
        </span>
      )}
    </Show>
  )
}

/** What the value was before the last change. */
function Was(props: {
  readonly view: EntryView
  readonly moved: ReturnType<ReturnType<typeof useSheet>["movedAt"]>
}) {
  return (
    <Show when={props.moved.length > 0}>
      <Show
        when={props.view.shape !== "table"}
        fallback={<span class="was">{spoken.moved.cells(props.moved.length)}</span>}
      >
        <span class="was">
          {props.view.check === undefined ? spoken.moved.was : spoken.moved.ratioWas}{" "}
          <span data-was={wasText(props.moved)}>{wasText(props.moved)}</span>
        </span>
      </Show>
    </Show>
  )
}
