import { languageInForce } from "@pegbook/engine"
import { speak } from "@pegbook/templates"
import { render } from "solid-js/web"
import { App } from "./app.tsx"
import { aroundPage } from "./bridge/around.ts"
import { whenPainted } from "./bridge/painted.ts"
import { openSession } from "./bridge/session.ts"
import { keepForOffline } from "./offline/newer-version.ts"
import { watchStyles } from "./parts/lost-styles.ts"
import { indexedDbStores } from "./storage/indexed-db.ts"
import { proposedLanguage, readPreferences } from "./storage/preferences.ts"
import { KEYS } from "./storage/store.ts"
import "./styles/index.css"
import { chooseWords, spoken } from "./text/spoken.ts"

const root = document.querySelector("#app")
if (root === null) throw new Error("the page has no #app")

const stores = indexedDbStores()
const around = aroundPage()
const kept = readPreferences(await stores.records.get(KEYS.preferences).catch(() => undefined))
const language = kept.language ?? proposedLanguage(around.languages)
await Promise.all([speak(language), chooseWords(language)])
document.documentElement.lang = languageInForce().tag
const { session, opened } = await openSession(stores, around)
watchStyles()
addEventListener("pagehide", session.flush)
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "hidden") session.flush()
})
render(() => <App session={session} />, root)
// All the page's files at once, read and kept, would hold up the first sight of the numbers.
if (import.meta.env.PROD) void opened.then(() => whenPainted(() => void keepForOffline(offerNewer)))

function offerNewer(takeOver: () => void): void {
  session.offer(spoken.updates.waiting, [
    { text: spoken.updates.reload, act: () => void saveFirst(takeOver) },
  ])
}

/** A reload throws away what could not be saved, so it is not done then. */
async function saveFirst(takeOver: () => void): Promise<void> {
  if (await session.saveAll()) takeOver()
  else session.offer(spoken.updates.notSaved, [])
}
