import { shownAs } from "@pegbook/engine"
import { For, Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { Explained } from "../../parts/Explained.tsx"
import { ProblemList } from "../../parts/ProblemList.tsx"
import { ShowDrawn } from "../../parts/ShowDrawn.tsx"
import { SourceList } from "../../parts/SourceList.tsx"
import { spoken } from "../../text/spoken.ts"
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
      <p class="why">
        <Explained text={view().why} />
      </p>
      <ShowDrawn name={props.name} />
      <Show when={view().problems.length > 0}>
        <Part title={spoken.detail.problems}>
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
        title={view().shape === "table" ? spoken.detail.howManyRows : spoken.detail.formula}
      />
      <Leaning name={props.name} />
      <Show when={view().check === undefined && view().cautions.length > 0}>
        <Part title={spoken.detail.cautions}>
          <ul class="cautions">
            <For each={view().cautions}>{(caution) => <li>{caution}</li>}</For>
          </ul>
        </Part>
      </Show>
      <Part title={spoken.detail.sources}>
        <SourceList sources={view().sources} />
      </Part>
      <p class="quiet detail-name">
        {spoken.detail.name} <code>{props.name}</code> · {spoken.kindSays[view().kind]}
      </p>
    </>
  )
}

/** What is accepted, as it was typed, and a figure's place for a value of one's own. */
function Given(props: { readonly name: string }) {
  const sheet = useSheet()
  const view = () => sheet.entry(props.name)
  const shown = (kept: string | undefined) => shownAs(kept ?? "", view().measure, view().shape === "list")
  const typedOtherwise = () => {
    const typed = shown(view().typed)
    return isField(view()) && typed !== "" && typed !== fieldText(view()) ? typed : undefined
  }
  return (
    <>
      <Show when={isField(view())}>
        <dl class="facts">
          <Show when={view().accepts}>
            {(accepts) => (
              <>
                <dt>{spoken.detail.accepted}</dt>
                <dd>{accepts()}</dd>
              </>
            )}
          </Show>
          <Show when={typedOtherwise()}>
            {(typed) => (
              <>
                <dt>{spoken.detail.typedAs}</dt>
                <dd>{typed()}</dd>
              </>
            )}
          </Show>
          <Show when={view().shape === "list" && view().reading}>
            {(reading) => (
              <>
                <dt>{spoken.detail.readAs}</dt>
                <dd>{reading().text}</dd>
              </>
            )}
          </Show>
          <Show when={shown(view().original)}>
            {(original) => (
              <>
                <dt>{spoken.detail.original}</dt>
                <dd>{original()}</dd>
              </>
            )}
          </Show>
        </dl>
      </Show>
      <Show when={view().kind === "figure" && view().shape === "one"}>
        <dl class="facts">
          <dt>{spoken.detail.published}</dt>
          <dd>{shown(view().original)}</dd>
        </dl>
      </Show>
      <Show when={view().shape === "one" && (view().kind === "figure" || view().kind === "formula")}>
        <TypeOver
          name={props.name}
          label={spoken.over.label(view().label)}
          text={view().kind === "figure" || view().changed ? fieldText(view()) : ""}
          measure={view().measure}
          over={view().overrides?.[0]}
          title={view().kind === "figure" ? spoken.over.original : spoken.over.originalNow}
        />
      </Show>
    </>
  )
}
