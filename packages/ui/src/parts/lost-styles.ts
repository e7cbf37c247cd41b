/**
 * Style sheets that could not be fetched. What loads a part of the page asks for its style sheets once: without this a part
 * that comes when the network is back would stay without them.
 */
const lost = new Set<HTMLLinkElement>()

/** Takes note of style sheets that cannot be had, from now on. */
export function watchStyles(): void {
  document.addEventListener(
    "error",
    ({ target }) => {
      if (target instanceof HTMLLinkElement && target.rel === "stylesheet") lost.add(target)
    },
    true,
  )
}

/** Asks again for the style sheets that could not be had. Rejects when one still cannot. */
export async function askForLostStyles(): Promise<void> {
  await Promise.all([...lost].map(askAgain))
}

function askAgain(link: HTMLLinkElement): Promise<void> {
  lost.delete(link)
  const again = link.cloneNode() as HTMLLinkElement
  return new Promise((resolve, reject) => {
    again.addEventListener("load", () => resolve())
    again.addEventListener("error", () => reject(new Error(`no style sheet ${again.href}`)))
    link.replaceWith(again)
  })
}
