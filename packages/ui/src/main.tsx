import { render } from "solid-js/web"
import { App } from "./app.tsx"
import { aroundPage } from "./bridge/around.ts"
import { openSession } from "./bridge/session.ts"
import { indexedDbStores } from "./storage/indexed-db.ts"
import "./styles/index.css"

const root = document.querySelector("#app")
if (root === null) throw new Error("the page has no #app")

const { session } = await openSession(indexedDbStores(), aroundPage())
addEventListener("pagehide", session.flush)
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "hidden") session.flush()
})
render(() => <App session={session} />, root)
