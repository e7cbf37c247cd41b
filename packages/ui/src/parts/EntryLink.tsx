import type { JSX } from "solid-js"
import { useWalk } from "../bridge/context.ts"
import { addressOf, tableAndColumn } from "../bridge/walk.ts"

/**
 * A way to an entry. `from` is where the reader stands, and joins the trail. `row` is the row they are in, kept while
 * they stay in the same table.
 */
export function EntryLink(props: {
  readonly name: string
  readonly from?: string | undefined
  readonly row?: number | undefined
  readonly class?: string
  readonly children: JSX.Element
}) {
  const walk = useWalk()
  const tableOf = (name: string) => tableAndColumn(name).table
  const row = () => (tableOf(props.from ?? props.name) === tableOf(props.name) ? props.row : undefined)
  return (
    <a
      class={props.class ?? "entry-link"}
      href={addressOf({ screen: "worksheet", at: props.name })}
      onClick={(event) => {
        // A press with a key held opens a tab of its own, as everywhere.
        if (event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return
        event.preventDefault()
        walk.go(props.name, props.from, row())
      }}
    >
      {props.children}
    </a>
  )
}
