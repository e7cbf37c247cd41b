import { lawsOf } from "./laws.ts"

lawsOf("boardwalk")
