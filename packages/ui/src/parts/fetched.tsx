import { type Component, createResource, Show } from "solid-js"
import { Dynamic } from "solid-js/web"
import { useSession } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

/**
 * A part of the page that is fetched when it is first shown. Where it cannot be had it says so, and what to do; what nobody
 * would miss is left out.
 */
export function fetched<Props extends object>(
  load: () => Promise<{ readonly default: Component<Props> }>,
  { missed = true }: { readonly missed?: boolean } = {},
): Component<Props> {
  let known: Component<Props> | undefined
  const first = async (): Promise<Component<Props>> => {
    known = (await load()).default
    return known
  }
  return (props) => {
    if (known !== undefined) return <Dynamic component={known} {...props} />
    const [part] = createResource(first)
    return (
      <Show when={part.error === undefined} fallback={missed && <Unfetched />}>
        <Show when={part()}>{(Part) => <Dynamic component={Part()} {...props} />}</Show>
      </Show>
    )
  }
}

/** A browser remembers of a file that it could not be had, for as long as the page is there: only a new page asks again. */
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
