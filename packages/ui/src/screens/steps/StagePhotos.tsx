import { createEffect, createSignal, For, onCleanup, Show } from "solid-js"
import { useSession, useSheet } from "../../bridge/context.ts"
import { newPhotoId, type Photo } from "../../storage/photos.ts"
import { smaller } from "../../storage/smaller.ts"
import { refusalOf } from "../../storage/store.ts"
import { printMoment } from "../../text/dates.ts"
import { refusalWords } from "../../text/refusal-words.ts"
import { spoken } from "../../text/spoken.ts"

interface Shown {
  readonly photo: Photo
  readonly address: string
}

/** The photos kept with a step. */
export function StagePhotos(props: { readonly stage: string; readonly title: string }) {
  const session = useSession()
  const { photos } = session
  const sheet = useSheet()
  const [shown, setShown] = createSignal<readonly Shown[]>([])
  const [problem, setProblem] = createSignal("")

  function letGo(): void {
    for (const { address } of shown()) URL.revokeObjectURL(address)
  }
  onCleanup(letGo)

  async function trying(act: () => Promise<void>): Promise<void> {
    try {
      await act()
    } catch (thrown) {
      setProblem(spoken.steps.photoNotKept(refusalWords(refusalOf(thrown))))
    }
  }
  async function read(): Promise<void> {
    const kept = await photos.of(session.current(), props.stage)
    letGo()
    setShown(kept.map((photo) => ({ photo, address: URL.createObjectURL(photo.picture) })))
  }
  createEffect(() => {
    void [session.current(), session.photosCame()]
    void trying(read)
  })

  async function add(files: readonly File[]): Promise<void> {
    setProblem("")
    for (const file of files) {
      let picture: Blob
      try {
        picture = await smaller(file)
      } catch {
        setProblem(spoken.steps.notAPhoto(file.name))
        continue
      }
      await photos.put({
        id: newPhotoId(),
        workbook: session.current(),
        stage: props.stage,
        added: new Date().toISOString(),
        picture,
      })
    }
    // A workbook in which nothing was changed is not kept, and its photos would be nobody's.
    sheet.note(props.stage, {})
    await read()
  }
  async function remove(photo: Photo): Promise<void> {
    await photos.remove(photo.id)
    await read()
    session.say(spoken.steps.photoRemoved, () => void trying(() => photos.put(photo).then(read)))
  }

  return (
    <section class="step-part step-photos">
      <h3>{spoken.steps.photos}</h3>
      <p class="quiet">{spoken.steps.photosSay}</p>
      <Show when={problem()}>{(text) => <p role="alert">{text()}</p>}</Show>
      <ul>
        <For each={shown()}>
          {({ photo, address }, at) => (
            <li>
              <img
                src={address}
                alt={spoken.steps.photo(props.title, at() + 1, printMoment(new Date(photo.added)))}
              />
              <button
                type="button"
                class="small"
                aria-label={spoken.steps.removePhotoSays(props.title, at() + 1)}
                onClick={() => void trying(() => remove(photo))}
              >
                {spoken.steps.removePhoto}
              </button>
            </li>
          )}
        </For>
      </ul>
      <label>
        <span class="block-caption">{spoken.steps.addPhotos}</span>
        <input
          type="file"
          accept="image/*"
          multiple
          aria-label={spoken.steps.addPhotosSays(props.title)}
          onChange={(event) => {
            const input = event.currentTarget
            const files = [...(input.files ?? [])]
            input.value = ""
            void trying(() => add(files))
          }}
        />
      </label>
    </section>
  )
}
