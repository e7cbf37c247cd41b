// A thread starts without what reads TypeScript: it is set up here, as `tools/pegbook.mjs` does for the command.
import { register } from "tsx/esm/api"

register()
await import("./solving-thread.ts")
