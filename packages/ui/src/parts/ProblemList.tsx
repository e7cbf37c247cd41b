import { inWords, type Problem } from "@pegbook/engine"
import { For } from "solid-js"
import { useSheet } from "../bridge/context.ts"

/** Problems in words: what is wrong, and what to do next. */
export function ProblemList(props: { readonly problems: readonly Problem[] }) {
  const sheet = useSheet()
  return (
    <ul class="problems">
      <For each={props.problems}>
        {(problem) => {
          const words = () => inWords(problem, sheet.unitSystem())
          return (
            <li>
              <strong>{words().says}</strong> {words().next}
            </li>
          )
        }}
      </For>
    </ul>
  )
}
