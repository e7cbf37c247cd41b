import { lawsOf } from "./laws.ts"

lawsOf("game-table-platform")
