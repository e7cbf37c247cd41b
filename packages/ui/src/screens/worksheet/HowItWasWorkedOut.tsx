import { Show } from "solid-js"
import { useSheet } from "../../bridge/context.ts"
import { FormulaText } from "../../parts/FormulaText.tsx"
import { spoken } from "../../text/spoken.ts"
import { LeanList } from "./LeanList.tsx"
import { Part } from "./Part.tsx"

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
          <Part title={spoken.detail.withValues}>
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
      <Part title={spoken.detail.leansOn}>
        <LeanList
          names={sheet.leansOn(props.name)}
          from={props.name}
          row={props.row}
          none={spoken.detail.leansOnNothing}
        />
      </Part>
      <Part title={spoken.detail.leanedOnBy}>
        <LeanList
          names={sheet.leanedOnBy(props.name)}
          from={props.name}
          row={props.row}
          none={spoken.detail.leanedOnByNothing}
        />
      </Part>
    </div>
  )
}
