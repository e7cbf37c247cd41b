import * as z from "zod/mini"
import en from "zod/v4/locales/en.js"

// `jitless`: otherwise it tries to run text as code, which a page with a strict policy forbids and reports. This form of
// the library knows no sentences of its own. Before any schema is made.
z.config({ ...en(), jitless: true })

export { z }
