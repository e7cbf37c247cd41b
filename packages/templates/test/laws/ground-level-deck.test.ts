import { lawsOf } from "./laws.ts"

lawsOf("ground-level-deck")
