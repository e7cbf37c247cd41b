/** Up and Down go from one entry's title to the next: there are hundreds, and the fields between have Tab. */
export function stepRow(event: KeyboardEvent & { readonly currentTarget: HTMLElement }): void {
  const way = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0
  const title = event.target as HTMLElement
  if (way === 0 || !title.matches("[data-open]")) return
  const titles = [...event.currentTarget.querySelectorAll<HTMLElement>("[data-open]")]
  const next = titles[titles.indexOf(title) + way]
  if (next === undefined) return
  event.preventDefault()
  next.focus()
}
