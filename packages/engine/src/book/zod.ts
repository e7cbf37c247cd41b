import { z } from "zod"

// Otherwise it tries to run text as code, which a page with a strict policy forbids and reports. Before any schema is made.
z.config({ jitless: true })

export { z }
