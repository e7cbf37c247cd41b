import { lawsOf } from "./laws.ts"

lawsOf("greenhouse-floor")
