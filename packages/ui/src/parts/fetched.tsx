import { type Component, createResource, onCleanup, Show } from "solid-js"
import { Dynamic } from "solid-js/web"
import { useSession } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"
import { askForLostStyles } from "./lost-styles.ts"

/**
 * A part of the page that is fetched when it is first shown. Where it cannot be had it says so, and what to do, and asks again
 * when the network is back; what nobody would miss is left out.
 */
export function fetched<Props extends object>(
  load: () => Promise<{ readonly default: Component<Props> }>,
  { missed = true }: { readonly missed?: boolean } = {},
): Component<Props> {
  let known: Component<Props> | undefined
  const first = async (): Promise<Component<Props>> => {
    await askForLostStyles()
    known = (await load()).default
    return known
  }
  return (props) => {
    if (known !== undefined) return <Dynamic component={known} {...props} />
    const [part, { refetch }] = createResource(first)
    const askAgain = () => part.error !== undefined && void refetch()
    window.addEventListener("online", askAgain)
    onCleanup(() => window.removeEventListener("online", askAgain))
    return (
      <Show when={part.error === undefined} fallback={missed && <Unfetched />}>
        <Show when={part()}>{(Part) => <Dynamic component={Part()} {...props} />}</Show>
      </Show>
    )
  }
}

/** Some browsers remember of a file that it could not be had, for as long as the page is there: in them only a new page asks again. */
function Unfetched() {
  const session = useSession()
  return (
    <div class="unfetched" role="alert">
      <p>{spoken.unfetched}</p>
      <button type="button" class="small main-action" onClick={() => void session.reload()}>
        {spoken.updates.reload}
      </button>
    </div>
  )
}
