import type { JSX } from "solid-js"
import { isServer } from "solid-js/web"
import { useWalk } from "../bridge/context.ts"
import { addressOf, tableAndColumn } from "../bridge/walk.ts"

/**
 * A way to an entry. `from` is where the reader stands, and joins the trail. `row` is the row they are in, kept while
 * they stay in the same table. In a book that is made without a page, from where no way leads, only what it says.
 */
export function EntryLink(props: {
  readonly name: string
  readonly from?: string | undefined
  readonly row?: number | undefined
  readonly class?: string
  readonly children: JSX.Element
}) {
  if (isServer) return <>{props.children}</>
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
