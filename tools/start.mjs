// `npm start`: set up, build, serve, and print the address.
import { join } from "node:path"
import { parseArgs } from "node:util"
import { giveUp, root, setUp } from "./setup.mjs"

const FIRST_PORT = 4173

function options() {
  try {
    const { values } = parseArgs({ options: { port: { type: "string" }, host: { type: "string" } } })
    const port = values.port === undefined ? FIRST_PORT : Number(values.port)
    if (!Number.isInteger(port) || port < 1 || port > 65_535) {
      giveUp(
        `--port is a whole number from 1 to 65535, not "${values.port}". Try: npm start -- --port 8080`,
        2,
      )
    }
    return { port, host: values.host ?? "127.0.0.1" }
  } catch (error) {
    return giveUp(`${error.message.split("\n")[0]} npm start takes --port <number> and --host <address>.`, 2)
  }
}

const { port, host } = options()
setUp()

const { build, preview } = await import("vite")
const ui = join(root, "packages", "ui")
await build({ root: ui, logLevel: "error" })

// A port that is taken makes vite try the next one.
const server = await preview({ root: ui, logLevel: "error", preview: { port, host, open: false } }).catch(
  (error) =>
    giveUp(
      `cannot serve on ${host}, port ${port}: ${error.message}. Try another: npm start -- --port ${port + 1}`,
    ),
)
const address = server.resolvedUrls?.local[0] ?? `http://${host}:${port}/`
console.log(`Pegbook is at ${address}   (Ctrl-C ends it)`)
if (host !== "127.0.0.1" && host !== "localhost") {
  console.log("Others on this network can open it too. What they enter stays in their own browser.")
}

for (const signal of ["SIGINT", "SIGTERM"]) {
  process.on(signal, () => server.close().finally(() => process.exit(0)))
}
