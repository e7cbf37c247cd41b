import { type Accessor, createSignal, onCleanup, onMount } from "solid-js"

/**
 * Whether the browser lays out an element that it may leave out while it is out of sight (`content-visibility: auto`): one in
 * sight, or nearly. Not before it was first painted, nor in a browser that does not tell.
 *
 * Source: CSS Containment Module Level 2, section 4.5, the ContentVisibilityAutoStateChange event.
 */
export function createSight(element: () => Element): Accessor<boolean> {
  const [inSight, setInSight] = createSignal(false)
  onMount(() => {
    const told = (event: Event) => {
      // It bubbles from rows in a row.
      if (event.target === element()) setInSight(!(event as ContentVisibilityAutoStateChangeEvent).skipped)
    }
    element().addEventListener(EVENT, told)
    onCleanup(() => element().removeEventListener(EVENT, told))
  })
  return inSight
}

const EVENT = "contentvisibilityautostatechange"
