import { useSession, useWalk } from "../bridge/context.ts"
import { spoken } from "../text/spoken.ts"

/** Saves the open workbook to a file, by way of the browser's own downloads. */
export function SaveFileButton(props: { readonly class: string }) {
  const session = useSession()

  async function save(): Promise<void> {
    const file = await session.file()
    if (file === undefined) return
    const address = URL.createObjectURL(new Blob([file.text], { type: "application/json" }))
    const link = document.createElement("a")
    link.href = address
    link.download = file.name
    link.click()
    // The download has begun by then, and holds on to what it needs.
    setTimeout(() => URL.revokeObjectURL(address), 60_000)
  }

  return (
    <button type="button" class={props.class} onClick={() => void save()}>
      {spoken.files.save}
    </button>
  )
}

/** Lets a person choose a file, and opens the workbook in it. */
export function OpenFileButton(props: { readonly class: string }) {
  const session = useSession()
  const walk = useWalk()
  let chooser: HTMLInputElement | undefined

  async function open(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? []
    if (file !== undefined && (await session.openFile(file))) walk.show("worksheet")
    // So that the same file can be chosen again.
    input.value = ""
  }

  return (
    <>
      <button type="button" class={props.class} onClick={() => chooser?.click()}>
        {spoken.files.open}
      </button>
      <input
        ref={chooser}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label={spoken.files.open}
        onChange={(event) => void open(event.currentTarget)}
      />
    </>
  )
}
