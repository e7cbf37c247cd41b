import { For, type JSX, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { Field } from "../../parts/Field.tsx"
import { FormulaText } from "../../parts/FormulaText.tsx"
import { ProblemList } from "../../parts/ProblemList.tsx"
import { SourceList } from "../../parts/SourceList.tsx"
import { en } from "../../text/en.ts"
import { CheckDetail } from "./CheckDetail.tsx"
import { LeanList } from "./LeanList.tsx"
import { fieldText, isField } from "./row-model.ts"
import { SolverDetail } from "./SolverDetail.tsx"
import { TableDetail } from "./TableDetail.tsx"

/** All that is known of an entry, for whoever asks why. */
export function Detail(props: { readonly name: string }) {
  const sheet = useSheet()
  const view = () => sheet.entry(props.name)
  return (
    <>
      <p class="why">{view().why}</p>
      <Show when={view().problems.length > 0}>
        <Part title={en.detail.problems}>
          <ProblemList problems={view().problems} />
        </Part>
      </Show>
      <Show when={view().check}>{(check) => <CheckDetail check={check()} reading={view().reading} />}</Show>
      <Show when={view().report}>
        {(report) => <SolverDetail report={report()} reached={view().reached} />}
      </Show>
      <Show when={view().shape === "table"}>
        <TableDetail name={props.name} />
      </Show>
      <Given name={props.name} />
      <HowItWasWorkedOut
        name={props.name}
        title={view().shape === "table" ? en.detail.howManyRows : en.detail.formula}
      />
      <Leaning name={props.name} />
      <Show when={view().cautions.length > 0}>
        <Part title={en.detail.cautions}>
          <ul class="cautions">
            <For each={view().cautions}>{(caution) => <li>{caution}</li>}</For>
          </ul>
        </Part>
      </Show>
      <Part title={en.detail.sources}>
        <SourceList sources={view().sources} />
      </Part>
      <p class="quiet detail-name">
        {en.detail.name} <code>{props.name}</code> · {en.kindSays[view().kind]}
      </p>
    </>
  )
}

/** One titled part of an entry's details. */
export function Part(props: { readonly title: string; readonly children: JSX.Element }) {
  return (
    <section class="part">
      <h3>{props.title}</h3>
      {props.children}
    </section>
  )
}

/** What is accepted, as it was typed, and a figure's place for a value of one's own. */
function Given(props: { readonly name: string }) {
  const sheet = useSheet()
  const view = () => sheet.entry(props.name)
  const typedOtherwise = () => {
    const { typed } = view()
    return isField(view()) && typed !== undefined && typed !== "" && typed !== fieldText(view())
      ? typed
      : undefined
  }
  return (
    <>
      <Show when={isField(view())}>
        <dl class="facts">
          <Show when={view().accepts}>
            {(accepts) => (
              <>
                <dt>{en.detail.accepted}</dt>
                <dd>{accepts()}</dd>
              </>
            )}
          </Show>
          <Show when={typedOtherwise()}>
            {(typed) => (
              <>
                <dt>{en.detail.typedAs}</dt>
                <dd>{typed()}</dd>
              </>
            )}
          </Show>
          <Show when={view().shape === "list" && view().reading}>
            {(reading) => (
              <>
                <dt>{en.detail.readAs}</dt>
                <dd>{reading().text}</dd>
              </>
            )}
          </Show>
          <Show when={view().original}>
            {(original) => (
              <>
                <dt>{en.detail.original}</dt>
                <dd>{original()}</dd>
              </>
            )}
          </Show>
        </dl>
      </Show>
      <Show when={view().kind === "figure" && view().shape === "one"}>
        <dl class="facts">
          <dt>{en.detail.published}</dt>
          <dd>{view().original}</dd>
          <dt>{en.detail.ownValueSays}</dt>
          <dd>
            <Field
              label={en.detail.ownValue(view().label)}
              text={fieldText(view())}
              measure={view().measure}
              commit={(typed) => sheet.edit(props.name, typed)}
            />
          </dd>
        </dl>
      </Show>
    </>
  )
}

/** The formula, and the same with values put in. */
export function HowItWasWorkedOut(props: {
  readonly name: string
  readonly title: string
  readonly row?: number
}) {
  const sheet = useSheet()
  const working = () => sheet.working(props.name, props.row)
  return (
    <Show when={working()}>
      {(worked) => (
        <>
          <Part title={props.title}>
            <FormulaText
              formula={worked().formula}
              from={props.name}
              table={sheet.entry(props.name).table}
              row={props.row}
            />
          </Part>
          <Part title={en.detail.withValues}>
            <code class="formula" data-with-values>
              {worked().withValues}
            </code>
          </Part>
        </>
      )}
    </Show>
  )
}

/** What it leans on and what leans on it; each a way to walk on. */
export function Leaning(props: { readonly name: string; readonly row?: number }) {
  const sheet = useSheet()
  return (
    <div class="leaning">
      <Part title={en.detail.leansOn}>
        <LeanList
          names={sheet.leansOn(props.name)}
          from={props.name}
          row={props.row}
          none={en.detail.leansOnNothing}
        />
      </Part>
      <Part title={en.detail.leanedOnBy}>
        <LeanList
          names={sheet.leanedOnBy(props.name)}
          from={props.name}
          row={props.row}
          none={en.detail.leanedOnByNothing}
        />
      </Part>
    </div>
  )
}
