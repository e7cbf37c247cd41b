import { render } from "solid-js/web"
import { App } from "./app.tsx"
import { aroundPage } from "./bridge/around.ts"
import { openSession } from "./bridge/session.ts"
import { keepForOffline } from "./offline/newer-version.ts"
import { indexedDbStores } from "./storage/indexed-db.ts"
import "./styles/index.css"
import { en } from "./text/en.ts"

const root = document.querySelector("#app")
if (root === null) throw new Error("the page has no #app")

const { session } = await openSession(indexedDbStores(), aroundPage())
addEventListener("pagehide", session.flush)
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "hidden") session.flush()
})
if (import.meta.env.PROD) void keepForOffline(offerNewer)
render(() => <App session={session} />, root)

function offerNewer(takeOver: () => void): void {
  session.offer(en.updates.waiting, [{ text: en.updates.reload, act: () => void saveFirst(takeOver) }])
}

/** A reload throws away what could not be saved, so it is not done then. */
async function saveFirst(takeOver: () => void): Promise<void> {
  if (await session.saveAll()) takeOver()
  else session.offer(en.updates.notSaved, [])
}
