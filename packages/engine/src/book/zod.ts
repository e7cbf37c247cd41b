import * as z from "zod/mini"

// `jitless`: otherwise it tries to run text as code, which a page with a strict policy forbids and reports. Before any schema
// is made. What it finds is said by `schema-fault.ts`: this form of the library knows no sentences of its own.
z.config({ jitless: true })

export { z }
