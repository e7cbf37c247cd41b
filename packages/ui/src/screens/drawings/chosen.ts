import { createStore } from "solid-js/store"

/** What was chosen to be seen, kept while the page is open: by the template's id, and the drawing's with it. */
const [chosen, setChosen] = createStore<{
  drawing: Record<string, string | undefined>
  shown: Record<string, boolean | undefined>
}>({ drawing: {}, shown: {} })

export const chosenDrawing = (template: string) => chosen.drawing[template]
export const chooseDrawing = (template: string, id: string) => setChosen("drawing", template, id)
export const chosenShown = (key: string) => chosen.shown[key]
export const chooseShown = (key: string, shown: boolean) => setChosen("shown", key, shown)
