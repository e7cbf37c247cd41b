// Serves the built screens for the journeys, as a person would be served them, on a port that is free.
import { existsSync } from "node:fs"
import { join } from "node:path"
import { preview } from "vite"
import { findChromium, HOW_TO_GET_ONE } from "../../tools/chromium.mjs"
import { root } from "../../tools/setup.mjs"

/** @param {import("vitest/node").TestProject} project */
export default async function serve(project) {
  const ui = join(root, "packages", "ui")
  if (!existsSync(join(ui, "dist", "index.html"))) {
    throw new Error("packages/ui/dist is missing: run `npx vite build packages/ui` first, or `npm test`")
  }
  const chromium = findChromium()
  if (!chromium) throw new Error(HOW_TO_GET_ONE)

  const server = await preview({ root: ui, logLevel: "warn", preview: { port: 4273, host: "127.0.0.1" } })
  const address = server.resolvedUrls?.local[0]
  if (!address) throw new Error("the preview server gave no address")
  project.provide("address", address)
  project.provide("chromium", chromium)
  return () => server.close()
}
