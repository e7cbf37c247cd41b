import { lawsOf } from "./laws.ts"

lawsOf("shed-base")
