// `npm run --silent pegbook -- …`: the headless command, in this one process.
import { existsSync } from "node:fs"
import { join } from "node:path"
import { noPdf, printPdf } from "./print-pdf.mjs"
import { root, setUp } from "./setup.mjs"

if (!existsSync(join(root, "node_modules", "tsx"))) setUp({ quiet: true })

// npm runs scripts in the project's folder; a file named by the user is in theirs.
if (process.env.npm_lifecycle_event === "pegbook" && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD)

const { register } = await import("tsx/esm/api")
register({ tsconfig: join(root, "tsconfig.json") })
const { main } = await import("../packages/templates/src/command/main.ts")

// Whoever reads may stop reading (`… | head`); that is no failure of ours.
process.stdout.on("error", (error) => {
  if (error.code !== "EPIPE") throw error
})
const printer = {
  page: async (...given) => (await import("../packages/ui/build/book-file.mjs")).bookFile(...given),
  pdf: printPdf,
  noPdf,
}
process.exitCode = await main(process.argv.slice(2), printer)
