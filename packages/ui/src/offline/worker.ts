// Runs beside the page, not in it: keeps the files of one version, and answers with them when there is no network,
// or none that answers. Nothing that a person typed passes here.

/** What is used of a worker's surroundings; the types of pages do not have it. */
interface Surroundings {
  readonly registration: { readonly scope: string }
  readonly clients: { claim(): Promise<void> }
  skipWaiting(): Promise<void>
  addEventListener(kind: "install" | "activate", listener: (event: Lasting) => void): void
  addEventListener(kind: "message", listener: (event: { readonly data: unknown }) => void): void
  addEventListener(kind: "fetch", listener: (event: Fetching) => void): void
}
interface Lasting {
  waitUntil(work: Promise<unknown>): void
}
interface Fetching {
  readonly request: Request
  respondWith(response: Promise<Response>): void
}

const here = globalThis as unknown as Surroundings

/** Written in when it is built: the files, and a mark of this version. */
declare const __FILES__: readonly string[]
declare const __BUILT__: string
const MINE = `${here.registration.scope} ${__BUILT__}`

const ofPegbook = async () =>
  (await caches.keys()).filter((name) => name.startsWith(`${here.registration.scope} `))

async function install(): Promise<void> {
  const cache = await caches.open(MINE)
  await cache.addAll(__FILES__.map((file) => new Request(file, { cache: "no-cache" })))
}

/** The version before stays too: another tab may still show it, and not have fetched all of it yet. */
async function tidy(): Promise<void> {
  const names = (await ofPegbook()).filter((name) => name !== MINE)
  await Promise.all(names.slice(0, -1).map((name) => caches.delete(name)))
  await here.clients.claim()
}

async function answer(request: Request): Promise<Response> {
  const wanted = request.mode === "navigate" ? new URL("index.html", here.registration.scope).href : request
  for (const name of [MINE, ...(await ofPegbook())]) {
    const kept = await (await caches.open(name)).match(wanted, { ignoreSearch: true, ignoreVary: true })
    if (kept !== undefined) return kept
  }
  return fetch(request)
}

here.addEventListener("install", (event) => event.waitUntil(install()))
here.addEventListener("activate", (event) => event.waitUntil(tidy()))
here.addEventListener("message", ({ data }) => {
  if (data === "take over") void here.skipWaiting()
})
here.addEventListener("fetch", (event) => {
  const { request } = event
  if (request.method === "GET" && request.url.startsWith(here.registration.scope))
    event.respondWith(answer(request))
})
