import { spoken } from "../../text/spoken.ts"
import { SectionList } from "./SectionList.tsx"

/** The section list for narrow screens, where it has no column of its own. */
export function SectionsButton() {
  let sheet: HTMLDialogElement | undefined
  return (
    <>
      <button type="button" class="small sections-button" onClick={() => sheet?.showModal()}>
        {spoken.sections}
      </button>
      <dialog ref={sheet} class="sections-dialog" aria-label={spoken.jump}>
        <header class="column-head">
          <h2>{spoken.sections}</h2>
          <button type="button" class="small" onClick={() => sheet?.close()}>
            {spoken.close}
          </button>
        </header>
        <SectionList onJump={() => sheet?.close()} />
      </dialog>
    </>
  )
}
