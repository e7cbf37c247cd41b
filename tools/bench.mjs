// `npm run bench`: how fast the workbook follows an edit. Never a test: it prints, and judges nothing.
import { join } from "node:path"
import { findChromium } from "./chromium.mjs"
import { root, setUp } from "./setup.mjs"

setUp()

const { build } = await import("vite")
await build({ root: join(root, "packages", "ui"), logLevel: "error" })

const { register } = await import("tsx/esm/api")
register({ tsconfig: join(root, "tsconfig.json") })
const { main } = await import("../tests/bench/main.ts")
await main(findChromium())
