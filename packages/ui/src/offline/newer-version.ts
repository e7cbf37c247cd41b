/**
 * Keeps the page's files for use without a network, and watches for a newer version of them. A newer one waits:
 * `onWaiting` is given what lets it take over, which reloads the page. Where the browser cannot, nothing happens.
 */
export async function keepForOffline(onWaiting: (takeOver: () => void) => void): Promise<void> {
  if (!("serviceWorker" in navigator)) return
  const { serviceWorker } = navigator
  // A browser may refuse; the page then needs a network, as any page does.
  const registration = await serviceWorker
    .register("./offline.js", { updateViaCache: "none" })
    .catch(() => undefined)
  if (registration === undefined) return

  function offer(worker: ServiceWorker): void {
    // The first one replaces nothing.
    if (worker.state !== "installed" || serviceWorker.controller === null) return
    onWaiting(() => {
      serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true })
      worker.postMessage("take over")
    })
  }
  function watch(worker: ServiceWorker | null): void {
    worker?.addEventListener("statechange", () => offer(worker))
  }

  if (registration.waiting !== null) offer(registration.waiting)
  watch(registration.installing)
  registration.addEventListener("updatefound", () => watch(registration.installing))
  // A page may stay open for weeks. Without a network there is nothing to find.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void registration.update().catch(() => {})
  })
}
