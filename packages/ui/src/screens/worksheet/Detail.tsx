import { For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { ProblemList } from "../../parts/ProblemList.tsx"
import { ShowDrawn } from "../../parts/ShowDrawn.tsx"
import { SourceList } from "../../parts/SourceList.tsx"
import { en } from "../../text/en.ts"
import { CheckDetail } from "./CheckDetail.tsx"
import { HowItWasWorkedOut, Leaning } from "./HowItWasWorkedOut.tsx"
import { Part } from "./Part.tsx"
import { fieldText, isField } from "./row-model.ts"
import { SolverDetail } from "./SolverDetail.tsx"
import { TableDetail } from "./TableDetail.tsx"
import { TypeOver } from "./TypeOver.tsx"

/** All that is known of an entry, for whoever asks why. */
export function Detail(props: { readonly name: string }) {
  const sheet = useSheet()
  const view = () => sheet.entry(props.name)
  return (
    <>
      <p class="why">{view().why}</p>
      <ShowDrawn name={props.name} />
      <Show when={view().problems.length > 0}>
        <Part title={en.detail.problems}>
          <ProblemList problems={view().problems} />
        </Part>
      </Show>
      <Show when={view().check}>{(check) => <CheckDetail view={view()} check={check()} />}</Show>
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
      <Show when={view().check === undefined && view().cautions.length > 0}>
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
        </dl>
      </Show>
      <Show when={view().shape === "one" && (view().kind === "figure" || view().kind === "formula")}>
        <TypeOver
          name={props.name}
          label={en.over.label(view().label)}
          text={view().kind === "figure" || view().changed ? fieldText(view()) : ""}
          measure={view().measure}
          over={view().overrides?.[0]}
          title={view().kind === "figure" ? en.over.original : en.over.originalNow}
        />
      </Show>
    </>
  )
}
