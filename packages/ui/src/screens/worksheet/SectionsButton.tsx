import { en } from "../../text/en.ts"
import { SectionList } from "./SectionList.tsx"

/** The section list for narrow screens, where it has no column of its own. */
export function SectionsButton() {
  let sheet: HTMLDialogElement | undefined
  return (
    <>
      <button type="button" class="small sections-button" onClick={() => sheet?.showModal()}>
        {en.sections}
      </button>
      <dialog ref={sheet} class="sections-dialog" aria-label={en.jump}>
        <header class="column-head">
          <h2>{en.sections}</h2>
          <button type="button" class="small" onClick={() => sheet?.close()}>
            {en.close}
          </button>
        </header>
        <SectionList onJump={() => sheet?.close()} />
      </dialog>
    </>
  )
}
