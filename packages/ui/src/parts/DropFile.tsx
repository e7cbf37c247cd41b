import { createSignal, onCleanup, Show } from "solid-js"
import { useSession, useWalk } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

/** Opens the file that is let go over the page: the browser would show it in place of the page. */
export function DropFile() {
  const session = useSession()
  const walk = useWalk()
  const [over, setOver] = createSignal(false)

  /** A field for files takes its own. */
  const isOurs = ({ dataTransfer, target }: DragEvent): boolean =>
    (dataTransfer?.types.includes("Files") ?? false) &&
    !(target instanceof HTMLInputElement && target.type === "file")

  function drag(event: DragEvent): void {
    const ours = isOurs(event)
    setOver(ours)
    if (ours) event.preventDefault()
  }
  function leave(event: DragEvent): void {
    if (event.relatedTarget === null) setOver(false)
  }
  function drop(event: DragEvent): void {
    setOver(false)
    if (!isOurs(event)) return
    event.preventDefault()
    void open([...(event.dataTransfer?.files ?? [])])
  }
  async function open(files: readonly File[]): Promise<void> {
    for (const file of files) if (await session.openFile(file)) walk.show("worksheet")
  }

  const heard = { dragover: drag, dragleave: leave, drop } as const
  for (const [kind, listener] of Object.entries(heard))
    document.addEventListener(kind as keyof typeof heard, listener)
  onCleanup(() => {
    for (const [kind, listener] of Object.entries(heard))
      document.removeEventListener(kind as keyof typeof heard, listener)
  })
  return (
    <Show when={over()}>
      <p class="drop-file">{spoken.files.drop}</p>
    </Show>
  )
}
